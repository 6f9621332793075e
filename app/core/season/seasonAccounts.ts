import { seasonStart, yearOf, type DayNumber } from '../days';
import { pools, type Pool } from './flows';
import type { BedSeason } from './input';
import { bedLedger, type BedLedger } from './ledger';
import type { SeasonResult } from './result';

/** What a season hands to the next, as it stands on the next one's first morning [g N/m2 of bed]. */
export interface CarriedOver {
  /** nitrate of 0-30 cm and of the lower layer; much of it may wash out before anything grows */
  readonly ready: number;
  /** lying on top, its humus apart */
  readonly inCover: number;
  /** rotting in the soil, its humus apart */
  readonly inSoilResidue: number;
  /** still to come from compost and the like */
  readonly inCompost: number;
  /** humus of this season, and what is left of the humus of those before */
  readonly youngHumus: number;
  /** in what stands over the turn of the season */
  readonly inCrop: number;
}

/** One season of a bed's run, whole days; all in g N per m2 of bed. */
export interface SeasonAccount {
  /** the year it starts in, by which it is called */
  readonly year: number;
  readonly firstDay: DayNumber;
  readonly lastDay: DayNumber;
  /** no day of it lies ahead of today */
  readonly isOver: boolean;
  /** pools before its first day: those of the season before at its end, to the last digit */
  readonly start: Readonly<Record<Pool, number>>;
  readonly end: Readonly<Record<Pool, number>>;
  /** what came in, went out and is on hand, by kind */
  readonly ledger: BedLedger;
  readonly carriedOver: CarriedOver;
}

/** First and last days of the seasons of a run, rising; the first and the last may be cut by it. */
export function seasonsOf(
  input: Pick<BedSeason, 'firstDay' | 'lastDay' | 'seasonStarts'>,
): readonly { readonly firstDay: DayNumber; readonly lastDay: DayNumber }[] {
  const starts = [input.firstDay, ...input.seasonStarts];
  return starts.map((firstDay, at) => ({
    firstDay,
    lastDay: (starts[at + 1] ?? input.lastDay + 1) - 1,
  }));
}

export const carriedOverOf = (end: Readonly<Record<Pool, number>>): CarriedOver => ({
  ready: end.mineralTop + end.mineralLower,
  inCover: end.coverResidue + end.coverMicrobes + end.coverFree,
  inSoilResidue: end.dugResidue + end.dugMicrobes,
  inCompost: end.slow,
  youngHumus: end.youngHumus + end.coverHumus + end.dugHumus,
  inCrop: end.crop,
});

/**
 * A bed's run as one account per season, each starting from the end of the one before.
 *
 * @param seasonStartMonth 1-12, for their names
 * @returns one per season, earliest first; of the season that holds today the end is foretold
 * @validity any run of `input`
 * @source mass balance (a definition)
 */
export function seasonAccounts(
  input: BedSeason,
  result: SeasonResult,
  seasonStartMonth: number,
): readonly SeasonAccount[] {
  const poolsAfter = (day: DayNumber): Record<Pool, number> =>
    Object.fromEntries(
      pools.map((pool) => [
        pool,
        day < result.firstDay ? result.start[pool] : result.pools[pool][day - result.firstDay]!,
      ]),
    ) as Record<Pool, number>;
  return seasonsOf(input).map(({ firstDay, lastDay }) => {
    const end = poolsAfter(lastDay);
    return {
      // a run may begin late in a season: what is left of it is called by the season's own year
      year: yearOf(seasonStart(firstDay, seasonStartMonth)),
      firstDay,
      lastDay,
      isOver: lastDay <= input.today,
      start: poolsAfter(firstDay - 1),
      end,
      ledger: bedLedger(result, firstDay, lastDay),
      carriedOver: carriedOverOf(end),
    };
  });
}
