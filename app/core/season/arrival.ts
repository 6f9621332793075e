import type { DayNumber } from '../days';
import type { SeasonResult } from './result';
import { watchedOf } from './watchedSeason';

/** What a layer brings into the soil by the end of a run, and when half of it is there. */
export interface Arrival {
  /** more released into 0-30 cm than without it, less what it ties up [g N/m2 of bed] */
  readonly grams: number;
  readonly halfBy: DayNumber;
}

/** Less than this is no help to speak of [g N/m2] (ours). */
export const leastArrival = 0.1;

/**
 * When what a layer holds reaches the soil: the first evening after today on which the bed with it
 * has been given half of all that it will be given more than without.
 *
 * @param before the bed without the layer
 * @param after the same days with it
 * @param until last day that counts: the clearing of what stands, or the run's end
 * @returns null where the layer brings next to nothing by then, or takes
 */
export function arrivalOf(
  before: SeasonResult,
  after: SeasonResult,
  until: DayNumber,
): Arrival | null {
  const without = watchedOf(before);
  const withIt = watchedOf(after);
  const first = after.today - after.firstDay;
  const last = Math.min(until - after.firstDay, after.days - 1);
  const more: number[] = [];
  let sum = 0;
  for (let index = first; index <= last; index++) {
    sum +=
      withIt.released[index]! -
      withIt.tiedUp[index]! -
      (without.released[index]! - without.tiedUp[index]!);
    more.push(sum);
  }
  if (sum < leastArrival) return null;
  return { grams: sum, halfBy: after.today + more.findIndex((soFar) => soFar >= sum / 2) };
}
