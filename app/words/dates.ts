import { partsFromDay, type DayNumber } from '../core/days';
import { dayFull, dayWord, weekdayWord } from './chartFormat';

/** How a person writes a day: month first in gardens shown in US units. */
export interface DayStyle {
  readonly dayFirst: boolean;
}
export const dayStyle = (shown: 'metric' | 'us'): DayStyle => ({ dayFirst: shown !== 'us' });

/**
 * A day as people say it, seen from `today`: "today", "yesterday", "tomorrow", "Saturday 8 June"
 * within a week, "8 June" in the same year, else with its year.
 */
export function dayNear(day: DayNumber, today: DayNumber, style: DayStyle): string {
  if (day === today) return 'today';
  if (day === today - 1) return 'yesterday';
  if (day === today + 1) return 'tomorrow';
  const words = dayWord(day, style);
  if (Math.abs(day - today) < 7) return `${weekdayWord(day)} ${words}`;
  const { year } = partsFromDay(day);
  if (year === partsFromDay(today).year) return words;
  return style.dayFirst ? `${words} ${year}` : `${words}, ${year}`;
}

/** "8 June to 15 June 2013", the year once and only where it is not this one. */
export function dayRange(
  first: DayNumber,
  last: DayNumber,
  today: DayNumber,
  style: DayStyle,
): string {
  const [from, to] = [partsFromDay(first).year, partsFromDay(last).year];
  const thisYear = partsFromDay(today).year;
  const withYear = (day: DayNumber, year: number): string =>
    style.dayFirst ? `${dayWord(day, style)} ${year}` : `${dayWord(day, style)}, ${year}`;
  const end = to === thisYear ? dayWord(last, style) : withYear(last, to);
  const start = from === to ? dayWord(first, style) : withYear(first, from);
  return `${start} to ${end}`;
}

export { dayFull };
