import { dayFromParts, partsFromDay, type DayNumber } from '../../core/days';
import type { DateOrder } from './weatherTypes';

const monthNames = [
  'jan',
  'feb',
  'mar',
  'apr',
  'may',
  'jun',
  'jul',
  'aug',
  'sep',
  'oct',
  'nov',
  'dec',
];

/** A date as its parts stand; `first` and `second` are day and month in an order yet to be found. */
export type DateParts =
  | { readonly kind: 'known'; readonly day: DayNumber }
  | {
      readonly kind: 'either';
      readonly first: number;
      readonly second: number;
      readonly year: number;
      readonly dotted: boolean;
    };

const yearFirst = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})(?:[T ].*)?$/;
const compact = /^(\d{4})(\d{2})(\d{2})$/;
const yearLast = /^(\d{1,2})([-/. ])(\d{1,2})[-/. ](\d{4}|\d{2})(?:[T ].*)?$/;
const monthInside = /^(\d{1,2})[-. ]?([A-Za-z]{3,9})\.?[-, ]*(\d{4}|\d{2})$/;
const weekdayAhead = /^(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*[.,]? +(?=\w)/i;
const monthAhead = /^([A-Za-z]{3,9})\.? +(\d{1,2}),? +(\d{4})$/;

/** The day of three numbers, or null when there is no such day. */
export function realDay(year: number, month: number, dayOfMonth: number): DayNumber | null {
  if (month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > 31) return null;
  const day = dayFromParts(year, month, dayOfMonth);
  const parts = partsFromDay(day);
  return parts.month === month && parts.dayOfMonth === dayOfMonth ? day : null;
}

const wholeYear = (text: string): number => {
  const year = Number(text);
  if (text.length > 2) return year;
  return year < 70 ? 2000 + year : 1900 + year;
};

const known = (year: number, month: number, dayOfMonth: number): DateParts | null => {
  const day = realDay(year, month, dayOfMonth);
  return day === null ? null : { kind: 'known', day };
};

/** Reads a date without deciding whether day or month comes first; null when it is none. */
export function datePartsOf(written: string): DateParts | null {
  if (written.length > 40) return null;
  const text = written.replace(weekdayAhead, '');
  const first = yearFirst.exec(text) ?? compact.exec(text);
  if (first) return known(Number(first[1]), Number(first[2]), Number(first[3]));
  const last = yearLast.exec(text);
  if (last) {
    return {
      kind: 'either',
      first: Number(last[1]),
      second: Number(last[3]),
      year: wholeYear(last[4] ?? ''),
      dotted: last[2] === '.',
    };
  }
  const inside = monthInside.exec(text);
  if (inside) {
    const month = monthNames.indexOf((inside[2] ?? '').slice(0, 3).toLowerCase()) + 1;
    return known(wholeYear(inside[3] ?? ''), month, Number(inside[1]));
  }
  const ahead = monthAhead.exec(text);
  if (!ahead) return null;
  const month = monthNames.indexOf((ahead[1] ?? '').slice(0, 3).toLowerCase()) + 1;
  return known(Number(ahead[3]), month, Number(ahead[2]));
}

/** The day, once the order is known. */
export function dayInOrder(parts: DateParts, order: DateOrder): DayNumber | null {
  if (parts.kind === 'known') return parts.day;
  const { first, second, year } = parts;
  return order === 'mdy' ? realDay(year, first, second) : realDay(year, second, first);
}

/**
 * Whether day or month comes first in a list of dates. A part over 12 decides; dots mean that the
 * day comes first; else the order in which more dates follow the one before by a single day.
 */
export function dateOrderOf(dates: readonly (DateParts | null)[]): {
  readonly order: DateOrder;
  readonly isClear: boolean;
} {
  let [dayFirst, monthFirst, either] = [0, 0, 0];
  let isDotted = false;
  const steps = { dmy: 0, mdy: 0 };
  let before: Record<'dmy' | 'mdy', DayNumber | null> = { dmy: null, mdy: null };
  for (const parts of dates) {
    if (!parts || parts.kind === 'known') continue;
    either++;
    isDotted ||= parts.dotted;
    if (parts.first > 12) dayFirst++;
    if (parts.second > 12) monthFirst++;
    const now = { dmy: dayInOrder(parts, 'dmy'), mdy: dayInOrder(parts, 'mdy') };
    for (const order of ['dmy', 'mdy'] as const) {
      const [last, next] = [before[order], now[order]];
      if (last !== null && next !== null && Math.abs(next - last) === 1) steps[order]++;
    }
    before = now;
  }
  if (either === 0) return { order: 'ymd', isClear: true };
  // one slip of the pen among thousands of lines decides nothing
  if (dayFirst !== monthFirst) {
    return { order: dayFirst > monthFirst ? 'dmy' : 'mdy', isClear: true };
  }
  if (isDotted) return { order: 'dmy', isClear: true };
  if (steps.dmy !== steps.mdy) {
    return { order: steps.dmy > steps.mdy ? 'dmy' : 'mdy', isClear: true };
  }
  return { order: 'dmy', isClear: false };
}
