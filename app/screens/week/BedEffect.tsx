import type { ReactNode } from 'react';
import { Scroller } from '../../charts/Scroller';
import type { PreviewBed } from '../../store/contract';
import { nothingHeldBack } from '../../words/cautions';
import { percent } from '../../words/chartFormat';
import { arrivalFor } from '../arrivalFor';
import { CautionList } from '../CautionList';
import { needMet } from '../needMet';
import { CoverWord, NitrogenWord } from '../StateWords';
import { useShown } from '../shown';

/** What a proposed laying does to a bed: both states and what the crop gets, before and after. */
export function BedEffect({ bed, name }: { readonly bed: PreviewBed; readonly name: string }) {
  const { estimate, units, dayWord } = useShown();
  const { before, after } = bed;
  const lies = (results: typeof before): number =>
    results.season.coverDepth[results.season.today - results.season.firstDay] ?? 0;
  const met = { before: needMet(before), after: needMet(after) };
  const arrival = arrivalFor(before, after);
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
            <Line
              words="Cover today"
              before={
                <>
                  <CoverWord state={before.verdict.coverState} />{' '}
                  <small>{estimate(lies(before), units.depth)}</small>
                </>
              }
              after={
                <>
                  <CoverWord state={after.verdict.coverState} />{' '}
                  <small>{estimate(lies(after), units.depth)}</small>
                </>
              }
              isChanged={before.verdict.coverState !== after.verdict.coverState}
            />
            {met.before !== null && met.after !== null && (
              <Line
                words="Share of what it could use"
                before={percent(met.before)}
                after={percent(met.after)}
                isChanged={percent(met.before) !== percent(met.after)}
              />
            )}
            {met.after !== null && arrival && (
              <Line
                words="Half of what it brings is there"
                before={<span className="soft">–</span>}
                after={
                  <>
                    by {dayWord(arrival.halfBy)}{' '}
                    <small>of {estimate(arrival.grams, units.nitrogenPerArea)}</small>
                  </>
                }
                isChanged
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
