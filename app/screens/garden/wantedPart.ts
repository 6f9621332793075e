import { useCallback } from 'react';
import { useMowings } from '../store';
import { whenThere } from '../whenThere';

/** Heading of what lies within a part and is looked for by its own name. */
export const weatherHeading = 'garden-weather';

const bring = (heading: HTMLElement): void => {
  heading.scrollIntoView({ block: 'start' });
  heading.focus({ preventScroll: true });
};

/** Brings a part of the Garden page into view and its heading into focus. */
export function showPart(id: string): void {
  const heading = document.getElementById(id);
  if (heading) bring(heading);
}

/** Goes to one part of the Garden page from elsewhere in the window. */
export function useGoToPart(): (id: string) => void {
  const goTo = useMowings((state) => state.goTo);
  return useCallback(
    (id) => {
      goTo('garden');
      whenThere(`#${id}`, bring);
    },
    [goTo],
  );
}
