import { takenOn } from '../core/season/plantingAccount';
import { at, lastDayOf, seasonFirstDay } from '../core/season/seasonAccount';
import { watchedOf } from '../core/season/watchedSeason';
import type { BedResults } from '../store/contract';

const kept = new WeakMap<BedResults['season'], number | null>();

/**
 * Share of what the plantings of the season that holds today could use and get, 0-1, from its first
 * morning to the run's end: counted as the imagined seasons count theirs, so that both tell of the
 * same. What was sown the autumn before comes in with what it wants and takes from that morning on.
 *
 * @returns null when nothing stands or will stand after today
 */
export function needMet(run: Pick<BedResults, 'season' | 'input'>): number | null {
  const known = kept.get(run.season);
  if (known !== undefined) return known;
  const share = summed(run);
  kept.set(run.season, share);
  return share;
}

function summed({ season, input }: Pick<BedResults, 'season' | 'input'>): number | null {
  const { today } = input;
  if (!input.plantings.some(({ clearingDay }) => clearingDay === null || clearingDay > today))
    return null;
  const watched = watchedOf(season);
  const from = seasonFirstDay(input, today);
  let wanted = 0;
  let met = 0;
  for (const planting of input.plantings) {
    const own = season.plantings.find(({ id }) => id === planting.id);
    if (!own) continue;
    let needed = 0;
    let taken = 0;
    for (let day = Math.max(from, planting.startDay); day <= lastDayOf(season); day += 1) {
      needed += at(own.dailyNeed, season, day);
      taken += takenOn(input, watched, planting, day);
    }
    wanted += needed;
    // what one took of arrears from before is no help to another
    met += Math.min(needed, taken);
  }
  return wanted > 0 ? met / wanted : null;
}
