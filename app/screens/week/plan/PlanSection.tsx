import { useEffect, useRef } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { ChoiceRow } from '../../../controls/ChoiceRow';
import { Disclosure } from '../../../controls/Disclosure';
import { Icon } from '../../../controls/marks/Icon';
import type { PlanAnswer } from '../../../core/plan/answer';
import {
  effectWords,
  leftOutTitle,
  leftOutWords,
  mendWords,
  planHeard,
  planTroubleWords,
  simpleRuleWords,
} from '../../../words/planWords';
import { useMowings } from '../../store';
import { BeforeYouMow } from './BeforeYouMow';
import { ComingWeeks } from './ComingWeeks';
import { PaperList } from './PaperList';
import { PlanLines } from './PlanLines';
import { PlanRest } from './PlanRest';
import { usePlanNames } from './usePlanNames';

/** What to do this week: made when it is asked for, and from then on kept up to date. */
export function PlanSection(props: {
  /** fills the form of the clippings in hand for a bed; null: nothing is in hand */
  readonly onChange: ((bedId: string, amount: string) => void) | null;
}) {
  const plan = useMowings((state) => state.plan);
  const wantPlan = useMowings((state) => state.wantPlan);
  const leavePlan = useMowings((state) => state.leavePlan);
  const stopPlan = useMowings((state) => state.stopPlan);
  const names = usePlanNames();
  const wasAsked = plan.answer !== null || plan.trouble !== null;
  useEffect(() => {
    if (wasAsked) wantPlan();
  }, [wasAsked, wantPlan]);
  useEffect(() => leavePlan, [leavePlan]);
  const { state, answer, trouble, progress } = plan;
  const isWorking = state === 'working';
  const announce = useAnnounce();
  const heard = answer && !plan.isBehind ? planHeard(answer, names) : '';
  // what was there when one came is read like all else; only what comes of a change is told
  const told = useRef(heard);
  useEffect(() => {
    if (heard === '' || heard === told.current) return;
    told.current = heard;
    announce(heard, 'plan');
  }, [announce, heard]);
  return (
    <section className="section plan" aria-labelledby="plan">
      <div className="section-head">
        <h2 id="plan">What to do this week</h2>
        {!isWorking && (!answer || plan.isBehind) && (
          <button
            type="button"
            className="button-main not-printed"
            onClick={() => {
              wantPlan();
              announce('Weighing the beds against each other.', 'plan');
            }}
          >
            {answer ? 'Work it out anew' : 'Work out a plan'}
          </button>
        )}
      </div>
      {!answer && !trouble && !isWorking && state !== 'failed' && (
        <p className="lead">
          Which lawn to collect from and how much, which bed gets how many buckets and why, and
          where the rest goes: weighed for all beds together, from what is cut, kept and expected.
        </p>
      )}
      <div className="plan-work not-printed">
        {isWorking && (
          <p>
            Weighing the beds against each other
            {progress ? `, ${progress.done} of ${progress.of} steps` : ''}…{' '}
            <button type="button" className="button-small" onClick={stopPlan}>
              Stop
            </button>
          </p>
        )}
        {answer && plan.isBehind && !isWorking && <p>This plan is of before your last change.</p>}
      </div>
      {state === 'failed' && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          No plan came out; the beds below are as they were. Try again, or lay by hand.
        </p>
      )}
      {trouble && <p>{planTroubleWords(trouble, names)}</p>}
      {answer && <Plan answer={answer} onChange={props.onChange} isBehind={plan.isBehind} />}
    </section>
  );
}

function Plan(props: {
  readonly answer: PlanAnswer;
  readonly isBehind: boolean;
  readonly onChange: ((bedId: string, amount: string) => void) | null;
}) {
  const { answer } = props;
  const names = usePlanNames();
  const bedsADay = useMowings((state) => state.planWishes.bedsADay);
  const setBedsADay = useMowings((state) => state.setBedsADay);
  const { lines, leftOut, mends, how } = answer;
  return (
    <>
      <BeforeYouMow answer={answer} />
      <PlanLines answer={answer} isBehind={props.isBehind} onChange={props.onChange} />
      {how.kind === 'simple rule' && (
        <p>
          {planTroubleWords(how.because, names)} {simpleRuleWords}
        </p>
      )}
      <PlanRest answer={answer} />
      <p className="small plan-effects">{effectWords(answer.effects, names)}</p>
      {mends.length > 0 && (
        <div className="plan-mends">
          <h3>
            <Icon name="rake" /> To mend what has too much
          </h3>
          <ul>
            {mends.map((move) => {
              const words = mendWords(move, names);
              return <li key={words}>{words}</li>;
            })}
          </ul>
        </div>
      )}
      {(leftOut.length > 0 || answer.coming.length > 0) && (
        <Disclosure summary={leftOutTitle(leftOut.length, answer.coming.length > 0)}>
          {leftOut.length > 0 && (
            <ul>
              {leftOut.map((left) => (
                <li key={left.bedId}>
                  <strong>{names.bed(left.bedId)}</strong>: {leftOutWords(left, names)}{' '}
                  {left.reason.kind === 'pinned' && <TakePinOut bedId={left.bedId} />}
                </li>
              ))}
            </ul>
          )}
          <ComingWeeks answer={answer} />
        </Disclosure>
      )}
      <div className="not-printed">
        <ChoiceRow
          legend="Beds to walk to in one day"
          choices={[
            { value: '3', label: 'three at most' },
            { value: 'all', label: 'as many as it takes' },
          ]}
          value={bedsADay === null ? 'all' : '3'}
          onChoose={(value) => setBedsADay(value === 'all' ? null : 3)}
        />
      </div>
      {lines.length > 0 && <PaperList answer={answer} />}
    </>
  );
}

/** Takes back "nothing here". */
function TakePinOut({ bedId }: { readonly bedId: string }) {
  const pinPlan = useMowings((state) => state.pinPlan);
  const names = usePlanNames();
  return (
    <button
      type="button"
      className="button-small"
      aria-label={`Count ${names.bed(bedId)} in again`}
      onClick={() => pinPlan(bedId, null, null)}
    >
      Count it in again
    </button>
  );
}
