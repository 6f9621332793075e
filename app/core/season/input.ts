import type { SowingTrial } from '../crop/emergence';
import type { DayNumber } from '../days';
import type { GramsPerM2, KilogramsPerM2, Millimetres } from '../units';
import type { Coefficients } from './coefficients';
import type { Look } from './draws/signs';
import type { TestedNitrate } from './draws/testedNitrate';
import type { SeasonWatch } from './seasonWatch';

/** How a day's weather is known. */
export const dayKinds = ['measured', 'filled', 'imagined'] as const;
export type DayKind = (typeof dayKinds)[number];

/** Daily weather from `firstDay` on, one entry per day of the run. */
export interface SeasonWeather {
  readonly minimumCelsius: Float64Array;
  readonly maximumCelsius: Float64Array;
  readonly rainMillimetres: Float64Array;
  /** index into `dayKinds` */
  readonly kind: Uint8Array;
  /**
   * reference evapotranspiration [mm] of days whose moisture or light was measured; NaN on all
   * others, which go by their temperatures alone
   */
  readonly referenceEvapotranspiration?: Float64Array | undefined;
}

/** Mean values of each month, January first. */
export interface MonthlyNormals {
  readonly minimumCelsius: readonly number[];
  readonly maximumCelsius: readonly number[];
  readonly rainMillimetres: readonly number[];
  /** days of at least 1 mm */
  readonly wetDays: readonly number[];
}

export interface SoilProperties {
  /** m3 water per m3 soil */
  readonly fieldCapacity: number;
  readonly wiltingPoint: number;
  readonly bulkDensityKgPerL: number;
  readonly organicMatterPercent: number;
  /** nitrate-N measured before the first day [g/m2 in 0-30 cm], or null for the usual start */
  readonly startingMineralTop: GramsPerM2 | null;
}

/**
 * How a material rots. `wood`: sawdust, and chips or bark once they are worked in, slower than their
 * C:N says; `inert`: chips and bark, which on top do not rot at all within the years of a garden's log.
 */
export type MaterialClass = 'green' | 'mature' | 'wood' | 'slow' | 'inert';
/** What slow material is: meals free theirs sooner, and manure left on top loses some to the air. */
export const slowKinds = ['compost', 'manure', 'meal'] as const;
export type SlowKind = (typeof slowKinds)[number];
export type Placement = 'laid' | 'hoed' | 'dug';
export type Condition = 'just cut' | 'limp' | 'crisp';

/** What one bed got of a single material at a time, per m2 of bed. */
export interface LayerInput {
  readonly id: string;
  readonly day: DayNumber;
  readonly materialId: string;
  readonly materialClass: MaterialClass;
  /** counts as greens in the room left, in the state and in cautions */
  readonly isGreens: boolean;
  readonly placement: Placement;
  readonly condition: Condition;
  readonly freshKgPerM2: KilogramsPerM2;
  readonly dryKgPerM2: KilogramsPerM2;
  readonly nitrogen: GramsPerM2;
  readonly carbon: GramsPerM2;
  /** depth as laid, fresh */
  readonly laidDepth: Millimetres;
  /** kg dry matter per m3 once settled */
  readonly settledDensityKgPerM3: number;
  /** share of nitrogen that is mineral at laying (compost, manure, meals); 0 for plant material */
  readonly mineralShare: number;
  /** share of nitrogen in the slow pool; 0 for plant material */
  readonly slowShare: number;
  /** of slow material; absent: as compost */
  readonly slowKind?: SlowKind | undefined;
}

/** What a legume needs to know besides the crop. Shares are of the day's need. */
export interface LegumeInput {
  readonly usualShareFixed: number;
  readonly highShareFixed: number;
  /** days from sowing to working nodules */
  readonly nodulationDays: number;
  /** nitrate-N in 0-30 cm at which fixation stops [g/m2] */
  readonly leafyLimit: GramsPerM2;
  readonly poddingLimit: GramsPerM2;
}

export type ExcessClass =
  | 'legume'
  | 'tender storage' // sweet potato, carrot, radish
  | 'storage'
  | 'fruit'
  | 'flower'
  | 'leaf'
  | 'head'
  | 'perennial'
  | 'cover';

export interface CropInput {
  readonly id: string;
  readonly excessClass: ExcessClass;
  /** whole-plant nitrogen at the wanted yield to the usual end [g per m2 of planted ground] */
  readonly need: GramsPerM2;
  /** nitrogen in the wanted harvest [g per m2 of planted ground] */
  readonly harvestNitrogen: GramsPerM2;
  /** nitrogen in a kg of fresh harvest [g/kg] */
  readonly harvestGramsPerKilogram: number;
  /** share of whole-plant nitrogen below ground */
  readonly rootShare: number;
  /** logistic uptake curve on degree-days / degree-days to the usual end */
  readonly curveMiddle: number;
  readonly curveSteepness: number;
  readonly baseCelsius: number;
  /** usual days from start to end, to first harvest and to first flower (null: does not matter) */
  readonly usualDays: number;
  readonly firstHarvestDays: number;
  readonly flowerDays: number | null;
  readonly fullRootDepth: Millimetres;
  readonly cropCoefficientStart: number;
  readonly cropCoefficientMiddle: number;
  readonly cropCoefficientEnd: number;
  /** shares of the season: initial, development, middle, late */
  readonly stageShares: readonly [number, number, number, number];
  /** share of available water that can be used before the crop slows (FAO-56 p, table) */
  readonly depletionShare: number;
  readonly residueCarbonToNitrogen: number;
  readonly residueIsGreen: boolean;
  readonly legume: LegumeInput | null;
  /** nitrate-N in the top 30 cm that is enough [mg/kg], published for the crop or the general 20 */
  readonly enoughNitrateLow: number;
  readonly enoughNitrateHigh: number;
  /** soil should reach this before a cover goes on (beans, corn, squash, sweet potato), else null */
  readonly warmSoilCelsius: number | null;
  /** picked from the ground or so near it that rain spatters it */
  readonly eatenFromSoil: boolean;
  /** beans, corn, peas: seed fly */
  readonly seedFlyRisk: boolean;
  /** planted as a bulb, tuber, crown or set: its shoots lift a cover; absent: they do not */
  readonly pushesThrough?: boolean | undefined;
  /** days from seed to light by warmth of the soil; absent where nobody tried or it is not sown */
  readonly emergence?: readonly SowingTrial[] | undefined;
  readonly frostTender: boolean;
}

export type TopsFate = 'left' | 'dug in' | 'taken away' | 'pulled with roots';

/** One season's growth of a planting, as its uptake curve counts it. */
export interface GrowthClock {
  /** day from which degree-days count: sown or planted, or grows again */
  readonly startDay: DayNumber;
  readonly firstHarvestDay: DayNumber;
  /** day the curve reaches its end by the calendar of the crop row */
  readonly usualEndDay: DayNumber;
  /** degree-days from start to the usual end in a normal year */
  readonly normalDegreeDays: number;
}

/** A season of a plant that stays for years. */
export interface GrowthSeason extends GrowthClock {
  /** the season's first day: on its morning dies down what grew before, and the crown stays */
  readonly seasonDay: DayNumber;
  /** its crown is there already, so that it wants what the table says and no roots besides */
  readonly isRegrowth: boolean;
}

export interface PlantingInput extends GrowthClock {
  readonly id: string;
  readonly crop: CropInput;
  /** share of the bed 0-1 */
  readonly share: number;
  /** of a plant that stays for years the first day of this season, or the planting where that is later */
  readonly startDay: DayNumber;
  /** day it came into the bed, where that is not `startDay` */
  readonly standsSince?: DayNumber | undefined;
  /** only of plants that stay for years: each season of the run it stands in, rising */
  readonly seasons?: readonly GrowthSeason[] | undefined;
  readonly sown: boolean;
  /** day on which the planting leaves the bed; null while it is overdue and nobody cleared it */
  readonly clearingDay: DayNumber | null;
  readonly cleared: boolean;
  readonly topsFate: TopsFate;
  readonly nodulesSeen: boolean | null;
}

export type BedEvent =
  | { readonly kind: 'water'; readonly day: DayNumber; readonly depth: Millimetres }
  | { readonly kind: 'dig cover in'; readonly day: DayNumber; readonly share: number }
  | { readonly kind: 'rake off'; readonly day: DayNumber; readonly share: number }
  | {
      readonly kind: 'harvest';
      readonly day: DayNumber;
      readonly plantingId: string;
      readonly kilogramsPerM2: KilogramsPerM2;
    };

/** Ground that a bed was made of when beds were split or joined, as it had come to be by then. */
export interface GroundInput {
  /** the run of the bed it belonged to; its last day is the eve of the new bed's first */
  readonly input: BedSeason;
  /** part of the new bed's area that it makes up, 0-1; of all grounds together 1 */
  readonly share: number;
  /** plants that go on in the new bed: their nitrogen per m2 there for each gram per m2 here */
  readonly plants: readonly {
    readonly from: string;
    readonly to: string;
    readonly factor: number;
  }[];
  /** done to the cover of this ground alone on the first morning, before the grounds were one */
  readonly morning?: readonly BedEvent[] | undefined;
  /** what was measured and seen on it by then; weighs the draws of the new bed */
  readonly found?: FoundOnGround | undefined;
  /** scratch of the draws, written anew by each: what of the ground's run `found` is held against */
  readonly watch?: SeasonWatch | undefined;
}

/** What was found on a ground before it went into another bed. */
export interface FoundOnGround {
  readonly tests: readonly TestedNitrate[];
  readonly looks: readonly Look[];
}

/** Everything the engine needs to run one bed; nothing else reaches it. */
export interface BedSeason {
  readonly bedId: string;
  readonly areaM2: number;
  readonly latitudeDegrees: number;
  readonly firstDay: DayNumber;
  /** last day of the run, included: the end of the season that holds `today` */
  readonly lastDay: DayNumber;
  readonly today: DayNumber;
  /** first days of seasons after `firstDay` within the run */
  readonly seasonStarts: readonly DayNumber[];
  readonly weather: SeasonWeather;
  readonly normals: MonthlyNormals;
  readonly soil: SoilProperties;
  readonly keptMoist: boolean;
  /** rain runs off by `runoffMillimetres`; absent: none does */
  readonly runoffCurveNumber?: number | undefined;
  readonly plantings: readonly PlantingInput[];
  readonly layers: readonly LayerInput[];
  readonly events: readonly BedEvent[];
  readonly coefficients: Coefficients;
  /** what it starts from on its first morning; absent: field capacity and the usual nitrate */
  readonly ground?: readonly GroundInput[] | undefined;
}
