import type { DayNumber } from '../core/days';
import { makeDraws } from '../core/season/draws/columns';
import type { Band } from '../core/season/draws/bands';
import { carriedRelease } from '../core/season/draws/carriedRelease';
import type { BedSeason } from '../core/season/input';
import type { SeasonResult } from '../core/season/result';
import { seasonAccounts, seasonsOf, type SeasonAccount } from '../core/season/seasonAccounts';
import type { Garden } from './schema';
import { bedSeason, typicalSeed } from './seasonInput';
import { seasonSpread } from './seasonSpread';

/** Seasons of a bed's run, each with what it leaves to the next. */
export interface BedSeasonAccount extends SeasonAccount {
  /**
   * what is left of it gives in the season after [g N/m2 of bed, 10-50-90], the soil's own store
   * apart; null for seasons longer ago than the last that is over, whose next is known
   */
  readonly expectedNextSeason: Band | null;
}

/** Enough for a range that is shown with one digit; the window asks while it draws. */
const draws = 60;

/** The run with nothing laid, dug, sown or watered after a season's end, to the end of the next. */
function leftAlone(input: BedSeason, lastDay: DayNumber, nextEnd: DayNumber): BedSeason {
  const isBefore = ({ day }: { readonly day: DayNumber }): boolean => day <= lastDay;
  return {
    ...input,
    lastDay: nextEnd,
    seasonStarts: input.seasonStarts.filter((day) => day <= nextEnd),
    layers: input.layers.filter(isBefore),
    events: input.events.filter(isBefore),
    plantings: input.plantings.filter(
      (planting) => (planting.standsSince ?? planting.startDay) <= lastDay,
    ),
  };
}

/**
 * The accounts of a bed's seasons.
 *
 * @param input,result the bed's run of `today`, as `bedSeason` and `runSeason` give it
 * @throws when the garden has no such bed
 */
export function bedSeasonAccounts(
  garden: Garden,
  input: BedSeason,
  result: SeasonResult,
): readonly BedSeasonAccount[] {
  const { bedId, today } = input;
  const further = bedSeason(garden, bedId, today, { throughNextSeason: true });
  const spread = seasonSpread(garden, bedId);
  const columns = makeDraws(typicalSeed, draws);
  const accounts = seasonAccounts(input, result, garden.garden.seasonStartMonth);
  const seasons = seasonsOf(further);
  return accounts.map((account, at) => {
    const next = seasons[at + 1];
    const isAsked = next !== undefined && at >= accounts.length - 2;
    return {
      ...account,
      expectedNextSeason: isAsked
        ? carriedRelease(
            leftAlone(further, account.lastDay, next.lastDay),
            spread,
            columns,
            next.firstDay,
          )
        : null,
    };
  });
}
