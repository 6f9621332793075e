import { dayFromParts, partsFromDay, type DayNumber } from '../days';
import { imaginedMonth, type ImaginedMonth, type WeatherSpread } from './imagine';
import { dayKinds, type MonthlyNormals, type SeasonWeather } from './input';
import { readRecord, type RecordedDay, type RecordedValues, type RecordRead } from './recordRead';
import { daysInMonth, monthlyKnots, smoothNormal } from './smoothNormals';

export { wholeYears, type RecordedDay } from './recordRead';

/** Longest run of missing days that is filled from its ends; longer ones are imagined. */
export const longestFilledGap = 5;
/** Whole years of record from which they replace the monthly normals. */
export const yearsInsteadOfNormals = 3;

const measured = dayKinds.indexOf('measured');
const filled = dayKinds.indexOf('filled');
const imagined = dayKinds.indexOf('imagined');

/** Normals of one day, for filling short gaps. */
interface Usual {
  minimum(day: DayNumber): number;
  maximum(day: DayNumber): number;
  rain(day: DayNumber): number;
}

function usualOf(normals: MonthlyNormals): Usual {
  const low = monthlyKnots(normals.minimumCelsius);
  const high = monthlyKnots(normals.maximumCelsius);
  return {
    minimum: (day) => smoothNormal(low, day),
    maximum: (day) => smoothNormal(high, day),
    rain: (day) => {
      const { year, month } = partsFromDay(day);
      return (normals.rainMillimetres[month - 1] ?? 0) / daysInMonth(year, month);
    },
  };
}

/**
 * Fills one value of a day from a gap of at most `longestFilledGap` days between two known ones:
 * temperatures on the straight line between the ends, rain at the month's mean. Null when the gap
 * is longer or open.
 */
function fillShortGap(
  known: ReadonlyMap<DayNumber, RecordedValues>,
  which: 0 | 1 | 2,
  day: DayNumber,
  usual: Usual,
): number | null {
  let before = day - 1;
  while (day - before <= longestFilledGap && (known.get(before)?.[which] ?? null) === null)
    before--;
  let after = day + 1;
  while (after - before <= longestFilledGap + 1 && (known.get(after)?.[which] ?? null) === null) {
    after++;
  }
  const left = known.get(before)?.[which] ?? null;
  const right = known.get(after)?.[which] ?? null;
  if (left === null || right === null || after - before > longestFilledGap + 1) return null;
  if (which === 2) return usual.rain(day);
  return left + ((right - left) * (day - before)) / (after - before);
}

/** What a day without record is taken to be. */
type Stand = (day: DayNumber) => readonly [number, number, number];

/** Days from the generator, one calendar month at a time. */
function fromNormals(normals: MonthlyNormals, spread: WeatherSpread, seed: number): Stand {
  const months = new Map<number, ImaginedMonth>();
  return (day) => {
    const { year, month, dayOfMonth } = partsFromDay(day);
    const key = year * 12 + month;
    let values = months.get(key);
    if (!values) {
      values = imaginedMonth(normals, spread, seed, year, month);
      months.set(key, values);
    }
    return [
      values.minimumCelsius[dayOfMonth - 1] ?? 0,
      values.maximumCelsius[dayOfMonth - 1] ?? 0,
      values.rainMillimetres[dayOfMonth - 1] ?? 0,
    ];
  };
}

/** Months of the half-year in which things grow, by hemisphere; the year of median rain is chosen on them. */
const growingMonths = { north: [4, 5, 6, 7, 8, 9], south: [10, 11, 12, 1, 2, 3] };

/** Days of one whole year of record, as often as they are asked for. */
function fromYear(
  known: ReadonlyMap<DayNumber, RecordedValues>,
  donor: number,
  usual: Usual,
): Stand {
  return (day) => {
    const { month, dayOfMonth } = partsFromDay(day);
    const isSurplus = dayOfMonth > daysInMonth(donor, month);
    const from = dayFromParts(donor, month, Math.min(dayOfMonth, daysInMonth(donor, month)));
    const values = known.get(from);
    const value = (which: 0 | 1 | 2, otherwise: number): number =>
      values?.[which] ?? fillShortGap(known, which, from, usual) ?? otherwise;
    return [
      value(0, usual.minimum(from)),
      value(1, usual.maximum(from)),
      // 29 February of a donor without one repeats the 28th, dry: its rain would count twice
      isSurplus ? 0 : value(2, usual.rain(from)),
    ];
  };
}

/** Of a record that is kept, by half of the earth. */
const medians = new WeakMap<RecordRead, Map<boolean, number>>();

/** The one whole year of record whose growing half-year had the median rain. */
function medianYear(read: RecordRead, isSouthern: boolean): number {
  let found = medians.get(read);
  if (!found) medians.set(read, (found = new Map()));
  let year = found.get(isSouthern);
  if (year === undefined) found.set(isSouthern, (year = yearOfMedianRain(read, isSouthern)));
  return year;
}

function yearOfMedianRain({ known, years }: RecordRead, isSouthern: boolean): number {
  const months = isSouthern ? growingMonths.south : growingMonths.north;
  const rainOf = (year: number): number => {
    let sum = 0;
    for (const month of months) {
      for (let date = 1; date <= daysInMonth(year, month); date++) {
        sum += known.get(dayFromParts(year, month, date))?.[2] ?? 0;
      }
    }
    return sum;
  };
  const byRain = years
    .map((year) => ({ year, rain: rainOf(year) }))
    .sort((one, other) => one.rain - other.rain || one.year - other.year);
  const donor = byRain[Math.floor((byRain.length - 1) / 2)]?.year;
  if (donor === undefined) throw new Error('No whole year to take days from');
  return donor;
}

/** A run's days in order: measured, short gaps filled, the rest from what stands in. */
function daysOf(
  known: ReadonlyMap<DayNumber, RecordedValues>,
  usual: Usual,
  stand: Stand,
  firstDay: DayNumber,
  lastDay: DayNumber,
  today: DayNumber,
): SeasonWeather {
  const days = Math.max(0, lastDay - firstDay + 1);
  const weather = {
    minimumCelsius: new Float64Array(days),
    maximumCelsius: new Float64Array(days),
    rainMillimetres: new Float64Array(days),
    kind: new Uint8Array(days),
  };
  for (let index = 0; index < days; index++) {
    const day = firstDay + index;
    const values = known.get(day);
    const value = (which: 0 | 1 | 2): { number: number; kind: number } => {
      const given = values?.[which] ?? null;
      if (given !== null) return { number: given, kind: measured };
      const between = day < today ? fillShortGap(known, which, day, usual) : null;
      return between !== null
        ? { number: between, kind: filled }
        : { number: stand(day)[which], kind: imagined };
    };
    const [low, high, rain] = [value(0), value(1), value(2)];
    const kinds = [low.kind, high.kind, rain.kind];
    weather.minimumCelsius[index] = Math.min(low.number, high.number);
    weather.maximumCelsius[index] = Math.max(low.number, high.number);
    weather.rainMillimetres[index] = rain.number;
    weather.kind[index] = kinds.every((kind) => kind === kinds[0])
      ? (kinds[0] ?? imagined)
      : filled;
  }
  return weather;
}

/**
 * The weather of a run, day by day: what was measured, what little was missing filled, and all
 * that nobody has measured imagined.
 *
 * - Up to `today` the record holds. A gap of at most five days between known ones is `filled`
 *   (temperatures on the line between its ends, rain the month's daily mean). A day of which only
 *   some values are known is `filled` too.
 * - Days after `today`, and longer gaps before it, are `imagined`. What the
 *   record holds of them is not read.
 * - With three or more whole calendar years of record ended by `today`, imagined days are those of
 *   the year whose growing half-year (April-September, south October-March) had the median rain,
 *   the drier of two; the choice changes only when another year is complete. Else they come from
 *   the monthly normals by `imaginedMonth`; every month then sums to its usual rain.
 * - In both ways an imagined day stays the same while `today` moves past the days before it.
 *
 * @param record any order; of two entries for a day the later in the list holds
 * @param seed of the imagined days; the typical run has one fixed seed
 * @param isSouthern growing half-year October-March
 * @returns one entry per day from `firstDay` to `lastDay`, both included [deg C, mm]. The highest is
 *   never below the lowest: a value that stands in beside a measured one may lie past it, and a
 *   record that has the two the wrong way round (no garden that opens has) is read the right way
 */
export function seasonWeather(
  record: readonly RecordedDay[],
  normals: MonthlyNormals,
  firstDay: DayNumber,
  lastDay: DayNumber,
  today: DayNumber,
  seed: number,
  spread: WeatherSpread,
  isSouthern: boolean,
): SeasonWeather {
  const read = readRecord(record, today);
  const { known, years } = read;
  const usual = usualOf(normals);
  const stand =
    years.length >= yearsInsteadOfNormals
      ? fromYear(known, medianYear(read, isSouthern), usual)
      : fromNormals(normals, spread, seed);
  return daysOf(known, usual, stand, firstDay, lastDay, today);
}

/**
 * The same run under each whole year of record that ended by `today`: what is known of it stays,
 * and the days nobody has measured are that year's. For draws, where one year is no better than
 * another.
 *
 * @returns one season per year, the earliest first; null with fewer than three whole years, where
 *   the monthly normals say more
 */
export function seasonsOfYears(
  record: readonly RecordedDay[],
  normals: MonthlyNormals,
  firstDay: DayNumber,
  lastDay: DayNumber,
  today: DayNumber,
): readonly SeasonWeather[] | null {
  const { known, years } = readRecord(record, today);
  if (years.length < yearsInsteadOfNormals) return null;
  const usual = usualOf(normals);
  return years.map((year) =>
    daysOf(known, usual, fromYear(known, year, usual), firstDay, lastDay, today),
  );
}

/**
 * Degree-days above `baseCelsius` over `days` days from `start` in a usual year:
 * the sum of max(0, mean - base). The mean over the whole years of record before `today` where
 * there are three or more, else from the smooth monthly normals.
 *
 * @returns degree-days [deg C d]; low when the normals lie near the base, because smooth days
 *   have no warm ones among the cold
 */
export function usualDegreeDays(
  record: readonly RecordedDay[],
  normals: MonthlyNormals,
  today: DayNumber,
  start: DayNumber,
  days: number,
  baseCelsius: number,
): number {
  const usual = usualOf(normals);
  const above = (low: number, high: number): number => Math.max(0, (low + high) / 2 - baseCelsius);
  const { known, years } = readRecord(record, today);
  if (years.length < yearsInsteadOfNormals) {
    let sum = 0;
    for (let day = start; day < start + days; day++) {
      sum += above(usual.minimum(day), usual.maximum(day));
    }
    return sum;
  }
  let sum = 0;
  for (let day = start; day < start + days; day++) {
    const { month, dayOfMonth } = partsFromDay(day);
    for (const year of years) {
      const date = dayFromParts(year, month, Math.min(dayOfMonth, daysInMonth(year, month)));
      const values = known.get(date);
      sum +=
        above(values?.[0] ?? usual.minimum(date), values?.[1] ?? usual.maximum(date)) /
        years.length;
    }
  }
  return sum;
}
