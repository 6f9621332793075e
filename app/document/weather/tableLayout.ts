import { failure, success, type Result } from '../../core/result';
import { rolesByValues, type ColumnOfValues } from './byValues';
import { isCommaNumber, unitOfCells } from './cellUnits';
import { cellsOf, numberOf, separatorOf, type Separator } from './cells';
import { datePartsOf } from './civilDates';
import { headerMeaning, unitsIn, type HeaderMeaning } from './headers';
import { saysNothing, textLines } from './textLines';
import type { ColumnRole, HowKnown, WeatherFailure, WeatherOptions } from './weatherTypes';

export interface TableColumn extends HeaderMeaning {
  /** from 0 */
  readonly at: number;
  /** header, or "column 3" */
  readonly where: string;
  readonly how: HowKnown;
  /** written behind its numbers, in small letters; null where they stand alone */
  readonly cellUnit: string | null;
}

export interface TableLayout {
  readonly separator: Separator;
  readonly decimalMark: '.' | ',';
  /** line of the headers; 0 where there are none */
  readonly headerLine: number;
  readonly headers: readonly string[];
  readonly columns: readonly TableColumn[];
  readonly unused: readonly string[];
}

/** Lines that are looked at to learn how a table is laid out. */
const sampleLines = 60;

interface SampleLine {
  readonly number: number;
  readonly text: string;
}

function sampleOf(text: string): SampleLine[] {
  const sample: SampleLine[] = [];
  for (const { number, text: line } of textLines(text)) {
    if (line !== null && !saysNothing(line)) {
      sample.push({ number, text: line });
    }
    if (sample.length === sampleLines) break;
  }
  return sample;
}

type ExactNames = ReadonlyMap<string, ColumnRole> | null;

function meaningOf(header: string, exactNames: ExactNames): HeaderMeaning | null {
  if (!exactNames) return headerMeaning(header);
  const role = exactNames.get(header);
  return role === undefined ? null : { role, temperature: null, rain: null, unit: null };
}

/**
 * The headers: a line before the first date of which at least two cells are known, else the very
 * line before it when it holds no number.
 */
function headerOf(sample: readonly SampleLine[], separator: Separator, exactNames: ExactNames) {
  let before: { readonly number: number; readonly cells: readonly string[] } | null = null;
  for (const { number, text } of sample) {
    const cells = cellsOf(text, separator);
    if (cells.some((cell) => datePartsOf(cell) !== null)) {
      const isBare = before?.cells.every((cell) => !/^[-+]?\d/.test(cell)) ?? false;
      return isBare && before?.cells.length === cells.length ? before : null;
    }
    const known = cells.filter((cell) => meaningOf(cell, exactNames) !== null);
    if (known.length >= 2) return { number, cells };
    before = { number, cells };
  }
  return null;
}

const roleTakesDate = (roles: ReadonlySet<ColumnRole>): boolean =>
  roles.has('date') || (roles.has('year') && roles.has('month') && roles.has('day'));

const bareColumn = (role: ColumnRole, at: number, header: string, how: HowKnown): TableColumn => ({
  role,
  at,
  where: header === '' ? `column ${String(at + 1)}` : header,
  how,
  cellUnit: null,
  ...unitsIn(header, role),
});

/** Columns the person named; a failure names the first that is not there. */
function saidColumns(
  said: NonNullable<WeatherOptions['columns']>,
  headers: readonly string[],
  width: number,
): Result<TableColumn[], WeatherFailure> {
  const columns: TableColumn[] = [];
  for (const [role, named] of Object.entries(said) as [ColumnRole, string | number][]) {
    const wanted = String(named).trim();
    const byHeader = headers.findIndex(
      (header) => header.toLowerCase() === wanted.toLowerCase() && wanted !== '',
    );
    const at = byHeader >= 0 ? byHeader : /^\d{1,3}$/.test(wanted) ? Number(wanted) - 1 : -1;
    if (at < 0 || at >= width) {
      return failure({
        kind: 'no such column',
        role,
        named: wanted,
        headers: headers.slice(0, 40),
      });
    }
    columns.push(bareColumn(role, at, headers[at] ?? '', 'said'));
  }
  return success(columns);
}

/** Roles from the values of the first lines, where no header helps. */
function valueColumns(
  rows: readonly (readonly string[])[],
  headers: readonly string[],
  decimalMark: '.' | ',',
): TableColumn[] {
  const width = Math.max(...rows.map((row) => row.length));
  const columns: ColumnOfValues[] = Array.from({ length: width }, (_, at) => {
    const cells = rows.map((row) => row[at] ?? '');
    return {
      values: cells.map((cell) => {
        const number = numberOf(cell, decimalMark);
        return number.kind === 'number' ? number.value : number.kind === 'trace' ? 0 : null;
      }),
      dates: cells.filter((cell) => datePartsOf(cell) !== null).length / cells.length,
    };
  });
  return [...rolesByValues(columns)].map(([role, at]) =>
    bareColumn(role, at, headers[at] ?? '', 'by its values'),
  );
}

/**
 * How a table of days is laid out: separator, decimal mark, headers, which column holds what. What
 * the person said comes first, then the headers, then the values.
 *
 * @param exactNames headers of a station file, which mean this and nothing else
 */
export function tableLayout(
  text: string,
  said: NonNullable<WeatherOptions['columns']>,
  exactNames: ExactNames = null,
): Result<TableLayout, WeatherFailure> {
  const sample = sampleOf(text);
  if (sample.length === 0) return failure({ kind: 'empty' });
  const separator = separatorOf(sample.map((line) => line.text)) ?? ',';
  const header = headerOf(sample, separator, exactNames);
  const headerLine = header?.number ?? 0;
  const headers = header?.cells ?? [];
  const rows = sample
    .filter(({ number }) => number > headerLine)
    .map((line) => cellsOf(line.text, separator));
  const decimalMark = rows.some((row) => row.some(isCommaNumber)) ? ',' : '.';
  const width = Math.max(headers.length, ...rows.map((row) => row.length), 0);

  const named = saidColumns(said, headers, width);
  if (!named.ok) return named;
  const columns = [...named.value];
  const take = (more: readonly TableColumn[]): void => {
    for (const column of more) {
      const isTaken = columns.some(({ role, at }) => role === column.role || at === column.at);
      if (!isTaken) columns.push(column);
    }
  };
  take(
    headers.flatMap((cell, at): TableColumn[] => {
      const meaning = meaningOf(cell, exactNames);
      return meaning ? [{ ...meaning, at, where: cell, how: 'by name', cellUnit: null }] : [];
    }),
  );
  const roles = (): Set<ColumnRole> => new Set(columns.map(({ role }) => role));
  const hasMeasure = (): boolean =>
    [...roles()].some((role) => !['date', 'year', 'month', 'day'].includes(role));
  if ((!roleTakesDate(roles()) || !hasMeasure()) && rows.length > 0) {
    take(valueColumns(rows, headers, decimalMark));
  }
  const shown = headers.length > 0 ? headers : (rows[0] ?? []);
  if (!roleTakesDate(roles())) {
    return failure({ kind: 'no date column', headers: shown.slice(0, 40) });
  }
  if (!hasMeasure()) return failure({ kind: 'no measure column', headers: shown.slice(0, 40) });
  // year, month and day apart are only wanted where no column holds the whole date
  const used = roles().has('date')
    ? columns.filter(({ role }) => role !== 'year' && role !== 'month' && role !== 'day')
    : columns;
  const unused = headers.filter((cell, at) => cell !== '' && !used.some((one) => one.at === at));
  const measured = used.map((column): TableColumn => {
    const cells = rows.map((row) => row[column.at] ?? '');
    const { cellUnit, column: withUnit } = unitOfCells(cells, column.role, column);
    return { ...withUnit, cellUnit };
  });
  return success({ separator, decimalMark, headerLine, headers, columns: measured, unused });
}

/** A column of a table as a person tells it from the others. */
export interface TableColumnSeen {
  /** from 1 */
  readonly number: number;
  /** its header; '' where the table has none */
  readonly header: string;
  /** what stands in it first */
  readonly firstValue: string;
}

/** Columns of the widest table that a person would pick from. */
const mostPicked = 60;
const shownCharacters = 40;

/** The columns of a table of days, for saying which is which; none where the text is no table. */
export function columnsSeen(text: string): readonly TableColumnSeen[] {
  const sample = sampleOf(text);
  const separator = separatorOf(sample.map((line) => line.text));
  if (separator === null) return [];
  const header = headerOf(sample, separator, null);
  const first = sample.find(({ number }) => number > (header?.number ?? 0));
  const values = first ? cellsOf(first.text, separator) : [];
  const width = Math.min(mostPicked, Math.max(header?.cells.length ?? 0, values.length));
  return Array.from({ length: width }, (_column, at) => ({
    number: at + 1,
    header: (header?.cells[at] ?? '').slice(0, shownCharacters),
    firstValue: (values[at] ?? '').slice(0, shownCharacters),
  }));
}
