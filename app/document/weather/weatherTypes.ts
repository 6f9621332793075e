import type { DayNumber } from '../../core/days';
import type { MonthlyNormals } from '../../core/season/input';

/** What a day of weather can hold, in inside units: deg C, mm, m/s at 2 m, %, h, MJ/m2. */
export const measures = [
  'lowest',
  'highest',
  'rain',
  'wind',
  'humidity',
  'highest humidity',
  'lowest humidity',
  'dew point',
  'sunshine',
  'radiation',
] as const;
export type Measure = (typeof measures)[number];

/** What the engine cannot do without; gaps are reported for these. */
export const coreMeasures = ['lowest', 'highest', 'rain'] as const;
export type CoreMeasure = (typeof coreMeasures)[number];

/** Bounds of what can be, inclusive; a value beyond is refused with its line. */
export const believableWeather: Readonly<Record<Measure, readonly [number, number]>> = {
  lowest: [-70, 60],
  highest: [-70, 60],
  rain: [0, 2000],
  wind: [0, 60],
  humidity: [0, 100],
  'highest humidity': [0, 100],
  'lowest humidity': [0, 100],
  'dew point': [-70, 40],
  sunshine: [0, 24],
  radiation: [0, 45],
};

/** Days a garden file may hold. */
export const firstBelievableYear = 1900;
export const lastBelievableYear = 2199;

/** One day as it was read; a measure that is missing or was refused is absent. */
export interface ReadDay {
  readonly day: DayNumber;
  readonly values: Readonly<Partial<Record<Measure, number>>>;
}

/** How the text is laid out. */
export type WeatherForm =
  /** any table of days: one line a day */
  | 'columns'
  /** GHCN-Daily by station, one line a day, elements as columns with their attributes */
  | 'daily summaries'
  /** GHCN-Daily by station or year, one line a value */
  | 'station list'
  /** GHCN-Daily .dly, fixed width, one line a month and element */
  | 'station months';

export type TemperatureUnit = 'C' | 'F' | 'tenths of C';
export type RainUnit = 'mm' | 'in' | 'tenths of mm';
export type DateOrder = 'ymd' | 'dmy' | 'mdy';
export type ColumnRole = Measure | 'date' | 'year' | 'month' | 'day';

/** What the reader cannot know may be said; what is said is never doubted. */
export interface WeatherOptions {
  /** by header, or by number from 1 */
  readonly columns?: Readonly<Partial<Record<ColumnRole, string | number>>>;
  readonly temperature?: TemperatureUnit;
  readonly rain?: RainUnit;
  readonly dates?: DateOrder;
  /** height of the wind gauge; a station's stands at 10 m */
  readonly windHeightMetres?: number;
  /** which one, where a file holds several */
  readonly station?: string;
  /** days outside are left out */
  readonly from?: DayNumber;
  readonly to?: DayNumber;
  /** the garden's usual weather, to tell units apart where the file does not say */
  readonly normals?: MonthlyNormals;
}

export type RefusedReason =
  | { readonly kind: 'no day'; readonly text: string }
  | { readonly kind: 'year beyond belief'; readonly year: number }
  | { readonly kind: 'no number'; readonly measure: Measure; readonly text: string }
  | { readonly kind: 'out of range'; readonly measure: Measure; readonly value: number }
  | { readonly kind: 'below nought'; readonly measure: Measure; readonly value: number }
  | {
      readonly kind: 'highest below lowest';
      readonly lowest: number;
      readonly highest: number;
      readonly otherLine: number;
    }
  | { readonly kind: 'day twice'; readonly firstLine: number }
  | { readonly kind: 'value twice'; readonly measure: Measure; readonly firstLine: number }
  | { readonly kind: 'too few cells'; readonly found: number; readonly wanted: number }
  | { readonly kind: 'line too long'; readonly limit: number }
  | { readonly kind: 'not of this form' };

/** What was not taken, and from which line (from 1). */
export interface Refused {
  readonly line: number;
  /** YYYY-MM-DD, where the line got that far */
  readonly day: string | null;
  readonly reason: RefusedReason;
}

/** A run of days, both ends included, on which the same measures are missing. */
export interface Gap {
  readonly from: string;
  readonly to: string;
  readonly days: number;
  readonly missing: readonly CoreMeasure[];
}

/** A list cut at what a person reads, with the true count. */
export interface Listed<Item> {
  readonly first: readonly Item[];
  readonly total: number;
}

export type HowKnown =
  | 'said'
  | 'by name'
  | 'by the unit named'
  | 'by its values'
  | 'by the usual weather'
  | 'by the form'
  | 'guessed';

export interface Understood {
  readonly role: ColumnRole;
  /** header, or "column 3", or the element's name */
  readonly where: string;
  /** how the column was found */
  readonly how: HowKnown;
  readonly unit: string | null;
  readonly unitHow: HowKnown | null;
}

/** What only the person can settle: nothing should be kept before they did. */
export type Unclear =
  | { readonly kind: 'date order'; readonly taken: DateOrder }
  | { readonly kind: 'temperature unit'; readonly taken: TemperatureUnit }
  | { readonly kind: 'rain unit'; readonly taken: RainUnit };

/** What was understood, before anything is kept. */
export interface WeatherPreview {
  readonly form: WeatherForm;
  readonly station: string | null;
  readonly understood: readonly Understood[];
  /** headers that were not used */
  readonly unused: readonly string[];
  readonly separator: ',' | ';' | 'tab' | null;
  readonly decimalMark: '.' | ',';
  readonly dates: DateOrder;
  readonly temperature: TemperatureUnit;
  readonly rain: RainUnit;
  readonly unclear: readonly Unclear[];
  /** YYYY-MM-DD */
  readonly firstDay: string;
  readonly lastDay: string;
  /** days with at least one value, and with lowest, highest and rain */
  readonly days: number;
  readonly wholeDays: number;
  readonly gaps: Listed<Gap>;
  readonly refused: Listed<Refused>;
  /** values that failed the station's own checks and were left out */
  readonly flagged: number;
  /** totals of rain over several days, left out: those days have no rain of their own */
  readonly severalDayTotals: number;
  /** days left out because they lie outside what was asked for */
  readonly outside: number;
  /** wind was brought from this height to 2 m; null without wind */
  readonly windHeightMetres: number | null;
}

export interface WeatherReading {
  readonly preview: WeatherPreview;
  /** rising */
  readonly days: readonly ReadDay[];
}

/** Stations of a file that are named, for picking one. */
export const stationsListed = 60;

/** Why nothing at all could be read. */
export type WeatherFailure =
  | { readonly kind: 'too large'; readonly limit: number; readonly unit: 'characters' | 'lines' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'not text' }
  | { readonly kind: 'no date column'; readonly headers: readonly string[] }
  | { readonly kind: 'no measure column'; readonly headers: readonly string[] }
  | {
      readonly kind: 'no such column';
      readonly role: ColumnRole;
      readonly named: string;
      readonly headers: readonly string[];
    }
  | {
      readonly kind: 'several stations';
      readonly stations: readonly string[];
      readonly total: number;
    }
  | {
      readonly kind: 'no such station';
      readonly named: string;
      readonly stations: readonly string[];
    }
  | { readonly kind: 'several a day'; readonly lines: number; readonly days: number }
  | { readonly kind: 'no days'; readonly refused: Listed<Refused> };
