import type { DayNumber } from '../days';
import { mgPerKgFromGramsPerM2 } from '../units';
import { type FlowIndex, flowIndex } from './flows';
import type { BedSeason } from './input';
import type { RunDays, WatchedSeason } from './watchedSeason';

/** What a bed's run says about a day, in the terms the states are written in. */

const releaseFlows: readonly FlowIndex[] = [
  flowIndex('soilOrganic', 'mineralTop', 'released by the soil'),
  flowIndex('youngHumus', 'mineralTop', 'released by last year’s humus'),
  flowIndex('dugMicrobes', 'mineralTop', 'released'),
  flowIndex('slow', 'mineralTop', 'released from compost'),
  flowIndex('coverFree', 'mineralTop', 'washed in'),
  flowIndex('coverFree', 'mineralTop', 'cover dug in'),
];
const dugReleaseFlows: readonly FlowIndex[] = [flowIndex('dugMicrobes', 'mineralTop', 'released')];
const dugTieUpFlows: readonly FlowIndex[] = [flowIndex('mineralTop', 'dugMicrobes', 'held back')];
const tieUpFlows: readonly FlowIndex[] = [
  ...dugTieUpFlows,
  flowIndex('mineralTop', 'coverMicrobes', 'held back from the soil'),
];

const luxuryFlows: readonly FlowIndex[] = [
  flowIndex('mineralTop', 'crop', 'luxury'),
  flowIndex('mineralLower', 'crop', 'luxury'),
];
/** Every flow that a bed's state is judged by. */
export const judgedFlows: readonly FlowIndex[] = [...releaseFlows, ...tieUpFlows, ...luxuryFlows];

/** A flow's series; throws when the run kept none, as a draw does of what nobody judges by. */
export function flowSeries(result: Pick<WatchedSeason, 'flows'>, flow: FlowIndex): Float64Array {
  const series = result.flows[flow];
  if (!series) throw new Error(`The run kept no flow ${String(flow)}`);
  return series;
}

/** Luxury uptake of all plantings of the bed on a day of the run's series [g/m2]. */
export function luxuryOfBed(result: Pick<WatchedSeason, 'flows'>, index: number): number {
  let luxury = 0;
  for (const flow of luxuryFlows) luxury += flowSeries(result, flow)[index] ?? 0;
  return luxury;
}

/** Position of a day in the run's series; the day must lie in the run. */
export function dayIndex(result: RunDays, day: DayNumber): number {
  const index = day - result.firstDay;
  if (index < 0 || index >= result.days)
    throw new RangeError(`Day ${day} is not a day of this run`);
  return index;
}

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

function sumFlows(
  result: WatchedSeason,
  flows: readonly FlowIndex[],
  fromDay: DayNumber,
  toDay: DayNumber,
): number {
  let sum = 0;
  for (const flow of flows) sum += sumDays(flowSeries(result, flow), result, fromDay, toDay);
  return sum;
}

/** Released into 0-30 cm between two days, washed in from the cover included [g/m2 of bed]. */
export const released = (result: WatchedSeason, fromDay: DayNumber, toDay: DayNumber): number =>
  sumFlows(result, releaseFlows, fromDay, toDay);

/** Taken out of 0-30 cm by what rots in and on the soil between two days [g/m2 of bed]. */
export const tiedUp = (result: WatchedSeason, fromDay: DayNumber, toDay: DayNumber): number =>
  sumFlows(result, tieUpFlows, fromDay, toDay);

/**
 * Nitrogen that rotting in the soil has taken out of 0-30 cm and not given back yet, by day [g/m2
 * of bed]. A release pays back what is owed and nothing in advance.
 */
export function nitrogenOwed(result: WatchedSeason): Float64Array {
  const owed = new Float64Array(result.days);
  let sum = 0;
  for (let index = 0; index < result.days; index += 1) {
    const day = result.firstDay + index;
    sum = Math.max(
      0,
      sum + sumFlows(result, dugTieUpFlows, day, day) - sumFlows(result, dugReleaseFlows, day, day),
    );
    owed[index] = sum;
  }
  return owed;
}

/** Mineral nitrogen of 0-30 cm and of what roots reach or will reach below, on the evening of a day. */
export const mineralInReach = (result: WatchedSeason, day: DayNumber): number =>
  at(result.pools.mineralTop, result, day) +
  at(result.rootReach, result, day) * at(result.pools.mineralLower, result, day);

/** Nitrate-N of 0-30 cm in the lab's mg/kg, by the bed's own bulk density. */
export const nitrateMgPerKg = (input: BedSeason, result: WatchedSeason, day: DayNumber): number =>
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
