import type { DayNumber } from '../../core/days';
import { failure, success, type Result } from '../../core/result';
import { dateOrderOf, dayInOrder } from './civilDates';
import { DayBook } from './dayBook';
import { metresPerSecondPerMilePerHour } from './headers';
import { previewOf, usualWindHeightMetres, windKept } from './previewOf';
import { celsiusOf, millimetresOf, scaleOf, type RawDay, type Scale } from './scale';
import { elementRoles } from './stationElements';
import { tableLayout } from './tableLayout';
import { tableRows, type MeasureColumn, type Row } from './tableRows';
import type {
  Measure,
  Understood,
  WeatherFailure,
  WeatherForm,
  WeatherOptions,
  WeatherReading,
} from './weatherTypes';

interface Factor {
  readonly factor: number;
  readonly unit: string;
  readonly how: Understood['how'];
}

/** Factor and unit of what is neither temperature nor rain. */
function factorOf(
  column: MeasureColumn,
  values: readonly number[],
  scale: Scale,
  isStation: boolean,
): Factor {
  const { unit, role } = column;
  if (unit) return { factor: unit.factor, unit: unit.text, how: 'by the unit named' };
  const most = values.reduce((high, value) => Math.max(high, value), 0);
  switch (role) {
    case 'wind':
      if (isStation && scale.temperature === 'tenths of C') {
        return { factor: 0.1, unit: 'tenths of m/s', how: 'by the form' };
      }
      return scale.temperature === 'F'
        ? { factor: metresPerSecondPerMilePerHour, unit: 'mph', how: 'guessed' }
        : { factor: 1, unit: 'm/s', how: 'guessed' };
    case 'sunshine':
      if (isStation) return { factor: 1 / 60, unit: 'minutes', how: 'by the form' };
      if (most > 1440) return { factor: 1 / 3600, unit: 'seconds', how: 'by its values' };
      return most > 24
        ? { factor: 1 / 60, unit: 'minutes', how: 'by its values' }
        : { factor: 1, unit: 'h', how: 'by its values' };
    case 'radiation':
      return most > 50
        ? { factor: 0.0864, unit: 'W/m2', how: 'by its values' }
        : { factor: 1, unit: 'MJ/m2', how: 'guessed' };
    default:
      return { factor: 1, unit: '%', how: 'by name' };
  }
}

/** A value in its inside unit, without the binary rubbish of a conversion. */
function insideValue(
  role: Measure,
  value: number,
  scale: Scale,
  factor: number,
  windHeight: number,
): number {
  const inside = ((): number => {
    switch (role) {
      case 'lowest':
      case 'highest':
      case 'dew point':
        return celsiusOf(value, scale.temperature);
      case 'rain':
        return millimetresOf(value, scale.rain);
      case 'wind':
        return windKept(value * factor, windHeight);
      default:
        return value * factor;
    }
  })();
  return Math.round(inside * 1000) / 1000;
}

function scaleOfRows(
  rows: readonly Row[],
  days: readonly (DayNumber | null)[],
  columns: readonly MeasureColumn[],
  options: WeatherOptions,
): Scale {
  const at = (role: Measure): number => columns.findIndex((column) => column.role === role);
  const [lowAt, highAt, rainAt] = [at('lowest'), at('highest'), at('rain')];
  const value = (row: Row, index: number): number | null => {
    const cell = row.cells[index];
    return cell?.kind === 'number' ? cell.value : cell?.kind === 'trace' ? 0 : null;
  };
  const hasDecimals = (row: Row, index: number): boolean => {
    const cell = row.cells[index];
    return cell?.kind === 'number' && cell.decimals > 0;
  };
  const raw = rows.flatMap((row, index): RawDay[] => {
    const day = days[index] ?? null;
    if (day === null) return [];
    return [
      {
        day,
        lowest: value(row, lowAt),
        highest: value(row, highAt),
        rain: value(row, rainAt),
      },
    ];
  });
  const named = columns.find(({ temperature }) => temperature !== null)?.temperature ?? null;
  const namedRain = columns[rainAt]?.rain ?? null;
  const said = 'said' as const;
  const byUnit = 'by the unit named' as const;
  return scaleOf(
    {
      days: raw,
      temperatureDecimals: rows.some((row) => hasDecimals(row, lowAt) || hasDecimals(row, highAt)),
      rainDecimals: rows.some((row) => hasDecimals(row, rainAt)),
    },
    {
      temperature: options.temperature
        ? { unit: options.temperature, how: said }
        : named && { unit: named, how: byUnit },
      rain: options.rain
        ? { unit: options.rain, how: said }
        : namedRain && { unit: namedRain, how: byUnit },
    },
    options.normals,
  );
}

/** More lines a day than this are readings of hours, not of days. */
const hourlyLines = 2.5;

const shownUnits = {
  C: '\u00B0C',
  F: '\u00B0F',
  'tenths of C': 'tenths of \u00B0C',
} as const;

/**
 * Reads a table of days, one line a day.
 * @param form `daily summaries`: a station's elements as columns, each with its attributes
 */
export function readTable(
  text: string,
  form: Extract<WeatherForm, 'columns' | 'daily summaries'>,
  options: WeatherOptions,
): Result<WeatherReading, WeatherFailure> {
  const isStation = form === 'daily summaries';
  const found = tableLayout(text, options.columns ?? {}, isStation ? elementRoles : null);
  if (!found.ok) return found;
  const layout = found.value;
  const book = new DayBook(options);
  const table = tableRows(text, layout, isStation, options.station, book);
  if (!table.ok) return table;
  const { columns, rows } = table.value;

  const order = options.dates
    ? { order: options.dates, isClear: true }
    : dateOrderOf(rows.map(({ date }) => date));
  const days = rows.map(({ date }): DayNumber | null => date && dayInOrder(date, order.order));
  const dated = days.filter((day) => day !== null);
  const different = new Set(dated).size;
  // a file saved twice over has two lines a day, and a slip here and there is refused by line
  if (dated.length > hourlyLines * different)
    return failure({ kind: 'several a day', lines: dated.length, days: different });
  const scale = scaleOfRows(rows, days, columns, options);
  const factors = columns.map((column, at) => {
    const values = rows.flatMap(({ cells }) => {
      const cell = cells[at];
      return cell?.kind === 'number' ? [cell.value] : [];
    });
    return factorOf(column, values, scale, isStation);
  });
  const windHeight = options.windHeightMetres ?? usualWindHeightMetres;

  const firstLines = new Map<DayNumber, number>();
  rows.forEach((row, index) => {
    const day = days[index] ?? null;
    if (day === null) {
      book.refuse(row.line, null, { kind: 'no day', text: row.dateText });
      return;
    }
    if (!book.isBelievable(row.line, day) || !book.isWanted(day)) return;
    const firstLine = firstLines.get(day);
    if (firstLine !== undefined) {
      book.refuse(row.line, day, { kind: 'day twice', firstLine });
      return;
    }
    firstLines.set(day, row.line);
    columns.forEach(({ role }, at) => {
      const cell = row.cells[at];
      if (!cell || cell.kind === 'missing') return;
      if (cell.kind === 'no number' || (cell.kind === 'trace' && role !== 'rain')) {
        book.refuse(row.line, day, { kind: 'no number', measure: role, text: row.texts[at] ?? '' });
        return;
      }
      const value = cell.kind === 'trace' ? 0 : cell.value;
      const factor = factors[at]?.factor ?? 1;
      book.put(row.line, day, role, insideValue(role, value, scale, factor, windHeight));
    });
  });

  const read = book.finish();
  if (read.length === 0) return failure({ kind: 'no days', refused: book.refused });
  const understood = layout.columns.map(({ role, where, how }): Understood => {
    if (role === 'lowest' || role === 'highest' || role === 'dew point') {
      const unit = shownUnits[scale.temperature];
      return { role, where, how, unit, unitHow: scale.temperatureHow };
    }
    if (role === 'rain') return { role, where, how, unit: scale.rain, unitHow: scale.rainHow };
    const factor = factors[columns.findIndex((column) => column.role === role)];
    return { role, where, how, unit: factor?.unit ?? null, unitHow: factor?.how ?? null };
  });
  return success({
    days: read,
    preview: {
      ...previewOf(read, book),
      form,
      station: table.value.station,
      understood,
      unused: layout.unused.slice(0, 40),
      separator: layout.separator === '\t' ? 'tab' : layout.separator,
      decimalMark: layout.decimalMark,
      dates: order.order,
      temperature: scale.temperature,
      rain: scale.rain,
      unclear: [
        ...(order.isClear ? [] : [{ kind: 'date order' as const, taken: order.order }]),
        ...scale.unclear,
      ],
      flagged: table.value.flagged,
      severalDayTotals: table.value.severalDayTotals,
      windHeightMetres: columns.some(({ role }) => role === 'wind') ? windHeight : null,
    },
  });
}
