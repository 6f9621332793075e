import { dayOfYear, seasonStart, type DayNumber } from '../core/days';
import { seasonWeather, type RecordedDay } from '../core/season/ahead';
import { dayKinds } from '../core/season/input';
import { lawnDays, type LawnDays } from '../core/lawn/lawnWater';
import { hargreavesReferenceEvapotranspiration } from '../core/soil/evapotranspiration';
import { typicalWeatherSpread } from '../tables/imaginedWeather';
import { growthCurveOf } from '../tables/lawnGrowth';
import { lawnGroundOf } from '../tables/lawnGrowthWater';
import { laidOutOnce } from './laidOut';
import { measuredEvaporation } from './measuredEvaporation';
import { normalsOf, recordOf } from './weatherRecord';
import type { Garden, Lawn, Texture } from './schema';

/** Days over which the lawn's water is run in before it is looked at. */
export const runInDays = 60;

/** A lawn over some days; `isKnown` where the day was measured or filled in. */
export interface LawnSeason extends LawnDays {
  readonly firstDay: DayNumber;
  readonly isKnown: readonly boolean[];
}

const textures = new WeakMap<Garden['beds'], Texture>();

/** The soil that most beds have stands for the lawn's, which nobody is asked for; loam without beds. */
export function lawnTexture({ beds }: Pick<Garden, 'beds'>): Texture {
  const known = textures.get(beds);
  if (known !== undefined) return known;
  const counts = new Map<Texture, number>();
  for (const { texture } of beds) counts.set(texture, (counts.get(texture) ?? 0) + 1);
  const [most] = [...counts].sort((one, other) => other[1] - one[1]);
  const texture = most?.[0] ?? 'loam';
  // each layer of clippings asks, and each bed at every edit
  if (Object.isFrozen(beds)) textures.set(beds, texture);
  return texture;
}

const imagined = dayKinds.indexOf('imagined');

/** A lawn is looked at over a few spans of days, each in some dozen imagined years. */
const seasons = laidOutOnce<LawnSeason>(128);

/**
 * A lawn's growth and water from `firstDay` to `lastDay`: measured weather up to `today`, imagined
 * after it with `seed`. What the record holds of later days is not read.
 *
 * @param by the garden's own record, or none: every day is then imagined
 * @returns what must not be changed: it is kept for as long as the garden's weather stays
 */
export function lawnSeason(
  garden: Garden,
  grass: Lawn['grass'],
  firstDay: DayNumber,
  lastDay: DayNumber,
  today: DayNumber,
  seed: number,
  by: 'record' | 'no record' = 'record',
): LawnSeason {
  const { latitudeDegrees, elevationMetres } = garden.garden;
  const key = [
    ...[grass, lawnTexture(garden), firstDay, lastDay, today, seed],
    ...[latitudeDegrees, elevationMetres, by],
  ];
  return seasons(garden, key.join(), () => {
    const record = by === 'record' ? recordOf(garden, today) : [];
    return lawnUnder(garden, grass, firstDay, lastDay, today, seed, record);
  });
}

/** As `lawnSeason`, by any other record, and made anew each time. */
export function lawnUnder(
  garden: Garden,
  grass: Lawn['grass'],
  firstDay: DayNumber,
  lastDay: DayNumber,
  today: DayNumber,
  seed: number,
  record: readonly RecordedDay[],
): LawnSeason {
  const { latitudeDegrees } = garden.garden;
  const from = firstDay - runInDays;
  const weather = seasonWeather(
    record,
    normalsOf(garden),
    from,
    lastDay,
    today,
    seed,
    typicalWeatherSpread(latitudeDegrees),
    latitudeDegrees < 0,
  );
  const measured = measuredEvaporation(garden, weather, from);
  const evapotranspiration = weather.minimumCelsius.map((low, index) => {
    const known = measured?.[index] ?? NaN;
    return Number.isNaN(known)
      ? hargreavesReferenceEvapotranspiration(
          low,
          weather.maximumCelsius[index] ?? low,
          latitudeDegrees,
          dayOfYear(from + index),
        )
      : known;
  });
  const days = lawnDays(
    {
      meanCelsius: weather.minimumCelsius.map(
        (low, index) => (low + (weather.maximumCelsius[index] ?? low)) / 2,
      ),
      rainMillimetres: weather.rainMillimetres,
      evapotranspiration,
    },
    lawnGroundOf(grass, lawnTexture(garden)),
    growthCurveOf(grass),
  );
  return {
    firstDay,
    growth: days.growth.slice(runInDays),
    water: days.water.slice(runInDays),
    isKnown: Array.from(weather.kind.slice(runInDays), (kind) => kind !== imagined),
  };
}

/** Imagined years whose mean is a usual one. */
const usualYears = 8;
/** The last answer: a page asks for the same place over and over. */
let lastUsual: { readonly key: string; readonly growth: number } | null = null;

/**
 * Growth of a usual year, in days of fastest growth: the mean of some imagined years of the monthly
 * normals, water and all. What a lawn of its kind yields in a year is spread by this.
 */
export function usualGrowth(garden: Garden, grass: Lawn['grass'], day: DayNumber): number {
  const { latitudeDegrees, seasonStartMonth } = garden.garden;
  const first = seasonStart(day, seasonStartMonth);
  const normals = normalsOf(garden);
  const key = JSON.stringify([grass, lawnTexture(garden), latitudeDegrees, first, normals]);
  if (lastUsual?.key === key) return lastUsual.growth;
  let sum = 0;
  for (let seed = 1; seed <= usualYears; seed++) {
    const year = lawnSeason(
      garden,
      grass,
      first,
      first + 364,
      first - runInDays - 1,
      seed,
      'no record',
    );
    sum += year.growth.reduce((all, one) => all + one, 0);
  }
  lastUsual = { key, growth: sum / usualYears };
  return lastUsual.growth;
}
