import { useCallback } from 'react';
import { useMowings } from '../store';

/** Brings a part of the Garden page into view and its heading into focus. */
export function showPart(id: string): void {
  const heading = document.getElementById(id);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}

/** Goes to one part of the Garden page from elsewhere in the window. */
export function useGoToPart(): (id: string) => void {
  const goTo = useMowings((state) => state.goTo);
  return useCallback(
    (id) => {
      goTo('garden');
      // after the new place has been drawn, scrolled to its top and read out from its heading
      requestAnimationFrame(() => requestAnimationFrame(() => showPart(id)));
    },
    [goTo],
  );
}
