import type { LedgerPeriod } from '../../charts/ledger/Chart';
import { ledgerWay } from '../../core/season/ledgerStreams';
import { seasonsOf } from '../../core/season/seasonAccounts';
import { seasonStart, yearOf } from '../../core/days';
import type { Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { periodWords } from '../../words/ledgerWords';
import { seasonWord } from '../../words/seasonAccountWords';

/** The days a bed's ledger can be told of: this season so far, all of it, and the two before, latest first. */
export function ledgerPeriods(garden: Garden, results: BedResults): readonly LedgerPeriod[] {
  const { input, season } = results;
  const { seasonStartMonth } = garden.garden;
  const seasons = seasonsOf(input);
  const now = seasons.findLast(({ firstDay }) => firstDay <= season.today) ?? seasons[0];
  if (!now) return [];
  const earlier = seasons
    .filter(({ lastDay }) => lastDay < now.firstDay)
    .slice(-2)
    .reverse();
  return [
    {
      key: 'so far',
      words: periodWords.soFar,
      way: ledgerWay(season, now.firstDay, Math.min(season.today, now.lastDay)),
      imaginedFrom: null,
    },
    ...(now.lastDay > season.today
      ? [
          {
            key: 'whole',
            words: periodWords.whole,
            way: ledgerWay(season, now.firstDay, now.lastDay),
            imaginedFrom: season.today + 1,
          },
        ]
      : []),
    ...earlier.map(({ firstDay, lastDay }) => ({
      key: String(firstDay),
      words: periodWords.earlier(
        seasonWord(yearOf(seasonStart(firstDay, seasonStartMonth)), seasonStartMonth),
      ),
      way: ledgerWay(season, firstDay, lastDay),
      imaginedFrom: null,
    })),
  ];
}
