import { listOf } from '../listOf';
import type { AmmoniaStores } from '../cover/ammonia';
import type { ResidueClass } from '../cover/residueClass';
import { soilOrganicNitrogen } from '../soil/organicMatter';
import {
  topDepth,
  type CanopyDay,
  type WaterAsked,
  type WaterDay,
  type WaterSizes,
  type WaterStore,
} from '../soil/water';
import { ownCoefficients, type Coefficients } from './coefficients';
import { pools } from './flows';
import { startingPlanting, type GrowingPlanting } from './growingPlanting';
import type { BedSeason } from './input';
import { runPlan, type RunPlan } from './runPlan';
import { poolIndex } from './ways';

/**
 * A layer as it is drawn: its share still lying, and how far it has sunk from its laid depth. The
 * day itself goes by the dry matter lying of a class, so a run that draws nothing keeps no layers.
 */
export interface LyingLayer {
  readonly id: string;
  /** class it decays with; null for compost and the like */
  item: ResidueClass | null;
  readonly dryKgPerM2: number;
  readonly laidDensity: number;
  readonly settledDensity: number;
  left: number;
  /** 0 as laid - 1 settled */
  settled: number;
}

/** Compost and the like, g N/m2. */
export interface SlowMaterial {
  /** on top still releasing, on top inert, dug in still releasing */
  topActive: number;
  topInert: number;
  dugActive: number;
  /** meals, which release sooner: on top and dug in */
  topQuick: number;
  dugQuick: number;
  /** dry matter on top that still lies [kg/m2], and the share of this morning's that does tonight */
  lyingDry: number;
  lyingFactor: number;
}

/** Numbers of the day in hand, shared by its parts. */
export interface DayNumbers extends WaterAsked {
  /** air temperature [deg C] and what it does to decay on top */
  mean: number;
  airFactor: number;
  /** what the soil's temperature does to decay */
  soilFactor: number;
  /** dry matter lying on top in the morning [kg/m2] */
  dry: number;
  /** places of the day's plantings, see the plan */
  plantsFrom: number;
  plantsTo: number;
  /** nitrate that the plants find [g/m2] */
  top: number;
  lower: number;
  /** under 1 where the shares of the plantings add up to more than the bed */
  shareScale: number;
}

/** What is told of the first morning of a bed that was made of others. */
export interface Brought {
  /**
   * what was raked off or dug in on one of the grounds alone before they were one, g N per m2 of the
   * new bed by index of `flowKinds`; the pools are those after it
   */
  readonly flows: Float64Array;
  /** share of each layer that lay on the evening before, by id; empty where no layers are kept */
  readonly lying: ReadonlyMap<string, number>;
}

/** Everything a bed carries from one day to the next. Changed in place by `stepDay`. */
export interface BedState {
  readonly plan: RunPlan;
  /** the lower layer of this season [mm], and what the layers hold */
  lowerDepth: number;
  sizes: WaterSizes;
  readonly coefficients: Coefficients;
  /** g N/m2 by index of `pools`, moved by flows alone; the last place is no pool */
  readonly nitrogen: Float64Array;
  readonly classes: ResidueClass[];
  readonly slow: SlowMaterial;
  readonly ammonia: AmmoniaStores;
  readonly water: WaterStore;
  /** empty when `keepsLayers` is false */
  readonly layers: LyingLayer[];
  readonly keepsLayers: boolean;
  /** what a bed that was made of others brought; null for one that was not */
  brought: Brought | null;
  readonly plantings: GrowingPlanting[];
  soilCelsius: number;
  /** written anew every day: the day makes no new objects, and hands no loose numbers about */
  readonly day: DayNumbers;
  readonly canopy: { -readonly [Key in keyof CanopyDay]: CanopyDay[Key] };
  readonly clocks: { soil: number; surface: number };
  readonly report: DayReport;
}

/** What of a day is worth remembering besides flows and pools. */
export interface DayReport extends WaterDay {
  /** how full of water the cover is in the evening, and over the day, 0-1 */
  coverFill: number;
  coverWetness: number;
  soilNormalisedDay: number;
}

/** Dry matter that still lies on top [kg/m2]. */
export function lyingDry(state: BedState): number {
  const { classes } = state;
  let dry = 0 + state.slow.lyingDry;
  for (let at = 0; at < classes.length; at++) dry += classes[at]!.lyingDry;
  return dry;
}

/**
 * A bed that nothing is known of before its first morning: field capacity, usual or tested nitrate
 * (model 6).
 *
 * @param keepsLayers false leaves out what is only for drawing layers
 */
export function freshState(
  input: BedSeason,
  lowerDepth: number,
  plan: RunPlan = runPlan(input, lowerDepth),
  keepsLayers = true,
): BedState {
  const c = ownCoefficients(input.coefficients);
  const nitrogen = new Float64Array(pools.length + 1);
  nitrogen[poolIndex.soilOrganic] = soilOrganicNitrogen(
    input.soil.organicMatterPercent,
    input.soil.bulkDensityKgPerL,
    c,
  );
  nitrogen[poolIndex.mineralTop] = input.soil.startingMineralTop ?? c.startingMineralTop;
  nitrogen[poolIndex.mineralLower] = (c.startingMineralPer30 * lowerDepth) / topDepth;
  const { sizes } = plan;
  const days = Math.min(11, plan.mean.length);
  let warmth = 0;
  for (let day = 0; day < days; day++) warmth += plan.mean[day]! / days;
  const plantings = listOf(input.plantings, (planting) =>
    startingPlanting(planting, plan, lowerDepth),
  );
  for (const plant of plantings) nitrogen[poolIndex.crop]! += plant.nitrogen;
  return {
    plan,
    lowerDepth,
    sizes,
    coefficients: c,
    nitrogen,
    classes: [],
    // -0 is kept as a broken number from the first; a 0 would be a whole one until the first compost,
    // and all code that has been made fast by then would be made anew
    slow: {
      topActive: -0,
      topInert: -0,
      dugActive: -0,
      topQuick: -0,
      dugQuick: -0,
      lyingDry: -0,
      lyingFactor: 1,
    },
    ammonia: { unripe: -0, ripe: -0, manure: -0 },
    water: { top: sizes.topFull, lower: sizes.lowerFull, cover: 0 },
    layers: [],
    keepsLayers,
    brought: null,
    plantings,
    soilCelsius: warmth,
    day: {
      rain: 0,
      logged: 0,
      evapotranspiration: 0,
      coverCapacity: 0,
      coverFraction: 0,
      mean: 0,
      airFactor: 0,
      soilFactor: 0,
      dry: 0,
      plantsFrom: 0,
      plantsTo: plantings.length,
      top: 0,
      lower: 0,
      shareScale: 1,
    },
    canopy: {
      transpiration: 0,
      evaporation: 0,
      isPlanted: false,
      canopy: 0,
      reach: 0,
      depletionShare: 0,
    },
    clocks: { soil: 0, surface: 0 },
    report: {
      watered: 0,
      throughfall: 0,
      coverMean: 0,
      drainageTop: 0,
      drainageLower: 0,
      fromSoil: 0,
      fromCover: 0,
      depletion: 0,
      readily: 0,
      dryness: 0,
      coverFill: 0,
      coverWetness: 0,
      soilNormalisedDay: 0,
    },
  };
}
