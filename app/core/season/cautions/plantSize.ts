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

/** Hands of height by the clock of the crop; `seenFrom`: the day it is up, where that can be foretold. */
export interface HandClock {
  readonly seenFrom: DayNumber | 'never' | null;
  readonly handsAt: (progress: number) => number;
}

/**
 * How tall a planting is, in hands: 1 is a hand high. The run has no heights, so the clock of the
 * crop stands in for them (assumed): for sown ones it starts when they are up, where that can be
 * foretold; set-out plants have a hand's height almost at once, roots and leaf crops take longest.
 */
export function handClock(
  run: Pick<Run, 'result'>,
  planting: PlantingInput,
  limits: Limits,
): HandClock {
  const { numbers } = limits;
  const hand = !planting.sown
    ? numbers['hand high planted']
    : numbers[isSlowToShow(planting) ? 'hand high sown slow' : 'hand high sown'];
  const emergence = emergenceIn(run, planting);
  if (emergence === null || emergence.kind === 'unknown')
    return { seenFrom: null, handsAt: (progress) => progress / hand };
  if (emergence.kind === 'not yet') return { seenFrom: 'never', handsAt: () => 0 };
  const { progress } = plantingResult(run.result, planting.id);
  const atLight = at(progress, run.result, emergence.day);
  return {
    seenFrom: emergence.day,
    handsAt: (now) => (atLight < 1 ? (now - atLight) / (hand * (1 - atLight)) : 0),
  };
}

/** Hands of height on a day of the run; 0 before it is up. */
export function handsHigh(
  run: Pick<Run, 'result'>,
  planting: PlantingInput,
  day: DayNumber,
  limits: Limits,
): number {
  const { seenFrom, handsAt } = handClock(run, planting, limits);
  if (typeof seenFrom === 'number' && day < seenFrom) return 0;
  return handsAt(at(plantingResult(run.result, planting.id).progress, run.result, day));
}

/** Standing plantings with their height. */
export const standingHeights = (
  run: Pick<Run, 'input' | 'result'>,
  day: DayNumber,
  limits: Limits,
): readonly { readonly planting: PlantingInput; readonly hands: number }[] =>
  run.input.plantings
    .filter((planting) => isStanding(planting, day))
    .map((planting) => ({ planting, hands: handsHigh(run, planting, day, limits) }));
