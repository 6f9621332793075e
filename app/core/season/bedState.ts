import type { AmmoniaStores } from '../cover/ammonia';
import {
  humusNitrogen,
  microbeNitrogen,
  residueNitrogen,
  type ResidueClass,
} from '../cover/residueClass';
import { needCurve, type Arrears, type NeedCurve } from '../crop/need';
import { reachShare } from '../crop/stages';
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
import { ownClock, ownCrop } from './ownCrop';
import { flowIndex, flowKinds, pools, type FlowIndex, type Place, type Pool } from './flows';
import type { DayNumber } from '../days';
import type {
  BedSeason,
  CropInput,
  GrowthClock,
  GrowthSeason,
  LegumeInput,
  PlantingInput,
} from './input';
import type { PlantingSeason } from './result';
import { runPlan, seasonName, type RunPlan } from './runPlan';

export { lowerDepthFor } from './runPlan';

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

export interface GrowingPlanting {
  readonly input: PlantingInput;
  readonly crop: CropInput;
  readonly share: number;
  /** day from which it stands, and on which it is cleared; infinite where nobody says so */
  readonly startsOn: DayNumber;
  readonly clearsOn: number;
  /** what it fixes by; null for what is no legume, or one without nodules */
  readonly nodules: LegumeInput | null;
  readonly staysForYears: boolean;
  readonly curve: NeedCurve;
  /** the season it grows by now; of most plants the only one */
  clock: GrowthClock;
  /** place of `clock` among the planting's seasons, 0 where it has none */
  season: number;
  /** need of that season [g per m2 of planted ground]: without roots where the crown is there already */
  need: number;
  /** share of the lower layer that its roots will reach 0-1 */
  fullReach: number;
  /** logged picks replace the spread ones up to today */
  logsHarvest: boolean;
  standing: boolean;
  done: boolean;
  degreeDays: number;
  progress: number;
  /** share of its need wanted by that progress 0-1 */
  wanted: number;
  rootDepth: number;
  /** g N per m2 of bed in the plants */
  nitrogen: number;
  /** of it in the crown that outlasts the season; only of plants that stay for years */
  crown: number;
  needSoFar: number;
  metSoFar: number;
  harvested: number;
  removed: number;
  left: number;
  fixed: number;
  uptake: number;
  luxury: number;
  clearedOn: number | null;
  /** what the seasons before this one came to; empty where a run keeps no layers */
  readonly earlier: PlantingSeason[];
  readonly arrears: Arrears;
  needToday: number;
  uptakeToday: number;
  fixedToday: number;
}

/** Share of what a planting wanted so far that it got, luxury apart, 0-1. */
export const demandMetOf = ({ needSoFar, metSoFar }: GrowingPlanting): number =>
  needSoFar > 0 ? Math.min(1, metSoFar / needSoFar) : 0;

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

/** Nitrogen of compost and the like that is neither free nor part of the soil, g N/m2. */
const slowNitrogen = (slow: SlowMaterial): number =>
  slow.topActive + slow.topInert + slow.dugActive + slow.topQuick + slow.dugQuick;

/** Dry matter that still lies on top [kg/m2]. */
export function lyingDry(state: BedState): number {
  const { classes } = state;
  let dry = state.slow.lyingDry;
  for (let at = 0; at < classes.length; at++) dry += classes[at]!.lyingDry;
  return dry;
}

export const poolIndex: Readonly<Record<Pool, number>> = Object.fromEntries(
  pools.map((pool, index) => [pool, index]),
) as Record<Pool, number>;

/** Place beside the pools for what comes from and goes to outside; what is in it means nothing. */
const outside = pools.length;
export const isOutside = (pool: number): boolean => pool === outside;

/** A flow and the places of the pools it leaves and enters. */
export interface Way {
  readonly flow: FlowIndex;
  readonly from: number;
  readonly to: number;
}

const poolByName: Readonly<Record<string, number>> = poolIndex;
/** by index of `flowKinds`; a pool that is `isOutside` is none */
export const ways: readonly Way[] = flowKinds.map(({ from, to }, flow) => ({
  flow,
  from: poolByName[from] ?? outside,
  to: poolByName[to] ?? outside,
}));

/** Throws for a flow that is not in the list. */
export const wayOf = (from: Place, to: Place, why: string): Way => ways[flowIndex(from, to, why)]!;

/**
 * A pool that was emptied to the last gram can stand a few rounding errors below nothing, and a
 * share of it then flows backwards by as much: with kilograms of nitrogen on a square metre by some
 * 1e-11. Anything over the line that the balance itself is held to is a mistake of ours.
 */
const roundingGrams = 1e-9;

/**
 * Moves nitrogen: the only way a pool changes. Throws on a negative or unreal amount, because a
 * flow that runs backwards is a mistake of ours, not of the gardener.
 */
export function move(
  { nitrogen }: BedState,
  flows: Float64Array,
  { flow, from, to }: Way,
  gramsPerM2: number,
): void {
  if (!(gramsPerM2 >= -roundingGrams)) runsBackwards(flow, gramsPerM2);
  flows[flow]! += gramsPerM2;
  nitrogen[from]! -= gramsPerM2;
  nitrogen[to]! += gramsPerM2;
}

// by itself, so that `move` stays small enough to be compiled into those who move
function runsBackwards(flow: number, gramsPerM2: number): never {
  throw new Error(`Flow ${flow} of ${gramsPerM2} g/m2`);
}

/** What a planting wants in a season [g per m2 of planted ground]. */
export const needOfSeason = (crop: CropInput, season: GrowthSeason | undefined): number =>
  season?.isRegrowth === true ? crop.need * (1 - crop.rootShare) : crop.need;

/** Stood before the season that the run begins in: with roots and a crown. */
const isEstablished = (planting: PlantingInput): boolean =>
  planting.seasons?.[0]?.isRegrowth === true;

/** A planting on the morning of the run's first day; one of earlier years holds its crown's nitrogen. */
function startingPlanting(
  planting: PlantingInput,
  plan: RunPlan,
  lowerDepth: number,
): GrowingPlanting {
  const { share, seasons, clearingDay, nodulesSeen } = planting;
  const crop = ownCrop(planting.crop);
  const first = seasons?.[0];
  const crown = isEstablished(planting) ? crop.rootShare * crop.need * share : 0;
  return {
    input: planting,
    crop,
    share,
    startsOn: planting.standsSince ?? planting.startDay,
    clearsOn: clearingDay ?? Infinity,
    nodules: nodulesSeen === false ? null : crop.legume,
    staysForYears: seasons !== undefined,
    curve: needCurve(crop),
    clock: ownClock(first ?? planting),
    season: 0,
    need: needOfSeason(crop, first),
    fullReach: reachShare(crop.fullRootDepth, topDepth, lowerDepth),
    logsHarvest: seasons
      ? plan.pickedSeasons.has(seasonName(planting.id, 0))
      : plan.pickedPlantings.has(planting.id),
    standing: false,
    done: false,
    degreeDays: 0,
    progress: 0,
    wanted: 0,
    rootDepth: isEstablished(planting) ? crop.fullRootDepth : 0,
    nitrogen: crown,
    crown,
    needSoFar: 0,
    metSoFar: 0,
    harvested: 0,
    removed: 0,
    left: 0,
    fixed: 0,
    uptake: 0,
    luxury: 0,
    clearedOn: null,
    earlier: [],
    arrears: [],
    needToday: 0,
    uptakeToday: 0,
    fixedToday: 0,
  };
}

/**
 * The bed on the morning of its first day: field capacity, usual or tested nitrate (model 6).
 *
 * @param keepsLayers false leaves out what is only for drawing layers
 */
export function startingState(
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
  const plantings = input.plantings.map((planting) => startingPlanting(planting, plan, lowerDepth));
  for (const plant of plantings) nitrogen[poolIndex.crop]! += plant.nitrogen;
  return {
    plan,
    lowerDepth,
    sizes,
    coefficients: c,
    nitrogen,
    classes: [],
    slow: {
      topActive: 0,
      topInert: 0,
      dugActive: 0,
      topQuick: 0,
      dugQuick: 0,
      lyingDry: 0,
      lyingFactor: 1,
    },
    ammonia: { unripe: 0, ripe: 0, manure: 0 },
    water: { top: sizes.topFull, lower: sizes.lowerFull, cover: 0 },
    layers: [],
    keepsLayers,
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

/**
 * Sum of all pools with those held as carbon recomputed **from the carbon**, g N/m2. Comparing it
 * with start + in - out shows a leak in either bookkeeping.
 */
export function nitrogenOnHand(state: BedState): number {
  let sum = 0;
  for (const item of state.classes)
    sum += residueNitrogen(item) + microbeNitrogen(item) + humusNitrogen(item);
  sum += slowNitrogen(state.slow);
  for (const planting of state.plantings) sum += planting.nitrogen;
  for (const pool of [
    'coverFree',
    'soilOrganic',
    'youngHumus',
    'mineralTop',
    'mineralLower',
  ] as const)
    sum += state.nitrogen[poolIndex[pool]]!;
  return sum;
}

/** Largest difference between a pool kept by flows and the same pool from carbon or plants, g N/m2. */
export function bookkeepingDifference(state: BedState): number {
  let cover = 0;
  let dug = 0;
  const carbonPools = { R: [0, 0], B: [0, 0], H: [0, 0] };
  for (const item of state.classes) {
    const side = item.placement === 'laid' ? 0 : 1;
    carbonPools.R[side]! += residueNitrogen(item);
    carbonPools.B[side]! += microbeNitrogen(item);
    carbonPools.H[side]! += humusNitrogen(item);
  }
  const n = state.nitrogen;
  cover = Math.max(
    Math.abs(n[poolIndex.coverResidue]! - carbonPools.R[0]!),
    Math.abs(n[poolIndex.coverMicrobes]! - carbonPools.B[0]!),
    Math.abs(n[poolIndex.coverHumus]! - carbonPools.H[0]!),
  );
  dug = Math.max(
    Math.abs(n[poolIndex.dugResidue]! - carbonPools.R[1]!),
    Math.abs(n[poolIndex.dugMicrobes]! - carbonPools.B[1]!),
    Math.abs(n[poolIndex.dugHumus]! - carbonPools.H[1]!),
  );
  const slow = slowNitrogen(state.slow);
  const plants = state.plantings.reduce((sum, planting) => sum + planting.nitrogen, 0);
  return Math.max(
    cover,
    dug,
    Math.abs(n[poolIndex.slow]! - slow),
    Math.abs(n[poolIndex.crop]! - plants),
  );
}
