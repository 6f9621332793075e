import { createContext, useContext, type ReactNode } from 'react';
import { useStore, type StoreApi } from 'zustand';
import type { MowingsState } from '../store/contract';

const StoreContext = createContext<StoreApi<MowingsState> | null>(null);

export function StoreProvider(props: {
  readonly store: StoreApi<MowingsState>;
  readonly children: ReactNode;
}) {
  return <StoreContext.Provider value={props.store}>{props.children}</StoreContext.Provider>;
}

/** The store itself, for things done outside drawing (keys, menus). */
export function useMowingsStore(): StoreApi<MowingsState> {
  const store = useContext(StoreContext);
  if (!store) throw new Error('No store around this part of the window');
  return store;
}

/** A part of the store; the component draws again when that part changes. */
export function useMowings<Part>(choose: (state: MowingsState) => Part): Part {
  return useStore(useMowingsStore(), choose);
}

/** The open garden; only for parts of the window that are drawn while one is open. */
export function useGarden() {
  const garden = useMowings((state) => state.garden);
  if (!garden) throw new Error('No garden is open');
  return garden;
}
