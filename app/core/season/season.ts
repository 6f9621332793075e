import { coverFraction } from '../cover/wetness';
import { availableLowerShare, availableShare } from '../soil/water';
import type { BedState, LyingLayer } from './bedState';
import { startingState } from './startingState';
import { bookkeepingDifference, nitrogenOnHand } from './bookkeeping';
import { demandMetOf, takenSoFar } from './growingPlanting';
import { lowerDepthFor } from './runPlan';
import { isOutside, ways } from './ways';
import { stepDay } from './day';
import { flowKinds, pools, type Pool } from './flows';
import type { BedSeason } from './input';
import type { LayerResult, PlantingResult, SeasonResult } from './result';

/** The nitrogen account of a run: start, everything in and out, and every pool by its flows alone. */
export interface Account {
  readonly start: number;
  net: number;
  /** g N/m2 by index of `pools`: the start plus all flows booked so far */
  readonly booked: Float64Array;
}

/** Opens it before the first day; of a bed made of others, before what was done to one of them alone. */
export function openAccount(state: BedState): Account {
  const booked = state.nitrogen.slice();
  let start = nitrogenOnHand(state);
  if (state.brought)
    for (const { flow, from, to } of ways) {
      const grams = state.brought.flows[flow]!;
      if (isOutside(from)) start -= grams;
      else booked[from]! += grams;
      if (isOutside(to)) start += grams;
      else booked[to]! -= grams;
    }
  return { start, net: 0, booked };
}

/**
 * Books a day's flows and says how far the bed is out of balance, g N/m2: the largest of
 *
 * - |all pools - (start + in - out)|, carbon-held pools recomputed from carbon,
 * - for each pool |pool - (its start + flows in - flows out)|, which also shows a gram that moved
 *   between two pools without a flow, or a flow that moved nothing,
 * - the difference between a pool kept by flows and the same pool from carbon or plants.
 */
export function imbalance(account: Account, state: BedState, flows: Float64Array): number {
  const { booked } = account;
  for (const { flow, from, to } of ways) {
    const grams = flows[flow]!;
    if (isOutside(from)) account.net += grams;
    else booked[from]! -= grams;
    if (isOutside(to)) account.net -= grams;
    else booked[to]! += grams;
  }
  let largest = Math.max(
    Math.abs(nitrogenOnHand(state) - (account.start + account.net)),
    bookkeepingDifference(state),
  );
  for (let pool = 0; pool < pools.length; pool++)
    largest = Math.max(largest, Math.abs(state.nitrogen[pool]! - booked[pool]!));
  return largest;
}

/** Depth still lying of a layer [mm]: dry matter left over a density that grows from laid to settled. */
export function lyingDepth(layer: LyingLayer): number {
  const density = layer.laidDensity + (layer.settledDensity - layer.laidDensity) * layer.settled;
  return density > 0 ? (1000 * layer.left * layer.dryKgPerM2) / density : 0;
}

/**
 * Runs one bed from its first to its last day at the given coefficients.
 *
 * @returns daily pools and flows, g N per m2 of bed, with the largest imbalance of any day
 * @throws only on a broken promise of ours (a flow that runs backwards)
 * @validity model 1-9; ready nitrogen of a layer counts as nitrate all of it, rain runs off only where a slope was given, no snow
 */
export function runSeason(input: BedSeason): SeasonResult {
  const days = input.lastDay - input.firstDay + 1;
  const lowerDepth = lowerDepthFor(input);
  const state = startingState(input, lowerDepth);
  const account = openAccount(state);
  const brought = state.plantings.map(({ harvested, removed }) => ({
    harvested,
    removed: harvested + removed,
  }));
  const takenBefore = state.plantings.map(takenSoFar);
  const series = (): Float64Array => new Float64Array(days);
  const start = Object.fromEntries(
    pools.map((pool, index) => [pool, account.booked[index]!]),
  ) as Record<Pool, number>;
  const poolDays = pools.map(series);
  const flows = flowKinds.map(series);
  const day = {
    watered: series(),
    airMean: series(),
    soilTemperature: series(),
    drainageTop: series(),
    drainageLower: series(),
    dryness: series(),
    availableWaterTop: series(),
    availableWaterLower: series(),
    coverFill: series(),
    coverFraction: series(),
    coverDepth: series(),
    coverDryKg: series(),
    rootReach: series(),
    soilNormalisedDay: series(),
    lowerDepth: series(),
  };
  const plants = state.plantings.map(() => ({
    dailyNeed: series(),
    dailyUptake: series(),
    dailyFixed: series(),
    progress: series(),
    rootDepth: series(),
  }));
  const layers: LayerResult[] = [];
  let residual = 0;
  const todayFlows = new Float64Array(flowKinds.length);

  for (let index = 0; index < days; index++) {
    todayFlows.fill(0);
    if (index === 0 && state.brought) todayFlows.set(state.brought.flows);
    const report = stepDay(input, state, todayFlows, index);
    residual = Math.max(residual, imbalance(account, state, todayFlows));
    for (let pool = 0; pool < pools.length; pool++) poolDays[pool]![index] = state.nitrogen[pool]!;
    for (let flow = 0; flow < flowKinds.length; flow++) flows[flow]![index] = todayFlows[flow]!;

    day.watered[index] = report.watered;
    day.airMean[index] =
      (input.weather.minimumCelsius[index]! + input.weather.maximumCelsius[index]!) / 2;
    day.soilTemperature[index] = state.soilCelsius;
    day.drainageTop[index] = report.drainageTop;
    day.drainageLower[index] = report.drainageLower;
    day.dryness[index] = report.dryness;
    day.availableWaterTop[index] = availableShare(state.water, state.sizes);
    day.availableWaterLower[index] = availableLowerShare(state.water, state.sizes);
    day.lowerDepth[index] = state.lowerDepth;
    day.coverFill[index] = report.coverFill;
    day.soilNormalisedDay[index] = report.soilNormalisedDay;
    let dry = 0;
    let depth = 0;
    state.layers.forEach((layer, at) => {
      const lying = lyingDepth(layer);
      dry += layer.left * layer.dryKgPerM2;
      depth += lying;
      layers[at] ??= { id: layer.id, left: series(), depth: series() };
      layers[at].left[index] = layer.left;
      layers[at].depth[index] = lying;
    });
    day.coverDryKg[index] = dry;
    day.coverDepth[index] = depth;
    day.coverFraction[index] = coverFraction(dry, input.coefficients);
    state.plantings.forEach((plant, at) => {
      const kept = plants[at]!;
      kept.dailyNeed[index] = plant.needToday;
      kept.dailyUptake[index] = plant.uptakeToday;
      kept.dailyFixed[index] = plant.fixedToday;
      kept.progress[index] = plant.progress;
      kept.rootDepth[index] = plant.standing ? plant.rootDepth : 0;
      if (plant.standing) day.rootReach[index] = Math.max(day.rootReach[index]!, plant.fullReach);
    });
  }

  return {
    bedId: input.bedId,
    firstDay: input.firstDay,
    days,
    today: input.today,
    start,
    pools: Object.fromEntries(pools.map((pool, at) => [pool, poolDays[at]!])) as Record<
      Pool,
      Float64Array
    >,
    flows,
    residual,
    kind: input.weather.kind,
    rain: input.weather.rainMillimetres,
    airMinimum: input.weather.minimumCelsius,
    airMaximum: input.weather.maximumCelsius,
    ...day,
    layers,
    ...(state.brought && { brought: state.brought }),
    plantings: state.plantings.map((plant, at): PlantingResult => ({
      id: plant.input.id,
      startDay: plant.input.standsSince ?? plant.input.startDay,
      clearingDay: plant.clearedOn,
      demand: plant.needSoFar,
      uptake: plant.uptake,
      luxury: plant.luxury,
      fixed: plant.fixed,
      demandMet: demandMetOf(plant),
      harvested: plant.harvested,
      removed: plant.harvested + plant.removed,
      left: plant.left,
      ...plants[at]!,
      ...(brought[at]!.removed > 0 ? { brought: brought[at]! } : {}),
      ...(takenBefore[at]! > 0 ? { takenBefore: takenBefore[at]! } : {}),
      ...(plant.earlier.length > 0 ? { earlierSeasons: plant.earlier } : {}),
    })),
  };
}
