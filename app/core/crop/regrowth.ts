import type { DayNumber } from '../days';
import type { MonthlyNormals } from '../season/input';
import { monthlyKnots, smoothNormal } from '../season/smoothNormals';

/** Days over which warming is told from cooling. */
const week = 7;
const daysOfYear = 365;

/**
 * Day on which a plant that stays for years grows again: the first of its season on which a usual
 * year is getting warmer and its mean air has reached the crop's base temperature. Where no such day
 * comes within a year, the season's first.
 *
 * @param seasonDay first day of the season
 * @validity assumed: the base temperature of the uptake clock is taken for that of regrowth, the
 *   monthly normals for the place; a warm bed is earlier, shoots under a deep cover later
 * @source the tables count such crops' days from regrowth or emergence in spring; the rule is ours
 */
export function regrowthDay(
  normals: MonthlyNormals,
  seasonDay: DayNumber,
  baseCelsius: number,
): DayNumber {
  const low = monthlyKnots(normals.minimumCelsius);
  const high = monthlyKnots(normals.maximumCelsius);
  const mean = (day: DayNumber): number => (smoothNormal(low, day) + smoothNormal(high, day)) / 2;
  for (let day = seasonDay; day < seasonDay + daysOfYear; day++)
    if (mean(day) >= baseCelsius && mean(day + week) > mean(day - week)) return day;
  return seasonDay;
}
