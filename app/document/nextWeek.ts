import { dayOf, textFromDay } from '../core/days';
import type { BundledRecord } from '../tables/bundledRecords';
import type { Garden, WeatherRow } from './schema';

/** Days that "go on a week" brings. */
const daysOfStep = 7;

/**
 * The garden a week on: the next seven real days of its bundled record, and today moved by as many.
 * Null when it has no such record, no day of its own, or the record ends before.
 *
 * @param recordOf the record of a name, where one came with the program
 */
export function weekOn(
  garden: Garden,
  recordOf: (name: string) => BundledRecord | undefined,
): { today: string; days: WeatherRow[] } | null {
  const { bundledRecord: name, days } = garden.weather;
  const record = name === null ? undefined : recordOf(name);
  if (!record || garden.garden.today === null) return null;
  const today = dayOf(garden.garden.today);
  const first = dayOf(record.firstDay);
  const rows: WeatherRow[] = [];
  for (let day = today + 1; day <= today + daysOfStep; day++) {
    const lowest = record.minimumCelsius[day - first];
    const highest = record.maximumCelsius[day - first];
    const rain = record.rainMillimetres[day - first];
    if (lowest === undefined || highest === undefined || rain === undefined) return null;
    rows.push([textFromDay(day), lowest, highest, rain]);
  }
  const last = textFromDay(today + daysOfStep);
  const before = days.filter(([date]) => dayOf(date) <= today);
  const after = days.filter(([date]) => date > last);
  return { today: last, days: [...before, ...rows, ...after] };
}
