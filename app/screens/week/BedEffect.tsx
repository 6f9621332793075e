import type { ReactNode } from 'react';
import { Scroller } from '../../charts/Scroller';
import { FigureRow } from '../../controls/FigureRow';
import type { PreviewBed } from '../../store/contract';
import { nothingHeldBack } from '../../words/cautions';
import { percent } from '../../words/chartFormat';
import { arrivalFor } from '../arrivalFor';
import { CautionList } from '../CautionList';
import { needMet } from '../needMet';
import { CoverWord, NitrogenWord } from '../StateWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { coverDepthWhy, type BedWhyFacts } from '../why/bedWhys';
import { arrivalWhy, metWhy } from '../why/effectWhys';

/** What a proposed laying does to a bed: both states and what the crop gets, before and after. */
export function BedEffect({ bed, name }: { readonly bed: PreviewBed; readonly name: string }) {
  const shown = useShown();
  const { estimate, units, dayWord } = shown;
  const garden = useGarden();
  const { before, after } = bed;
  const lies = (results: typeof before): number =>
    results.season.coverDepth[results.season.today - results.season.firstDay] ?? 0;
  const met = { before: needMet(before), after: needMet(after) };
  const arrival = arrivalFor(before, after);
  const facts = (results: typeof before): BedWhyFacts => ({
    garden,
    results,
    draws: undefined,
    shown,
  });
  const sides = [
    { key: 'before', of: 'as it is', results: before },
    { key: 'after', of: 'with this', results: after },
  ];
  const strong = (key: string, isChanged: boolean) =>
    key === 'after' && isChanged ? 'strong' : undefined;
  return (
    <div className="effect" aria-label={`What it does to ${name}`} role="group">
      <Scroller className="table-scroll" label={`${name} without and with this`}>
        <table className="effect-table">
          <caption className="only-heard">{name} without and with this</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="only-heard">What</span>
              </th>
              <th scope="col">as it is</th>
              <th scope="col">with this</th>
            </tr>
          </thead>
          <tbody>
            <Line
              words="Nitrogen"
              before={<NitrogenWord state={before.verdict.state} />}
              after={<NitrogenWord state={after.verdict.state} />}
              isChanged={before.verdict.state !== after.verdict.state}
            />
            <FigureRow
              words="Cover today, by evening"
              cells={sides.map(({ key, of, results }) => ({
                key,
                of,
                before: (
                  <>
                    <CoverWord state={results.verdict.coverState} />{' '}
                  </>
                ),
                figure: {
                  text: estimate(lies(results), units.depth),
                  why: coverDepthWhy(facts(results)),
                },
                className: strong(key, before.verdict.coverState !== after.verdict.coverState),
              }))}
            />
            {met.before !== null && met.after !== null && (
              <FigureRow
                words="Share of what it could use, all season"
                cells={sides.map(({ key, of, results }) => {
                  const share = needMet(results) ?? 0;
                  return {
                    key,
                    of,
                    figure: { text: percent(share), why: metWhy(facts(results), share) },
                    className: strong(key, percent(met.before ?? 0) !== percent(met.after ?? 0)),
                  };
                })}
              />
            )}
            {met.after !== null && arrival && (
              <FigureRow
                words="What it brings"
                cells={[
                  { key: 'before', of: 'as it is', figure: null, before: '–', className: 'soft' },
                  {
                    key: 'after',
                    of: 'with this',
                    figure: {
                      text: estimate(arrival.grams, units.nitrogenPerArea),
                      why: arrivalWhy(arrival, shown),
                    },
                    after: `, half of it by ${dayWord(arrival.halfBy)}`,
                    className: 'strong',
                  },
                ]}
              />
            )}
          </tbody>
        </table>
      </Scroller>
      {bed.cautions.length > 0 ? (
        <CautionList cautions={bed.cautions} />
      ) : (
        <p className="small soft">{nothingHeldBack}</p>
      )}
    </div>
  );
}

function Line(props: {
  readonly words: string;
  readonly before: ReactNode;
  readonly after: ReactNode;
  readonly isChanged: boolean;
}) {
  return (
    <tr>
      <th scope="row">{props.words}</th>
      <td>{props.before}</td>
      <td className={props.isChanged ? 'strong' : undefined}>{props.after}</td>
    </tr>
  );
}
