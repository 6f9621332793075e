import { dayOf, type DayNumber } from '../core/days';
import type { TestedNitrate } from '../core/season/draws/testedNitrate';
import type { BedSeason } from '../core/season/input';
import { nitrateTestRows } from '../tables/nitrateTests';
import { ofBed } from './ofBed';
import type { Garden } from './schema';

/** Layer that every nitrate number is of [cm]. */
const topCentimetres = 30;

/**
 * A bed's nitrate tests that weigh its draws: after the first day of its run, where a test is what
 * the run starts from, and up to today. Of two on one day the later entry counts.
 *
 * A sample that went through another depth than 0-30 cm speaks for it less surely: its spread
 * grows by the ratio of the two depths (assumed).
 */
export function nitrateTests(
  garden: Garden,
  { bedId, firstDay, today }: Pick<BedSeason, 'bedId' | 'firstDay' | 'today'>,
): TestedNitrate[] {
  const byDay = new Map<DayNumber, TestedNitrate>();
  for (const event of ofBed(garden.events, bedId)) {
    if (event.kind !== 'soil test') continue;
    const { nitrateMgPerKg: mgPerKg, depthCentimetres: depth } = event;
    const day = dayOf(event.date);
    if (mgPerKg === null || day <= firstDay || day > today) continue;
    const off = Math.max(depth / topCentimetres, topCentimetres / depth);
    byDay.set(day, { day, mgPerKg, spread: nitrateTestRows.spread.typical * off });
  }
  return [...byDay.values()].sort((one, other) => one.day - other.day);
}
