import type { DayNumber } from '../../core/days';
import type { DaySpan, LikelyNitrate } from './data';

/**
 * The likely band on one evening, straight between the evenings that are known; null before the
 * first and after the last of them.
 *
 * @param known rising days
 */
export function likelyOn(
  known: readonly LikelyNitrate[],
  day: DayNumber,
): Omit<LikelyNitrate, 'day'> | null {
  const after = known.findIndex((one) => one.day >= day);
  const next = known[after];
  if (!next) return null;
  if (next.day === day) return { low: next.low, high: next.high };
  const before = known[after - 1];
  if (!before) return null;
  const share = (day - before.day) / (next.day - before.day);
  return {
    low: before.low + share * (next.low - before.low),
    high: before.high + share * (next.high - before.high),
  };
}

/** The band within the days shown: the known evenings, and the first and last evening shown. */
export function likelyWithin(
  known: readonly LikelyNitrate[],
  { from, to }: DaySpan,
): readonly LikelyNitrate[] {
  const evenings = [from - 1, ...known.map(({ day }) => day), to].filter(
    (day) => day >= from - 1 && day <= to,
  );
  return [...new Set(evenings)]
    .sort((one, other) => one - other)
    .flatMap((day) => {
      const likely = likelyOn(known, day);
      return likely ? [{ day, ...likely }] : [];
    });
}
