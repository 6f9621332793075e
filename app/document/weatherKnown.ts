import { seasonStart, type DayNumber } from '../core/days';
import { seasonWeather } from '../core/season/ahead';
import { dayKinds } from '../core/season/input';
import { typicalWeatherSpread } from '../tables/imaginedWeather';
import { downloadedDays } from './weatherFrom';
import { normalsOf, recordOf } from './weatherRecord';
import { typicalSeed } from './seasonInput';
import type { Garden } from './schema';

/** How the days of the season up to today are known. */
export interface WeatherKnown {
  readonly days: number;
  readonly measured: number;
  /** days, among the measured and filled, that rest in part or whole on what was downloaded */
  readonly downloaded: number;
  readonly filled: number;
  readonly imagined: number;
}

/** Days from the season's first to `today`, both included, by how their weather is known. */
export function weatherKnown(garden: Garden, today: DayNumber): WeatherKnown {
  const { latitudeDegrees, seasonStartMonth } = garden.garden;
  const first = seasonStart(today, seasonStartMonth);
  const { kind } = seasonWeather(
    recordOf(garden, today),
    normalsOf(garden),
    first,
    today,
    today,
    typicalSeed,
    typicalWeatherSpread(latitudeDegrees),
    latitudeDegrees < 0,
  );
  const count = (wanted: (typeof dayKinds)[number]): number =>
    kind.reduce((sum, one) => sum + (dayKinds[one] === wanted ? 1 : 0), 0);
  return {
    days: kind.length,
    measured: count('measured'),
    downloaded: downloadedDays(garden, first, today).size,
    filled: count('filled'),
    imagined: count('imagined'),
  };
}
