import type { DayNumber } from '../days';

/** What sowings at one steady warmth of the soil did: days until they were up, null where none came. */
export interface SowingTrial {
  readonly celsius: number;
  readonly days: number | null;
}

/** Soil temperature by day of a run. */
export interface SoilDays {
  readonly firstDay: DayNumber;
  readonly days: number;
  readonly soilTemperature: ArrayLike<number>;
}

/**
 * When a sowing is up. `up`: on that day. `not yet`: not by the last day of the run. `unknown`: it
 * was sown before the run begins, in soil of which nobody knows how warm it was.
 */
export type Emergence =
  | { readonly kind: 'up'; readonly day: DayNumber }
  | { readonly kind: 'not yet' }
  | { readonly kind: 'unknown' };

/**
 * Share of its way from seed to light that a sowing covers in a day.
 *
 *     v(T) = 1/days at the temperatures tried, 0 where none came up, a straight line in between
 *
 * A line through rates and not through days: seeds add up warmth, and of trials left out one at a
 * time it misses the days by a tenth or two, a line through days by three tenths (our arithmetic).
 *
 * @param trials of one vegetable, from cold to warm
 * @param celsius mean of the day at the seed
 * @returns 1/day; 0 below the coldest and above the warmest trial
 * @validity seed half an inch deep in moist soil; deeper, dry or crusted ground takes longer
 * @source the trials are Harrington & Minges 1954; the line is ours (derived)
 */
export function emergenceRate(trials: readonly SowingTrial[], celsius: number): number {
  const rate = ({ days }: SowingTrial): number => (days === null ? 0 : 1 / days);
  const above = trials.findIndex((trial) => trial.celsius >= celsius);
  const warmer = trials[above];
  if (!warmer) return 0;
  if (warmer.celsius === celsius) return rate(warmer);
  const colder = trials[above - 1];
  if (!colder) return 0;
  const way = (celsius - colder.celsius) / (warmer.celsius - colder.celsius);
  return rate(colder) + way * (rate(warmer) - rate(colder));
}

/** Days of equal warmth add up to the printed number only to rounding. */
const rounding = 1e-9;

/**
 * The day a sowing is up: the first on which the shares of its way, from the day after sowing on,
 * make a whole.
 *
 * @param times how many times longer than the trials say it takes, for the ends of a range
 * @validity as `emergenceRate`; the soil's daily mean stands for what the seed feels at half an inch,
 *   where days are warmer and nights colder
 */
export function emergenceOf(
  trials: readonly SowingTrial[],
  sown: DayNumber,
  soil: SoilDays,
  times = 1,
): Emergence {
  if (sown < soil.firstDay - 1) return { kind: 'unknown' };
  let way = 0;
  for (let index = sown + 1 - soil.firstDay; index < soil.days; index += 1) {
    way += emergenceRate(trials, soil.soilTemperature[index] ?? Number.NaN);
    if (way >= times - rounding) return { kind: 'up', day: soil.firstDay + index };
  }
  return { kind: 'not yet' };
}
