import { dayFromParts, partsFromDay, type DayNumber } from '../days';

/** One day of a weather record; null where the value is missing. */
export interface RecordedDay {
  readonly day: DayNumber;
  readonly minimumCelsius: number | null;
  readonly maximumCelsius: number | null;
  readonly rainMillimetres: number | null;
}

/** Lowest, highest, rain of a day [deg C, mm]; null where the value is missing. */
export type RecordedValues = readonly [number | null, number | null, number | null];

/** A record as it is looked up in. */
export interface RecordRead {
  /** by day, up to and including the day asked for */
  readonly known: ReadonlyMap<DayNumber, RecordedValues>;
  /** whole calendar years that end by that day, rising */
  readonly years: readonly number[];
}

/** Missing days a year may have and still count as whole. */
const missingDaysAllowed = 10;

const isComplete = (values: RecordedValues): boolean => values.every((value) => value !== null);

function read(record: readonly RecordedDay[], today: DayNumber): RecordRead {
  const known = new Map<DayNumber, RecordedValues>();
  for (const { day, minimumCelsius, maximumCelsius, rainMillimetres } of record) {
    if (day <= today) known.set(day, [minimumCelsius, maximumCelsius, rainMillimetres]);
  }
  const counts = new Map<number, number>();
  for (const [day, values] of known) {
    if (!isComplete(values)) continue;
    const { year } = partsFromDay(day);
    counts.set(year, (counts.get(year) ?? 0) + 1);
  }
  const years = [...counts]
    .filter(
      ([year, count]) => dayFromParts(year, 12, 31) <= today && count >= 365 - missingDaysAllowed,
    )
    .map(([year]) => year)
    .sort((one, other) => one - other);
  return { known, years };
}

/** The last reading of each record that nobody can change any more. */
const kept = new WeakMap<
  readonly RecordedDay[],
  { readonly today: DayNumber; readonly read: RecordRead }
>();

/**
 * The record up to and including `today`. Nothing later is read, wherever it stands in the list; of
 * two entries for a day the later in the list holds. A frozen record is read once: every planting of
 * a garden asks it for its usual warmth.
 */
export function readRecord(record: readonly RecordedDay[], today: DayNumber): RecordRead {
  if (!Object.isFrozen(record)) return read(record, today);
  const before = kept.get(record);
  if (before?.today === today) return before.read;
  const now = read(record, today);
  kept.set(record, { today, read: now });
  return now;
}

/**
 * Whole calendar years of record that end by `today`, rising. The list changes only when another
 * year is complete, so imagined days taken from it hold still within a year.
 */
export const wholeYears = (record: readonly RecordedDay[], today: DayNumber): readonly number[] =>
  readRecord(record, today).years;
