import { listOf } from '../listOf';
import { dayFromParts, partsFromDay } from '../days';

/** Days of a month of a real year, leap years included. */
export const daysInMonth = (year: number, month: number): number =>
  month === 12 ? 31 : dayFromParts(year, month + 1, 1) - dayFromParts(year, month, 1);

/**
 * Twelve values at the middles of the months such that straight lines between them have the given
 * monthly means; a line through the means themselves would cut the top off every summer.
 *
 *     mean of month m over the lines = 3/4 k[m] + 1/8 (k[m-1] + k[m+1])
 *
 * solved by repeated correction (the error at least halves each time).
 *
 * @param means twelve monthly means, January first; any unit
 */
export function monthlyKnots(means: readonly number[]): number[] {
  if (means.length !== 12) throw new Error('A year has twelve monthly means');
  let knots = [...means];
  for (let round = 0; round < 50; round++) {
    const before = knots;
    knots = listOf(before, (knot, month) => {
      const around = (before[(month + 11) % 12] ?? 0) + (before[(month + 1) % 12] ?? 0);
      return knot + (means[month] ?? 0) - (0.75 * knot + 0.125 * around);
    });
  }
  return knots;
}

/**
 * The smooth usual value of a civil day from `monthlyKnots`. A day's place in its month is
 * (day - 1/2) / days of the month, so leap years need no special case.
 */
export function smoothNormal(knots: readonly number[], day: number): number {
  const { year, month, dayOfMonth } = partsFromDay(day);
  return smoothNormalOn(knots, month, dayOfMonth, daysInMonth(year, month));
}

/** The same by the parts of the day. */
export function smoothNormalOn(
  knots: readonly number[],
  month: number,
  dayOfMonth: number,
  days: number,
): number {
  const place = (dayOfMonth - 0.5) / days - 0.5;
  const here = knots[month - 1] ?? 0;
  const other = knots[(month - 1 + (place < 0 ? 11 : 1)) % 12] ?? 0;
  return here + Math.abs(place) * (other - here);
}
