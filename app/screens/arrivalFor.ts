import { arrivalOf, type Arrival } from '../core/season/arrival';
import { standingPlantings } from '../core/season/plantingAccount';
import { lastDayOf } from '../core/season/seasonAccount';
import type { BedResults } from '../store/contract';

/** When half of what a layer brings to what stands there is in the soil; null: next to nothing comes. */
export function arrivalFor(before: BedResults, after: BedResults): Arrival | null {
  const { input, season } = after;
  const ends = standingPlantings(input, season.today).map(
    ({ clearingDay, usualEndDay }) => clearingDay ?? usualEndDay,
  );
  const until = ends.length > 0 ? Math.max(...ends) : lastDayOf(season);
  return arrivalOf(before.season, season, until);
}
