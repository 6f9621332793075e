import { dayOf, type DayNumber } from '../core/days';
import type { Garden } from './schema';

/** What of a garden holds weather. */
export type WeatherKept = Pick<Garden, 'weather' | 'events'>;

/** Where a day's weather is known from; each outranks those before it. */
export const weatherSources = ['downloaded', 'record', 'own'] as const;
export type WeatherSource = (typeof weatherSources)[number];

/** A value and where it is from; null where nothing knows it. */
type Sourced = { readonly value: number; readonly from: WeatherSource } | null;

export interface LayeredDay {
  readonly lowest: Sourced;
  readonly highest: Sourced;
  readonly rain: Sourced;
}

const nothing: LayeredDay = { lowest: null, highest: null, rain: null };

type Row = readonly [string, number | null, number | null, number | null];

/** A day with better values put over what was known of it; where both cannot be, what was known gives way. */
function withBetter(known: LayeredDay, from: WeatherSource, [, low, high, rain]: Row): LayeredDay {
  const of = (value: number | null): Sourced => (value === null ? null : { value, from });
  const contradicts =
    (low !== null && known.highest !== null && low > known.highest.value) ||
    (high !== null && known.lowest !== null && high < known.lowest.value);
  const kept = contradicts ? nothing : known;
  return {
    lowest: of(low) ?? kept.lowest,
    highest: of(high) ?? kept.highest,
    rain: of(rain) ?? known.rain,
  };
}

/** Readings of the gauge by day; emptied twice in a day, both count. */
function gauged(garden: WeatherKept): Row[] {
  const sums = new Map<string, number>();
  for (const event of garden.events)
    if (event.kind === 'rain gauge')
      sums.set(event.date, (sums.get(event.date) ?? 0) + event.millimetres);
  return [...sums].map(([date, rain]): Row => [date, null, null, rain]);
}

/**
 * What is known of the weather of every day up to `upTo`, value by value from the best there is: the
 * garden's own gauge and thermometer before the record that was brought in, that before what was
 * downloaded for the place. Days that nothing knows are absent.
 */
export function layeredWeather(garden: WeatherKept, upTo: DayNumber): Map<DayNumber, LayeredDay> {
  const days = new Map<DayNumber, LayeredDay>();
  const put = (from: WeatherSource, rows: readonly Row[]): void => {
    for (const row of rows) {
      const day = dayOf(row[0]);
      if (day <= upTo) days.set(day, withBetter(days.get(day) ?? nothing, from, row));
    }
  };
  const { days: record, download, thermometer = [] } = garden.weather;
  put('downloaded', download?.days ?? []);
  put('record', record);
  put('own', gauged(garden));
  put(
    'own',
    thermometer.map(([date, low, high]): Row => [date, low, high, null]),
  );
  return days;
}
