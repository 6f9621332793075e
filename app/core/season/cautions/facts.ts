import type { DayNumber } from '../../days';
import type { Look } from '../draws/signs';
import type { FactId } from '../limits';
import type { BedSeason } from '../input';
import type { SeasonResult } from '../result';
import type { BedVerdict } from '../verdict';

/** A bed run with its verdict on `input.today`. */
export interface Run {
  readonly input: BedSeason;
  readonly result: SeasonResult;
  readonly verdict: BedVerdict;
}

/** What the gardener said of sprays and feeds on a lawn or on something brought in. */
export interface TreatmentFacts {
  readonly answer: 'not asked' | 'nothing' | 'treated' | 'unknown';
  readonly product: string;
  readonly date: DayNumber | null;
  readonly label: 'forbids' | 'interval' | 'silent' | null;
  readonly intervalDays: number | null;
  readonly beanTestPassed: DayNumber | null;
}

export interface SourceFacts {
  readonly kind: 'lawn' | 'store' | 'heap' | 'elsewhere';
  /** as the gardener calls it */
  readonly name: string;
  readonly mayCarryWeedkiller: boolean;
  readonly treatment: TreatmentFacts;
  /** of a lawn: what was put on it before that; each holds by itself */
  readonly earlierTreatments?: readonly TreatmentFacts[];
  /** days on which this lawn was mown; empty for anything else */
  readonly mowingDays: readonly DayNumber[];
  readonly creepingGrass: boolean;
  readonly seedHeadsSeen: DayNumber | null;
}

/** Safety rows that hang on what a material is. */
export type Hazard = Extract<
  FactId,
  | 'fouled grass'
  | 'dog poison'
  | 'poisonous plants'
  | 'painted wood'
  | 'roadside'
  | 'old house'
  | 'mouldy'
  | 'walnut'
  | 'diseased tops'
  | 'bought in'
>;

/** What a layer's material is beyond its numbers. */
export interface LayerFacts {
  readonly source: SourceFacts;
  readonly materialName: string;
  /** day it was cut; the day it was laid where that is not known */
  readonly cutOn: DayNumber;
  readonly seedHeaded: boolean;
  readonly isRawManure: boolean;
  /** fresh droppings so rich in ammonia that they scorch what stands there */
  readonly burnsPlants: boolean;
  /** hay: what was cut with it may sprout */
  readonly carriesSeed: boolean;
  readonly isCompost: boolean;
  readonly hazards: readonly Hazard[];
}

export interface PlantingFacts {
  readonly cropName: string;
  readonly weedkillerSensitive: boolean;
  /** air temperature that is likely to kill it, unprotected [deg C]; absent where none is known */
  readonly killedAtCelsius?: number;
}

/** Greens that nobody has found a place for yet. */
export interface OnHand {
  /** "clippings from the back lawn" */
  readonly name: string;
  readonly litres: number;
  readonly nitrogenGrams: number;
  /** what they are carried in, if they were counted so: the gardener's own words for it */
  readonly container: {
    readonly one: string;
    readonly many: string;
    readonly litres: number;
  } | null;
}

/** Plain data about the garden that the engine does not need and the cautions do. */
export interface CautionFacts {
  /** 1-12: the run of a bed that was split off or newly known begins within a season */
  readonly seasonStartMonth: number;
  readonly roof: 'open' | 'glass or film';
  /** usual last spring frost of the season that holds today */
  readonly lastSpringFrost: DayNumber | null;
  readonly ownWell: boolean;
  readonly dogs: boolean;
  /** what was seen, smelt and felt on the bed, in any order */
  readonly looks?: readonly Look[];
  /** by layer id; a layer without facts is taken as the gardener's own clean material */
  readonly layers: Readonly<Record<string, LayerFacts>>;
  /** what could mend a hungry bed today, best first; empty where there is nothing */
  readonly onHand?: readonly OnHand[];
  /** by planting id */
  readonly plantings: Readonly<Record<string, PlantingFacts>>;
}
