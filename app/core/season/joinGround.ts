import { leftOverClass } from '../cover/leftOver';
import { classFor, type ResidueClass } from '../cover/residueClass';
import type { BedState, freshState, LyingLayer } from './bedState';
import { stepDay } from './day';
import { digCoverIn, rakeOff } from './dayEvents';
import { waterSizes } from '../soil/water';
import { flowKinds, pools } from './flows';
import type { GrowingPlanting } from './growingPlanting';
import type { BedSeason, GroundInput } from './input';
import { lowerDepthFor, runPlan, weatherPlan, type WeatherPlan } from './runPlan';
import { sameDayEventOrder } from './sameDay';
import { turnLowerLayer } from './seasonTurn';
import { watchDays } from './seasonWatch';

/** What a plan takes from weather that no draw changes: the ground's days are over. */
const skies = new WeakMap<BedSeason['weather'], WeatherPlan>();

function skyOf({ weather, firstDay, latitudeDegrees }: BedSeason): WeatherPlan {
  let sky = skies.get(weather);
  if (!sky) skies.set(weather, (sky = weatherPlan(weather, firstDay, latitudeDegrees)));
  return sky;
}

interface GroundRun {
  readonly state: BedState;
  readonly flows: Float64Array;
  /** share of each layer on the evening before */
  readonly lying: readonly (readonly [string, number])[];
  /** g N per m2 of the ground */
  readonly thatMorning: Float64Array;
}

/**
 * Runs a ground by its own entries to the evening before the new bed's first day, and does what was
 * done to its cover alone on that day's morning.
 */
function runGround(
  { input, morning, watch }: GroundInput,
  keepsLayers: boolean,
  startOf: typeof freshState,
): GroundRun {
  const lowerDepth = lowerDepthFor(input);
  const plan = runPlan(input, lowerDepth, skyOf(input));
  const state = startOf(input, lowerDepth, plan, keepsLayers);
  const flows = new Float64Array(flowKinds.length);
  const days = input.lastDay - input.firstDay + 1;
  if (watch) watchDays(input, state, watch, flows);
  else for (let index = 0; index < days; index++) stepDay(input, state, flows, index);
  const lying = state.layers.map(({ id, left }): readonly [string, number] => [id, left]);
  const thatMorning = new Float64Array(flowKinds.length);
  for (const event of morning?.toSorted(sameDayEventOrder) ?? [])
    if (event.kind === 'rake off') rakeOff(state, thatMorning, event.share);
    else if (event.kind === 'dig cover in') digCoverIn(state, thatMorning, event.share);
  return { state, flows, lying, thatMorning };
}

/** The class of the new bed that a ground's class goes on in. */
function classOf(state: BedState, item: ResidueClass): ResidueClass {
  const { placement, materialClass, parameters } = item;
  const { classes, coefficients: c } = state;
  if (!item.isLeftOver)
    return classFor(classes, placement, materialClass, parameters.carbonToNitrogen, c);
  const own = leftOverClass(placement, materialClass, parameters, c);
  classes.push(own);
  return own;
}

function joinCover(state: BedState, from: BedState, share: number): void {
  const goesOnIn = new Map<ResidueClass, ResidueClass>();
  for (const item of from.classes) {
    const own = classOf(state, item);
    own.crumb = Math.max(own.crumb, item.crumb);
    own.residue += share * item.residue;
    own.microbes += share * item.microbes;
    own.humus += share * item.humus;
    own.lyingDry += share * item.lyingDry;
    goesOnIn.set(item, own);
  }
  const { slow, ammonia, layers } = state;
  slow.topActive += share * from.slow.topActive;
  slow.topInert += share * from.slow.topInert;
  slow.dugActive += share * from.slow.dugActive;
  slow.topQuick += share * from.slow.topQuick;
  slow.dugQuick += share * from.slow.dugQuick;
  slow.lyingDry += share * from.slow.lyingDry;
  ammonia.unripe += share * from.ammonia.unripe;
  ammonia.ripe += share * from.ammonia.ripe;
  ammonia.manure += share * from.ammonia.manure;
  for (const layer of from.layers) {
    const item = layer.item && (goesOnIn.get(layer.item) ?? null);
    if (layer.left <= 0 || (layer.item !== null && item === null)) continue;
    const spread: LyingLayer = { ...layer, item, dryKgPerM2: share * layer.dryKgPerM2 };
    layers.push(spread);
  }
}

/** A plant goes on where it stood, by its own clock, with its part of all it has had so far. */
function goOn(plant: GrowingPlanting, was: GrowingPlanting, factor: number): void {
  plant.standing = was.standing;
  plant.logsHarvest = plant.logsHarvest || was.logsHarvest;
  plant.degreeDays = was.degreeDays;
  plant.progress = was.progress;
  plant.wanted = was.wanted;
  plant.rootDepth = was.rootDepth;
  plant.nitrogen = factor * was.nitrogen;
  plant.crown = factor * was.crown;
  plant.needSoFar = factor * was.needSoFar;
  plant.metSoFar = factor * was.metSoFar;
  plant.harvested = factor * was.harvested;
  plant.removed = factor * was.removed;
  plant.left = factor * was.left;
  plant.fixed = factor * was.fixed;
  plant.uptake = factor * was.uptake;
  plant.luxury = factor * was.luxury;
  plant.arrears.push(...was.arrears.map((unmet) => factor * unmet));
}

/**
 * Makes a bed's first morning out of the ground it came from. Each ground is run by its own log to
 * the evening before; then what it holds is spread over the new bed by area: nitrogen, carbon,
 * what lies, and water by how full the layers are. Plants stand only where they are said to go on.
 * Where the grounds' roots went less deep than the new bed's, the soil below comes with them, as it
 * does at the turn of a season.
 *
 * Grams per m2 of the new bed are the grounds' by area, so the grams of all new beds together are
 * those of the old: nothing is booked, because nothing went in or out. What was raked off or dug in
 * on one of several grounds that morning is kept as `brought`, for the account of the first day.
 *
 * @param state a fresh one; changed in place
 * @param startOf how a ground's own run begins: it may itself be made of ground
 * @validity the ground is taken as one: what a m2 of it holds is its mean on that day
 */
export function joinGround(
  state: BedState,
  grounds: readonly GroundInput[],
  startOf: typeof freshState,
): void {
  const { nitrogen, water, sizes, lowerDepth } = state;
  nitrogen.fill(0, 0, pools.length);
  for (const plant of state.plantings) {
    plant.nitrogen = 0;
    plant.crown = 0;
  }
  water.top = 0;
  water.lower = 0;
  state.soilCelsius = 0;
  const brought = { flows: new Float64Array(flowKinds.length), lying: new Map<string, number>() };
  state.brought = brought;
  for (const ground of grounds) {
    const { input, share, plants } = ground;
    const run = runGround(ground, state.keepsLayers, startOf);
    const { state: from, flows, thatMorning } = run;
    for (let flow = 0; flow < flowKinds.length; flow++)
      brought.flows[flow]! += share * thatMorning[flow]!;
    for (const [id, left] of run.lying) brought.lying.set(id, left);
    if (from.lowerDepth !== lowerDepth)
      turnLowerLayer(from, flows, {
        depth: lowerDepth,
        sizes: waterSizes(input.soil, lowerDepth),
      });
    for (let pool = 0; pool < pools.length; pool++)
      if (pools[pool] !== 'crop') nitrogen[pool]! += share * from.nitrogen[pool]!;
    joinCover(state, from, share);
    water.top += share * (from.water.top / from.sizes.topFull) * sizes.topFull;
    water.lower += share * (from.water.lower / from.sizes.lowerFull) * sizes.lowerFull;
    water.cover += share * from.water.cover;
    state.soilCelsius += share * from.soilCelsius;
    for (const { from: before, to, factor } of plants) {
      const was = from.plantings.find((plant) => plant.input.id === before);
      const plant = state.plantings.find((one) => one.input.id === to);
      if (was && plant) goOn(plant, was, factor);
    }
  }
  nitrogen[pools.indexOf('crop')] = state.plantings.reduce((sum, plant) => sum + plant.nitrogen, 0);
}
