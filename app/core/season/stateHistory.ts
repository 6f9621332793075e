import type { DayNumber } from '../days';
import type { BedSeason } from './input';
import type { Limits } from './limits';
import type { SeasonResult } from './result';
import { bedVerdict } from './state';
import type { BedVerdict, NitrogenState } from './verdict';

/** A bed run as it looked on a day: nothing after that day was known, its weather is a forecast. */
export interface KnownThen {
  readonly input: BedSeason;
  readonly result: SeasonResult;
}

export interface StateThen {
  readonly day: DayNumber;
  readonly verdict: BedVerdict;
}

/** Every seventh day that ends with `lastDay`, from `firstDay` on, earliest first. */
export function weeklyDays(firstDay: DayNumber, lastDay: DayNumber): readonly DayNumber[] {
  const days: DayNumber[] = [];
  for (let day = lastDay; day >= firstDay; day -= 7) days.push(day);
  return days.reverse();
}

/**
 * The state of a bed week by week as it was known then, never with hindsight. The last entry is
 * `lastDay` itself, so today's state rests on last week's and does not flicker.
 *
 * @param asKnownOn runs the bed again with what was known on a day: its weather so far, the
 *   forecast of that day, and only the layers and plantings up to it
 * @returns one verdict a week, each holding to the state before it by the margins of `bedVerdict`
 */
export function stateHistory(
  firstDay: DayNumber,
  lastDay: DayNumber,
  asKnownOn: (day: DayNumber) => KnownThen,
  limits: Limits,
): readonly StateThen[] {
  let previous: NitrogenState | null = null;
  return weeklyDays(firstDay, lastDay).map((day) => {
    const { input, result } = asKnownOn(day);
    const verdict = bedVerdict(input, result, day, limits, previous);
    previous = verdict.state;
    return { day, verdict };
  });
}
