import { yearOf, seasonStart } from '../../core/days';
import type { Band } from '../../core/season/draws/bands';
import { bedLedger, type BedLedger } from '../../core/season/ledger';
import { carriedOverOf, seasonsOf, type CarriedOver } from '../../core/season/seasonAccounts';
import { pools, type Pool } from '../../core/season/flows';
import { gramsPerM2FromMgPerKg } from '../../core/units';
import type { Garden } from '../../document/schema';
import type { BedDraws, BedResults } from '../../store/contract';

/** What a sheet says of one season of a bed; all in g N per m2 of bed. */
export interface SheetAccount {
  readonly year: number;
  readonly firstDay: number;
  readonly lastDay: number;
  /** up to today, or to the season's end where that is over */
  readonly soFar: BedLedger;
  /** to the season's end with imagined days; null where it is over */
  readonly whole: BedLedger | null;
  /** on the season's last evening */
  readonly carried: CarriedOver;
  /** in 8 imagined seasons of 10, as far as they were run: of the season that holds today alone */
  readonly ranges: {
    readonly fixed: Band;
    readonly leached: Band;
    /** ready in 0-30 cm on the last evening */
    readonly readyAtEnd: Band;
    /** 0-1 */
    readonly needMet: Band;
  } | null;
}

const scaled = ({ low, middle, high }: Band, factor: number): Band => ({
  low: low * factor,
  middle: middle * factor,
  high: high * factor,
});

/** Seasons of a bed's run that have begun, latest first, as a sheet tells them. */
export function sheetAccounts(
  garden: Garden,
  { input, season }: BedResults,
  draws: BedDraws | undefined,
): readonly SheetAccount[] {
  const perMg = gramsPerM2FromMgPerKg(1, input.soil.bulkDensityKgPerL, 30);
  return seasonsOf(input)
    .filter(({ firstDay }) => firstDay <= season.today)
    .reverse()
    .map(({ firstDay, lastDay }) => {
      const isOver = lastDay <= season.today;
      const last = lastDay - season.firstDay;
      const end = Object.fromEntries(
        pools.map((pool) => [pool, season.pools[pool][last]!]),
      ) as Record<Pool, number>;
      const answer = isOver ? null : (draws?.answer ?? null);
      const atEnd = answer?.nitrate.at(-1);
      return {
        year: yearOf(seasonStart(firstDay, garden.garden.seasonStartMonth)),
        firstDay,
        lastDay,
        soFar: bedLedger(season, firstDay, Math.min(season.today, lastDay)),
        whole: isOver ? null : bedLedger(season, firstDay, lastDay),
        carried: carriedOverOf(end),
        ranges:
          answer && atEnd
            ? {
                fixed: answer.fixed,
                leached: answer.leached,
                needMet: answer.needMet,
                readyAtEnd: scaled(atEnd, perMg),
              }
            : null,
      };
    });
}
