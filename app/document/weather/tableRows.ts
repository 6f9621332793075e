import { failure, success, type Result } from '../../core/result';
import { withoutUnit } from './cellUnits';
import { cellsOf, numberOf, type CellNumber } from './cells';
import { datePartsOf, realDay, type DateParts } from './civilDates';
import type { DayBook } from './dayBook';
import { measurementFlags, severalDayRain } from './stationElements';
import type { TableColumn, TableLayout } from './tableLayout';
import { longestLine, saysNothing, textLines, weatherLineLimit } from './textLines';
import { measures, stationsListed, type Measure, type WeatherFailure } from './weatherTypes';

export interface Row {
  readonly line: number;
  readonly date: DateParts | null;
  readonly dateText: string;
  /** by place among the columns of measures */
  readonly cells: readonly CellNumber[];
  readonly texts: readonly string[];
}

export interface MeasureColumn extends TableColumn {
  readonly role: Measure;
  /** column of its attributes, where a station gives some */
  readonly flagsAt: number | null;
}

export interface TableRows {
  readonly columns: readonly MeasureColumn[];
  readonly rows: readonly Row[];
  readonly station: string | null;
  readonly flagged: number;
  readonly severalDayTotals: number;
}

/** Characters of a cell that are kept to say what stood there. */
const keptCharacters = 60;
/** Stations that are told apart before a file of all of them is given up. */
const mostStations = 1000;

const isMeasure = (role: string): role is Measure => (measures as readonly string[]).includes(role);

export const measureColumns = (layout: TableLayout, isStation: boolean): MeasureColumn[] =>
  layout.columns.flatMap((column): MeasureColumn[] => {
    const { role } = column;
    if (!isMeasure(role)) return [];
    const flagsAt = isStation ? layout.headers.indexOf(`${column.where}_ATTRIBUTES`) : -1;
    return [{ ...column, role, flagsAt: flagsAt < 0 ? null : flagsAt }];
  });

/** The date of a row: one cell, or year, month and day apart. */
function dateOf(
  cells: readonly string[],
  layout: TableLayout,
): { readonly parts: DateParts | null; readonly text: string } {
  const cell = (wanted: string): string | null => {
    const column = layout.columns.find(({ role }) => role === wanted);
    return column ? (cells[column.at] ?? '') : null;
  };
  const whole = cell('date');
  if (whole !== null) return { parts: datePartsOf(whole), text: whole };
  const texts = [cell('year') ?? '', cell('month') ?? '', cell('day') ?? ''];
  const [year = 0, month = 0, day = 0] = texts.map((text) =>
    /^\d{1,4}$/.test(text) ? Number(text) : 0,
  );
  const found = realDay(year, month, day);
  return {
    parts: found === null ? null : { kind: 'known', day: found },
    text: texts.join('-'),
  };
}

/**
 * The lines of a table as rows, still in the file's own units. A value whose quality flag is not
 * blank counts as missing. Lines that are no rows are refused in `book`.
 */
export function tableRows(
  text: string,
  layout: TableLayout,
  isStation: boolean,
  station: string | undefined,
  book: DayBook,
): Result<TableRows, WeatherFailure> {
  const columns = measureColumns(layout, isStation);
  const stationAt = isStation ? layout.headers.indexOf('STATION') : -1;
  const severalAt = isStation ? layout.headers.indexOf(severalDayRain) : -1;
  const wanted = Math.max(...layout.columns.map(({ at }) => at)) + 1;
  const stations = new Set<string>();
  const rows: Row[] = [];
  let [flagged, severalDayTotals] = [0, 0];

  for (const { number, text: line } of textLines(text)) {
    if (number > weatherLineLimit) {
      return failure({ kind: 'too large', limit: weatherLineLimit, unit: 'lines' });
    }
    if (number <= layout.headerLine) continue;
    if (line === null) {
      book.refuse(number, null, { kind: 'line too long', limit: longestLine });
      continue;
    }
    if (saysNothing(line)) continue;
    const cells = cellsOf(line, layout.separator);
    if (stationAt >= 0) {
      const of = (cells[stationAt] ?? '').slice(0, keptCharacters);
      if (stations.size < mostStations) stations.add(of);
      if (station !== undefined && of !== station) continue;
    }
    const { parts, text: dateText } = dateOf(cells, layout);
    if (cells.length < wanted && parts === null) {
      book.refuse(number, null, { kind: 'too few cells', found: cells.length, wanted });
      continue;
    }
    if (severalAt >= 0 && /\d/.test(cells[severalAt] ?? '')) severalDayTotals++;
    rows.push({
      line: number,
      date: parts,
      dateText: dateText.slice(0, keptCharacters),
      texts: columns.map(({ at }) => (cells[at] ?? '').slice(0, keptCharacters)),
      cells: columns.map(({ at, flagsAt, cellUnit }): CellNumber => {
        const value = numberOf(withoutUnit(cells[at] ?? '', cellUnit), layout.decimalMark);
        if (flagsAt === null || value.kind !== 'number') return value;
        if (measurementFlags(cells[flagsAt] ?? '').quality === '') return value;
        flagged++;
        return { kind: 'missing' };
      }),
    });
  }
  const found = [...stations];
  if (station !== undefined && stationAt >= 0 && !stations.has(station)) {
    return failure({
      kind: 'no such station',
      named: station,
      stations: found.slice(0, stationsListed),
    });
  }
  if (station === undefined && found.length > 1) {
    return failure({
      kind: 'several stations',
      stations: found.slice(0, stationsListed),
      total: found.length,
    });
  }
  return success({
    columns,
    rows,
    station: stationAt < 0 ? null : (station ?? found[0] ?? null),
    flagged,
    severalDayTotals,
  });
}
