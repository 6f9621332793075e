import type { DayNumber } from '../../core/days';
import type { PlantStage } from '../../core/season/plantStage';
import type { SeasonResult } from '../../core/season/result';
import type { Weight } from '../../core/season/verdict';
import type { CoverLayerShown } from '../cover/data';

/** How a plant is built: what it is drawn as. */
export const habits = [
  'climber',
  'bush',
  'herb',
  'staked',
  'rosette',
  'head',
  'stalk',
  'root',
  'bulb',
  'tuber',
  'grass',
  'cereal',
  'clover',
  'flower',
  'vine',
  'fern',
  'berry',
] as const;
export type Habit = (typeof habits)[number];

/** What grows on the bed, as the model has it on the evening drawn. */
export interface PlantShown {
  readonly id: string;
  /** "Climbing beans" */
  readonly name: string;
  readonly habit: Habit;
  readonly stage: PlantStage;
  /** share of the bed 0-1 */
  readonly share: number;
  /** above the ground [mm] */
  readonly height: number;
  /** that of the crop full grown [mm]: how far apart they are drawn */
  readonly grown: number;
  /** [mm] */
  readonly rootDepth: number;
}

export const markPlaces = ['plants', 'cover', 'soil'] as const;
export type MarkPlace = (typeof markPlaces)[number];

/** Something to mind, where it is. */
export interface SectionMark {
  readonly place: MarkPlace;
  readonly weight: Weight;
  readonly says: string;
}

/** A bed on one evening of its run: plain data, no store. */
export interface SectionData {
  readonly result: SeasonResult;
  readonly day: DayNumber;
  /** layers laid on the bed, in any order; those dug or hoed in are not cover */
  readonly layers: readonly CoverLayerShown[];
  readonly plants: readonly PlantShown[];
  readonly marks: readonly SectionMark[];
}
