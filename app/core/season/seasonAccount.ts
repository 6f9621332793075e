import type { DayNumber } from '../days';
import { mgPerKgFromGramsPerM2 } from '../units';
import { flowIndex } from './flows';
import type { BedSeason } from './input';
import type { SeasonResult } from './result';
import { flowsByDay, type RunDays, type WatchedSeason } from './watchedSeason';

/** What a bed's run says about a day, in the terms the states are written in. */

const dugRelease = [flowIndex('dugMicrobes', 'mineralTop', 'released')];
const dugTieUp = [flowIndex('mineralTop', 'dugMicrobes', 'held back')];

export const lastDayOf = (result: RunDays): DayNumber => result.firstDay + result.days - 1;

/** Value of a series on a day; days outside the run count as its nearest day. */
export function at(series: ArrayLike<number>, result: RunDays, day: DayNumber): number {
  const index = Math.min(result.days - 1, Math.max(0, day - result.firstDay));
  return series[index] ?? 0;
}

/** Sum of a series over days, both ends included and cut to the run; 0 when the span is empty. */
export function sumDays(
  series: ArrayLike<number>,
  result: RunDays,
  fromDay: DayNumber,
  toDay: DayNumber,
): number {
  const first = Math.max(0, fromDay - result.firstDay);
  const last = Math.min(result.days - 1, toDay - result.firstDay);
  let sum = 0;
  for (let index = first; index <= last; index += 1) sum += series[index] ?? 0;
  return sum;
}

/** Mean of a series over days, both ends included and cut to the run; null when the span is empty. */
export function meanDays(
  series: ArrayLike<number>,
  result: RunDays,
  fromDay: DayNumber,
  toDay: DayNumber,
): number | null {
  const first = Math.max(fromDay, result.firstDay);
  const last = Math.min(toDay, lastDayOf(result));
  if (last < first) return null;
  return sumDays(series, result, first, last) / (last - first + 1);
}

/**
 * Nitrogen that rotting in the soil has taken out of 0-30 cm and not given back yet, by day [g/m2
 * of bed]. A release pays back what is owed and nothing in advance.
 */
export function nitrogenOwed(result: SeasonResult): Float64Array {
  const taken = flowsByDay(result, dugTieUp);
  const given = flowsByDay(result, dugRelease);
  let sum = 0;
  return taken.map((grams, index) => (sum = Math.max(0, sum + grams - given[index]!)));
}

/** Mineral nitrogen of 0-30 cm and of what roots reach or will reach below, on the evening of a day. */
export const mineralInReach = (
  result: Pick<WatchedSeason, keyof RunDays | 'pools' | 'rootReach'>,
  day: DayNumber,
): number =>
  at(result.pools.mineralTop, result, day) +
  at(result.rootReach, result, day) * at(result.pools.mineralLower, result, day);

/** Nitrate-N of 0-30 cm in the lab's mg/kg, by the bed's own bulk density. */
export const nitrateMgPerKg = (
  input: BedSeason,
  result: Pick<WatchedSeason, keyof RunDays | 'pools'>,
  day: DayNumber,
): number =>
  mgPerKgFromGramsPerM2(at(result.pools.mineralTop, result, day), input.soil.bulkDensityKgPerL, 30);

/** First day of the season that holds `day`, within the run. */
export const seasonFirstDay = (input: BedSeason, day: DayNumber): DayNumber =>
  input.seasonStarts.reduce(
    (latest, start) => (start <= day && start > latest ? start : latest),
    input.firstDay,
  );

/** Last day of the season that holds `day`, within the run. */
export const seasonLastDay = (input: BedSeason, day: DayNumber): DayNumber =>
  input.seasonStarts.reduce(
    (earliest, start) => (start > day && start - 1 < earliest ? start - 1 : earliest),
    input.lastDay,
  );
