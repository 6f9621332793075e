import { dayFromText, dayOf, textFromDay, type DayNumber } from '../../core/days';
import { failure, success, type Result } from '../../core/result';
import { DayBook, gapsOf } from './dayBook';
import { celsiusOf, millimetresOf } from './scale';
import type { Gap, Listed, Measure, ReadDay, Refused } from './weatherTypes';

/** What was asked of the weather service, and must be answered. */
export interface DownloadAsked {
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
  /** YYYY-MM-DD, both included */
  readonly firstDay: string;
  readonly lastDay: string;
}

/** Why an answer of the weather service cannot be used at all. */
export type DownloadFailure =
  | { readonly kind: 'not whole' }
  | { readonly kind: 'service says'; readonly reason: string }
  | { readonly kind: 'other form'; readonly what: string }
  | { readonly kind: 'other unit'; readonly measure: Measure; readonly unit: string }
  | {
      readonly kind: 'other place';
      readonly latitudeDegrees: number;
      readonly longitudeDegrees: number;
    }
  | { readonly kind: 'no days'; readonly refused: Listed<Refused> };

export interface Download {
  /** rising */
  readonly days: readonly ReadDay[];
  /** middle of the square of the map that the days stand for */
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
  readonly elevationMetres: number | null;
  readonly firstDay: string;
  readonly lastDay: string;
  /** days with lowest, highest and rain */
  readonly wholeDays: number;
  readonly gaps: Listed<Gap>;
  /** lines are the days of the answer, counted from 1 */
  readonly refused: Listed<Refused>;
  /** days at the end of what was asked for that the service has no value of yet */
  readonly notYet: number;
}

const columns = [
  ['highest', 'temperature_2m_max'],
  ['lowest', 'temperature_2m_min'],
  ['rain', 'precipitation_sum'],
] as const satisfies readonly (readonly [Measure, string])[];

/** The service answers for the middle of a square of its map, at most about 25 km wide. */
const squareDegrees = 0.6;

type Fields = Readonly<Record<string, unknown>>;
const fieldsOf = (value: unknown): Fields | null =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Fields) : null;
const numberIn = (fields: Fields, name: string): number | null => {
  const value = fields[name];
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
};
const clipped = (value: unknown): string => String(value).slice(0, 60);

type ToInside = (value: number) => number;

/** How a value of the named unit becomes one of ours; null where the unit is none that we know. */
function insideOf(measure: Measure, unit: unknown): ToInside | null {
  if (measure === 'rain') {
    if (unit === 'mm') return (value) => millimetresOf(value, 'mm');
    return unit === 'inch' ? (value) => millimetresOf(value, 'in') : null;
  }
  if (unit === '°C') return (value) => celsiusOf(value, 'C');
  return unit === '°F' ? (value) => celsiusOf(value, 'F') : null;
}

interface Column {
  readonly measure: Measure;
  readonly values: readonly unknown[];
  readonly inside: ToInside;
}

function columnsOf(
  daily: Fields,
  units: Fields,
  length: number,
): Result<readonly Column[], DownloadFailure> {
  const found: Column[] = [];
  for (const [measure, name] of columns) {
    const values = daily[name];
    if (!Array.isArray(values)) return failure({ kind: 'other form', what: name });
    if (values.length !== length)
      return failure({
        kind: 'other form',
        what: `${name}: ${String(values.length)} values for ${String(length)} days`,
      });
    const inside = insideOf(measure, units[name]);
    if (!inside) return failure({ kind: 'other unit', measure, unit: clipped(units[name]) });
    found.push({ measure, values, inside });
  }
  return success(found);
}

/** Puts the days into the book; the day before each must be the day before it. */
function readDays(times: readonly unknown[], found: readonly Column[], book: DayBook): void {
  let before: DayNumber | null = null;
  times.forEach((time, index) => {
    const line = index + 1;
    const day = typeof time === 'string' ? dayFromText(time) : null;
    if (day === null || (before !== null && day !== before + 1)) {
      book.refuse(line, null, { kind: 'no day', text: clipped(time) });
      return;
    }
    before = day;
    if (!book.isBelievable(line, day) || !book.isWanted(day)) return;
    for (const { measure, values, inside } of found) {
      const value = values[index];
      if (value === null) continue;
      if (typeof value === 'number' && Number.isFinite(value))
        book.put(line, day, measure, Math.round(inside(value) * 1000) / 1000);
      else book.refuse(line, day, { kind: 'no number', measure, text: clipped(value) });
    }
  });
}

/**
 * Reads what the weather service answered for a place. The same is refused as of a file: values that
 * cannot be, a highest below its lowest, days that are no days or do not follow each other. A value
 * that is missing is a gap, never nought.
 *
 * @returns days within what was asked, in deg C and mm; `not whole` where it is no JSON to the end,
 *   `other form`, `other unit`, `other place` where it is not what was asked for
 * @source form of the answer: the service's documentation, as our notes on daily weather have it
 */
export function readDownload(
  text: string,
  asked: DownloadAsked,
): Result<Download, DownloadFailure> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return failure({ kind: 'not whole' });
  }
  const answer = fieldsOf(parsed);
  if (!answer) return failure({ kind: 'other form', what: 'no object' });
  if (answer['error'] === true)
    return failure({ kind: 'service says', reason: clipped(answer['reason'] ?? '') });
  const [latitudeDegrees, longitudeDegrees] = [
    numberIn(answer, 'latitude'),
    numberIn(answer, 'longitude'),
  ];
  if (latitudeDegrees === null || longitudeDegrees === null)
    return failure({ kind: 'other form', what: 'latitude, longitude' });
  const apart = Math.abs(longitudeDegrees - asked.longitudeDegrees);
  const isNear =
    Math.abs(latitudeDegrees - asked.latitudeDegrees) <= squareDegrees &&
    // round the back of the world
    Math.min(apart, 360 - apart) <= squareDegrees;
  if (!isNear) return failure({ kind: 'other place', latitudeDegrees, longitudeDegrees });
  const daily = fieldsOf(answer['daily']);
  const times = daily?.['time'];
  if (!daily || !Array.isArray(times)) return failure({ kind: 'other form', what: 'daily, time' });
  const found = columnsOf(daily, fieldsOf(answer['daily_units']) ?? {}, times.length);
  if (!found.ok) return found;
  const [from, to] = [dayOf(asked.firstDay), dayOf(asked.lastDay)];
  const book = new DayBook({ from, to });
  readDays(times, found.value, book);
  const days = book.finish();
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return failure({ kind: 'no days', refused: book.refused });
  return success({
    days,
    latitudeDegrees,
    longitudeDegrees,
    elevationMetres: numberIn(answer, 'elevation'),
    firstDay: textFromDay(first.day),
    lastDay: textFromDay(last.day),
    wholeDays: days.filter(({ values }) =>
      columns.every(([measure]) => values[measure] !== undefined),
    ).length,
    gaps: gapsOf(days),
    refused: book.refused,
    notYet: to - last.day,
  });
}
