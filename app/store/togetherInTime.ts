import { progressPauseMilliseconds, type Surroundings } from './surroundings';

/**
 * Shows what comes one by one together: the first at once, the rest after a pause at a time.
 *
 * @param hasMore whether something has come that is not shown yet
 */
export function togetherInTime(
  later: Surroundings['later'],
  show: () => void,
  hasMore: () => boolean,
): () => void {
  let isPausing = false;
  const come = (): void => {
    if (isPausing) return;
    show();
    isPausing = true;
    later(progressPauseMilliseconds, () => {
      isPausing = false;
      if (hasMore()) come();
    });
  };
  return come;
}
