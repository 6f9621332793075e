import { dayFromParts, partsFromDay, textFromDay, weekdayOf, type DayNumber } from '../core/days';
import { failure, success, type Result } from '../core/result';
import type { AmountFailure, AmountReading, AmountField, ReadingContext, Refusal } from './amount';
import { readAmount } from './readAmount';
import {
  dayInYear,
  dayWords,
  findDay,
  monthNumber,
  monthPattern,
  weekdayNumber,
  weekdayPattern,
} from './readDay';
import { suggestionFor } from './suggest';
import { tidyText } from './tidyText';

export interface BackLogEntry {
  readonly day: DayNumber;
  readonly reading: AmountReading;
}

/** What one entry of a back-log means, to be looked at before anything is logged. */
export interface BackLog {
  /** in order of day */
  readonly entries: readonly BackLogEntry[];
  /** true when the days were worked out from "a week", so the person should check them */
  readonly daysAreGuessed: boolean;
  /** the one rhythm all entries follow ("a week since April"), null for single dates */
  readonly series: Series | null;
}

export interface Series {
  readonly from: DayNumber;
  /** the last entry's day */
  readonly to: DayNumber;
  readonly everyDays: number;
}

const counts: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  eight: 8,
  ten: 10,
  twelve: 12,
};
const count = `(\\d{1,2}|${Object.keys(counts).join('|')})`;
const countOf = (word: string): number => counts[word] ?? Number(word);

interface Rhythm {
  readonly days: number;
  /** 0 = Monday, null where no weekday was named */
  readonly weekday: number | null;
}
type Taken<Found> = { readonly found: Found; readonly rest: string } | null;

function cutOut<Found>(
  text: string,
  pattern: RegExp,
  read: (match: string[]) => Found,
): Taken<Found> {
  const match = new RegExp(pattern.source, 'iu').exec(text);
  if (!match) return null;
  const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`;
  return {
    found: read([...match].map((group: string | undefined) => group?.toLowerCase() ?? '')),
    rest,
  };
}

function takeRhythm(text: string): Taken<Rhythm> {
  const every = '(?:every|each|once every)';
  return (
    cutOut(
      text,
      new RegExp(`\\b${every} ${count} (day|week)s?\\b`),
      ([, number = '', unit = '']) => ({
        days: countOf(number) * (unit === 'week' ? 7 : 1),
        weekday: null,
      }),
    ) ??
    cutOut(text, /\b(?:every (?:other|second) week|fortnightly)\b/, () => ({
      days: 14,
      weekday: null,
    })) ??
    cutOut(
      text,
      new RegExp(`\\b(?:every|each|on) (${weekdayPattern})s?\\b(?= |$)`),
      ([, word = '']) => ({
        days: 7,
        weekday: weekdayNumber(word),
      }),
    ) ??
    cutOut(
      text,
      /\b(?:(?:a|an|per|each|every|once a) (day|week|fortnight)|(daily|weekly))\b(?! (?:ago|old))/,
      ([, unit = '', adverb = '']) => ({
        days: unit === 'day' || adverb === 'daily' ? 1 : unit === 'fortnight' ? 14 : 7,
        weekday: null,
      }),
    )
  );
}

interface Span {
  readonly first: DayNumber;
  readonly last: DayNumber;
}

const monthStart = (month: number, year: number | null, today: DayNumber): DayNumber | null =>
  dayInYear(1, month, year, today, 'past');
function monthEnd(start: DayNumber): DayNumber {
  const { year, month } = partsFromDay(start);
  return month === 12 ? dayFromParts(year + 1, 1, 1) - 1 : dayFromParts(year, month + 1, 1) - 1;
}

/** A day or a month named in words; a month gives its first and last day. */
function spanNamed(words: string, today: DayNumber): Result<Span | null, Refusal> {
  const day = findDay(words, today, 'past');
  if (!day.ok) return day;
  if (day.value) return success({ first: day.value.day, last: day.value.day });
  const month = new RegExp(`\\b(${monthPattern})\\b(?: (\\d{4}))?`).exec(words);
  if (!month) return success(null);
  const year = month[2] === undefined ? null : Number(month[2]);
  const start = monthStart(monthNumber(month[1] ?? ''), year, today);
  if (start === null) return success(null);
  const part = /\b(early|start of|beginning of|mid|middle of|late|end of)\b/.exec(words)?.[1] ?? '';
  const late = /^(?:late|end)/.test(part);
  const shift = /^mid/.test(part) ? 14 : late ? 24 : 0;
  return success({ first: start + shift, last: Math.min(monthEnd(start), today) });
}

const named = `((?:the )?(?:(?:early|start of|beginning of|mid|middle of|late|end of)[ -])?(?:(?:${monthPattern})\\b(?: \\d{1,2}(?:st|nd|rd|th)?\\b)?(?:,? \\d{4})?|\\d{1,2}(?:st|nd|rd|th)? (?:of )?(?:${monthPattern})\\b(?: \\d{4})?|\\d{4}-\\d\\d-\\d\\d|last \\w+|\\w+ weeks? ago))`;
const spans: readonly RegExp[] = [
  new RegExp(`\\b(?:from|between|since) ${named} (?:to|until|till|til|and|-) ${named}`),
  new RegExp(`\\bsince ${named}`),
  new RegExp(`\\bfrom ${named}(?: on(?:wards?)?)?`),
  new RegExp(`\\b(?:in|during|all|all through|throughout) ${named}`),
];

function takeSpan(text: string, today: DayNumber): Result<Taken<Span>, Refusal> {
  const weeks = cutOut(
    text,
    new RegExp(`\\b(?:for|over|during) (?:the )?(?:last |past )?${count} weeks?\\b`),
    ([, number = '']) => countOf(number),
  );
  if (weeks)
    return success({
      found: { first: today - 7 * weeks.found + 1, last: today },
      rest: weeks.rest,
    });
  for (const [index, pattern] of spans.entries()) {
    const cut = cutOut(text, pattern, ([, from = '', to = '']) => ({ from, to }));
    if (!cut) continue;
    const from = spanNamed(cut.found.from, today);
    if (!from.ok) return from;
    const to = cut.found.to === '' ? success(null) : spanNamed(cut.found.to, today);
    if (!to.ok) return to;
    if (!from.value) return success(null);
    const isWithin = index === spans.length - 1;
    const last = to.value?.last ?? (isWithin ? from.value.last : today);
    return success({ found: { first: from.value.first, last }, rest: cut.rest });
  }
  return success(null);
}

function daysOf(rhythm: Rhythm, span: Span): DayNumber[] {
  const wait = rhythm.weekday === null ? 0 : (rhythm.weekday - weekdayOf(span.first) + 7) % 7;
  const days: DayNumber[] = [];
  for (let day = span.first + wait; day <= span.last; day += rhythm.days) days.push(day);
  return days;
}

/** "on 8, 15 and 22 June" */
function takeList(text: string, today: DayNumber): Taken<DayNumber[]> {
  const pattern = new RegExp(
    `\\b(?:on )?(?:the )?(\\d{1,2}(?:st|nd|rd|th)?(?:(?:, ?| and |, and )\\d{1,2}(?:st|nd|rd|th)?)+) (?:of )?(${monthPattern})\\b(?: (\\d{4}))?`,
  );
  const cut = cutOut(text, pattern, ([, list = '', month = '', year = '']) => {
    const numbers = [...list.matchAll(/\d{1,2}/g)].map((digits) => Number(digits[0]));
    const monthTyped = monthNumber(month);
    const typed = year === '' ? null : Number(year);
    const first = dayInYear(numbers[0] ?? 0, monthTyped, typed, today, 'lately');
    if (first === null) return [];
    // one list is of one year: a day after today is then told, not taken for last year's
    const { year: inYear } = partsFromDay(first);
    return numbers.map((number) => dayInYear(number, monthTyped, inYear, today, 'past'));
  });
  const days = cut?.found.filter((day) => day !== null) ?? [];
  if (!cut || days.length === 0 || days.length < cut.found.length) return null;
  return { found: days, rest: cut.rest };
}

interface Dated {
  readonly days: readonly DayNumber[];
  readonly words: string;
  readonly guessed: boolean;
  readonly everyDays: number | null;
  /** the words of a single date */
  readonly said: string | null;
}

function datesIn(text: string, context: ReadingContext, today: DayNumber): Result<Dated, Refusal> {
  const tidy = tidyText(text, context.units);
  if (!tidy.ok) return tidy;
  // the words are kept as typed: capitals may belong to a name
  const typed = text.replace(/\s+/g, ' ').trim();
  const list = takeList(typed, today);
  if (list)
    return success({
      days: list.found,
      words: list.rest,
      guessed: false,
      everyDays: null,
      said: null,
    });
  const rhythm = takeRhythm(typed);
  if (rhythm) {
    const span = takeSpan(rhythm.rest, today);
    if (!span.ok) return span;
    if (!span.value) return failure({ kind: 'no-start' });
    const days = daysOf(rhythm.found, span.value.found);
    if (days.length === 0) return failure({ kind: 'no-start' });
    return success({
      days,
      words: span.value.rest,
      guessed: true,
      everyDays: rhythm.found.days,
      said: null,
    });
  }
  const single = findDay(typed, today, 'lately');
  if (!single.ok) return single;
  if (!single.value)
    return success({ days: [today], words: typed, guessed: false, everyDays: null, said: null });
  return success({
    days: [single.value.day],
    words: single.value.rest,
    guessed: false,
    everyDays: null,
    said: single.value.said,
  });
}

const mostEntries = 400;

const amountWords = (words: string): string =>
  words
    .replace(/\s+/g, ' ')
    .replace(/ ,/g, ',')
    .replace(/^[ ,]+|[ ,]+$/g, '');

function itemReads(
  text: string,
  field: AmountField,
  context: ReadingContext,
  today: DayNumber,
): boolean {
  const dated = datesIn(text, context, today);
  if (!dated.ok || dated.value.days.some((day) => day > today)) return false;
  return readAmount(amountWords(dated.value.words), field, context).ok;
}

function readItem(
  text: string,
  field: AmountField,
  context: ReadingContext,
  today: DayNumber,
): Result<BackLog, Refusal | AmountFailure> {
  const dated = datesIn(text, context, today);
  if (!dated.ok) return dated;
  const late = dated.value.days.find((day) => day > today);
  if (late !== undefined)
    return failure({ kind: 'future-day', text: dated.value.said ?? dayWords(textFromDay(late)) });
  if (dated.value.days.length > mostEntries)
    return failure({ kind: 'too-large', limit: `${mostEntries} entries` });
  const words = amountWords(dated.value.words);
  const reading = readAmount(words, field, context);
  if (!reading.ok) {
    // only the amount was at fault: what was said of the days stays in the suggestion
    const whole = text.replace(words, reading.error.suggestion).trim();
    return itemReads(whole, field, context, today)
      ? failure({ ...reading.error, suggestion: whole })
      : reading;
  }
  const entries = dated.value.days.map((day) => ({
    day,
    reading: { ...reading.value, day },
  }));
  const { everyDays, guessed } = dated.value;
  const [first, last] = [entries[0], entries.at(-1)];
  const series =
    everyDays !== null && first && last ? { from: first.day, to: last.day, everyDays } : null;
  return success({ entries, daysAreGuessed: guessed, series });
}

/**
 * Reads what was done on earlier days in one entry: "2 bags on 8 June", "2 bags on 8, 15 and
 * 22 June", "roughly two bags a week on the squash from 1 May", "a bucket every Saturday from 1 May
 * to 15 June", several parted by semicolons. Without a date it is today's.
 *
 * "A week" counts from the first day of the span in steps of seven days, up to today; the answer
 * says that its days are guessed. A month means its first day as a beginning, its last as an end.
 * Days without a year are the latest that do not lie after `today`.
 *
 * @returns the entries in order of day for the screen to show before they are logged; a failure
 *   as `readAmount`, besides `no-start` (how often, but not since when)
 */
export function readBackLog(
  text: string,
  field: AmountField,
  context: ReadingContext,
  today: DayNumber,
): Result<BackLog, AmountFailure> {
  const within: ReadingContext = { ...context, today };
  const read = (entry: string): Result<BackLog, Refusal | AmountFailure> => {
    const items = entry.split(/[;\n]+/).filter((item) => item.trim() !== '');
    if (items.length === 0) return failure({ kind: 'empty' });
    const logs: BackLog[] = [];
    for (const item of items) {
      const log = readItem(item, field, within, today);
      if (!log.ok) return log;
      logs.push(log.value);
    }
    return success({
      entries: logs.flatMap((log) => log.entries).sort((one, other) => one.day - other.day),
      daysAreGuessed: logs.some((log) => log.daysAreGuessed),
      series: logs.length === 1 ? (logs[0]?.series ?? null) : null,
    });
  };
  const log = read(text);
  if (log.ok) return log;
  const { error } = log;
  const own = 'suggestion' in error ? error.suggestion : null;
  const suggestion =
    own ?? suggestionFor(error, text, field, within, (candidate) => read(candidate).ok);
  return failure({ ...error, field, suggestion } as AmountFailure);
}
