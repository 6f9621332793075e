import { ammoniaDay } from '../cover/ammonia';
import { coverFraction, coverWaterCapacity, wetnessFactor } from '../cover/wetness';
import { leachedShare } from '../soil/leaching';
import { moistureFactor } from '../soil/organicMatter';
import { soilTemperatureAfter, temperatureFactor } from '../soil/temperature';
import { availableShare, waterDay, type WaterDay } from '../soil/water';
import { move, poolIndex, type BedState } from './bedState';
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

/** What of a day is worth remembering besides flows and pools. */
export interface DayReport extends WaterDay {
  readonly coverFill: number;
  readonly soilNormalisedDay: number;
}

const lyingDry = (state: BedState): number =>
  state.layers.reduce((sum, layer) => sum + layer.left * layer.dryKgPerM2, 0);

/**
 * One civil day of one bed, in the order of model "Order of the day": 1 events, 2 plants, 3 water,
 * 4 temperature and factors, 5 denitrification and leaching of the morning's nitrogen, 6 rain and
 * soil release, 7 decomposition, 8 ammonia, 9 wash, 10 fixation and uptake, 11 harvest and clearing.
 *
 * @param state changed in place; its pools are the old ones plus `flows`
 * @param flows zeroed array by index of `flowKinds`, filled here [g N/m2]
 * @param index day of the run, 0 = `input.firstDay`
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
  const rain = input.weather.rainMillimetres[index]!;
  const mean = plan.mean[index]!;
  const n = state.nitrogen;

  if (plan.seasonStarts.has(index)) turnSeason(state, flows);
  const events = plan.events.get(index) ?? none;
  let logged = 0;
  for (const event of events) {
    if (event.kind === 'rake off') rakeOff(input, state, flows, event.share);
    else if (event.kind === 'dig cover in') digCoverIn(input, state, flows, event.share);
    else if (event.kind === 'water') logged += event.depth;
  }
  const laid = plan.layers.get(index);
  if (laid) layLayers(input, state, flows, laid);

  advancePlants(state, day, mean);

  const plants = canopyOfBed(state, lowerDepth, c);
  const dry = lyingDry(state);
  const hidden = coverFraction(dry, c);
  const capacity = coverWaterCapacity(dry, c);
  const water = waterDay(
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
  );
  const fill = capacity > 0 ? Math.min(1, state.water.cover / capacity) : 0;

  state.soilCelsius = soilTemperatureAfter(state.soilCelsius, mean, hidden, c);
  const moist = moistureFactor(availableShare(state.water, sizes));
  const soilFactor = temperatureFactor(state.soilCelsius);
  const soilDay = soilFactor * moist;
  const surfaceDay = plan.airFactor[index]! * wetnessFactor(fill, c);

  move(
    state,
    flows,
    flow.leached,
    n[poolIndex.mineralLower]! * leachedShare(water.drainageLower, sizes.lowerFull),
  );
  if (water.drainageTop > c.denitrificationDrainage)
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
    n[poolIndex.mineralTop]! * leachedShare(water.drainageTop, sizes.topFull),
  );

  if (plan.rainOfYear > 0)
    move(state, flows, flow.rain, (c.rainNitrogenPerYear * rain) / plan.rainOfYear);
  move(state, flows, flow.soil, n[poolIndex.soilOrganic]! * c.soilReleaseRate * soilDay);
  move(state, flows, flow.young, n[poolIndex.youngHumus]! * c.youngHumusRate * soilDay);

  const slowFactor = decayDay(state, flows, { soil: soilDay, surface: surfaceDay }, c);
  for (const layer of state.layers) {
    layer.left *= layer.item === null ? slowFactor : layer.item.lyingFactor;
    if (rain < 1) layer.settled = Math.min(1, layer.settled + 0.5);
  }

  const demand = ammoniaDay(state.ammonia, fill, mean, c);
  move(
    state,
    flows,
    flow.ammonia,
    Math.min(demand, c.ammoniaFreeShare * Math.max(0, n[poolIndex.coverFree]!)),
  );
  const through = water.throughfall;
  const washed = Math.min(
    1,
    c.washBase +
      (through > 0 ? through / (through + c.washDepth * Math.max(c.washLeastMass, dry)) : 0),
  );
  move(state, flows, flow.washed, washed * Math.max(0, n[poolIndex.coverFree]!));

  feedPlants(state, flows, day, lowerDepth, c);
  harvestPlants(input, state, flows, events, day);
  // written out: spreading `water` here costs as much as the rest of the day
  return {
    watered: water.watered,
    throughfall: water.throughfall,
    drainageTop: water.drainageTop,
    drainageLower: water.drainageLower,
    dryness: water.dryness,
    coverFill: fill,
    soilNormalisedDay: soilDay,
  };
}
