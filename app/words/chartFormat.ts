import { type DayNumber, monthNames, partsFromDay, weekdayOf } from '../core/days';
import type { ChartUnit, ChartUnits } from './chartUnits';
import { rulerFraction } from './figures';

const weekdayNames = [
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
  'Sunday',
] as const;

export const weekdayWord = (day: DayNumber): string => weekdayNames[weekdayOf(day)] ?? '';
/** 1-12 */
export const monthWord = (month: number): string => monthNames[month - 1] ?? '';
export const monthShort = (month: number): string => monthWord(month).slice(0, 3);

/** "15 June", or "June 15" where the month comes first. */
export function dayWord(day: DayNumber, units: Pick<ChartUnits, 'dayFirst'>): string {
  const { month, dayOfMonth } = partsFromDay(day);
  return units.dayFirst ? `${dayOfMonth} ${monthWord(month)}` : `${monthWord(month)} ${dayOfMonth}`;
}

/** "15 Jun" / "Jun 15", for marks with little room. */
export function dayShort(day: DayNumber, units: Pick<ChartUnits, 'dayFirst'>): string {
  const { month, dayOfMonth } = partsFromDay(day);
  return units.dayFirst
    ? `${dayOfMonth} ${monthShort(month)}`
    : `${monthShort(month)} ${dayOfMonth}`;
}

/** "Saturday 15 June 2013" / "Saturday, June 15, 2013". */
export function dayFull(day: DayNumber, units: Pick<ChartUnits, 'dayFirst'>): string {
  const weekday = weekdayWord(day);
  const { year } = partsFromDay(day);
  return units.dayFirst
    ? `${weekday} ${dayWord(day, units)} ${year}`
    : `${weekday}, ${dayWord(day, units)}, ${year}`;
}

const minus = (text: string): string => text.replace('-', '−');

/**
 * A value of an estimate in the shown unit, without it: two figures at most, and no more decimals
 * than the unit has. Whole numbers keep their tens and hundreds.
 */
export function amount(inside: number, unit: ChartUnit): string {
  if (unit.onRuler) return rulerFraction(inside * unit.perInside);
  const value = Number((inside * unit.perInside).toPrecision(2));
  const places = value === 0 ? unit.decimals : 1 - Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.max(0, Math.min(unit.decimals, places));
  const rounded = Number(value.toFixed(decimals));
  // a negative nothing reads as an error
  return minus((rounded === 0 ? 0 : rounded).toFixed(decimals));
}

export const amountWithUnit = (inside: number, unit: ChartUnit): string =>
  `${amount(inside, unit)} ${unit.short}`;

/** As `amountWithUnit` for reading aloud. */
export const amountSpoken = (inside: number, unit: ChartUnit): string =>
  `${amount(inside, unit)} ${unit.long}`;

/** A temperature in whole degrees, without its unit. */
export function degrees(celsius: number, { warmth }: Pick<ChartUnits, 'warmth'>): string {
  const rounded = Math.round(celsius * warmth.perInside + warmth.zero);
  return minus(String(rounded === 0 ? 0 : rounded));
}

/** A column of an account: always the same decimals, one more than an estimate shows. */
export function accountAmount(inside: number, unit: ChartUnit): string {
  const decimals = unit.decimals + 1;
  const rounded = Number((inside * unit.perInside).toFixed(decimals));
  return minus((rounded === 0 ? 0 : rounded).toFixed(decimals));
}

export const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** "a, b and c" */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}
