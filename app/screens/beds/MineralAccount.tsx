import { useMemo } from 'react';
import { Scroller } from '../../charts/Scroller';
import { FigureRow, type FigureCell } from '../../controls/FigureRow';
import { anyBed, idsOfPast } from '../../document/bedPast';
import {
  mineralAccount,
  minerals,
  type MineralFigures,
  type MineralRange,
} from '../../document/mineralAccount';
import type { Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { estimate } from '../../words/figures';
import {
  labMineralWords,
  mineralAdvice,
  mineralLineWords,
  mineralNames,
} from '../../words/mineralWords';
import { seasonColumn } from '../../words/seasonAccountWords';
import type { Why } from '../../words/why';
import { useShown } from '../shown';
import { mineralBalanceWhy, mineralWhy } from '../why/mineralWhys';

/** Phosphorus and potassium of a bed beside its nitrogen: in and out by season, and what a laboratory said. */
export function MineralAccount(props: {
  /** what the results are answers to */
  readonly garden: Garden;
  readonly results: Pick<BedResults, 'bedId' | 'input' | 'season'>;
  /** "up to today", where nothing else is said */
  readonly upTo?: string;
}) {
  const { garden, results } = props;
  const shown = useShown();
  const unit = shown.units.nitrogenPerArea;
  const seasons = useMemo(
    () => mineralAccount(garden, results.input, results.season).slice(-3).reverse(),
    [garden, results],
  );
  const bed = anyBed(garden, results.bedId);
  const past = bed ? idsOfPast(garden, bed) : new Set([results.bedId]);
  const tests = garden.events
    .flatMap((event) =>
      event.kind === 'soil test' &&
      past.has(event.bedId) &&
      event.minerals &&
      Object.keys(event.minerals).some((key) => key !== 'extractant')
        ? [
            {
              id: event.id,
              date: event.date,
              of: event.bedId === results.bedId ? null : anyBed(garden, event.bedId),
              words: labMineralWords(event.minerals).join('; '),
            },
          ]
        : [],
    )
    .sort((one, other) => (one.date < other.date ? 1 : -1));
  const range = ({ low, high }: MineralRange) =>
    low !== high && (
      <span className="small soft">
        {' '}
        {estimate(low, unit)} to {estimate(high, unit)}
      </span>
    );
  // one why for both elements of a line
  const cells = (figures: MineralFigures, why: Why): readonly FigureCell[] =>
    minerals.map((mineral, at) => {
      const text = estimate(figures[mineral].typical, unit);
      return {
        key: mineral,
        of: mineralNames[mineral],
        className: 'nowrap',
        figure: at === 0 ? { text, why } : null,
        before: at > 0 && <span className="strong">{text}</span>,
        after: range(figures[mineral]),
      };
    });
  const isRecalled = seasons.some(({ lines }) => lines.some((line) => line.isRecalled));
  return (
    <section className="section" aria-labelledby="bed-minerals">
      <h2 id="bed-minerals" tabIndex={-1} className="section-head">
        Phosphorus and potassium
      </h2>
      {tests.length > 0 && (
        <ul>
          {tests.map(({ id, date, of, words }) => (
            <li key={id}>
              {shown.dayWord(date)} {date.slice(0, 4)}
              {of && `, when it was ${of.name}`}: {words}
            </li>
          ))}
        </ul>
      )}
      <Scroller label="Phosphorus and potassium of this bed" className="table-scroll">
        <table className="ledger-table">
          <caption>
            {`In and out ${props.upTo ?? 'up to today'}, ${unit.symbol}, as the elements; 8 times in 10 within the range`}
          </caption>
          <thead>
            <tr>
              <th scope="col">Season</th>
              {minerals.map((mineral) => (
                <th key={mineral} scope="col">
                  {mineralNames[mineral]}
                </th>
              ))}
            </tr>
          </thead>
          {seasons.map((season) => (
            <tbody key={season.firstDay}>
              <tr>
                <th scope="rowgroup" colSpan={1 + minerals.length}>
                  {seasonColumn(season, garden.garden.seasonStartMonth)}
                </th>
              </tr>
              {season.lines.map((line) => (
                <FigureRow
                  key={mineralLineWords(line)}
                  words={mineralLineWords(line)}
                  mark={
                    line.isRecalled && (
                      <>
                        {' '}
                        <span aria-hidden="true">≈</span>
                        <span className="only-heard">(recalled)</span>
                      </>
                    )
                  }
                  cells={cells(line.figures, mineralWhy(line, unit))}
                />
              ))}
              <FigureRow
                words={season.lines.length === 0 ? 'Nothing came in or went out' : 'In less out'}
                cells={cells(season.balance, mineralBalanceWhy(season, unit))}
              />
            </tbody>
          ))}
        </table>
      </Scroller>
      <p className="small soft">
        {tests.length > 0 ? mineralAdvice.tested : mineralAdvice.untested}
        {isRecalled && ` ${mineralAdvice.recalled}`}
      </p>
    </section>
  );
}
