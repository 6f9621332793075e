import { assertNever } from '../core/result';
import type {
  ColumnRole,
  CoreMeasure,
  Gap,
  HowKnown,
  Measure,
  Refused,
  Unclear,
  Understood,
  WeatherFailure,
  WeatherForm,
  WeatherPreview,
} from '../document/weather/weatherTypes';
import type { WeatherMerged, WeatherMergeFailure } from '../document/weather/withWeather';
import type { WeatherKnown } from '../document/weatherKnown';

const measureWords: Readonly<Record<Measure, string>> = {
  lowest: 'lowest temperature',
  highest: 'highest temperature',
  rain: 'rain',
  wind: 'wind',
  humidity: 'humidity',
  'highest humidity': 'highest humidity',
  'lowest humidity': 'lowest humidity',
  'dew point': 'dew point',
  sunshine: 'sunshine',
  radiation: 'radiation',
};
const roleWords = (role: ColumnRole): string =>
  role === 'date' || role === 'year' || role === 'month' || role === 'day'
    ? role
    : measureWords[role];

const units: Readonly<Partial<Record<Measure, string>>> = {
  lowest: '\u00B0C',
  highest: '\u00B0C',
  'dew point': '\u00B0C',
  rain: 'mm',
  wind: 'm/s',
  humidity: '%',
  'highest humidity': '%',
  'lowest humidity': '%',
  sunshine: 'hours',
  radiation: 'MJ/m2',
};

export const weatherFormWords: Readonly<Record<WeatherForm, string>> = {
  columns: 'a table with one line a day',
  'daily summaries': 'a weather station\u2019s daily summaries (GHCN-Daily, one line a day)',
  'station list': 'a weather station\u2019s list (GHCN-Daily, one line a value)',
  'station months': 'a weather station\u2019s .dly file (GHCN-Daily, one line a month)',
};

const howWords: Readonly<Record<HowKnown, string>> = {
  said: 'as you said',
  'by name': 'by its heading',
  'by the unit named': 'named there',
  'by its values': 'by its values',
  'by the usual weather': 'because it fits the usual weather here',
  'by the form': 'by the kind of file',
  guessed: 'taken so, not said',
};

const dateOrders = {
  ymd: 'year, month, day',
  dmy: 'day, month, year',
  mdy: 'month, day, year',
} as const;

const listed = (headers: readonly string[]): string =>
  headers.length === 0
    ? 'there are no headings'
    : `its headings are: ${headers.slice(0, 12).join(', ')}${headers.length > 12 ? ' ...' : ''}`;

const figure = (value: number): string => String(Math.round(value * 100) / 100);

/**
 * Why nothing could be read from a weather file, and what to do.
 * @param where the window has lists to pick a column from, the command line takes words
 */
export function weatherFailureSentence(
  failure: WeatherFailure,
  where: 'window' | 'command line' = 'command line',
): string {
  const saidBy = (words: string): string =>
    where === 'window' ? 'Pick it below.' : `Say ${words}`;
  const namedStations = (stations: readonly string[], total: number): string =>
    `${stations.slice(0, 8).join(', ')}${total > 8 ? ' ...' : ''}`;
  switch (failure.kind) {
    case 'too large':
      return `The weather file holds more than ${failure.limit.toLocaleString('en')} ${failure.unit}. Take the file of one station, or cut it to the years you garden in.`;
    case 'empty':
      return 'The weather file is empty. Check that it is the right one.';
    case 'not text':
      return 'The weather file is not text. Unpack it, or save the table as CSV first.';
    case 'no date column':
      return `No column of dates was found in the weather file; ${listed(failure.headers)}. ${saidBy('which it is, for example: date=Day.')}`;
    case 'no measure column':
      return `No column of temperatures or rain could be told apart in the weather file; ${listed(failure.headers)}. ${saidBy('which is which, for example: max=3, min=4, rain=2.')}`;
    case 'no such column':
      return `The weather file has no column \u201C${failure.named}\u201D for the ${roleWords(failure.role)}; ${listed(failure.headers)}.`;
    case 'several stations':
      return `The weather file holds ${failure.total} stations: ${namedStations(failure.stations, failure.total)}. ${where === 'window' ? 'Pick one below.' : 'Say which one is meant.'}`;
    case 'no such station':
      return `The weather file has no station \u201C${failure.named}\u201D. It has: ${namedStations(failure.stations, failure.stations.length) || 'none'}.`;
    case 'several a day':
      return `The weather file has ${failure.lines.toLocaleString('en')} lines for ${plural(failure.days, 'day', 'days')}: is it by the hour, or of several places? Take a table of one place with one line a day: lowest, highest and rain.`;
    case 'no days': {
      const [first] = failure.refused.first;
      return first
        ? `No day of the weather file could be used. ${refusedSentence(first)}`
        : 'No day of the weather file has a value that could be used. Check the columns and the days asked for.';
    }
    default:
      return assertNever(failure);
  }
}

/** How a day of the file is said: as YYYY-MM-DD on the command line, as a gardener reads it in the window. */
type WriteDay = (day: string) => string;
const asWritten: WriteDay = (day) => day;

/** One line that was not taken: where, what stood there, why. */
export function refusedSentence(
  { line, day, reason }: Refused,
  write: WriteDay = asWritten,
): string {
  const where = day === null ? `Line ${line}` : `Line ${line}, ${write(day)}`;
  switch (reason.kind) {
    case 'no day':
      // what a spreadsheet shows where a cell of days lost its format: 1954 to 2064
      if (/^[2-5]\d{4}(?:\.\d+)?$/.test(reason.text))
        return `${where}: \u201C${reason.text}\u201D is a spreadsheet\u2019s own count of days. Give the column a format of dates there and save it again.`;
      return `${where}: \u201C${reason.text}\u201D is no day.`;
    case 'year beyond belief':
      return `${where}: the year ${reason.year} lies outside 1900 to 2199.`;
    case 'no number':
      return `${where}: \u201C${reason.text}\u201D is no number for ${measureWords[reason.measure]}.`;
    case 'out of range':
      return `${where}: ${measureWords[reason.measure]} of ${figure(reason.value)} ${units[reason.measure] ?? ''} cannot be.`;
    case 'below nought':
      return `${where}: ${measureWords[reason.measure]} below nought (${figure(reason.value)}).`;
    case 'highest below lowest': {
      const other = reason.otherLine === line ? '' : ` (line ${reason.otherLine})`;
      return `${where}: the highest, ${figure(reason.highest)} \u00B0C, lies below the lowest, ${figure(reason.lowest)} \u00B0C${other}; both are left out.`;
    }
    case 'day twice':
      return `${where}: the same day as line ${reason.firstLine}, which is kept.`;
    case 'value twice':
      return `${where}: ${measureWords[reason.measure]} stands in line ${reason.firstLine} already, which is kept.`;
    case 'too few cells':
      return `${where}: ${reason.found} of ${reason.wanted} columns are there.`;
    case 'line too long':
      return `${where}: longer than ${reason.limit.toLocaleString('en')} characters.`;
    case 'not of this form':
      return `${where}: not a line of this kind of file.`;
    default:
      return assertNever(reason);
  }
}

/** What only the person can settle, and how it was taken meanwhile. */
export function unclearSentence(unclear: Unclear): string {
  switch (unclear.kind) {
    case 'date order':
      return `The dates can be read two ways; they were taken as ${dateOrders[unclear.taken]}.`;
    case 'temperature unit':
      return `The file does not say whether its temperatures are \u00B0C, \u00B0F or tenths; they were taken as ${unclear.taken === 'tenths of C' ? 'tenths of \u00B0C' : `\u00B0${unclear.taken}`}.`;
    case 'rain unit':
      return `The file does not say whether its rain is in mm, inches or tenths of mm; it was taken as ${unclear.taken}.`;
    default:
      return assertNever(unclear);
  }
}

export function gapSentence({ from, to, days, missing }: Gap, write: WriteDay = asWritten): string {
  const what =
    missing.length === 3
      ? 'nothing'
      : `no ${missing.map((one) => measureWords[one]).join(', no ')}`;
  return days === 1
    ? `${write(from)}: ${what}`
    : `${write(from)} to ${write(to)}: ${what} (${days} days)`;
}

const understoodLine = ({ role, where, how, unit, unitHow }: Understood): string => {
  const column = `${roleWords(role)}: ${where}`;
  if (unit === null || unitHow === null) return `${column} (${howWords[how]})`;
  return unitHow === how
    ? `${column}, ${unit} (${howWords[how]})`
    : `${column} (${howWords[how]}), ${unit} (${howWords[unitHow]})`;
};

const plural = (count: number, one: string, many: string): string =>
  `${count.toLocaleString('en')} ${count === 1 ? one : many}`;

/** What the sums need and the file has no column or element of. */
export const notFound = ({ understood }: WeatherPreview): CoreMeasure[] =>
  (['lowest', 'highest', 'rain'] as const).filter(
    (measure) => !understood.some(({ role }) => role === measure),
  );

/**
 * What was understood of a weather file, line by line, for reading before anything is kept.
 * @param most lines of gaps and of refused entries that are written out
 */
export function weatherPreviewLines(
  preview: WeatherPreview,
  write: WriteDay = asWritten,
  most = 10,
): string[] {
  const { gaps, refused } = preview;
  const more = (total: number, shown: number, what: string): string[] =>
    total > shown ? [`  and ${(total - shown).toLocaleString('en')} more ${what}`] : [];
  return [
    `Taken for ${weatherFormWords[preview.form]}${preview.station ? `, station ${preview.station}` : ''}.`,
    ...preview.understood.map((one) => `  ${understoodLine(one)}`),
    ...(notFound(preview).length > 0
      ? [
          `  not found: ${notFound(preview)
            .map((one) => measureWords[one])
            .join(', ')}`,
        ]
      : []),
    ...(preview.unused.length > 0 ? [`  not used: ${preview.unused.join(', ')}`] : []),
    ...(preview.windHeightMetres === null
      ? []
      : [`  wind taken as measured ${preview.windHeightMetres} m above the ground`]),
    `${plural(preview.days, 'day', 'days')} from ${write(preview.firstDay)} to ${write(preview.lastDay)}, ${plural(preview.wholeDays, 'of them', 'of them')} with lowest, highest and rain.`,
    ...preview.unclear.map((one) => `To be settled: ${unclearSentence(one)}`),
    ...(preview.flagged > 0
      ? [
          `${plural(preview.flagged, 'value', 'values')} failed the station\u2019s own checks and are left out.`,
        ]
      : []),
    ...(preview.severalDayTotals > 0
      ? [
          `${plural(preview.severalDayTotals, 'total', 'totals')} of rain over several days left out: those days count as not known, not as dry.`,
        ]
      : []),
    ...(preview.outside > 0
      ? [`${plural(preview.outside, 'day', 'days')} outside the days asked for left out.`]
      : []),
    ...(notFound(preview).length === 3
      ? []
      : [
          gaps.total === 0
            ? 'No gaps.'
            : `${plural(gaps.total, 'gap', 'gaps')}, short ones filled from the days around, long ones imagined from the usual months:`,
        ]),
    ...gaps.first.slice(0, most).map((gap) => `  ${gapSentence(gap, write)}`),
    ...more(gaps.total, Math.min(most, gaps.first.length), 'gaps'),
    refused.total === 0 ? 'Nothing refused.' : `${refused.total.toLocaleString('en')} refused:`,
    ...refused.first.slice(0, most).map((one) => `  ${refusedSentence(one, write)}`),
    ...more(refused.total, Math.min(most, refused.first.length), 'refused'),
  ];
}

/** What bringing the days in would do to the garden, or did. */
export function weatherMergedSentence(
  { added, changed, same, contradicted }: Omit<WeatherMerged, 'garden'>,
  garden: string,
  isDone: boolean,
): string {
  const verb = isDone ? (added === 1 ? 'was' : 'were') : 'would be';
  const parts = [
    `${plural(added, 'new day', 'new days')} ${verb} added to \u201C${garden}\u201D`,
    ...(changed > 0 ? [`${plural(changed, 'day', 'days')} changed`] : []),
    ...(same > 0 ? [`${plural(same, 'day', 'days')} the same as before`] : []),
  ];
  const old =
    contradicted === 0
      ? ''
      : ` ${plural(contradicted, 'old value', 'old values')} gave way because the new one contradicts it.`;
  return `${parts.join(', ')}.${old}`;
}

export function weatherMergeFailureSentence(failure: WeatherMergeFailure): string {
  return `The garden would hold ${failure.days.toLocaleString('en')} days of weather; its file can hold ${failure.limit.toLocaleString('en')}. Bring only the years you need. Nothing was changed.`;
}

/**
 * What the season's weather rests on, where it is not all measured; null when it is.
 * @param place where the usual weather is from
 */
export function weatherKnownSentence(known: WeatherKnown, place: string): string | null {
  const { days, measured, imagined, downloaded } = known;
  if (downloaded > 0) {
    const rest = weatherKnownSentence({ ...known, downloaded: 0 }, place);
    const from = `${plural(downloaded, 'day', 'days')} of this season so far ${downloaded === 1 ? 'rests' : 'rest'} on downloaded weather: a model\u2019s for the district, not a gauge\u2019s.`;
    return rest === null ? from : `${from} ${rest}`;
  }
  if (measured === days) return null;
  const usual = `imagined from the usual weather of ${place}`;
  if (measured === 0 && imagined === days) {
    return `No weather of this season was recorded: all its days are ${usual}. Bring a record, or write down rain and temperatures.`;
  }
  if (imagined === 0) return `Some days of this season were filled in from the days around them.`;
  return `${plural(imagined, 'day', 'days')} of this season\u2019s ${String(days)} so far ${imagined === 1 ? 'is' : 'are'} ${usual}.`;
}
