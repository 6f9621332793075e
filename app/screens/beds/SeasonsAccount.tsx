import { useEffect, useMemo } from 'react';
import { Scroller } from '../../charts/Scroller';
import { FigureButton, useOpenFigure, WhyPanel } from '../../controls/Figured';
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
  type SeasonLine,
} from '../../words/seasonAccountWords';
import { useShown } from '../shown';
import { seasonLineWhy } from '../why/seasonWhys';
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
              <FigureRow
                key={key}
                name={key}
                words={seasonLines[key]}
                seasons={seasons}
                seasonStartMonth={seasonStartMonth}
                of={({ ledger }) => seasonLine(key, ledger)}
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
                <tr key={key}>
                  <th scope="row">{carriedWords[key]}</th>
                  {cells(({ carriedOver }) => carriedOver[key])}
                </tr>
              ))}
            <FigureRow
              className="ledger-side"
              name="left in all"
              words={leftWords.sum}
              seasons={seasons}
              seasonStartMonth={seasonStartMonth}
              of={({ ledger }) => leftInAll(ledger)}
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

/** One line of the account; each figure opens what stands behind it, in a row beneath. */
function FigureRow(props: {
  readonly name: SeasonLine | 'left in all';
  readonly words: string;
  readonly seasons: readonly SeasonAccount[];
  readonly seasonStartMonth: number;
  readonly of: (season: SeasonAccount) => number;
  readonly className?: string;
}) {
  const { chart: units } = useShown();
  const group = useOpenFigure();
  const open = group.open === null ? undefined : props.seasons[group.open];
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- only hears Escape from its buttons */}
      <tr className={props.className} onKeyDown={group.onKeyDown}>
        <th scope="row">{props.words}</th>
        {props.seasons.map((season, index) => (
          <td key={season.firstDay}>
            <FigureButton
              text={accountAmount(props.of(season), units.nitrogen)}
              of={`${props.words}, ${seasonColumn(season, props.seasonStartMonth)}`}
              figure={index}
              group={group}
            />
          </td>
        ))}
      </tr>
      {open && (
        <tr className="why-row">
          <td colSpan={props.seasons.length + 1}>
            <WhyPanel why={seasonLineWhy(props.name, open, units)} id={group.panelId} />
          </td>
        </tr>
      )}
    </>
  );
}
