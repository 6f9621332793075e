/**
 * Civil days without clock or zone. A day is a whole number, 0 = 1970-01-01, in the proleptic
 * Gregorian calendar. The arithmetic is the usual era-based one (400 years = 146 097 days).
 */
export type DayNumber = number;

const zero = '0'.charCodeAt(0);

/** Day number of a year, month (1-12) and day of the month; the parts must name a real day. */
export function dayFromParts(year: number, month: number, dayOfMonth: number): DayNumber {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + dayOfMonth - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

export interface DayParts {
  readonly year: number;
  /** 1-12 */
  readonly month: number;
  readonly dayOfMonth: number;
}

export function partsFromDay(day: DayNumber): DayParts {
  const shifted = day + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthIndex = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthIndex < 10 ? monthIndex + 3 : monthIndex - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * monthIndex + 2) / 5) + 1,
  };
}

/** A whole number of so many digits from a place on; not a number where another character stands. */
function digitsAt(text: string, from: number, count: number): number {
  let value = 0;
  for (let at = from; at < from + count; at++) {
    const digit = text.charCodeAt(at) - zero;
    if (!(digit >= 0 && digit <= 9)) return Number.NaN;
    value = 10 * value + digit;
  }
  return value;
}

/**
 * Reads `YYYY-MM-DD`; null when the text is not a day that exists. Character by character: a garden
 * of ten years has thousands of days, read anew at every edit.
 */
export function dayFromText(text: string): DayNumber | null {
  if (text.length !== 10 || text[4] !== '-' || text[7] !== '-') return null;
  const year = digitsAt(text, 0, 4);
  const month = digitsAt(text, 5, 2);
  const dayOfMonth = digitsAt(text, 8, 2);
  const day = dayFromParts(year, month, dayOfMonth);
  const real = partsFromDay(day);
  // a day that is none counts on into another month
  return real.year === year && real.month === month && real.dayOfMonth === dayOfMonth ? day : null;
}

/** As `dayFromText`, for text that a schema has already checked. Throws otherwise. */
export function dayOf(text: string): DayNumber {
  const day = dayFromText(text);
  if (day === null) throw new Error(`Not a civil day: ${text}`);
  return day;
}

export function textFromDay(day: DayNumber): string {
  const { year, month, dayOfMonth } = partsFromDay(day);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

export const yearOf = (day: DayNumber): number => partsFromDay(day).year;
/** 1-12 */
export const monthOf = (day: DayNumber): number => partsFromDay(day).month;
/** 1-366, as J in FAO-56 */
export const dayOfYear = (day: DayNumber): number => day - dayFromParts(yearOf(day), 1, 1) + 1;
/** 0 = Monday ... 6 = Sunday */
export const weekdayOf = (day: DayNumber): number => (((day + 3) % 7) + 7) % 7;

/** First day of the season (12 months from the first of `startMonth`) that holds `day`. */
export function seasonStart(day: DayNumber, startMonth: number): DayNumber {
  const { year, month } = partsFromDay(day);
  return dayFromParts(month >= startMonth ? year : year - 1, startMonth, 1);
}

/** Last day of the season that holds `day`. */
export function seasonEnd(day: DayNumber, startMonth: number): DayNumber {
  return dayFromParts(yearOf(seasonStart(day, startMonth)) + 1, startMonth, 1) - 1;
}

/** Months of a year, the first first. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;
