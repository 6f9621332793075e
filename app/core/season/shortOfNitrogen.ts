import type { DayNumber } from '../days';
import type { BedSeason } from './input';
import type { Limits } from './limits';
import {
  canFix,
  forecastMetOf,
  openShareOf,
  type PlantingAccount,
  takenOn,
} from './plantingAccount';
import { at, lastDayOf } from './seasonAccount';
import type { WatchedSeason } from './watchedSeason';

/** Plantings that can go short: legumes only where their nodules are known not to work. */
const canGoShort = (accounts: readonly PlantingAccount[]): readonly PlantingAccount[] =>
  accounts.filter((account) => !canFix(account.planting));

/**
 * First day of the coming weeks on which what the crop can have by then is less than what it wants
 * by then, when the season's forecast does not make it good; else null.
 *
 *     S (in reach - 0.4) + release(d) - tie-up(d)  <  0.9 need(d),   need(d) > 0.3 g/m2
 *
 * @param wasShort the bed was short when it was last looked at: wider lines, so that it does not flicker
 * @returns null for beds of legumes whose fixation can still rise
 */
export function turnsShortOn(
  accounts: readonly PlantingAccount[],
  result: WatchedSeason,
  today: DayNumber,
  limits: Limits,
  wasShort: boolean,
): DayNumber | null {
  const { numbers } = limits;
  const hungry = canGoShort(accounts);
  if (hungry.length === 0) return null;
  const enoughMet = wasShort ? numbers['leaving short'] : numbers['forecast meets'];
  if (forecastMetOf(hungry) >= enoughMet) return null;
  if (openShareOf(hungry) < numbers['short least open']) return null;

  const share = wasShort ? numbers['leaving short share'] : numbers['short share'];
  const supplyShare = hungry.reduce((sum, account) => sum + account.supplyShare, 0);
  const ready = hungry.reduce((sum, account) => sum + account.inReach, 0);
  const last = Math.min(today + numbers['short look-ahead'], lastDayOf(result));
  let wanted = 0;
  let given = Math.max(0, ready - supplyShare * numbers['out of reach']);
  for (let day = today + 1; day <= last; day += 1) {
    const freed = at(result.released, result, day) - at(result.tiedUp, result, day);
    for (const account of hungry) {
      if (day > account.horizon) continue;
      wanted += at(account.result.dailyNeed, result, day);
      given += account.supplyShare * freed;
    }
    if (wanted > numbers['short least need'] && given < share * wanted) return day;
  }
  return null;
}

/**
 * First day of a week in which a standing crop got much less than it wanted, when the season has
 * lost enough by it to be worth saying; else null.
 */
export function wasShortOn(
  accounts: readonly PlantingAccount[],
  input: BedSeason,
  result: WatchedSeason,
  today: DayNumber,
  limits: Limits,
): DayNumber | null {
  const { numbers } = limits;
  const hungry = canGoShort(accounts);
  const demand = hungry.reduce((sum, account) => sum + account.result.demand, 0);
  if (demand <= 0) return null;
  const start = Math.max(
    result.firstDay,
    hungry.reduce((first, account) => Math.min(first, account.planting.startDay), today),
  );
  const wanted: number[] = [];
  const taken: number[] = [];
  let lost = 0;
  let first: DayNumber | null = null;
  for (let day = start; day <= today; day += 1) {
    let wantedToday = 0;
    let takenToday = 0;
    for (const account of hungry) {
      wantedToday += at(account.result.dailyNeed, result, day);
      takenToday += takenOn(input, result, account.planting, day);
    }
    lost += wantedToday - takenToday;
    wanted.push(wantedToday);
    taken.push(takenToday);
    const weekWanted = wanted.slice(-7).reduce((sum, one) => sum + one, 0);
    const weekTaken = taken.slice(-7).reduce((sum, one) => sum + one, 0);
    if (
      first === null &&
      weekWanted > numbers['short least need'] &&
      weekTaken < numbers['was short share'] * weekWanted
    )
      first = Math.max(start, day - 6);
  }
  return lost >= numbers['was short lost'] * demand ? first : null;
}
