import { ammoniaDay } from '../cover/ammonia';
import { coverFraction, coverWaterCapacity, wetnessFactor } from '../cover/wetness';
import { leachedShare } from '../soil/leaching';
import { moistureFactor } from '../soil/organicMatter';
import { soilTemperatureAfter, temperatureFactor } from '../soil/temperature';
import { availableShare, waterDay } from '../soil/water';
import { lyingDry, move, poolIndex, type BedState, type DayReport } from './bedState';
import { decayDay } from './dayDecay';
import { digCoverIn, layLayers, rakeOff, turnSeason } from './dayEvents';
import { advancePlants, canopyOfBed, feedPlants, harvestPlants } from './dayPlants';
import { flowIndex } from './flows';
import type { BedEvent, BedSeason } from './input';

const none: readonly BedEvent[] = [];

const flow = {
  rain: flowIndex('rain', 'mineralTop', 'rain'),
  soil: flowIndex('soilOrganic', 'mineralTop', 'released by the soil'),
  young: flowIndex('youngHumus', 'mineralTop', 'released by last year’s humus'),
  ammonia: flowIndex('coverFree', 'ammonia', 'to the air'),
  washed: flowIndex('coverFree', 'mineralTop', 'washed in'),
  down: flowIndex('mineralTop', 'mineralLower', 'washed down'),
  leached: flowIndex('mineralLower', 'leached', 'washed out'),
  denitrified: flowIndex('mineralTop', 'denitrified', 'wet soil'),
} as const;

export type { DayReport } from './bedState';

/**
 * One civil day of one bed, in the order of model "Order of the day": 1 events, 2 plants, 3 water,
 * 4 temperature and factors, 5 denitrification and leaching of the morning's nitrogen, 6 rain and
 * soil release, 7 decomposition, 8 ammonia, 9 wash, 10 fixation and uptake, 11 harvest and clearing.
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
  const c = input.coefficients;
  const day = input.firstDay + index;
  const { plan } = state;
  const { sizes, lowerDepth } = plan;
  const rain = plan.rain[index]!;
  const mean = plan.mean[index]!;
  const airFactor = plan.airFactor[index]!;
  const n = state.nitrogen;

  let events = none;
  let logged = 0;
  if (plan.isBusy[index] === 1) {
    events = plan.events.get(index) ?? none;
    logged = beginBusyDay(input, state, flows, index, events);
  }

  advancePlants(state, day, mean);

  const plants = canopyOfBed(state, lowerDepth, c);
  const dry = lyingDry(state);
  const { report } = state;
  const hidden = coverFraction(dry, c);
  const capacity = coverWaterCapacity(dry, c);
  waterDay(
    state.water,
    sizes,
    input.soil,
    plants,
    rain,
    logged,
    plan.evapotranspiration[index]!,
    capacity,
    hidden,
    input.keptMoist,
    c,
    report,
  );
  const fill = capacity > 0 ? Math.min(1, state.water.cover / capacity) : 0;

  state.soilCelsius = soilTemperatureAfter(state.soilCelsius, mean, hidden, c);
  const moist = moistureFactor(availableShare(state.water, sizes));
  const soilFactor = temperatureFactor(state.soilCelsius);
  const soilDay = soilFactor * moist;
  const surfaceDay = airFactor * wetnessFactor(fill, c);

  move(
    state,
    flows,
    flow.leached,
    n[poolIndex.mineralLower]! * leachedShare(report.drainageLower, sizes.lowerFull),
  );
  if (report.drainageTop > c.denitrificationDrainage)
    move(
      state,
      flows,
      flow.denitrified,
      n[poolIndex.mineralTop]! * Math.min(1, c.denitrifiedShare * soilFactor),
    );
  move(
    state,
    flows,
    flow.down,
    n[poolIndex.mineralTop]! * leachedShare(report.drainageTop, sizes.topFull),
  );

  if (plan.rainOfYear > 0)
    move(state, flows, flow.rain, (c.rainNitrogenPerYear * rain) / plan.rainOfYear);
  move(state, flows, flow.soil, n[poolIndex.soilOrganic]! * c.soilReleaseRate * soilDay);
  move(state, flows, flow.young, n[poolIndex.youngHumus]! * c.youngHumusRate * soilDay);

  state.clocks.soil = soilDay;
  state.clocks.surface = surfaceDay;
  lieLonger(state, decayDay(state, flows, state.clocks, c), rain);

  const demand = ammoniaDay(state.ammonia, fill, mean, c, airFactor);
  move(
    state,
    flows,
    flow.ammonia,
    Math.min(demand, c.ammoniaFreeShare * Math.max(0, n[poolIndex.coverFree]!)),
  );
  const through = report.throughfall;
  const washed = Math.min(
    1,
    c.washBase +
      (through > 0 ? through / (through + c.washDepth * Math.max(c.washLeastMass, dry)) : 0),
  );
  move(state, flows, flow.washed, washed * Math.max(0, n[poolIndex.coverFree]!));

  feedPlants(state, flows, day, lowerDepth, c);
  harvestPlants(input, state, flows, events, day);
  report.coverFill = fill;
  report.soilNormalisedDay = soilDay;
  return report;
}

/** Entries of a day and a season's first morning (step 1); returns the watering written down [mm]. */
function beginBusyDay(
  input: BedSeason,
  state: BedState,
  flows: Float64Array,
  index: number,
  events: readonly BedEvent[],
): number {
  const { plan } = state;
  if (plan.seasonStarts.has(index)) turnSeason(state, flows);
  let logged = 0;
  for (const event of events) {
    if (event.kind === 'rake off') rakeOff(input, state, flows, event.share);
    else if (event.kind === 'dig cover in') digCoverIn(input, state, flows, event.share);
    else if (event.kind === 'water') logged += event.depth;
  }
  const laid = plan.layers.get(index);
  if (laid) layLayers(input, state, flows, laid);
  return logged;
}

/** What lies on top shrinks with the classes it decays with; drawn layers sink on drying days. */
function lieLonger(state: BedState, slowFactor: number, rain: number): void {
  for (const item of state.classes) item.lyingDry *= item.lyingFactor;
  state.slow.lyingDry *= slowFactor;
  for (const layer of state.layers) {
    layer.left *= layer.item === null ? slowFactor : layer.item.lyingFactor;
    if (rain < 1) layer.settled = Math.min(1, layer.settled + 0.5);
  }
}
