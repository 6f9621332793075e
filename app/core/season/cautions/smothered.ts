import type { DayNumber } from '../../days';
import type { PlantingInput } from '../input';
import type { Limits } from '../limits';
import type { Run } from './facts';
import { emergenceIn, handsHigh, standingHeights } from './plantSize';

/** Days ahead for which it is looked up when a seedling is a hand high (ours). */
const daysLooked = 90;

/** The smallest plants of a bed, where a cover would smother them. */
export interface Smothered {
  readonly planting: PlantingInput;
  /** height in hands, under 1 */
  readonly hands: number;
  /** the day on which it is a hand high; null where none was found */
  readonly ready: DayNumber | null;
  /** the day on which it comes up, where that is still ahead; else null */
  readonly up: DayNumber | null;
}

/**
 * Whether a planting comes up through a cover by itself: put in as a bulb, tuber, crown or set, or
 * grown from seed and now on the crown it made. Seed of the same crop does not.
 */
const liftsCover = ({ crop, sown, seasons }: PlantingInput, day: DayNumber): boolean =>
  crop.pushesThrough === true &&
  (!sown || (seasons?.some((one) => one.isRegrowth && day >= one.seasonDay) ?? false));

/** Standing plantings on which a cover may not lie close, smallest first. */
export const coveredPlants = (run: Pick<Run, 'input' | 'result'>, day: DayNumber, limits: Limits) =>
  standingHeights(run, day, limits)
    .filter(({ planting, hands }) => hands >= 1 || !liftsCover(planting, day))
    .sort((a, b) => a.hands - b.hands);

/**
 * Seed or seedlings less than a hand high that a cover laid on a day would smother; null where none
 * stand, or where they push through it.
 *
 * @param day within the run
 */
export function smotheredOn(
  run: Pick<Run, 'input' | 'result'>,
  day: DayNumber,
  limits: Limits,
): Smothered | null {
  const smallest = coveredPlants(run, day, limits)[0];
  if (!smallest || smallest.hands >= 1) return null;
  let ready: number | null = null;
  const last = Math.min(day + daysLooked, run.result.firstDay + run.result.days - 1);
  for (let one = day; one <= last && ready === null; one += 1)
    if (handsHigh(run, smallest.planting, one, limits) >= 1) ready = one;
  const emergence = emergenceIn(run, smallest.planting);
  const isUnder = emergence?.kind === 'up' && emergence.day > day;
  return { ...smallest, ready, up: isUnder ? emergence.day : null };
}
