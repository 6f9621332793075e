import { textFromDay } from '../../core/days';
import { failure, success, type Result } from '../../core/result';
import { extraColumns, type ExtraColumn, type Garden, type WeatherRow } from '../schema';
import type { Measure, ReadDay } from './weatherTypes';

/** Days a garden file can hold, as its schema says. */
export const mostWeatherDays = 40_000;

export interface WeatherMerged {
  readonly garden: Garden;
  /** days that were not in the garden before */
  readonly added: number;
  /** days of which at least one value is another than before */
  readonly changed: number;
  /** days that hold just what they held */
  readonly same: number;
  /** old values left out because a new one of that day contradicts them (a highest below a lowest) */
  readonly contradicted: number;
}

export type WeatherMergeFailure = {
  readonly kind: 'too many days';
  readonly days: number;
  readonly limit: number;
};

const extraMeasures: Readonly<Record<ExtraColumn, Measure>> = {
  'wind m/s at 2 m': 'wind',
  'humidity %': 'humidity',
  'highest humidity %': 'highest humidity',
  'lowest humidity %': 'lowest humidity',
  'dew point deg C': 'dew point',
  'sunshine h': 'sunshine',
  'radiation MJ/m2': 'radiation',
};

const byDate = (one: readonly [string, ...unknown[]], other: readonly [string, ...unknown[]]) =>
  one[0] < other[0] ? -1 : 1;

type Extra = Garden['weather']['extra'];

function mergedExtra(before: Extra, days: readonly ReadDay[]): Extra {
  const brought = extraColumns.filter((column) =>
    days.some(({ values }) => values[extraMeasures[column]] !== undefined),
  );
  if (brought.length === 0) return before;
  const columns = extraColumns.filter(
    (column) => brought.includes(column) || before?.columns.includes(column),
  );
  const rows = new Map<string, (number | null)[]>();
  for (const [date, ...values] of before?.days ?? []) {
    rows.set(
      date,
      columns.map((column) => values[before?.columns.indexOf(column) ?? -1] ?? null),
    );
  }
  for (const { day, values } of days) {
    if (!brought.some((column) => values[extraMeasures[column]] !== undefined)) continue;
    const date = textFromDay(day);
    const known = rows.get(date);
    rows.set(
      date,
      columns.map((column, at) => values[extraMeasures[column]] ?? known?.[at] ?? null),
    );
  }
  return {
    columns,
    days: [...rows]
      .map(([date, row]): [string, ...(number | null)[]] => [date, ...row])
      .sort(byDate),
  };
}

/**
 * The garden with measured days put into its record: the whole of `weather.days` and
 * `weather.extra` as they are afterwards, everything else the very same objects, so that it is one
 * step to undo. A measured value replaces what stood there; a value that was not measured leaves
 * what stood there alone, unless both together cannot be.
 *
 * @param days rising, as `readWeather` gives them
 * @returns `too many days` when the file could not hold them: read fewer (`from`)
 */
export function withWeather(
  garden: Garden,
  days: readonly ReadDay[],
): Result<WeatherMerged, WeatherMergeFailure> {
  const rows = new Map<string, WeatherRow>(garden.weather.days.map((row) => [row[0], row]));
  let [added, changed, same, contradicted] = [0, 0, 0, 0];
  for (const { day, values } of days) {
    const { lowest, highest, rain } = values;
    if (lowest === undefined && highest === undefined && rain === undefined) continue;
    const date = textFromDay(day);
    const before = rows.get(date);
    let [low, high] = [lowest ?? before?.[1] ?? null, highest ?? before?.[2] ?? null];
    if (low !== null && high !== null && high < low) {
      contradicted++;
      if (lowest === undefined) low = null;
      else high = null;
    }
    const row: WeatherRow = [date, low, high, rain ?? before?.[3] ?? null];
    rows.set(date, row);
    if (!before) added++;
    else if (row.every((value, at) => value === before[at])) same++;
    else changed++;
  }
  const extra = mergedExtra(garden.weather.extra, days);
  const most = Math.max(rows.size, extra?.days.length ?? 0);
  if (most > mostWeatherDays) {
    return failure({ kind: 'too many days', days: most, limit: mostWeatherDays });
  }
  const weather = {
    ...garden.weather,
    days: added + changed === 0 ? garden.weather.days : [...rows.values()].sort(byDate),
    ...(extra ? { extra } : {}),
  };
  return success({ garden: { ...garden, weather }, added, changed, same, contradicted });
}

/** One reading of the gardener's own thermometer. */
export interface ThermometerReading {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly lowestCelsius: number | null;
  readonly highestCelsius: number | null;
}

/**
 * The garden with a reading of its own thermometer, which outranks the record of that day; a second
 * reading of a day replaces the first, one with neither temperature takes it out.
 */
export function withThermometer(garden: Garden, reading: ThermometerReading): Garden {
  const { date, lowestCelsius, highestCelsius } = reading;
  const others = (garden.weather.thermometer ?? []).filter(([day]) => day !== date);
  const isEmpty = lowestCelsius === null && highestCelsius === null;
  const thermometer: NonNullable<Garden['weather']['thermometer']> = isEmpty
    ? others
    : [
        ...others,
        [date, lowestCelsius, highestCelsius] as [string, number | null, number | null],
      ].sort(byDate);
  return { ...garden, weather: { ...garden.weather, thermometer } };
}
