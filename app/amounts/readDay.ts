import {
  dayFromParts,
  dayFromText,
  partsFromDay,
  textFromDay,
  weekdayOf,
  type DayNumber,
} from '../core/days';
import { failure, success, type Result } from '../core/result';
import type { Refusal } from './amount';

const months = [
  'jan(?:uary)?',
  'feb(?:ruary)?',
  'mar(?:ch)?',
  'apr(?:il)?',
  'may',
  'june?',
  'july?',
  'aug(?:ust)?',
  'sept?(?:ember)?',
  'oct(?:ober)?',
  'nov(?:ember)?',
  'dec(?:ember)?',
];
const weekdays = [
  'mon(?:day)?',
  'tue(?:s(?:day)?)?',
  'wed(?:nesday)?',
  'thu(?:r(?:s(?:day)?)?)?',
  'fri(?:day)?',
  'sat(?:urday)?',
  'sun(?:day)?',
];
export const monthPattern = months.join('|');
export const weekdayPattern = weekdays.join('|');
const longWeekdayPattern = 'monday|tuesday|wednesday|thursday|friday|saturday|sunday';
const nth = '(?<![\\d/.])(\\d{1,2})(?:st|nd|rd|th)?';
const before = '(?:\\b(?:on|since|from)\\s+)?(?:the\\s+)?';

const whole = (pattern: string): RegExp => new RegExp(`^(?:${pattern})$`);
/** 1-12, or 0 when the word is no month. */
export const monthNumber = (word: string): number =>
  months.findIndex((pattern) => whole(pattern).test(word)) + 1;
/** 0 = Monday; -1 when the word is no weekday. */
export const weekdayNumber = (word: string): number =>
  weekdays.findIndex((pattern) => whole(pattern).test(word));

/**
 * Which year a day without one belongs to: the latest not after today; the same, unless it is ten
 * months ago and soon comes round again; or the nearest.
 */
export type YearChoice = 'past' | 'lately' | 'nearest';

/** The day named, in the year that fits; null when that day does not exist. */
export function dayInYear(
  dayOfMonth: number,
  month: number,
  year: number | null,
  today: DayNumber,
  choice: YearChoice,
): DayNumber | null {
  const candidate = (inYear: number): DayNumber | null =>
    dayFromText(
      `${String(inYear).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`,
    );
  if (year !== null) return candidate(year);
  const thisYear = partsFromDay(today).year;
  // 29 February may have to look back four years (eight around 1900)
  const years = Array.from({ length: 10 }, (_, back) => thisYear + 1 - back);
  const days = years.map(candidate).filter((day) => day !== null);
  if (choice === 'past') return days.find((day) => day <= today) ?? null;
  if (choice === 'lately') {
    const last = days.find((day) => day <= today);
    // ten months back and soon due again: more likely a slip than news of last year
    if (last !== undefined && today - last <= 300) return last;
    return days.findLast((day) => day > today) ?? null;
  }
  const sorted = [...days].sort((one, other) => Math.abs(one - today) - Math.abs(other - today));
  return sorted[0] ?? null;
}

const yearOf = (text: string | undefined): number | null => {
  if (text === undefined) return null;
  const year = Number(text);
  return text.length === 2 ? 2000 + year : year;
};

export interface DayFound {
  readonly day: DayNumber;
  /** the words of the date */
  readonly said: string;
  /** the text without the words of the date */
  readonly rest: string;
}

type Reader = (
  match: readonly (string | undefined)[],
  today: DayNumber,
  choice: YearChoice,
) => DayNumber | null | 'ambiguous';

const yearAfter = '(?:,?\\s*(\\d{4}))?';
// 8/6 alone is a date only in a date field: elsewhere it is a fraction
const wholeNumbers = /^(\d{1,2})[/.](\d{1,2})(?:[/.](\d{4}|\d{2}))?$/;
// a stop after each number makes them ordinals, and those are written day first
const ordinals = /^(\d{1,2})\.\s?(\d{1,2})\.$/;
const readOrdinals: Reader = (match, today, choice) =>
  dayInYear(Number(match[1]), Number(match[2]), null, today, choice);
const readNumbers: Reader = (match, today, choice) => {
  const [first, second] = [Number(match[1]), Number(match[2])];
  if (first <= 12 && second <= 12 && first !== second) return 'ambiguous';
  const [dayOfMonth, month] = first > 12 ? [first, second] : [second, first];
  return dayInYear(dayOfMonth, month, yearOf(match[3]), today, choice);
};

const counts: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};
const steps: Readonly<Record<string, number>> = { day: 1, week: 7, fortnight: 14 };
const many = '(\\d{1,3}|an?|two|three|four|five|six)\\s+(day|week|fortnight)s?';
const stretch = (match: readonly (string | undefined)[]): number =>
  (counts[match[1] ?? ''] ?? Number(match[1])) * (steps[match[2] ?? ''] ?? 1);

/** In a date field alone: nothing was mown or laid on a day to come. */
const daysToCome: readonly (readonly [RegExp, Reader])[] = [
  [/\b(?:the\s+)?day after tomorrow\b/i, (_match, today) => today + 2],
  [/\btomorrow\b/i, (_match, today) => today + 1],
  [
    new RegExp(`\\bin\\s+${many}\\b|\\b${many}\\s+from\\s+(?:now|today)\\b`, 'i'),
    (match, today) =>
      today + stretch(match[1] === undefined ? [match[0], ...match.slice(3)] : match),
  ],
];

const forms: readonly (readonly [RegExp, Reader])[] = [
  [
    new RegExp(`${before}\\b(\\d{4}-\\d{1,2}-\\d{1,2})\\b`, 'iu'),
    (match) => {
      const [y = '', m = '', d = ''] = (match[1] ?? '').split('-');
      return dayFromText(`${y}-${m.padStart(2, '0')}-${d.padStart(2, '0')}`);
    },
  ],
  [
    new RegExp(`${before}\\b${nth}\\s+(?:of\\s+)?(${monthPattern})\\b${yearAfter}`, 'iu'),
    (match, today, choice) =>
      dayInYear(Number(match[1]), monthNumber(match[2] ?? ''), yearOf(match[3]), today, choice),
  ],
  [
    new RegExp(`${before}\\b(${monthPattern})\\s+${nth}\\b(?!\\s*(?:/|\\.\\d))${yearAfter}`, 'iu'),
    (match, today, choice) =>
      dayInYear(Number(match[2]), monthNumber(match[1] ?? ''), yearOf(match[3]), today, choice),
  ],
  [/\b(?:the\s+)?day before yesterday\b/i, (_match, today) => today - 2],
  ...daysToCome,
  [
    /\b(today|yesterday|this morning|this afternoon|this evening|tonight|just now)(?![\p{L}'])/iu,
    (match, today) => (match[1] === 'yesterday' ? today - 1 : today),
  ],
  [new RegExp(`\\b${many}\\s+ago\\b`, 'i'), (match, today) => today - stretch(match)],
  [
    // "sat" and "sun" are also plain words: the short forms count only after a preposition
    new RegExp(
      `\\b(on|last|this|next)\\s+(${weekdayPattern})\\b|\\b(${longWeekdayPattern})\\b`,
      'iu',
    ),
    (match, today) => {
      const wanted = weekdayNumber(match[2] ?? match[3] ?? '');
      const back = (weekdayOf(today) - wanted + 7) % 7;
      if (match[1] === 'next') return today - back + 7;
      return match[1] === 'last' && back === 0 ? today - 7 : today - back;
    },
  ],
  [/\bon\s+(\d{1,2})[/.](\d{1,2})(?:[/.](\d{4}|\d{2}))?(?!\s*[\p{L}"'])/iu, readNumbers],
  [wholeNumbers, readNumbers],
  [ordinals, readOrdinals],
];

const onlyInFields: ReadonlySet<RegExp> = new Set([
  wholeNumbers,
  ordinals,
  ...daysToCome.map(([pattern]) => pattern),
]);

/**
 * Looks for a day in a tidied text: "8 June", "June 8th", "yesterday", "last Saturday",
 * "2 weeks ago", "2013-06-08"; in a date field also "tomorrow", "in 3 weeks". Null when the text names none.
 *
 * Fails as `ambiguous-date` (8/6: June or August?) and `unknown-day` (31 June).
 *
 * @param isField the text is a day and nothing else: there "8/6" and "8.6." are days too
 */
export function findDay(
  text: string,
  today: DayNumber,
  choice: YearChoice,
  isField = choice === 'nearest',
): Result<DayFound | null, Refusal> {
  for (const [pattern, read] of forms) {
    if (!isField && onlyInFields.has(pattern)) continue;
    const match = pattern.exec(text);
    if (!match) continue;
    const groups = [...match].map((group: string | undefined) => group?.toLowerCase());
    const day = read(groups, today, choice);
    const said = match[0].replace(/^(?:on|since|from)\s+/i, '').trim();
    if (day === 'ambiguous') return failure({ kind: 'ambiguous-date', text: said });
    if (day === null) return failure({ kind: 'unknown-day', text: said });
    const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`;
    return success({ day, said, rest });
  }
  return success(null);
}

const monthAlone = new RegExp(
  `^(?:in |last |this |since )*(early|mid|late)?[- ]?(${monthPattern})\\.?(?:,? (\\d{4}))?$`,
);

/** What can be wrong with a date field. `suggestion` is a day as YYYY-MM-DD. */
export type DayFailure = { readonly suggestion: string } & (
  | { readonly kind: 'empty' }
  | { readonly kind: 'not-a-day'; readonly text: string }
  | { readonly kind: 'month-alone'; readonly text: string }
  | { readonly kind: 'ambiguous-date'; readonly text: string }
  | { readonly kind: 'unknown-day'; readonly text: string }
);

/**
 * Reads a date field, wholly. A day without a year is the one nearest to today unless said otherwise.
 * Fails as a `DayFailure`; nothing is guessed between day-month and month-day. Of a month alone the
 * suggestion is its middle.
 */
export function readDay(
  text: string,
  today: DayNumber,
  choice: YearChoice = 'nearest',
): Result<DayNumber, DayFailure> {
  const suggestion = textFromDay(today);
  const tidy = text.toLowerCase().replace(/\s+/g, ' ').trim().slice(0, 80);
  if (tidy === '') return failure({ kind: 'empty', suggestion });
  const alone = monthAlone.exec(tidy);
  if (alone) {
    const [, place = '', name = '', year] = alone;
    const dayOfMonth = { early: 5, late: 25 }[place] ?? 15;
    const middle = dayInYear(dayOfMonth, monthNumber(name), yearOf(year), today, choice);
    return failure({
      kind: 'month-alone',
      text: name.charAt(0).toUpperCase() + name.slice(1),
      suggestion: middle === null ? suggestion : textFromDay(middle),
    });
  }
  const found = findDay(tidy.replace(/(\p{L})\./gu, '$1 '), today, choice, true);
  if (!found.ok) {
    const { error } = found;
    if (error.kind === 'ambiguous-date' || error.kind === 'unknown-day')
      return failure({ ...error, suggestion: nearestReading(error.text, today) });
    return failure({ kind: 'not-a-day', text, suggestion });
  }
  if (found.value === null || found.value.rest.replace(/[\s,.]/g, '') !== '')
    return failure({ kind: 'not-a-day', text, suggestion });
  return success(found.value.day);
}

/** 8/6 as the nearer of its two days, not after today where one is not; 31 June as the last of June. */
export function nearestReading(text: string, today: DayNumber): string {
  const slashed = /^(\d{1,2})[/.](\d{1,2})/.exec(text);
  if (slashed) {
    const [first, second] = [Number(slashed[1]), Number(slashed[2])];
    const both = [
      dayInYear(first, second, null, today, 'nearest'),
      dayInYear(second, first, null, today, 'nearest'),
    ].filter((day) => day !== null);
    const past = both.filter((day) => day <= today);
    const best = (past.length > 0 ? past : both).sort(
      (one, other) => Math.abs(one - today) - Math.abs(other - today),
    )[0];
    if (best !== undefined) return textFromDay(best);
  }
  const words = new RegExp(`(${monthPattern})`).exec(text);
  const month = monthNumber(words?.[1] ?? '');
  const first = month > 0 ? dayInYear(1, month, null, today, 'past') : null;
  if (first === null) return textFromDay(today);
  const { year: thatYear } = partsFromDay(first);
  const next =
    month === 12 ? dayFromParts(thatYear + 1, 1, 1) : dayFromParts(thatYear, month + 1, 1);
  const last = next - 1;
  return textFromDay(
    last <= today
      ? last
      : (dayInYear(partsFromDay(last).dayOfMonth, month, null, today, 'past') ?? today),
  );
}

const monthNames =
  'January February March April May June July August September October November December'.split(
    ' ',
  );
/** A day as it may be typed: "8 June 2013". */
export function dayWords(text: string): string {
  const [year = '', month = '', dayOfMonth = ''] = text.split('-');
  return `${Number(dayOfMonth)} ${monthNames[Number(month) - 1] ?? ''} ${year}`;
}
