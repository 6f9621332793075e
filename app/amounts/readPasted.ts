import { dayFromParts, textFromDay, type DayNumber } from '../core/days';
import type { Wetness } from '../core/lawn/quantity';
import type { Amount, AmountFailure, ReadingContext } from './amount';
import { dayNumbers, pastedRows, plainDate, type DateOrder } from './pastedCells';
import { readAmount } from './readAmount';
import { readDay, type DayFailure } from './readDay';
import { readMeasure } from './readMeasure';

/** Lists that can be pasted from a spreadsheet. */
export type PastedKind = 'mowings' | 'rain';

export type PastedEntry =
  | {
      readonly kind: 'mowing';
      readonly day: DayNumber;
      readonly lawnId: string;
      readonly amount: Amount;
      readonly wetness: Wetness;
    }
  | { readonly kind: 'rain'; readonly day: DayNumber; readonly millimetres: number };

/** Why a line was left out. */
export type PastedRefusal =
  | { readonly kind: 'day'; readonly failure: DayFailure }
  | { readonly kind: 'ahead'; readonly day: DayNumber }
  | { readonly kind: 'long ago'; readonly day: DayNumber }
  | { readonly kind: 'amount'; readonly failure: AmountFailure }
  | { readonly kind: 'unknown lawn'; readonly name: string; readonly known: readonly string[] }
  | { readonly kind: 'which lawn'; readonly known: readonly string[] }
  | { readonly kind: 'unknown wetness'; readonly text: string }
  | { readonly kind: 'two numbers' }
  | { readonly kind: 'too few columns' };

export interface PastedLine {
  /** counted from 1, as the person sees it in the paste */
  readonly number: number;
  readonly cells: readonly string[];
  /** the line as it stands in the paste */
  readonly raw: string;
  readonly read:
    | { readonly ok: true; readonly entry: PastedEntry }
    | { readonly ok: false; readonly refusal: PastedRefusal };
}

export interface Pasted {
  readonly lines: readonly PastedLine[];
  /** the line that names the columns, if one does */
  readonly header: { readonly cells: readonly string[]; readonly raw: string } | null;
  /** some dates can be read both ways */
  readonly asksDateOrder: boolean;
  /** the order that was said, else what dates of the paste that fit one way only tell */
  readonly order: DateOrder | null;
  /** a date of the paste that can be read both ways, for the question */
  readonly eitherWay: string | null;
  /** lines past the limit, which are not read */
  readonly leftOut: number;
  /** these lines as they stand in the paste */
  readonly leftOutText: string;
}

/** More than any season's record; a guard against a whole workbook. */
export const mostPastedLines = 2000;
/** A year of fewer digits or from before gauges is a slip of the pen. */
const firstBelievableDay = dayFromParts(1900, 1, 1);

type Column = 'date' | 'lawn' | 'amount' | 'wetness';
const headings: readonly (readonly [RegExp, Column])[] = [
  [/^(?:date|day|when)\b/i, 'date'],
  [/^(?:lawn|where|grass)\b/i, 'lawn'],
  [/^(?:wet|state|damp|how wet)/i, 'wetness'],
  [
    /^(?:amount|yield|how much|mown|clippings|bags?|buckets?|rain(?:fall)?|precip(?:itation)?|prcp|mm|in(?:ch(?:es)?)?|kg|lbs?|litres?|liters?|gauge)\b/i,
    'amount',
  ],
];
const wetness: readonly (readonly [RegExp, Wetness])[] = [
  [/^(?:soaked|wet|dripping)$/i, 'soaked'],
  [/^(?:damp|dewy|moist)$/i, 'damp'],
  [/^dry$/i, 'dry'],
];

/** How wet a remark says it was ("first cut, wet"), where no column is headed so; else null. */
function wetnessIn(cells: readonly string[], at: Layout['at']): Wetness | null {
  if (at.wetness !== undefined) return null;
  const others = cells.filter((_, index) => !Object.values(at).includes(index));
  for (const word of others.flatMap((cell) => cell.split(/[^\p{L}]+/u))) {
    const found = wetness.find(([pattern]) => pattern.test(word));
    if (found) return found[1];
  }
  return null;
}

/** The order that dates tell which fit one way only (27/4/2013); null where none does, or both do. */
function toldOrder(dates: readonly (readonly [number, number])[]): DateOrder | null {
  const told = new Set(
    dates.flatMap(([first, second]): DateOrder[] => {
      if (first > 12) return ['day first'];
      return second > 12 ? ['month first'] : [];
    }),
  );
  return told.size === 1 ? [...told][0]! : null;
}

const isEitherWay = (text: string): boolean => {
  const [first, second] = dayNumbers(text) ?? [0, 0];
  return first !== second && first <= 12 && second <= 12;
};

const unitWord = 'bags?|buckets?|mm|cm|in(?:ch(?:es)?)?|kg|lbs?|litres?|liters?';
const rainUnit = /^(?:mm|cm|in(?:ch(?:es)?)?|"|millimet(?:re|er)s?|l\/m[2\u00B2])$/i;

/** A unit that the heading names, for bare numbers below it: "Rain (mm)", "Rain, in", "bags". */
function unitOfHeading(heading: string, kind: PastedKind): string {
  const inBrackets = /[([]([^)\]]+)[)\]]/.exec(heading)?.[1]?.trim();
  if (inBrackets !== undefined && (kind === 'mowings' || rainUnit.test(inBrackets)))
    return inBrackets;
  const word = new RegExp(`(?:^|[\\s,])(${unitWord})$`, 'i').exec(heading);
  return (word?.[1] ?? '').toLowerCase();
}

interface Layout {
  readonly at: Readonly<Partial<Record<Column, number>>>;
  readonly unit: string;
  readonly hasMoreNumbers: boolean;
}

function layoutOf(header: readonly string[], kind: PastedKind): Layout {
  const at: Partial<Record<Column, number>> = {};
  const words = header.map((heading) => heading.replaceAll('_', ' ').trim());
  words.forEach((heading, index) => {
    const column = headings.find(([pattern]) => pattern.test(heading))?.[1];
    if (column !== undefined && at[column] === undefined) at[column] = index;
  });
  return { at, unit: unitOfHeading(words[at.amount ?? -1] ?? '', kind), hasMoreNumbers: false };
}

const isTimeOfDay = (cell: string): boolean => /^\d{1,2}:\d{2}(?::\d{2})?$/.test(cell);

/**
 * Without a heading: the first cell is the day, the first with a number the amount, names of lawns
 * lawns, and so is what stands between the day and an amount mown. Where numbers stand in several
 * cells, nobody knows which of them is meant.
 */
function guessedLayout(
  cells: readonly string[],
  kind: PastedKind,
  context: ReadingContext,
): Layout {
  const date = cells.findIndex((cell) => cell !== '');
  const others = cells.flatMap((cell, index) =>
    index <= date || cell === '' || isTimeOfDay(cell) ? [] : [index],
  );
  const cell = (index: number): string => cells[index] ?? '';
  const lawn = others.find((index) => lawnNamed(cell(index), context) !== null);
  const wet = others.find((index) => wetness.some(([pattern]) => pattern.test(cell(index))));
  const unclaimed = others.filter((index) => index !== lawn && index !== wet);
  const numbers = unclaimed.filter((index) => /^[-+]?[.,]?\d/.test(cell(index)));
  const amount = numbers[0] ?? unclaimed[0];
  const named =
    lawn ?? (kind === 'mowings' ? unclaimed.find((index) => index < (amount ?? 0)) : undefined);
  return {
    at: {
      date,
      ...(amount === undefined ? {} : { amount }),
      ...(named === undefined ? {} : { lawn: named }),
      ...(wet === undefined ? {} : { wetness: wet }),
    },
    unit: '',
    hasMoreNumbers: numbers.length > 1,
  };
}

const lawnNamed = (text: string, { lawns }: ReadingContext): string | null =>
  lawns?.find(({ name }) => name.toLowerCase() === text.trim().toLowerCase())?.id ?? null;

/** A column headed "Bags" has "1 bag" and "1/2 bag" in it. */
function ofOne(written: string, unit: string, { containers }: ReadingContext): string {
  const isOne = /^(?:1(?:[.,]0*)?|0?[.,]\d+|[1-9]\/\d+)$/.test(written.trim());
  const container = containers.find(({ plural }) => plural.toLowerCase() === unit.toLowerCase());
  return isOne && container ? container.name : unit;
}

function readLine(
  cells: readonly string[],
  { at, unit, hasMoreNumbers }: Layout,
  kind: PastedKind,
  context: ReadingContext & { readonly today: DayNumber },
  order: DateOrder | null,
): PastedLine['read'] {
  const refused = (refusal: PastedRefusal): PastedLine['read'] => ({ ok: false, refusal });
  const cell = (column: Column): string => cells[at[column] ?? -1] ?? '';
  if (at.amount === undefined || cells.filter(Boolean).length < 2)
    return refused({ kind: 'too few columns' });
  if (hasMoreNumbers) return refused({ kind: 'two numbers' });
  const date = cell('date');
  const day = readDay(plainDate(date, order), context.today, 'lately');
  if (!day.ok) {
    const { error } = day;
    // what was typed is said, not what was made of it
    const failure = error.kind === 'empty' ? error : { ...error, text: date };
    return refused({ kind: 'day', failure });
  }
  if (day.value < firstBelievableDay) return refused({ kind: 'long ago', day: day.value });
  if (day.value > context.today) return refused({ kind: 'ahead', day: day.value });
  const { today: _today, ...dateless } = context;
  const written = cell('amount');
  const withUnit =
    /^[\d.,/ ]+$/.test(written) && unit !== ''
      ? `${written} ${ofOne(written, unit, context)}`
      : written;
  if (kind === 'rain') {
    // too little to measure, as keepers of gauges write it
    if (/^(?:t|tr|trace)$/i.test(written))
      return { ok: true, entry: { kind: 'rain', day: day.value, millimetres: 0 } };
    const rain = readMeasure(withUnit, 'rain', { ...dateless, bareNumber: true });
    return rain.ok
      ? { ok: true, entry: { kind: 'rain', day: day.value, millimetres: rain.value.value } }
      : refused({ kind: 'amount', failure: rain.error });
  }
  const lawns = context.lawns ?? [];
  const known = lawns.map(({ name }) => name);
  const named = cell('lawn');
  const lawnId =
    named === '' ? (lawns.length === 1 ? (lawns[0]?.id ?? null) : null) : lawnNamed(named, context);
  if (lawnId === null)
    return refused(
      named === '' ? { kind: 'which lawn', known } : { kind: 'unknown lawn', name: named, known },
    );
  const amount = readAmount(withUnit, 'mowing', { ...dateless, lawnId, bareNumber: true });
  if (!amount.ok) return refused({ kind: 'amount', failure: amount.error });
  const wet = wetness.find(([pattern]) => pattern.test(cell('wetness')))?.[1];
  if (wet === undefined && cell('wetness') !== '')
    return refused({ kind: 'unknown wetness', text: cell('wetness') });
  return {
    ok: true,
    entry: {
      kind: 'mowing',
      day: day.value,
      lawnId,
      amount: amount.value.amount,
      wetness: wet ?? amount.value.wetness ?? wetnessIn(cells, at) ?? 'damp',
    },
  };
}

/**
 * Reads mowings or rain pasted from a spreadsheet: one line each, cells parted by tabs (or by semicolons or
 * commas where there is no tab), with or without a line of headings. Nothing is dropped silently:
 * a line that cannot be read comes back with its number and the reason.
 *
 * @param said what 3/4/2013 means, once the person has said so
 */
export function readPasted(
  text: string,
  kind: PastedKind,
  context: ReadingContext & { readonly today: DayNumber },
  said: DateOrder | null = null,
): Pasted {
  const all = pastedRows(text);
  const rawOf = ({ from, to }: { readonly from: number; readonly to: number }): string =>
    text.slice(from, to);
  const first = all[0];
  const header =
    first?.cells.some((cell) =>
      headings.some(([pattern]) => pattern.test(cell.replaceAll('_', ' '))),
    ) &&
    // a line with numbers or a day in it says something of its own
    !first.cells.some(
      (cell) => /^\d/.test(cell) || readDay(plainDate(cell, said ?? 'day first'), context.today).ok,
    )
      ? first
      : null;
  const body = all.slice(header ? 1 : 0);
  const cellsOfAll = body.flatMap(({ cells }) => cells);
  const order = said ?? toldOrder(cellsOfAll.map(dayNumbers).filter((pair) => pair !== null));
  const named = header && layoutOf(header.cells, kind);
  const lines = body.slice(0, mostPastedLines).map((row): PastedLine => {
    const layout = named ?? guessedLayout(row.cells, kind, context);
    const read = readLine(row.cells, layout, kind, context, order);
    return { number: row.number, cells: row.cells, raw: rawOf(row), read };
  });
  const beyond = body[mostPastedLines];
  return {
    lines,
    header: header && { cells: header.cells, raw: rawOf(header) },
    asksDateOrder:
      order === null &&
      lines.some(
        ({ read }) =>
          !read.ok && read.refusal.kind === 'day' && read.refusal.failure.kind === 'ambiguous-date',
      ),
    order,
    eitherWay: cellsOfAll.find(isEitherWay) ?? null,
    leftOut: Math.max(0, body.length - mostPastedLines),
    leftOutText: beyond ? text.slice(beyond.from) : '',
  };
}

/** What makes two entries the same: one mowing of a lawn and one reading of the gauge on a day. */
export const pastedKey = (entry: PastedEntry): string =>
  entry.kind === 'mowing' ? `${textFromDay(entry.day)} ${entry.lawnId}` : textFromDay(entry.day);
