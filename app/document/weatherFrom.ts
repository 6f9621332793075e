import type { DayNumber } from '../core/days';
import { longestFilledGap } from '../core/season/ahead';
import type { Garden } from './schema';
import { layeredWeather, type LayeredDay, type WeatherKept } from './weatherLayers';

/** How a value of a day is known, the best first. */
export const weatherRanks = ['own', 'record', 'downloaded', 'filled', 'imagined'] as const;
export type WeatherRank = (typeof weatherRanks)[number];

export interface WeatherFrom {
  readonly temperatures: Readonly<Record<WeatherRank, number>>;
  readonly rain: Readonly<Record<WeatherRank, number>>;
}

type Layers = ReadonlyMap<DayNumber, LayeredDay>;
type Which = keyof LayeredDay;

/** Whether a day's missing value lies in a gap short enough to be filled from its ends, as `seasonWeather` does. */
function isFilled(layers: Layers, which: Which, day: DayNumber): boolean {
  const known = (one: DayNumber): boolean => (layers.get(one)?.[which] ?? null) !== null;
  let [before, after] = [day - 1, day + 1];
  while (day - before <= longestFilledGap && !known(before)) before--;
  while (after - before <= longestFilledGap + 1 && !known(after)) after++;
  return known(before) && known(after) && after - before <= longestFilledGap + 1;
}

/** How the sums know each value of a day that is not after today. */
function rankOf(layers: Layers, which: Which, day: DayNumber): WeatherRank {
  const from = layers.get(day)?.[which]?.from;
  return from ?? (isFilled(layers, which, day) ? 'filled' : 'imagined');
}

const none = (): Record<WeatherRank, number> => ({
  own: 0,
  record: 0,
  downloaded: 0,
  filled: 0,
  imagined: 0,
});

/**
 * How many days from `first` to `last` each way of knowing the weather gives to the sums. The two
 * temperatures of a day count as the worse known of both.
 *
 * @param last not after today: later days are all imagined
 */
export function weatherFrom(garden: Garden, first: DayNumber, last: DayNumber): WeatherFrom {
  const layers = layeredWeather(garden, last);
  const counts = { temperatures: none(), rain: none() };
  for (let day = first; day <= last; day++) {
    const [low, high] = [rankOf(layers, 'lowest', day), rankOf(layers, 'highest', day)];
    const isLowWorse = weatherRanks.indexOf(low) > weatherRanks.indexOf(high);
    counts.temperatures[isLowWorse ? low : high]++;
    counts.rain[rankOf(layers, 'rain', day)]++;
  }
  return counts;
}

/** Where the sums have a day's weather from, where somebody knows it: two of them where values differ in that. */
export const dayOrigins = ['own', 'own and record', 'record', 'downloaded'] as const;
export type DayOrigin = (typeof dayOrigins)[number];

/**
 * Where each day from `first` to `last` is known from. A day of which any value was downloaded is
 * called so; a day of which nobody knows anything is absent.
 */
export function dayOriginsOf(
  garden: WeatherKept,
  first: DayNumber,
  last: DayNumber,
): ReadonlyMap<DayNumber, DayOrigin> {
  const found = new Map<DayNumber, DayOrigin>();
  for (const [day, { lowest, highest, rain }] of layeredWeather(garden, last)) {
    if (day < first) continue;
    const from = new Set([lowest, highest, rain].flatMap((value) => value?.from ?? []));
    if (from.has('downloaded')) found.set(day, 'downloaded');
    else if (from.has('own')) found.set(day, from.has('record') ? 'own and record' : 'own');
    else if (from.has('record')) found.set(day, 'record');
  }
  return found;
}

/** Days from `first` to `last` of which the sums take some value from what was downloaded. */
export function downloadedDays(
  garden: Garden,
  first: DayNumber,
  last: DayNumber,
): ReadonlySet<DayNumber> {
  const found = new Set<DayNumber>();
  if (!garden.weather.download) return found;
  for (const [day, known] of layeredWeather(garden, last))
    if (
      day >= first &&
      [known.lowest, known.highest, known.rain].some((value) => value?.from === 'downloaded')
    )
      found.add(day);
  return found;
}
