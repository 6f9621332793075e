import { useSyncExternalStore } from 'react';

/** Narrower than the narrowest paper inside its margins [CSS px]: A4 with 15 mm is 680. */
const narrowest = 672;

/** Shorter than the shortest paper inside its margins [CSS px]: Letter with 15 mm is 942. */
const shortest = 930;

let isOnPaper = false;
const listeners = new Set<() => void>();

function put(is: boolean): void {
  if (isOnPaper === is) return;
  isOnPaper = is;
  for (const tell of listeners) tell();
}

const before = (): void => put(true);
const after = (): void => put(false);

function listen(tell: () => void): () => void {
  if (listeners.size === 0) {
    window.addEventListener('beforeprint', before);
    window.addEventListener('afterprint', after);
  }
  listeners.add(tell);
  return () => {
    listeners.delete(tell);
    if (listeners.size > 0) return;
    window.removeEventListener('beforeprint', before);
    window.removeEventListener('afterprint', after);
    isOnPaper = false;
  };
}

/** How wide a drawing may be on the paper that is about to be printed; null on the screen. */
export const usePaperWidth = (): number | null =>
  useSyncExternalStore(
    listen,
    () => (isOnPaper ? narrowest : null),
    () => null,
  );

/** How tall a drawing may be to stand whole on the paper that is about to be printed; no limit on the screen. */
export const usePaperHeight = (): number => (usePaperWidth() === null ? Infinity : shortest);

/**
 * Draws everything as wide as paper, so that its letters are not made smaller with it, and answers
 * once that is done; `backOnScreen` undoes it. A print that the browser starts does so by itself.
 */
export async function drawForPaper(): Promise<void> {
  put(true);
  // what hears of it draws at once, before anything else has its turn
  await new Promise((resolve) => setTimeout(resolve));
}

export const backOnScreen = (): void => put(false);
