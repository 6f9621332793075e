import { partsFromDay } from '../../days';
import { seedFrom } from '../../random';
import { imaginedMonth, type ImaginedMonth, type WeatherSpread } from '../imagine';
import { dayKinds, type BedSeason, type SeasonWeather } from '../input';

const imagined = dayKinds.indexOf('imagined');

/** Where the weather of a draw comes from. Plain data: it may cross to a worker. */
export type WeatherSource =
  | {
      readonly kind: 'generated';
      readonly spread: WeatherSpread;
      /** the bed lies under glass or film: what is imagined of rain does not reach it */
      readonly isRoofed?: boolean;
    }
  /** whole seasons with the measured days in place and other years' days after them */
  | { readonly kind: 'years'; readonly seasons: readonly SeasonWeather[] };

/** The seed of one draw's weather. */
export const weatherSeed = (seed: number, draw: number): number => seedFrom(seed, draw);

/**
 * The weather of one draw: measured and filled days as they are, imagined days as any one year may
 * bring them. A day of a draw depends on seed, draw and date alone, so it holds still while
 * `today` moves past the days before it.
 */
export function drawnWeather(
  input: Pick<BedSeason, 'weather' | 'normals' | 'firstDay'>,
  source: WeatherSource,
  seed: number,
  draw: number,
): SeasonWeather {
  if (source.kind === 'years') return source.seasons[draw % source.seasons.length] ?? input.weather;
  const { weather, normals, firstDay } = input;
  const minimumCelsius = weather.minimumCelsius.slice();
  const maximumCelsius = weather.maximumCelsius.slice();
  const rainMillimetres = weather.rainMillimetres.slice();
  const own = weatherSeed(seed, draw);
  let month: ImaginedMonth | null = null;
  let monthKey = -1;
  for (let index = 0; index < weather.kind.length; index++) {
    if (weather.kind[index] !== imagined) continue;
    const date = partsFromDay(firstDay + index);
    const key = date.year * 12 + date.month;
    if (month === null || key !== monthKey) {
      month = imaginedMonth(normals, source.spread, own, date.year, date.month, false);
      monthKey = key;
    }
    minimumCelsius[index] = month.minimumCelsius[date.dayOfMonth - 1]!;
    maximumCelsius[index] = month.maximumCelsius[date.dayOfMonth - 1]!;
    if (!source.isRoofed) rainMillimetres[index] = month.rainMillimetres[date.dayOfMonth - 1]!;
  }
  return { ...weather, minimumCelsius, maximumCelsius, rainMillimetres };
}
