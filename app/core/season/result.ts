import type { DayNumber } from '../days';
import type { Brought } from './bedState';
import type { Pool } from './flows';

/** One season of a plant that stays for years, g N per m2 of bed. */
export interface PlantingSeason {
  readonly firstDay: DayNumber;
  readonly lastDay: DayNumber;
  readonly demand: number;
  readonly uptake: number;
  readonly luxury: number;
  readonly fixed: number;
  readonly demandMet: number;
  readonly harvested: number;
  /** harvested + tops cleared away when they died down */
  readonly removed: number;
  /** tops left on the bed when they died down */
  readonly left: number;
  /** in the crown for the next season */
  readonly kept: number;
}

/**
 * One planting over the run, g N per m2 of **bed** unless said otherwise. Of a plant that stays for
 * years the totals are those of the run's last season; the ones before are `earlierSeasons`.
 */
export interface PlantingResult {
  /** of `harvested` and `removed` what was so before the run, on the ground the bed was made of */
  readonly brought?: { readonly harvested: number; readonly removed: number };
  /** taken up and fixed before the run, on the ground the bed was made of; absent where nothing was */
  readonly takenBefore?: number;
  readonly id: string;
  /** day it came into the bed */
  readonly startDay: DayNumber;
  /** day it left or leaves the bed; null while standing to the end of the run */
  readonly clearingDay: DayNumber | null;
  /** total need to the planned clearing, at its share of the bed */
  readonly demand: number;
  /** taken from the soil, luxury included */
  readonly uptake: number;
  readonly luxury: number;
  readonly fixed: number;
  /** (uptake without luxury + fixed) / demand, 0-1 */
  readonly demandMet: number;
  readonly harvested: number;
  /** harvested + cleared away */
  readonly removed: number;
  /** tops and roots left in or on the bed */
  readonly left: number;
  readonly dailyNeed: Float64Array;
  readonly dailyUptake: Float64Array;
  readonly dailyFixed: Float64Array;
  /** progress of the uptake curve's clock, 0-1 */
  readonly progress: Float64Array;
  readonly rootDepth: Float64Array;
  /** absent where it grew in one season only */
  readonly earlierSeasons?: readonly PlantingSeason[];
}

export interface LayerResult {
  readonly id: string;
  /** share of the layer still lying, by day of the run; 0 before it was laid and after it was dug in or raked off */
  readonly left: Float64Array;
  /** depth still lying [mm], by day */
  readonly depth: Float64Array;
}

/** A bed's run, one entry per day from `firstDay`. All nitrogen in g per m2 of bed. */
export interface SeasonResult {
  readonly bedId: string;
  readonly firstDay: DayNumber;
  readonly days: number;
  readonly today: DayNumber;
  /** pools before the first day */
  readonly start: Readonly<Record<Pool, number>>;
  /** pools at the end of each day */
  readonly pools: Readonly<Record<Pool, Float64Array>>;
  /** by index of `flowKinds` */
  readonly flows: readonly Float64Array[];
  /** model "Basis": largest imbalance on any day, carbon-held pools recomputed from carbon */
  readonly residual: number;
  readonly kind: Uint8Array;
  readonly rain: Float64Array;
  readonly watered: Float64Array;
  readonly airMean: Float64Array;
  readonly airMinimum: Float64Array;
  readonly airMaximum: Float64Array;
  readonly soilTemperature: Float64Array;
  /** water draining out of 0-30 cm and out of the rooted depth [mm] */
  readonly drainageTop: Float64Array;
  readonly drainageLower: Float64Array;
  /** depletion of the root zone / readily available water; over 1 the crop slows */
  readonly dryness: Float64Array;
  /** 0-1 share of plant-available water left in 0-30 cm */
  readonly availableWaterTop: Float64Array;
  /** the same of the lower layer, all of it */
  readonly availableWaterLower: Float64Array;
  /** cover: how full of water 0-1, share of ground hidden 0-1, depth [mm], dry matter still lying [kg/m2] */
  readonly coverFill: Float64Array;
  readonly coverFraction: Float64Array;
  readonly coverDepth: Float64Array;
  readonly coverDryKg: Float64Array;
  /** share of mineralLower that roots reach or will reach by the plantings of that day 0-1 */
  readonly rootReach: Float64Array;
  /** normalised days of the soil (15 C, field capacity) in each day */
  readonly soilNormalisedDay: Float64Array;
  /** depth of the lower layer [mm] */
  readonly lowerDepth: Float64Array;
  readonly plantings: readonly PlantingResult[];
  readonly layers: readonly LayerResult[];
  /** of a bed made of others: what was there before its first morning, and was done on that alone */
  readonly brought?: Brought;
}
