import { type Emergence, emergenceOf } from '../../crop/emergence';
import type { DayNumber } from '../../days';
import type { PlantingInput } from '../input';
import type { Limits } from '../limits';
import { isStanding, plantingResult } from '../plantingAccount';
import { at } from '../seasonAccount';
import type { Run } from './facts';

const isSlowToShow = (planting: PlantingInput): boolean =>
  ['tender storage', 'storage', 'leaf'].includes(planting.crop.excessClass);

/** When a sown planting is up, by the soil of the run; null where nobody tried how long it takes. */
export const emergenceIn = (
  run: Pick<Run, 'result'>,
  { sown, crop, startDay }: Pick<PlantingInput, 'sown' | 'crop' | 'startDay'>,
): Emergence | null =>
  sown && crop.emergence ? emergenceOf(crop.emergence, startDay, run.result) : null;

/**
 * How tall a planting is, in hands: 1 is a hand high. The run has no heights, so the clock of the
 * crop stands in for them (assumed): for sown ones it starts when they are up, where that can be
 * foretold; set-out plants have a hand's height almost at once, roots and leaf crops take longest.
 */
export function handsHigh(
  run: Run,
  planting: PlantingInput,
  day: DayNumber,
  limits: Limits,
): number {
  const { numbers } = limits;
  const hand = !planting.sown
    ? numbers['hand high planted']
    : numbers[isSlowToShow(planting) ? 'hand high sown slow' : 'hand high sown'];
  const { progress } = plantingResult(run.result, planting.id);
  const now = at(progress, run.result, day);
  const emergence = emergenceIn(run, planting);
  if (emergence === null || emergence.kind === 'unknown') return now / hand;
  if (emergence.kind === 'not yet' || day < emergence.day) return 0;
  const atLight = at(progress, run.result, emergence.day);
  return atLight < 1 ? (now - atLight) / (hand * (1 - atLight)) : 0;
}

/** Standing plantings with their height. */
export const standingHeights = (
  run: Run,
  day: DayNumber,
  limits: Limits,
): readonly { readonly planting: PlantingInput; readonly hands: number }[] =>
  run.input.plantings
    .filter((planting) => isStanding(planting, day))
    .map((planting) => ({ planting, hands: handsHigh(run, planting, day, limits) }));
