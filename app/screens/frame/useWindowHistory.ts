import { useEffect } from 'react';
import { places, type PlaceInWindow } from '../../store/contract';
import { useMowingsStore } from '../store';

/** Where one is in the window, as the browser's history keeps it. */
interface Where {
  readonly place: PlaceInWindow;
  readonly openBedId: string | null;
}

/** What this page left in the history; entries of other pages, and of gardens put away, are none. */
export function whereOf(state: unknown, opening: number): Where | null {
  if (typeof state !== 'object' || state === null || !('mowings' in state)) return null;
  const { mowings } = state as { mowings: Partial<Where & { opening: number }> | null };
  const place = places.find((one) => one === mowings?.place);
  if (!place || mowings?.opening !== opening) return null;
  return { place, openBedId: typeof mowings.openBedId === 'string' ? mowings.openBedId : null };
}

/**
 * Back and Forward of the window go from place to place: from a bed to the beds, not out of the
 * program. The address stays as it is; a window without those buttons is none the worse.
 */
export function useWindowHistory(): void {
  const store = useMowingsStore();
  useEffect(() => {
    const entry = ({ place, openBedId, openings }: ReturnType<typeof store.getState>) => ({
      mowings: { place, openBedId, opening: openings },
    });
    let frame = 0;
    let last = '';
    const keep = () => {
      const state = store.getState();
      if (!state.garden) return;
      const next = entry(state);
      const words = JSON.stringify(next);
      if (words === last) return;
      // the first of a garden stands in place of what was there: nothing of it is behind one
      if (last === '' || whereOf(history.state, state.openings) === null)
        history.replaceState(next, '');
      else if (JSON.stringify(history.state) !== words) history.pushState(next, '');
      last = words;
    };
    // one press may change place and bed one after the other: that is one step
    const unsubscribe = store.subscribe(() => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(keep);
    });
    keep();
    const onBack = (event: PopStateEvent) => {
      const { openings, goTo, openBed, garden } = store.getState();
      const where = whereOf(event.state, openings);
      if (!where || !garden || document.querySelector('dialog[open]')) return;
      last = JSON.stringify({ mowings: { ...where, opening: openings } });
      openBed(where.openBedId);
      goTo(where.place);
    };
    window.addEventListener('popstate', onBack);
    return () => {
      cancelAnimationFrame(frame);
      unsubscribe();
      window.removeEventListener('popstate', onBack);
    };
  }, [store]);
}
