import { dayFromParts, type DayNumber } from '../../app/core/days';
import { flowIndex, flowKinds, pools, type Pool } from '../../app/core/season/flows';
import type {
  BedSeason,
  CropInput,
  LayerInput,
  LegumeInput,
  PlantingInput,
} from '../../app/core/season/input';
import type { PlantingResult, SeasonResult } from '../../app/core/season/result';
import { typicalCoefficients } from '../../app/tables/coefficients';

/** Made-up beds for tests of rules: every number here is invented, none is about nature. */

export const firstDay: DayNumber = dayFromParts(2013, 1, 1);
export const lastDay: DayNumber = dayFromParts(2013, 12, 31);
export const days = lastDay - firstDay + 1;
export const today: DayNumber = dayFromParts(2013, 6, 15);
export const dayIn = (month: number, dayOfMonth: number): DayNumber =>
  dayFromParts(2013, month, dayOfMonth);

export const legumeInput: LegumeInput = {
  usualShareFixed: 0.42,
  highShareFixed: 0.6,
  nodulationDays: 28,
  leafyLimit: 5.8,
  poddingLimit: 4.1,
};

export const makeCrop = (changes: Partial<CropInput> = {}): CropInput => ({
  id: 'made-crop',
  excessClass: 'storage',
  need: 10,
  harvestNitrogen: 5,
  harvestGramsPerKilogram: 2,
  rootShare: 0.15,
  curveMiddle: 0.55,
  curveSteepness: 7,
  baseCelsius: 8,
  usualDays: 100,
  firstHarvestDays: 60,
  flowerDays: 40,
  fullRootDepth: 600,
  cropCoefficientStart: 0.5,
  cropCoefficientMiddle: 1.05,
  cropCoefficientEnd: 0.8,
  stageShares: [0.2, 0.3, 0.3, 0.2],
  depletionShare: 0.45,
  residueCarbonToNitrogen: 20,
  residueIsGreen: true,
  legume: null,
  enoughNitrateLow: 20,
  enoughNitrateHigh: 25,
  warmSoilCelsius: null,
  eatenFromSoil: false,
  seedFlyRisk: false,
  frostTender: false,
  ...changes,
});

export const makePlanting = (
  changes: Partial<PlantingInput> = {},
  crop: Partial<CropInput> = {},
): PlantingInput => ({
  id: 'planting',
  crop: makeCrop(crop),
  share: 1,
  startDay: dayIn(5, 15),
  sown: false,
  firstHarvestDay: dayIn(7, 14),
  usualEndDay: dayIn(8, 23),
  clearingDay: dayIn(8, 23),
  cleared: false,
  topsFate: 'taken away',
  normalDegreeDays: 1300,
  nodulesSeen: null,
  ...changes,
});

export const makeLayer = (changes: Partial<LayerInput> = {}): LayerInput => ({
  id: 'layer',
  day: today,
  materialId: 'made-clippings',
  materialClass: 'green',
  isGreens: true,
  placement: 'laid',
  condition: 'just cut',
  freshKgPerM2: 1.5,
  dryKgPerM2: 0.3,
  nitrogen: 10,
  carbon: 130,
  laidDepth: 6,
  settledDensityKgPerM3: 50,
  mineralShare: 0,
  slowShare: 0,
  ...changes,
});

/** Warm in July, cold in January, 5 mm of rain every fifth day. */
export function makeBed(changes: Partial<BedSeason> = {}): BedSeason {
  const span = (changes.lastDay ?? lastDay) - (changes.firstDay ?? firstDay) + 1;
  const swing = (index: number): number => -Math.cos((2 * Math.PI * (index - 15)) / 365);
  const series = (of: (index: number) => number): Float64Array =>
    Float64Array.from({ length: span }, (_, index) => of(index));
  return {
    bedId: 'bed',
    areaM2: 6,
    latitudeDegrees: 40.8,
    firstDay,
    lastDay,
    today,
    seasonStarts: [],
    weather: {
      minimumCelsius: series((index) => 8 + 12 * swing(index)),
      maximumCelsius: series((index) => 17 + 13 * swing(index)),
      rainMillimetres: series((index) => (index % 5 === 0 ? 15 : 0)),
      kind: new Uint8Array(span),
    },
    normals: {
      minimumCelsius: new Array<number>(12).fill(8),
      maximumCelsius: new Array<number>(12).fill(17),
      rainMillimetres: new Array<number>(12).fill(90),
      wetDays: new Array<number>(12).fill(6),
    },
    soil: {
      fieldCapacity: 0.27,
      wiltingPoint: 0.12,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: 3,
      startingMineralTop: null,
    },
    keptMoist: false,
    plantings: [],
    layers: [],
    events: [],
    coefficients: typicalCoefficients(),
    ...changes,
  };
}

const filled = (value: number): Float64Array => new Float64Array(days).fill(value);

/** A series that is `before` up to and including a day and `after` from the next day on. */
export const stepping = (before: number, lastBefore: DayNumber, after: number): Float64Array =>
  Float64Array.from({ length: days }, (_, index) =>
    firstDay + index <= lastBefore ? before : after,
  );

/** A constant value between two days, both included, and zero outside. */
export const between = (value: number, from: DayNumber, to: DayNumber): Float64Array =>
  Float64Array.from({ length: days }, (_, index) =>
    firstDay + index >= from && firstDay + index <= to ? value : 0,
  );

/** A planting's result with the same need and uptake on every day from start to clearing. */
export function makePlantingResult(
  planting: PlantingInput,
  daily: { readonly need: number; readonly uptake: number; readonly fixed?: number },
  changes: Partial<PlantingResult> = {},
): PlantingResult {
  const end = planting.clearingDay ?? planting.usualEndDay;
  const span = end - planting.startDay + 1;
  const fixed = daily.fixed ?? 0;
  return {
    id: planting.id,
    startDay: planting.startDay,
    clearingDay: planting.clearingDay,
    demand: daily.need * span,
    uptake: daily.uptake * span,
    luxury: 0,
    fixed: fixed * span,
    demandMet: daily.need > 0 ? (daily.uptake + fixed) / daily.need : 0,
    harvested: 0,
    removed: 0,
    left: 0,
    dailyNeed: between(daily.need, planting.startDay, end),
    dailyUptake: between(daily.uptake, planting.startDay, end),
    dailyFixed: between(fixed, planting.startDay, end),
    progress: Float64Array.from({ length: days }, (_, index) =>
      Math.min(1, Math.max(0, (firstDay + index - planting.startDay) / span)),
    ),
    rootDepth: filled(300),
    ...changes,
  };
}

/** The flow "released by the soil", by day. */
export const soilRelease = flowIndex('soilOrganic', 'mineralTop', 'released by the soil');
export const dugTakes = flowIndex('mineralTop', 'dugMicrobes', 'held back');
export const dugGives = flowIndex('dugMicrobes', 'mineralTop', 'released');
export const washedIn = flowIndex('coverFree', 'mineralTop', 'washed in');
export const luxuryTop = flowIndex('mineralTop', 'crop', 'luxury');

interface ResultParts extends Partial<Omit<SeasonResult, 'pools' | 'flows'>> {
  readonly pools?: Partial<Record<Pool, Float64Array>>;
  readonly flows?: Readonly<Record<number, Float64Array>>;
}

/** A run made by hand: quiet, mild, empty, but for what is given. */
export function makeResult(parts: ResultParts = {}): SeasonResult {
  const { pools: givenPools, flows: givenFlows, ...rest } = parts;
  return {
    bedId: 'bed',
    firstDay,
    days,
    today,
    start: Object.fromEntries(pools.map((pool) => [pool, 0])) as Record<Pool, number>,
    pools: Object.fromEntries(
      pools.map((pool) => [pool, givenPools?.[pool] ?? filled(0)]),
    ) as Record<Pool, Float64Array>,
    flows: flowKinds.map((_, index) => givenFlows?.[index] ?? filled(0)),
    residual: 0,
    kind: new Uint8Array(days),
    rain: filled(0),
    watered: filled(0),
    airMean: filled(18),
    airMinimum: filled(12),
    airMaximum: filled(24),
    soilTemperature: filled(18),
    drainageTop: filled(0),
    drainageLower: filled(0),
    dryness: filled(0),
    availableWaterTop: filled(0.8),
    availableWaterLower: filled(0.8),
    coverFill: filled(0),
    coverFraction: filled(0),
    coverDepth: filled(0),
    coverDryKg: filled(0),
    rootReach: filled(1),
    soilNormalisedDay: filled(1),
    lowerDepth: filled(300),
    plantings: [],
    layers: [],
    ...rest,
  };
}
