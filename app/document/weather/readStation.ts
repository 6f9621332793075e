import { failure, success, type Result } from '../../core/result';
import { cellsOf } from './cells';
import { realDay } from './civilDates';
import { DayBook } from './dayBook';
import { previewOf, usualWindHeightMetres, windKept } from './previewOf';
import { missingValue, severalDayRain, stationElements } from './stationElements';
import { longestLine, textLines, weatherLineLimit } from './textLines';
import {
  stationsListed,
  type Understood,
  type WeatherFailure,
  type WeatherForm,
  type WeatherOptions,
  type WeatherReading,
} from './weatherTypes';

/** One value of a station file. */
interface StationValue {
  readonly year: number;
  readonly month: number;
  readonly dayOfMonth: number;
  readonly element: string;
  /** as it stands, in the file's whole units */
  readonly value: number;
  readonly quality: string;
}

/** A line's station and values; null when it is not of the form, 'header' when it names columns. */
type ReadLine = (
  line: string,
) => { readonly station: string; readonly values: readonly StationValue[] } | 'header' | null;

const wholeNumber = /^-?\d{1,6}$/;

/** Station, YYYYMMDD, element, value, three flags, time; the station may be missing. */
export const readListLine: ReadLine = (line) => {
  const cells = cellsOf(line, ',');
  const dateAt = /^\d{8}$/.test(cells[0] ?? '') ? 0 : 1;
  const date = /^(\d{4})(\d{2})(\d{2})$/.exec(cells[dateAt] ?? '');
  const [element = '', value = '', , quality = ''] = cells.slice(dateAt + 1);
  if (!date) return /^(?:id|station|date)$/i.test(cells[0] ?? '') ? 'header' : null;
  if (!/^[A-Z][A-Z0-9]{3}$/.test(element) || !wholeNumber.test(value)) return null;
  return {
    station: dateAt === 0 ? '' : (cells[0] ?? '').slice(0, 40),
    values: [
      {
        year: Number(date[1]),
        month: Number(date[2]),
        dayOfMonth: Number(date[3]),
        element,
        value: Number(value),
        quality,
      },
    ],
  };
};

/** Width of one day in a .dly line: a value of five characters and three flags. */
const dayWidth = 8;
const firstValueAt = 21;

/** Station 1-11, year 12-15, month 16-17, element 18-21, then 31 times value and flags. */
export const readMonthLine: ReadLine = (line) => {
  const head = /^([A-Z0-9_-]{11})(\d{4})(0[1-9]|1[0-2])([A-Z][A-Z0-9*#]{3})/.exec(line);
  if (!head) return null;
  const [, station = '', year, month, element = ''] = head;
  const values: StationValue[] = [];
  for (let day = 1; day <= 31; day++) {
    const at = firstValueAt + dayWidth * (day - 1);
    // an editor may have cut the blanks at the end of the line
    const value = line.slice(at, at + 5).trim();
    if (value === '') continue;
    if (!wholeNumber.test(value)) return null;
    const quality = (line[at + 6] ?? '').trim();
    values.push({
      year: Number(year),
      month: Number(month),
      dayOfMonth: day,
      element,
      value: Number(value),
      quality,
    });
  }
  return { station, values };
};

/**
 * Reads a GHCN-Daily file of one station (readme section III): a value is used only when its
 * quality flag is blank; a trace is nought by its value; a total over several days (MDPR with DAPR)
 * leaves its days without rain, which is not the same as dry.
 */
export function readStation(
  text: string,
  form: Extract<WeatherForm, 'station list' | 'station months'>,
  options: WeatherOptions,
): Result<WeatherReading, WeatherFailure> {
  const readLine = form === 'station list' ? readListLine : readMonthLine;
  const windHeight = options.windHeightMetres ?? usualWindHeightMetres;
  const book = new DayBook(options);
  const stations = new Set<string>();
  const found = new Set<string>();
  const unused = new Set<string>();
  let [flagged, severalDayTotals] = [0, 0];

  for (const { number, text: line } of textLines(text)) {
    if (number > weatherLineLimit) {
      return failure({ kind: 'too large', limit: weatherLineLimit, unit: 'lines' });
    }
    if (line === null) {
      book.refuse(number, null, { kind: 'line too long', limit: longestLine });
      continue;
    }
    if (line.trim() === '') continue;
    const read = readLine(line);
    if (read === 'header') continue;
    if (read === null) {
      book.refuse(number, null, { kind: 'not of this form' });
      continue;
    }
    if (stations.size < 1000) stations.add(read.station);
    if (options.station !== undefined && read.station !== options.station) continue;
    for (const { year, month, dayOfMonth, element, value, quality } of read.values) {
      if (value === missingValue) continue;
      const used = stationElements.get(element);
      if (element === severalDayRain && quality === '') severalDayTotals++;
      if (!used) {
        if (unused.size < 40) unused.add(element);
        continue;
      }
      const day = realDay(year, month, dayOfMonth);
      if (day === null) {
        const written = [year, month, dayOfMonth].map(String).join('-');
        book.refuse(number, null, { kind: 'no day', text: written });
        continue;
      }
      if (!book.isBelievable(number, day) || !book.isWanted(day)) continue;
      if (quality !== '') {
        flagged++;
        continue;
      }
      found.add(element);
      const inside =
        used.measure === 'wind' ? windKept(value * used.factor, windHeight) : value * used.factor;
      book.put(number, day, used.measure, Math.round(inside * 1000) / 1000);
    }
  }
  const names = [...stations];
  if (options.station !== undefined && !stations.has(options.station)) {
    return failure({
      kind: 'no such station',
      named: options.station,
      stations: names.slice(0, stationsListed),
    });
  }
  if (options.station === undefined && names.length > 1) {
    return failure({
      kind: 'several stations',
      stations: names.slice(0, stationsListed),
      total: names.length,
    });
  }
  const days = book.finish();
  if (days.length === 0) return failure({ kind: 'no days', refused: book.refused });
  const understood = [...stationElements].flatMap(([name, { measure, unit }]): Understood[] =>
    found.has(name)
      ? [{ role: measure, where: name, how: 'by the form', unit, unitHow: 'by the form' }]
      : [],
  );
  return success({
    days,
    preview: {
      ...previewOf(days, book),
      form,
      station: options.station ?? names[0] ?? null,
      understood,
      unused: [...unused],
      separator: form === 'station list' ? ',' : null,
      decimalMark: '.',
      dates: 'ymd',
      temperature: 'tenths of C',
      rain: 'tenths of mm',
      unclear: [],
      flagged,
      severalDayTotals,
      windHeightMetres: understood.some(({ role }) => role === 'wind') ? windHeight : null,
    },
  });
}
