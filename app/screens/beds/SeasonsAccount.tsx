import { useEffect, useMemo } from 'react';
import { Scroller } from '../../charts/Scroller';
import { FigureRow, type FigureCell } from '../../controls/FigureRow';
import type { SeasonAccount } from '../../core/season/seasonAccounts';
import type { Garden } from '../../document/schema';
import { seasonAccountsWith } from '../../document/seasonsAccount';
import type { BedResults } from '../../store/contract';
import { accountAmount } from '../../words/chartFormat';
import {
  carriedNames,
  carriedWords,
  expectedFailed,
  expectedSoon,
  expectedWords,
  leftInAll,
  leftWords,
  seasonAccountTitle,
  seasonColumn,
  seasonLine,
  seasonLineNames,
  seasonLines,
} from '../../words/seasonAccountWords';
import { useShown } from '../shown';
import type { Why } from '../../words/why';
import { carriedWhy, seasonLineWhy } from '../why/seasonWhys';
import { useMowings } from '../store';
import { TroubleReason } from '../WorkTrouble';

/** less than this is told as nothing [g/m2] */
const leastShown = 0.005;

/** The bed from season to season: what came in, went out, and what is left for the next year. */
export function SeasonsAccount(props: {
  /** what the results are answers to */
  readonly garden: Garden;
  readonly results: BedResults;
}) {
  const { garden, results } = props;
  const { chart: units } = useShown();
  const { seasonStartMonth } = garden.garden;
  const { bedId } = results.input;
  const carried = useMowings((state) => (state.carried?.bedId === bedId ? state.carried : null));
  const want = useMowings((state) => state.wantCarried);
  const leave = useMowings((state) => state.leaveCarried);
  useEffect(() => {
    want(bedId);
    return leave;
  }, [want, leave, bedId]);
  const ends = carried?.ends;
  const seasons = useMemo(
    () => seasonAccountsWith(garden, results.input, results.season, ends ?? []).slice(-2),
    [garden, results, ends],
  );
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
    <section
      className="section"
      aria-labelledby="bed-seasons"
      aria-busy={carried?.state === 'working'}
    >
      <h2 id="bed-seasons" className="section-head">
        {seasonAccountTitle}
      </h2>
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
                {leftWords.heading}
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
      {seasons.map(
        ({ firstDay, year, expectedNextSeason }) =>
          expectedNextSeason && (
            <p key={firstDay}>{expectedWords(expectedNextSeason, year, seasonStartMonth, units)}</p>
          ),
      )}
      {carried?.state === 'failed' ? (
        <div className="field-trouble">
          <p role="alert">
            <span aria-hidden="true" className="field-trouble-mark" />
            {expectedFailed}
          </p>
          <TroubleReason reason={carried.reason} />
        </div>
      ) : (
        carried?.state !== 'ready' && !ends?.length && <p>{expectedSoon}</p>
      )}
    </section>
  );
}
