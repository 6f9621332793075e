import type { DayNumber } from '../days';
import type { Millimetres } from '../units';
import { type HandClock, handClock } from './cautions/plantSize';
import type { BedSeason, PlantingInput } from './input';
import type { Limits } from './limits';
import { growsFrom, isStanding, plantingResult } from './plantingAccount';
import type { SeasonResult } from './result';
import { at } from './seasonAccount';

/** How far a planting is, as one sees it. `resting`: of a plant that stays for years, its crown. */
export const plantStages = [
  'seed',
  'seedling',
  'leafy',
  'flowering',
  'bearing',
  'finished',
  'resting',
] as const;
export type PlantStage = (typeof plantStages)[number];

/** A planting on the evening of a day of its run. */
export interface PlantOnDay {
  readonly planting: PlantingInput;
  readonly stage: PlantStage;
  /** above the ground; 0 for seed and crowns */
  readonly height: Millimetres;
  readonly rootDepth: Millimetres;
  /** of its growth clock 0-1 */
  readonly progress: number;
}

/** The breadth of a hand. */
export const handMillimetres = 100;
/** Share of the season at which roots are full grown (`rootDepthAt`); taken for tops as well. */
const fullGrownAt = 0.6;

/** The day of first flower in the season that a planting grows in; null for crops where none matters. */
export const flowerDayOf = (planting: PlantingInput): DayNumber | null =>
  planting.crop.flowerDays === null ? null : growsFrom(planting) + planting.crop.flowerDays;

/** The day of first picking; null for what is grown to be laid or dug in. */
export const pickingDayOf = (planting: PlantingInput): DayNumber | null =>
  planting.crop.excessClass === 'cover'
    ? null
    : (planting.seasons?.at(-1) ?? planting).firstHarvestDay;

/** Past its usual end and nobody cleared it: it wants nothing more. Never of what stays for years. */
const isFinished = (planting: PlantingInput, day: DayNumber): boolean =>
  !planting.seasons &&
  !planting.cleared &&
  planting.clearingDay === null &&
  planting.usualEndDay < day;

function stageOf(
  planting: PlantingInput,
  day: DayNumber,
  progress: number,
  { seenFrom, handsAt }: HandClock,
): PlantStage {
  if (isFinished(planting, day)) return 'finished';
  if (planting.seasons && (day < growsFrom(planting) || progress === 0)) return 'resting';
  if (seenFrom === null ? planting.sown && progress === 0 : seenFrom === 'never' || day < seenFrom)
    return 'seed';
  if (handsAt(progress) < 1) return 'seedling';
  const picking = pickingDayOf(planting);
  if (picking !== null && day >= picking) return 'bearing';
  const flower = flowerDayOf(planting);
  return flower !== null && day >= flower ? 'flowering' : 'leafy';
}

/**
 * Height by the crop's clock: a hand's breadth when the cautions count it a hand high, from there in
 * a straight line to its grown height where roots are full grown too.
 *
 * @source ours (assumed): the run has no heights. The grown height is a row of the tables
 */
function heightOf(progress: number, { handsAt }: HandClock, grown: Millimetres): Millimetres {
  const hand = Math.min(handMillimetres, grown);
  const hands = handsAt(progress);
  if (hands <= 1) return Math.max(0, hands) * hand;
  const atFull = handsAt(fullGrownAt);
  const way = atFull > 1 ? (hands - 1) / (atFull - 1) : 1;
  return hand + (grown - hand) * Math.min(1, way);
}

/**
 * What stands on a bed on the evening of a day of its run, and how far it is.
 *
 * @param grownHeight of a crop [mm], by its id
 */
export const plantsOnDay = (
  run: { readonly input: BedSeason; readonly result: SeasonResult },
  day: DayNumber,
  limits: Limits,
  grownHeight: (cropId: string) => Millimetres,
): readonly PlantOnDay[] =>
  run.input.plantings
    .filter((planting) => isStanding(planting, day))
    .map((planting) => {
      const own = plantingResult(run.result, planting.id);
      const progress = at(own.progress, run.result, day);
      const clock = handClock(run, planting, limits);
      const stage = stageOf(planting, day, progress, clock);
      const isBelow = stage === 'seed' || stage === 'resting';
      return {
        planting,
        stage,
        height: isBelow ? 0 : heightOf(progress, clock, grownHeight(planting.crop.id)),
        rootDepth: at(own.rootDepth, run.result, day),
        progress,
      };
    });
