import { Scroller } from '../../charts/Scroller';
import { FigureRow, type FigureCell } from '../../controls/FigureRow';
import type { SeasonAccount } from '../../core/season/seasonAccounts';
import { accountAmount } from '../../words/chartFormat';
import {
  carriedNames,
  carriedWords,
  leftInAll,
  leftWords,
  seasonColumn,
  seasonLine,
  seasonLineNames,
  seasonLines,
} from '../../words/seasonAccountWords';
import type { Why } from '../../words/why';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { carriedWhy, seasonLineWhy } from '../why/seasonWhys';

/** less than this is told as nothing [g/m2] */
const leastShown = 0.005;

/** Seasons of a bed side by side: what came in, went out, and what each left. */
export function SeasonsTable({
  seasons,
  left = leftWords.heading,
}: {
  readonly seasons: readonly SeasonAccount[];
  /** over what each leaves, where the bed goes on */
  readonly left?: string;
}) {
  const { chart: units } = useShown();
  const { seasonStartMonth } = useGarden().garden;
  const cells = (
    of: (season: SeasonAccount) => number,
    why: (season: SeasonAccount) => Why,
  ): readonly FigureCell[] =>
    seasons.map((season) => ({
      key: season.firstDay,
      of: seasonColumn(season, seasonStartMonth),
      figure: { text: accountAmount(of(season), units.nitrogen), why: why(season) },
    }));
  return (
    <Scroller label="Seasons of this bed" className="table-scroll">
      <table className="ledger-table">
        <caption>{`Nitrogen, ${units.nitrogen.long}`}</caption>
        <thead>
          <tr>
            <th scope="col">Season</th>
            {seasons.map((season) => (
              <th key={season.firstDay} scope="col">
                {seasonColumn(season, seasonStartMonth)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {seasonLineNames.map((key) => (
            <FigureRow
              key={key}
              words={seasonLines[key]}
              cells={cells(
                ({ ledger }) => seasonLine(key, ledger),
                (season) => seasonLineWhy(key, season, units),
              )}
            />
          ))}
        </tbody>
        <tbody>
          <tr className="ledger-heading">
            <th scope="rowgroup" colSpan={seasons.length + 1}>
              {left}
            </th>
          </tr>
          {carriedNames
            .filter((key) => seasons.some(({ carriedOver }) => carriedOver[key] >= leastShown))
            .map((key) => (
              <FigureRow
                key={key}
                words={carriedWords[key]}
                cells={cells(
                  ({ carriedOver }) => carriedOver[key],
                  (season) => carriedWhy(key, season, units),
                )}
              />
            ))}
          <FigureRow
            className="ledger-side"
            words={leftWords.sum}
            cells={cells(
              ({ ledger }) => leftInAll(ledger),
              (season) => seasonLineWhy('left in all', season, units),
            )}
          />
        </tbody>
      </table>
    </Scroller>
  );
}
