import type { DayNumber } from '../../days';
import type { PlantingInput } from '../input';
import type { Limits } from '../limits';
import { isStanding, plantingResult } from '../plantingAccount';
import { at } from '../seasonAccount';
import type { Run } from './facts';

const isSlowToShow = (planting: PlantingInput): boolean =>
  ['tender storage', 'storage', 'leaf'].includes(planting.crop.excessClass);

/**
 * How tall a planting is, in hands: 1 is a hand high. The run has no heights, so the clock of the
 * crop stands in for them (assumed); set-out plants have a hand's height almost at once, roots and
 * leaf crops take longest.
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
  return at(plantingResult(run.result, planting.id).progress, run.result, day) / hand;
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
