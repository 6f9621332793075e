import { useEffect, useMemo } from 'react';
import { Scroller } from '../../charts/Scroller';
import type { SeasonAccount } from '../../core/season/seasonAccounts';
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
import { useGarden, useMowings } from '../store';
import { TroubleReason } from '../WorkTrouble';

/** less than this is told as nothing [g/m2] */
const leastShown = 0.005;

/** The bed from season to season: what came in, went out, and what is left for the next year. */
export function SeasonsAccount({ results }: { readonly results: BedResults }) {
  const garden = useGarden();
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
  const cells = (of: (season: SeasonAccount) => number) =>
    seasons.map((season) => (
      <td key={season.firstDay}>{accountAmount(of(season), units.nitrogen)}</td>
    ));
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
              <tr key={key}>
                <th scope="row">{seasonLines[key]}</th>
                {cells(({ ledger }) => seasonLine(key, ledger))}
              </tr>
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
                <tr key={key}>
                  <th scope="row">{carriedWords[key]}</th>
                  {cells(({ carriedOver }) => carriedOver[key])}
                </tr>
              ))}
            <tr className="ledger-side">
              <th scope="row">{leftWords.sum}</th>
              {cells(({ ledger }) => leftInAll(ledger))}
            </tr>
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
