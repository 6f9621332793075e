import { createContext, useCallback, useContext, useEffect, useState, type ReactNode } from 'react';

/** Words that lie on the desk: typed, not yet handed to the garden. */
class Desk extends Map<string, unknown> {
  private readonly listeners = new Set<(key: string) => void>();

  /** Puts something there from elsewhere in the window; what shows it is told. */
  put(key: string, value: unknown): void {
    this.set(key, value);
    for (const listener of this.listeners) listener(key);
  }

  listen(listener: (key: string) => void): () => void {
    this.listeners.add(listener);
    return () => void this.listeners.delete(listener);
  }
}
const DeskContext = createContext<Desk | null>(null);

/** Keeps unsent entries while one walks from place to place. A new key for every garden opened. */
export function DeskProvider({ children }: { readonly children: ReactNode }) {
  const [desk] = useState(() => new Desk());
  return <DeskContext.Provider value={desk}>{children}</DeskContext.Provider>;
}

/** Puts words on the desk for a part of the window that may not be shown yet. */
export function usePutOnDesk(): (key: string, value: unknown) => void {
  const desk = useContext(DeskContext);
  return useCallback((key, value) => desk?.put(key, value), [desk]);
}

/**
 * As `useState`, but what was typed is still there when one comes back to this part of the
 * window. The third item takes it off the desk.
 */
export function useDesk<Value>(
  key: string,
  initial: () => Value,
): readonly [Value, (next: Value | ((now: Value) => Value)) => void, () => void] {
  const desk = useContext(DeskContext);
  const [held, setHeld] = useState<{ key: string; value: Value }>(() => ({
    key,
    value: desk?.has(key) ? (desk.get(key) as Value) : initial(),
  }));
  let now = held.value;
  if (held.key !== key) {
    now = desk?.has(key) ? (desk.get(key) as Value) : initial();
    setHeld({ key, value: now });
  }
  useEffect(
    () =>
      desk?.listen((other) => {
        if (other === key) setHeld({ key, value: desk.get(key) as Value });
      }),
    [desk, key],
  );
  const set = useCallback(
    (next: Value | ((current: Value) => Value)) =>
      setHeld((current) => {
        const value =
          typeof next === 'function' ? (next as (current: Value) => Value)(current.value) : next;
        desk?.set(key, value);
        return { key, value };
      }),
    [desk, key],
  );
  const clear = useCallback(() => {
    desk?.delete(key);
    setHeld({ key, value: initial() });
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [desk, key]);
  return [now, set, clear];
}
