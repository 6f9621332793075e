import type { ReactNode } from 'react';
import { Scroller } from '../../../charts/Scroller';
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
import { useShown } from '../../shown';
import { CoverWord, NitrogenWord, WeightWord } from '../../StateWords';
import { OddsMarks } from './OddsMarks';
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
          {line('Share of what it could use', (results) => {
            const met = needMet(results);
            return met === null ? 'nothing stands there' : percent(met);
          })}
          {line('Cover on that day', (results, day) => (
            <CoverWord state={coverOn(results, day)} />
          ))}
          {line('Most nitrate in the soil', (results) => {
            const { mgPerKg, day } = highestNitrate(results);
            return (
              <>
                {twoFigures(mgPerKg)} mg/kg{' '}
                <small className="soft">{day === today ? 'today' : shown.dayWord(day)}</small>
              </>
            );
          })}
          <tr>
            <th scope="row">Half of what it brings is in the soil</th>
            <td className="soft">–</td>
            {weighed.map(({ key }) => (
              <td key={key}>
                <Arrives whatIf={whatIf} of={key} />
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">Against as it is</th>
            <td className="soft">–</td>
            {weighed.map(({ key }) => (
              <td key={key}>
                <Odds whatIf={whatIf} of={key} />
              </td>
            ))}
          </tr>
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

/** Odds in marks and words, or how far they are. */
function Odds({ whatIf, of }: { readonly whatIf: WhatIf | null; readonly of: string }) {
  const odds = whatIf?.draws.odds[of];
  if (odds)
    return (
      <>
        <OddsMarks odds={odds} />
        <p className="small">{pairedOddsWords(odds)}</p>
      </>
    );
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
function Arrives({ whatIf, of }: { readonly whatIf: WhatIf | null; readonly of: string }) {
  const shown = useShown();
  const likely = whatIf?.likely[of];
  if (!likely) return <span className="soft">Reckoning…</span>;
  const arrival = arrivalFor(likely.before, likely.after);
  if (!arrival) return 'brings next to nothing';
  return (
    <>
      by {shown.dayWord(arrival.halfBy)}{' '}
      <small className="soft">
        of {shown.estimate(arrival.grams, shown.units.nitrogenPerArea)}
      </small>
    </>
  );
}
