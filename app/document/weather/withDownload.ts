import { dayOf, seasonStart, textFromDay, yearOf, type DayNumber } from '../../core/days';
import { failure, success, type Result } from '../../core/result';
import { yearsInsteadOfNormals } from '../../core/season/ahead';
import type { Garden, WeatherRow } from '../schema';
import type { DownloadAsked } from './readDownload';
import type { ReadDay } from './weatherTypes';
import { mostWeatherDays, type WeatherMergeFailure } from './withWeather';

type Kept = NonNullable<Garden['weather']['download']>;

/** Nobody's layers of longer ago are reckoned with; it also keeps a question short. */
const mostYears = 15;

/** A place as it may be told to others: to a tenth of a degree, some 11 km from north to south. */
export const roundedDegrees = (degrees: number): number => Math.round(degrees * 10) / 10;

/** Whether the days that are kept are of another place than the garden's now. */
export const isOfOtherPlace = (
  kept: Kept,
  place: Pick<DownloadAsked, 'latitudeDegrees' | 'longitudeDegrees'>,
): boolean =>
  kept.latitudeDegrees !== place.latitudeDegrees ||
  kept.longitudeDegrees !== place.longitudeDegrees;

/** The first day that anything in the garden hangs on; null in a garden in which nothing was done yet. */
function firstEntry(garden: Garden): string | null {
  const dates = [
    ...garden.plantings.map(({ started }) => started),
    ...garden.applications.map(({ date }) => date),
    ...garden.mowings.map(({ date }) => date),
    ...garden.beds.flatMap(({ knownSince }) => knownSince ?? []),
  ];
  return dates.reduce<string | null>(
    (first, date) => (first === null || date < first ? date : first),
    null,
  );
}

/**
 * The days worth asking for: so many whole years before the garden's today as stand in for the usual
 * months, more where the garden is older, up to the day before today; of a place that was asked for
 * before, only what is not there yet.
 *
 * @param computerToday the last day that can have any weather, whatever day the garden looks at
 * @returns null when nothing is missing
 */
export function daysToAsk(
  garden: Garden,
  place: Pick<DownloadAsked, 'latitudeDegrees' | 'longitudeDegrees'>,
  today: DayNumber,
  computerToday: DayNumber,
): Pick<DownloadAsked, 'firstDay' | 'lastDay'> | null {
  const last = Math.min(today, computerToday) - 1;
  const { seasonStartMonth } = garden.garden;
  const years = dayOf(`${String(yearOf(last) - yearsInsteadOfNormals).padStart(4, '0')}-01-01`);
  const entry = firstEntry(garden);
  const earliest = seasonStart(last - Math.round(mostYears * 365.25), seasonStartMonth);
  const wanted = Math.max(
    earliest,
    Math.min(years, entry === null ? years : seasonStart(dayOf(entry), seasonStartMonth)),
  );
  const kept = garden.weather.download;
  const [there, until] = [kept?.days[0]?.[0], kept?.days.at(-1)?.[0]];
  const isGoingOn =
    kept !== undefined &&
    !isOfOtherPlace(kept, place) &&
    there !== undefined &&
    until !== undefined &&
    dayOf(there) <= wanted;
  const first = isGoingOn ? dayOf(until) + 1 : wanted;
  return first > last ? null : { firstDay: textFromDay(first), lastDay: textFromDay(last) };
}

export interface DownloadMerged {
  readonly download: Kept;
  readonly added: number;
  /** days of another place that go out */
  readonly replaced: number;
}

/**
 * The downloaded days of a garden with further ones put in. Days of another place go out first: a
 * garden lies at one.
 *
 * @param days rising, as `readDownload` gives them
 */
export function withDownload(
  garden: Garden,
  days: readonly ReadDay[],
  asked: DownloadAsked,
  askedOn: string,
): Result<DownloadMerged, WeatherMergeFailure> {
  const { latitudeDegrees, longitudeDegrees } = asked;
  const before = garden.weather.download;
  const isOther = before !== undefined && isOfOtherPlace(before, asked);
  const rows = new Map<string, WeatherRow>(
    isOther || !before ? [] : before.days.map((row) => [row[0], row]),
  );
  const known = rows.size;
  for (const { day, values } of days) {
    const date = textFromDay(day);
    const { lowest = null, highest = null, rain = null } = values;
    rows.set(date, [date, lowest, highest, rain]);
  }
  if (rows.size > mostWeatherDays)
    return failure({ kind: 'too many days', days: rows.size, limit: mostWeatherDays });
  return success({
    download: {
      latitudeDegrees,
      longitudeDegrees,
      agreedOn: isOther || !before?.agreedOn ? askedOn : before.agreedOn,
      askedOn,
      days: [...rows.values()].sort(([one], [other]) => (one < other ? -1 : 1)),
    },
    added: rows.size - known,
    replaced: isOther ? before.days.length : 0,
  });
}
