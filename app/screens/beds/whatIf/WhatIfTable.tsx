import type { ReactNode } from 'react';
import { Scroller } from '../../../charts/Scroller';
import { FigureRow, type FigureCell } from '../../../controls/FigureRow';
import type { DayNumber } from '../../../core/days';
import type { Bed } from '../../../document/schema';
import type { BedResults } from '../../../store/contract';
import type { WhatIf } from '../../../store/whatIfContract';
import { percent } from '../../../words/chartFormat';
import { twoFigures } from '../../../words/figures';
import { pairedOddsWords } from '../../../words/whatIfWords';
import { arrivalFor } from '../../arrivalFor';
import { finishedCrop } from '../../finishedCrop';
import { needMet } from '../../needMet';
import { useShown, type Shown } from '../../shown';
import { useGarden } from '../../store';
import type { BedWhyFacts } from '../../why/bedWhys';
import { arrivalWhy, highestNitrateWhy, metWhy, oddsWhy } from '../../why/effectWhys';
import { CoverWord, NitrogenWord, WeightWord } from '../../StateWords';
import { OddsMarks } from '../../OddsMarks';
import { coverOn, highestNitrate } from './whatIfFigures';

/** One alternative that can be read, with what came of it so far. */
export interface Weighed {
  readonly key: string;
  /** "1", "2", "3" */
  readonly name: string;
  /** "1 bag of clippings of Back lawn, limp, today" */
  readonly words: string;
  readonly day: DayNumber;
}

interface Column {
  readonly key: string;
  readonly results: BedResults | null;
  readonly day: DayNumber;
}

/** As it is, and each alternative beside it: states, shares, nitrate, odds. */
export function WhatIfTable(props: {
  readonly bed: Bed;
  readonly asItIs: BedResults;
  readonly weighed: readonly Weighed[];
  readonly whatIf: WhatIf | null;
}) {
  const { bed, asItIs, weighed, whatIf } = props;
  const shown = useShown();
  const { today } = asItIs.season;
  const columns: readonly Column[] = [
    { key: 'as it is', results: asItIs, day: today },
    ...weighed.map(({ key, day }) => ({
      key,
      results: whatIf?.likely[key]?.after ?? null,
      day,
    })),
  ];
  const line = (words: string, of: (results: BedResults, day: DayNumber) => ReactNode) => (
    <tr>
      <th scope="row">{words}</th>
      {columns.map(({ key, results, day }) => (
        <td key={key}>{results ? of(results, day) : <span className="soft">Reckoning…</span>}</td>
      ))}
    </tr>
  );
  const garden = useGarden();
  const facts = (results: BedResults): BedWhyFacts => ({
    garden,
    results,
    draws: undefined,
    shown,
  });
  /** a line whose figures open what stands behind them */
  const figures = (
    words: string,
    of: (results: BedResults) => Pick<FigureCell, 'figure' | 'before' | 'after'>,
  ) => (
    <FigureRow
      words={words}
      cells={columns.map(({ key, results }, at) => ({
        key,
        of: at === 0 ? 'as it is' : `alternative ${weighed[at - 1]?.name ?? ''}`,
        ...(results
          ? of(results)
          : { figure: null, before: <span className="soft">Reckoning…</span> }),
      }))}
    />
  );
  const label = `${bed.name} as it is and with each alternative`;
  return (
    <Scroller className="table-scroll" label={label}>
      <table className="what-if-table">
        <caption className="only-heard">{label}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="only-heard">What</span>
            </th>
            <th scope="col">As it is</th>
            {weighed.map(({ key, name, words }) => (
              <th key={key} scope="col">
                {name}
                <small>{words}</small>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {line('Nitrogen', (results) => {
            const { state, turnsOn } = results.verdict;
            return (
              <>
                <NitrogenWord state={state} finished={finishedCrop(results) !== null} />
                {state === 'short' && turnsOn !== null && turnsOn > today && (
                  <small className="soft"> from {shown.dayWord(turnsOn)}</small>
                )}
              </>
            );
          })}
          {figures('Share of what it could use', (results) => {
            const met = needMet(results);
            return met === null
              ? { figure: null, before: 'nothing stands there' }
              : { figure: { text: percent(met), why: metWhy(facts(results), met) } };
          })}
          {line('Cover on that day', (results, day) => (
            <CoverWord state={coverOn(results, day)} />
          ))}
          {figures('Most nitrate in the soil', (results) => {
            const highest = highestNitrate(results);
            const { mgPerKg, day } = highest;
            return {
              figure: {
                text: `${twoFigures(mgPerKg)} mg/kg`,
                why: highestNitrateWhy(highest, results, shown),
              },
              after: (
                <small className="soft"> {day === today ? 'today' : shown.dayWord(day)}</small>
              ),
            };
          })}
          <FigureRow
            words="What it brings to the soil"
            cells={[
              asItIsCell,
              ...weighed.map(({ key, name }) => ({
                key,
                of: `alternative ${name}`,
                ...arrives(whatIf?.likely[key], shown),
              })),
            ]}
          />
          <FigureRow
            words="Against as it is"
            cells={[
              asItIsCell,
              ...weighed.map(({ key, name }) => {
                const odds = whatIf?.draws.odds[key];
                return {
                  key,
                  of: `alternative ${name}`,
                  ...(odds
                    ? {
                        before: <OddsMarks odds={odds} />,
                        figure: { text: pairedOddsWords(odds), why: oddsWhy(odds) },
                      }
                    : { figure: null, before: <OddsToCome whatIf={whatIf} /> }),
                };
              }),
            ]}
          />
          <tr>
            <th scope="row">Speaks against it</th>
            <td className="soft">–</td>
            {weighed.map(({ key }) => {
              const cautions = whatIf?.likely[key]?.cautions;
              const [strongest] = cautions ?? [];
              return (
                <td key={key}>
                  {!cautions ? (
                    <span className="soft">Reckoning…</span>
                  ) : strongest ? (
                    <>
                      <WeightWord weight={strongest.weight} />
                      {cautions.length > 1 && <small> and {cautions.length - 1} more</small>}
                    </>
                  ) : (
                    'nothing found'
                  )}
                </td>
              );
            })}
          </tr>
        </tbody>
      </table>
    </Scroller>
  );
}

const asItIsCell: FigureCell = {
  key: 'as it is',
  of: 'as it is',
  figure: null,
  before: '–',
  className: 'soft',
};

/** How far the odds are that are not there yet. */
function OddsToCome({ whatIf }: { readonly whatIf: WhatIf | null }) {
  const state = whatIf?.draws.state;
  return (
    <span className="soft">
      {state === 'failed'
        ? 'not known'
        : state === 'idle' && whatIf?.state === 'ready'
          ? 'stopped'
          : 'to come'}
    </span>
  );
}

/** The day by which half of a layer's help has arrived. */
function arrives(
  likely: WhatIf['likely'][string] | undefined,
  shown: Shown,
): Pick<FigureCell, 'figure' | 'before' | 'after'> {
  if (!likely) return { figure: null, before: <span className="soft">Reckoning…</span> };
  const arrival = arrivalFor(likely.before, likely.after);
  if (!arrival) return { figure: null, before: 'brings next to nothing' };
  return {
    figure: {
      text: shown.estimate(arrival.grams, shown.units.nitrogenPerArea),
      why: arrivalWhy(arrival, shown),
    },
    after: `, half of it by ${shown.dayWord(arrival.halfBy)}`,
  };
}
