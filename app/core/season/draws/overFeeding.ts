import type { DayNumber } from '../../days';
import type { ExcessClass, PlantingInput } from '../input';
import type { BedSeason } from '../input';
import type { Limits } from '../limits';
import { isRich, type NitrogenJudgement } from '../nitrogenState';
import { lastDayOf, nitrateMgPerKg } from '../seasonAccount';
import type { WatchedSeason } from '../watchedSeason';

/** Classes that too much nitrogen keeps from what they are grown for. */
export const overFeedingClasses = [
  'flower',
  'fruit',
  'storage',
  'tender storage',
] as const satisfies readonly ExcessClass[];
export type OverFeedingClass = (typeof overFeedingClasses)[number];

const isOfClass = (excessClass: ExcessClass): excessClass is OverFeedingClass =>
  (overFeedingClasses as readonly ExcessClass[]).includes(excessClass);

/** The days on which too much does its harm, of the planting that a bed is judged by. */
export interface OverFeedingWindow {
  readonly plantingId: string;
  readonly excessClass: OverFeedingClass;
  /** first flower, or the day on which roots and bulbs begin to fill */
  readonly begins: DayNumber;
  readonly first: DayNumber;
  readonly last: DayNumber;
}

/** The odds that a bed is over-fed before it flowers, sets fruit or fills its roots. */
export interface OverFeeding extends OverFeedingWindow {
  /** share of the draws' weight */
  readonly odds: number;
}

/**
 * Flower and fruit: the fortnight before the first flower and the six weeks after it. What is
 * stored: from two fifths of its time on the bed to the end.
 */
export function overFeedingWindow(
  { id, crop, startDay, clearingDay, usualEndDay }: PlantingInput,
  limits: Limits,
): OverFeedingWindow | null {
  const { excessClass } = crop;
  if (!isOfClass(excessClass)) return null;
  const { numbers } = limits;
  if (excessClass === 'flower' || excessClass === 'fruit') {
    const begins = startDay + (crop.flowerDays ?? crop.firstHarvestDays);
    return {
      plantingId: id,
      excessClass,
      begins,
      first: begins - numbers['flower window before'],
      last: begins + numbers['flower window after'],
    };
  }
  const last = clearingDay ?? usualEndDay;
  const begins = startDay + Math.round(numbers['bulking from'] * (last - startDay));
  return { plantingId: id, excessClass, begins, first: begins, last };
}

/** The window of the planting with the largest need among those of the class a bed is judged by. */
export function windowOf(judged: NitrogenJudgement, limits: Limits): OverFeedingWindow | null {
  const excessClass = judged.overFed?.excessClass;
  if (excessClass === undefined || judged.isLegumeBed) return null;
  const own = judged.accounts.filter(({ planting }) => planting.crop.excessClass === excessClass);
  const [first, ...others] = own;
  if (!first) return null;
  const { planting } = others.reduce((most, one) => (one.need > most.need ? one : most), first);
  return overFeedingWindow(planting, limits);
}

/**
 * Whether a run is over-fed in its window: past the line of its class in what is on hand and to
 * come, and, but for flowers, past the line of nitrate on some day of the window. Unlike the state
 * it does not ask whether the crop is provided for to its end: the harm is done before.
 */
export function isOverFed(
  judged: NitrogenJudgement,
  window: OverFeedingWindow,
  input: BedSeason,
  run: WatchedSeason,
  limits: Limits,
): boolean {
  const line = judged.overFed?.lines.caution ?? Infinity;
  if (!(judged.ratio > line)) return false;
  if (window.excessClass === 'flower') return true;
  const nitrateLine = limits.lines['nitrate at flowering'].caution;
  if (window.excessClass === 'fruit') return isRich(judged, line, nitrateLine);
  const last = Math.min(window.last, lastDayOf(run));
  for (let day = Math.max(window.first, run.firstDay); day <= last; day += 1)
    if (nitrateMgPerKg(input, run, day) > nitrateLine) return true;
  return false;
}
