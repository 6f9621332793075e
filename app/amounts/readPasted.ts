import { textFromDay, type DayNumber } from '../core/days';
import type { Wetness } from '../core/lawn/quantity';
import type { Amount, AmountFailure, ReadingContext } from './amount';
import { readAmount } from './readAmount';
import { readDay, type DayFailure } from './readDay';
import { readMeasure } from './readMeasure';

/** Lists that can be pasted from a spreadsheet. */
export type PastedKind = 'mowings' | 'rain';

/** How dates such as 3/4/2013 are meant; null: such dates are refused and asked about. */
export type DateOrder = 'day first' | 'month first';

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
  | { readonly kind: 'amount'; readonly failure: AmountFailure }
  | { readonly kind: 'unknown lawn'; readonly name: string; readonly known: readonly string[] }
  | { readonly kind: 'which lawn'; readonly known: readonly string[] }
  | { readonly kind: 'too few columns' };

export interface PastedLine {
  /** counted from 1, as the person sees it in the paste */
  readonly number: number;
  readonly cells: readonly string[];
  readonly read:
    | { readonly ok: true; readonly entry: PastedEntry }
    | { readonly ok: false; readonly refusal: PastedRefusal };
}

export interface Pasted {
  readonly lines: readonly PastedLine[];
  /** the line that names the columns, if one does */
  readonly header: readonly string[] | null;
  /** some dates can be read both ways */
  readonly asksDateOrder: boolean;
  /** lines past the limit, which are not read */
  readonly leftOut: number;
}

/** More than any season's record; a guard against a whole workbook. */
export const mostPastedLines = 2000;

type Column = 'date' | 'lawn' | 'amount' | 'wetness';
const headings: readonly (readonly [RegExp, Column])[] = [
  [/^(?:date|day|when)\b/i, 'date'],
  [/^(?:lawn|where|grass)\b/i, 'lawn'],
  [/^(?:wet|state|damp|how wet)/i, 'wetness'],
  [
    /^(?:amount|yield|how much|mown|clippings|bags?|buckets?|rain|mm|in(?:ch(?:es)?)?|kg|lbs?|litres?|liters?|gauge)\b/i,
    'amount',
  ],
];
const wetness: readonly (readonly [RegExp, Wetness])[] = [
  [/^(?:soaked|wet|dripping)$/i, 'soaked'],
  [/^(?:damp|dewy|moist)$/i, 'damp'],
  [/^dry$/i, 'dry'],
];

const cellsOf = (line: string): string[] => {
  const separator = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ',';
  return line.split(separator).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
};

/** A unit that the heading names, for bare numbers below it: "Rain (mm)", "bags". */
const unitOfHeading = (heading: string): string => {
  const inBrackets = /[([]([^)\]]+)[)\]]/.exec(heading)?.[1];
  if (inBrackets !== undefined) return inBrackets.trim();
  const word = /^(?:bags?|buckets?|mm|in(?:ch(?:es)?)?|kg|lbs?|litres?|liters?)$/i.exec(
    heading.trim(),
  );
  return word ? word[0].toLowerCase() : '';
};

const numericDate = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/;

/** 3/4/2013 written out as the order says; anything else as it is. */
function orderedDate(text: string, order: DateOrder | null): string {
  const found = numericDate.exec(text);
  if (!found || order === null) return text;
  const [, first = '', second = '', year = ''] = found;
  const [day, month] = order === 'day first' ? [first, second] : [second, first];
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

interface Layout {
  readonly at: Readonly<Partial<Record<Column, number>>>;
  readonly unit: string;
}

function layoutOf(header: readonly string[]): Layout {
  const at: Partial<Record<Column, number>> = {};
  header.forEach((heading, index) => {
    const column = headings.find(([pattern]) => pattern.test(heading))?.[1];
    if (column !== undefined && at[column] === undefined) at[column] = index;
  });
  return { at, unit: unitOfHeading(header[at.amount ?? -1] ?? '') };
}

/** Without a heading: the first cell is the day, the one that reads as an amount the amount, names of lawns lawns. */
function guessedLayout(cells: readonly string[], context: ReadingContext): Layout {
  const isLawn = (cell: string): boolean => lawnNamed(cell, context) !== null;
  const isWetness = (cell: string): boolean => wetness.some(([pattern]) => pattern.test(cell));
  const at: Partial<Record<Column, number>> = { date: 0 };
  cells.forEach((cell, index) => {
    if (index === 0 || cell === '') return;
    if (isLawn(cell)) at.lawn ??= index;
    else if (isWetness(cell)) at.wetness ??= index;
    else at.amount ??= index;
  });
  return { at, unit: '' };
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
  { at, unit }: Layout,
  kind: PastedKind,
  context: ReadingContext & { readonly today: DayNumber },
  order: DateOrder | null,
): PastedLine['read'] {
  const refused = (refusal: PastedRefusal): PastedLine['read'] => ({ ok: false, refusal });
  const cell = (column: Column): string => cells[at[column] ?? -1] ?? '';
  if (at.amount === undefined || cells.filter(Boolean).length < 2)
    return refused({ kind: 'too few columns' });
  const day = readDay(orderedDate(cell('date'), order), context.today);
  if (!day.ok) return refused({ kind: 'day', failure: day.error });
  if (day.value > context.today) return refused({ kind: 'ahead', day: day.value });
  const { today: _today, ...dateless } = context;
  const written = cell('amount');
  const withUnit =
    /^[\d.,/ ]+$/.test(written) && unit !== ''
      ? `${written} ${ofOne(written, unit, context)}`
      : written;
  if (kind === 'rain') {
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
  return {
    ok: true,
    entry: {
      kind: 'mowing',
      day: day.value,
      lawnId,
      amount: amount.value.amount,
      wetness: wet ?? amount.value.wetness ?? 'damp',
    },
  };
}

/**
 * Reads mowings or rain pasted from a spreadsheet: one line each, cells parted by tabs (or by semicolons or
 * commas where there is no tab), with or without a line of headings. Nothing is dropped silently:
 * a line that cannot be read comes back with its number and the reason.
 *
 * @param order what 3/4/2013 means, once the person has said so
 */
export function readPasted(
  text: string,
  kind: PastedKind,
  context: ReadingContext & { readonly today: DayNumber },
  order: DateOrder | null = null,
): Pasted {
  const all = text
    .split(/\r\n|\n|\r/)
    .map((line, index) => ({ number: index + 1, cells: cellsOf(line) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const first = all[0];
  const isHeader =
    first !== undefined &&
    first.cells.some((cell) => headings.some(([pattern]) => pattern.test(cell))) &&
    !readDay(orderedDate(first.cells[0] ?? '', order ?? 'day first'), context.today).ok;
  const header = isHeader ? (first?.cells ?? null) : null;
  const body = all.slice(isHeader ? 1 : 0);
  const lines = body.slice(0, mostPastedLines).map(({ number, cells }): PastedLine => {
    const layout = header ? layoutOf(header) : guessedLayout(cells, context);
    return { number, cells, read: readLine(cells, layout, kind, context, order) };
  });
  return {
    lines,
    header,
    asksDateOrder:
      order === null &&
      lines.some(
        ({ read }) =>
          !read.ok && read.refusal.kind === 'day' && read.refusal.failure.kind === 'ambiguous-date',
      ),
    leftOut: Math.max(0, body.length - mostPastedLines),
  };
}

/** What makes two entries the same: one mowing of a lawn and one reading of the gauge on a day. */
export const pastedKey = (entry: PastedEntry): string =>
  entry.kind === 'mowing' ? `${textFromDay(entry.day)} ${entry.lawnId}` : textFromDay(entry.day);
