import { ammoniaDay } from '../cover/ammonia';
import { coverFraction, coverWaterCapacity, fillOf, wetnessFactor } from '../cover/wetness';
import { leachedShare } from '../soil/leaching';
import { moistureFactor } from '../soil/organicMatter';
import { runoffMillimetres } from '../soil/runoff';
import { soilTemperatureAfter, temperatureFactor } from '../soil/temperature';
import { availableShare, waterDay } from '../soil/water';
import type { BedState, DayReport } from './bedState';
import { move, poolIndex, wayOf } from './ways';
import { decayDay } from './dayDecay';
import { digCoverIn, layLayers, rakeOff, turnSeason } from './dayEvents';
import { advancePlants, feedPlants, harvestPlants } from './dayPlants';
import { growAgain, turnLowerLayer } from './seasonTurn';
import type { Coefficients } from './coefficients';
import type { DayNumber } from '../days';
import type { BedEvent, BedSeason } from './input';

const { coverFree, mineralLower, mineralTop, soilOrganic, youngHumus } = poolIndex;

const none: readonly BedEvent[] = [];

const flow = {
  rain: wayOf('rain', 'mineralTop', 'rain'),
  soil: wayOf('soilOrganic', 'mineralTop', 'released by the soil'),
  young: wayOf('youngHumus', 'mineralTop', 'released by last year’s humus'),
  ammonia: wayOf('coverFree', 'ammonia', 'to the air'),
  washed: wayOf('coverFree', 'mineralTop', 'washed in'),
  down: wayOf('mineralTop', 'mineralLower', 'washed down'),
  leached: wayOf('mineralLower', 'leached', 'washed out'),
  denitrified: wayOf('mineralTop', 'denitrified', 'wet soil'),
} as const;

export type { DayReport } from './bedState';

/**
 * One civil day of one bed. What comes first shapes what follows: 1 laying, digging, raking and
 * tests, 2 plants, 3 water, 4 temperature and its factors, 5 nitrate lost to air and depth, out of
 * what the morning found, 6 nitrogen from rain and humus, 7 decomposition, 8 ammonia, 9 wash-in,
 * 10 fixation and uptake, 11 picking and clearing.
 *
 * @param state changed in place; its pools are the old ones plus `flows`
 * @param flows zeroed array by index of `flowKinds`, filled here [g N/m2]
 * @param index day of the run, 0 = `input.firstDay`
 * @returns `state.report`, which the next day writes anew
 */
export function stepDay(
  input: BedSeason,
  state: BedState,
  flows: Float64Array,
  index: number,
): DayReport {
  const c = state.coefficients;
  const date = input.firstDay + index;
  const { plan, day } = state;
  const fallen = plan.rain[index]!;
  // What runs off a slope never reaches the bed, nor does the nitrogen in it.
  day.rain =
    input.runoffCurveNumber === undefined
      ? fallen
      : fallen - runoffMillimetres(fallen, input.runoffCurveNumber);
  day.evapotranspiration = plan.evapotranspiration[index]!;
  day.mean = plan.mean[index]!;
  day.airFactor = plan.airFactor[index]!;
  day.plantsFrom = plan.plantsFrom[index]!;
  day.plantsTo = plan.plantsTo[index]!;
  day.logged = 0;
  let events = none;
  if (plan.isBusy[index] === 1) {
    events = plan.events.get(index) ?? none;
    day.logged = beginBusyDay(state, flows, index, date, events);
  }

  advancePlants(state, date, c);
  soakAndWarm(input, state, c);
  loseAndRelease(state, flows, c);
  decayDay(state, flows, state.clocks, c);
  leaveCover(state, flows, c);
  feedPlants(state, flows, date, c);
  harvestPlants(input, state, flows, events, date);
  return state.report;
}

/** Water, then temperature and the clocks of decay (steps 3 and 4). */
function soakAndWarm(input: BedSeason, state: BedState, c: Coefficients): void {
  const { day, report, clocks, water, canopy, classes } = state;
  const { sizes } = state;
  // 0 first: what lies nowhere starts as -0, which is nothing to show
  let dry = 0 + state.slow.lyingDry;
  for (let at = 0; at < classes.length; at++) dry += classes[at]!.lyingDry;
  day.dry = dry;
  day.coverFraction = dry > 0 ? coverFraction(dry, c) : 0;
  day.coverCapacity = coverWaterCapacity(dry, c);
  waterDay(water, sizes, input.soil, canopy, day, input.keptMoist, c, report);
  report.coverFill = fillOf(water.cover, day.coverCapacity);
  report.coverWetness = fillOf(report.coverMean, day.coverCapacity);

  state.soilCelsius = soilTemperatureAfter(state.soilCelsius, day.mean, day.coverFraction, c);
  day.soilFactor = temperatureFactor(state.soilCelsius);
  clocks.soil = day.soilFactor * moistureFactor(availableShare(water, sizes));
  clocks.surface = day.airFactor * wetnessFactor(report.coverWetness, c);
  report.soilNormalisedDay = clocks.soil;
}

/** What the morning's nitrate loses, the lower layer first; then what rain and soil bring (5, 6). */
function loseAndRelease(state: BedState, flows: Float64Array, c: Coefficients): void {
  const { drainageTop, drainageLower } = state.report;
  const { rainOfYear } = state.plan;
  const { sizes } = state;
  const { soil } = state.clocks;
  const n = state.nitrogen;
  if (drainageLower > 0) {
    const share = leachedShare(drainageLower, sizes.lowerFull);
    move(state, flows, flow.leached, n[mineralLower]! * share);
  }
  if (drainageTop > c.denitrificationDrainage) {
    const share = Math.min(1, c.denitrifiedShare * state.day.soilFactor);
    move(state, flows, flow.denitrified, n[mineralTop]! * share);
  }
  if (drainageTop > 0) {
    const share = leachedShare(drainageTop, sizes.topFull);
    move(state, flows, flow.down, n[mineralTop]! * share);
  }
  if (rainOfYear > 0)
    move(state, flows, flow.rain, (c.rainNitrogenPerYear * state.day.rain) / rainOfYear);
  move(state, flows, flow.soil, n[soilOrganic]! * c.soilReleaseRate * soil);
  if (n[youngHumus] !== 0) move(state, flows, flow.young, n[youngHumus]! * c.youngHumusRate * soil);
}

/**
 * What lies on top shrinks with the classes it decays with, and drawn layers sink on drying days;
 * what of the cover's free nitrogen goes to the air and into the soil (steps 8 and 9).
 */
function leaveCover(state: BedState, flows: Float64Array, c: Coefficients): void {
  const { slow, layers, day, report } = state;
  const n = state.nitrogen;
  slow.lyingDry *= slow.lyingFactor;
  for (let at = 0; at < layers.length; at++) {
    const layer = layers[at]!;
    layer.left *= layer.item === null ? slow.lyingFactor : layer.item.lyingFactor;
    if (day.rain < 1) layer.settled = Math.min(1, layer.settled + 0.5);
  }

  const demand = ammoniaDay(state.ammonia, report.coverWetness, day.mean, c, day.airFactor);
  if (n[coverFree] === 0) return;
  const most = c.ammoniaFreeShare * Math.max(0, n[coverFree]!);
  move(state, flows, flow.ammonia, Math.min(demand, most));
  const through = report.throughfall;
  const deep = c.washDepth * Math.max(c.washLeastMass, day.dry);
  const washed = Math.min(1, c.washBase + (through > 0 ? through / (through + deep) : 0));
  move(state, flows, flow.washed, washed * Math.max(0, n[coverFree]!));
}

/** Entries of a day and a season's first morning (step 1); returns the watering written down [mm]. */
function beginBusyDay(
  state: BedState,
  flows: Float64Array,
  index: number,
  date: DayNumber,
  events: readonly BedEvent[],
): number {
  const { plan } = state;
  if (plan.seasonStarts.has(index)) {
    turnSeason(state, flows);
    turnLowerLayer(state, flows, plan.lowerLayers.get(index)!);
    growAgain(state, flows, date);
  }
  let logged = 0;
  for (const event of events) {
    if (event.kind === 'rake off') rakeOff(state, flows, event.share);
    else if (event.kind === 'dig cover in') digCoverIn(state, flows, event.share);
    else if (event.kind === 'water') logged += event.depth;
  }
  const laid = plan.layers.get(index);
  if (laid) layLayers(state, flows, laid);
  return logged;
}
