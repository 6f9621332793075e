import { dayOf, seasonStart, type DayNumber } from '../core/days';
import type { Garden } from './schema';

/**
 * How many plantings begin in each season of a garden, by the first day of the season, earliest
 * first. Seasons in which nothing begins are left out.
 */
export function plantingsBySeason(
  garden: Garden,
): readonly { readonly start: DayNumber; readonly count: number }[] {
  const counts = new Map<DayNumber, number>();
  for (const { started } of garden.plantings) {
    const start = seasonStart(dayOf(started), garden.garden.seasonStartMonth);
    counts.set(start, (counts.get(start) ?? 0) + 1);
  }
  return [...counts]
    .map(([start, count]) => ({ start, count }))
    .toSorted((one, other) => one.start - other.start);
}
