import { dayOf, type DayNumber } from '../core/days';
import type { RecordedDay } from '../core/season/ahead';
import type { MonthlyNormals } from '../core/season/input';
import { laidOutOnce } from './laidOut';
import type { Garden } from './schema';

/** Monthly normals as the engine takes them. */
export const normalsOf = (garden: Garden): MonthlyNormals => {
  const { minimumCelsius, maximumCelsius, rainMillimetres, wetDays } = garden.weather.normals;
  return { minimumCelsius, maximumCelsius, rainMillimetres, wetDays };
};

/** Records are long: those of today, of a week ago and of the whole are kept. */
const records = laidOutOnce<readonly RecordedDay[]>(4);

/** Recorded days up to a day, the gardener's own rain gauge and thermometer in place of the record. */
export const recordOf = (garden: Garden, upTo: DayNumber): readonly RecordedDay[] =>
  records(garden, String(upTo), () => madeRecord(garden, upTo));

function madeRecord(garden: Garden, upTo: DayNumber): RecordedDay[] {
  const record = new Map<DayNumber, RecordedDay>();
  for (const [date, minimumCelsius, maximumCelsius, rainMillimetres] of garden.weather.days) {
    const day = dayOf(date);
    if (day <= upTo) record.set(day, { day, minimumCelsius, maximumCelsius, rainMillimetres });
  }
  const gauged = new Map<DayNumber, number>();
  for (const event of garden.events) {
    if (event.kind !== 'rain gauge') continue;
    const day = dayOf(event.date);
    // emptied twice in a day: both count
    if (day <= upTo) gauged.set(day, (gauged.get(day) ?? 0) + event.millimetres);
  }
  for (const [day, rainMillimetres] of gauged) {
    const known = record.get(day) ?? { day, minimumCelsius: null, maximumCelsius: null };
    record.set(day, { ...known, rainMillimetres });
  }
  for (const [date, lowest, highest] of garden.weather.thermometer ?? []) {
    const day = dayOf(date);
    if (day > upTo) continue;
    const known = record.get(day);
    // where the record and the reading cannot both be, the record gives way
    const [low, high] = [known?.minimumCelsius ?? null, known?.maximumCelsius ?? null];
    record.set(day, {
      day,
      minimumCelsius: lowest ?? (highest !== null && low !== null && low > highest ? null : low),
      maximumCelsius: highest ?? (lowest !== null && high !== null && high < lowest ? null : high),
      rainMillimetres: known?.rainMillimetres ?? null,
    });
  }
  return [...record.values()];
}
