import type { DayNumber } from '../../../app/core/days';
import { dayOf, monthOf } from '../../../app/core/days';
import { flowKinds, type Place } from '../../../app/core/season/flows';
import type {
  BedSeason,
  CropInput,
  LayerInput,
  MonthlyNormals,
  PlantingInput,
  SeasonWeather,
} from '../../../app/core/season/input';
import type { SeasonResult } from '../../../app/core/season/result';
import { typicalCoefficients } from '../../../app/tables/coefficients';

/** NOAA 1991-2020 normals of New York, Central Park: `climates` row `new-york-central-park`. */
export const newYorkNormals: MonthlyNormals = {
  minimumCelsius: [-2.3, -1.4, 2.1, 7.5, 12.8, 18.0, 21.2, 20.5, 16.8, 10.8, 5.6, 1.0],
  maximumCelsius: [4.2, 5.7, 9.9, 16.6, 21.9, 26.5, 29.4, 28.5, 24.6, 18.1, 12.2, 6.8],
  rainMillimetres: [
    92.5, 81.0, 109.0, 103.9, 100.6, 115.3, 116.8, 115.8, 109.5, 111.3, 90.9, 111.3,
  ],
  wetDays: [8.2, 7.6, 8.8, 8.7, 9.0, 8.5, 8.4, 8.0, 7.0, 7.3, 7.5, 8.7],
};

export const days2013 = 365;
export const firstOf2013 = dayOf('2013-01-01');

/** The same air every day and no rain. */
export function steadyWeather(days: number, minimum: number, maximum: number): SeasonWeather {
  return {
    minimumCelsius: new Float64Array(days).fill(minimum),
    maximumCelsius: new Float64Array(days).fill(maximum),
    rainMillimetres: new Float64Array(days),
    kind: new Uint8Array(days),
  };
}

/** A year that follows the normals day by day, with each month's rain on its days 3, 9, 15, 21 and 27. */
export function normalYear(
  normals: MonthlyNormals,
  firstDay: DayNumber,
  days: number,
): SeasonWeather {
  const weather = steadyWeather(days, 0, 0);
  for (let index = 0; index < days; index++) {
    const day = firstDay + index;
    const month = monthOf(day) - 1;
    weather.minimumCelsius[index] = normals.minimumCelsius[month]!;
    weather.maximumCelsius[index] = normals.maximumCelsius[month]!;
    const dayOfMonth = dayOfMonthOf(day);
    if (dayOfMonth % 6 === 3 && dayOfMonth < 30)
      weather.rainMillimetres[index] = normals.rainMillimetres[month]! / 5;
  }
  return weather;
}

function dayOfMonthOf(day: DayNumber): number {
  let first = day;
  while (monthOf(first - 1) === monthOf(day)) first -= 1;
  return day - first + 1;
}

/** Degree-days in a normal year from a day on for a number of days. */
export function normalDegreeDays(
  normals: MonthlyNormals,
  start: DayNumber,
  days: number,
  baseCelsius: number,
): number {
  let sum = 0;
  for (let day = start; day < start + days; day++) {
    const month = monthOf(day) - 1;
    const mean = (normals.minimumCelsius[month]! + normals.maximumCelsius[month]!) / 2;
    sum += Math.max(0, mean - baseCelsius);
  }
  return sum;
}

/** Loam of 3 % organic matter, New York normals, nothing planted, nothing laid. */
export function bareBed(over: Partial<BedSeason> = {}): BedSeason {
  const firstDay = over.firstDay ?? firstOf2013;
  const lastDay = over.lastDay ?? firstDay + days2013 - 1;
  return {
    bedId: 'bed',
    areaM2: 1,
    latitudeDegrees: 40.8,
    firstDay,
    lastDay,
    today: lastDay,
    seasonStarts: [],
    weather: normalYear(newYorkNormals, firstDay, lastDay - firstDay + 1),
    normals: newYorkNormals,
    soil: {
      fieldCapacity: 0.25,
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
    ...over,
  };
}

/** Shapes of crops for tests of the engine; the cited rows are in `app/tables/crops`. */
export const fruitingCrop: CropInput = {
  id: 'fruit',
  excessClass: 'fruit',
  need: 20,
  harvestNitrogen: 9.8,
  harvestGramsPerKilogram: 1.4,
  rootShare: 0.15,
  curveMiddle: 0.55,
  curveSteepness: 9,
  baseCelsius: 10,
  usualDays: 130,
  firstHarvestDays: 75,
  flowerDays: 25,
  fullRootDepth: 800,
  cropCoefficientStart: 0.6,
  cropCoefficientMiddle: 1.15,
  cropCoefficientEnd: 0.8,
  stageShares: [0.2, 0.3, 0.3, 0.2],
  depletionShare: 0.4,
  residueCarbonToNitrogen: 17,
  residueIsGreen: true,
  legume: null,
  enoughNitrateLow: 20,
  enoughNitrateHigh: 25,
  warmSoilCelsius: null,
  eatenFromSoil: false,
  seedFlyRisk: false,
  frostTender: true,
};

export const beanCrop: CropInput = {
  ...fruitingCrop,
  id: 'bean',
  excessClass: 'legume',
  need: 11.9,
  harvestNitrogen: 4.5,
  harvestGramsPerKilogram: 2.5,
  rootShare: 0.2,
  curveMiddle: 0.7,
  curveSteepness: 8,
  usualDays: 110,
  firstHarvestDays: 62,
  flowerDays: 42,
  fullRootDepth: 700,
  cropCoefficientStart: 0.5,
  cropCoefficientMiddle: 1.05,
  cropCoefficientEnd: 0.9,
  depletionShare: 0.45,
  residueCarbonToNitrogen: 16,
  legume: {
    usualShareFixed: 0.42,
    highShareFixed: 0.6,
    nodulationDays: 30,
    leafyLimit: 5.76,
    poddingLimit: 4.08,
  },
};

/** A planting of a crop for its usual days, cleared at their end. */
export function planted(
  crop: CropInput,
  startDay: DayNumber,
  over: Partial<PlantingInput> = {},
): PlantingInput {
  return {
    id: crop.id,
    crop,
    share: 1,
    startDay,
    sown: true,
    firstHarvestDay: startDay + crop.firstHarvestDays,
    usualEndDay: startDay + crop.usualDays,
    clearingDay: startDay + crop.usualDays,
    cleared: true,
    topsFate: 'taken away',
    normalDegreeDays: normalDegreeDays(newYorkNormals, startDay, crop.usualDays, crop.baseCelsius),
    nodulesSeen: null,
    ...over,
  };
}

/** Just-cut clippings laid so many mm deep: 250 g fresh per litre, 20 % dry matter, 3.4 % nitrogen. */
export function clippings(
  day: DayNumber,
  millimetres: number,
  over: Partial<LayerInput> = {},
): LayerInput {
  const freshKgPerM2 = 0.25 * millimetres;
  const dryKgPerM2 = 0.2 * freshKgPerM2;
  return {
    id: `clippings ${day}`,
    day,
    materialId: 'clippings',
    materialClass: 'green',
    isGreens: true,
    placement: 'laid',
    condition: 'just cut',
    freshKgPerM2,
    dryKgPerM2,
    nitrogen: 34 * dryKgPerM2,
    carbon: 440 * dryKgPerM2,
    laidDepth: millimetres,
    settledDensityKgPerM3: 50,
    mineralShare: 0,
    slowShare: 0,
    ...over,
  };
}

/** Loose dry straw laid so many mm deep: 40 kg dry matter per m3, 0.5 % nitrogen, C:N 80. */
export function straw(
  day: DayNumber,
  millimetres: number,
  over: Partial<LayerInput> = {},
): LayerInput {
  const dryKgPerM2 = 0.04 * millimetres;
  return {
    id: `straw ${day}`,
    day,
    materialId: 'straw',
    materialClass: 'mature',
    isGreens: false,
    placement: 'laid',
    condition: 'crisp',
    freshKgPerM2: 1.1 * dryKgPerM2,
    dryKgPerM2,
    nitrogen: 5 * dryKgPerM2,
    carbon: 400 * dryKgPerM2,
    laidDepth: millimetres,
    settledDensityKgPerM3: 40,
    mineralShare: 0,
    slowShare: 0,
    ...over,
  };
}

/** Own compost: 3 % of its nitrogen ready, 15 % slow, the rest to the soil. */
export function compost(
  day: DayNumber,
  millimetres: number,
  over: Partial<LayerInput> = {},
): LayerInput {
  const dryKgPerM2 = 0.3 * millimetres;
  return {
    id: `compost ${day}`,
    day,
    materialId: 'compost',
    materialClass: 'slow',
    isGreens: false,
    placement: 'laid',
    condition: 'crisp',
    freshKgPerM2: 2 * dryKgPerM2,
    dryKgPerM2,
    nitrogen: 14 * dryKgPerM2,
    carbon: 200 * dryKgPerM2,
    laidDepth: millimetres,
    settledDensityKgPerM3: 300,
    mineralShare: 0.03,
    slowShare: 0.15,
    ...over,
  };
}

/** g N/m2 over a run by where it came from and went to; `*` is anywhere. */
export function moved(
  result: SeasonResult,
  from: Place | '*',
  to: Place | '*',
  why?: string,
): number {
  let sum = 0;
  flowKinds.forEach((kind, index) => {
    if (from !== '*' && kind.from !== from) return;
    if (to !== '*' && kind.to !== to) return;
    if (why !== undefined && kind.why !== why) return;
    for (const amount of result.flows[index]!) sum += amount;
  });
  return sum;
}
