import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { ChoiceRow } from '../../../controls/ChoiceRow';
import { Disclosure } from '../../../controls/Disclosure';
import { Figured } from '../../../controls/Figured';
import type { MendMove, PlanAnswer, PlanLine } from '../../../core/plan/answer';
import { leftOutTitle, leftOutWords, planHeard } from '../../../words/planWords';
import {
  effectWords,
  mendWords,
  planTroubleWords,
  simpleRuleWords,
} from '../../../words/planWorth';
import { planSays } from '../../../words/planSays';
import { useGarden, useMowings } from '../../store';
import { AskFirst } from './AskFirst';
import { BeforeYouMow } from './BeforeYouMow';
import { exactDialog, somethingElse } from '../../places';
import { pinnable } from './pinnable';
import { SetByHand } from './SetByHand';
import { ComingWeeks } from './ComingWeeks';
import { KeptLeaves } from './KeptLeaves';
import { PaperList } from './PaperList';
import { PlanLines } from './PlanLines';
import { PlanRest } from './PlanRest';
import { usePlanActs, type PlanActs } from './usePlanActs';
import { effectFigures, mendFigures } from '../../why/planWhys';
import { usePlanNames } from './usePlanNames';
import { WhereItWent } from './WhereItWent';

/** What to do this week: made by itself while it is in sight, and kept up to date. */
export function PlanSection(props: {
  /** counts up whenever the plan is to be looked at next: a mowing was logged */
  readonly looks: number;
}) {
  const plan = useMowings((state) => state.plan);
  const wantPlan = useMowings((state) => state.wantPlan);
  const leavePlan = useMowings((state) => state.leavePlan);
  const goTo = useMowings((state) => state.goTo);
  const stopPlan = useMowings((state) => state.stopPlan);
  const resumePlan = useMowings((state) => state.resumePlan);
  const names = usePlanNames();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    wantPlan();
    return leavePlan;
  }, [wantPlan, leavePlan]);
  const { looks } = props;
  const looked = useRef(looks);
  /** the person did something that the next plan answers */
  const isAsked = useRef(false);
  useEffect(() => {
    if (looked.current === looks) return;
    looked.current = looks;
    isAsked.current = true;
    lookAt(heading.current);
  }, [looks]);
  const { state, answer, trouble, progress } = plan;
  const isWorking = state === 'working';
  const announce = useAnnounce();
  const heard = answer && !plan.isBehind ? planHeard(answer, names) : '';
  // the first plan after one came is read like all else; told is what answers something, or is new
  const told = useRef(heard);
  useEffect(() => {
    if (heard === '') return;
    const isNews = told.current !== '' && told.current !== heard;
    if (isNews || isAsked.current) announce(heard, 'plan');
    told.current = heard;
    isAsked.current = false;
  }, [announce, heard]);
  const acts = usePlanActs(answer, () => lookAt(heading.current));
  const keepFocus = useFocusKept(heading);
  return (
    <section
      className={answer ? 'section plan plan-answered' : 'section plan'}
      aria-labelledby="plan"
      aria-busy={isWorking}
      data-plan={plan.isBehind ? 'behind' : state}
      {...keepFocus}
    >
      <div className="section-head">
        <h2 id="plan" tabIndex={-1} ref={heading}>
          What to do this week
        </h2>
        {!isWorking && (state === 'failed' || plan.isStopped) && (
          <button
            type="button"
            className="button-main not-printed"
            onClick={() => {
              isAsked.current = true;
              resumePlan();
              announce('Weighing the beds against each other.', 'plan');
              heading.current?.focus();
            }}
          >
            {answer ? 'Work it out anew' : 'Work out a plan'}
          </button>
        )}
      </div>
      {acts.done && <p className="done not-printed">{acts.done}</p>}
      <div className="plan-work not-printed">
        {isWorking && (
          <p>
            {planSays.weighing(progress?.done ?? null, progress?.of ?? null)}{' '}
            <button
              type="button"
              className="button-small"
              onClick={() => {
                stopPlan();
                heading.current?.focus();
              }}
            >
              Stop
            </button>
          </p>
        )}
        {answer && plan.isBehind && !isWorking && <p>{planSays.behind}</p>}
        {!answer && plan.isStopped && !isWorking && <p>{planSays.stopped}</p>}
      </div>
      {acts.refused && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {acts.refused}
        </p>
      )}
      {state === 'failed' && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {planSays.failed}
        </p>
      )}
      {trouble && (
        <p>
          {planTroubleWords(trouble, names)}{' '}
          {trouble.kind === 'no beds' && (
            <button
              type="button"
              className="button-small not-printed"
              onClick={() => goTo('garden')}
            >
              {planSays.addBed}
            </button>
          )}
        </p>
      )}
      <SetByHand onFree={acts.wasDone} />
      {answer && <Plan answer={answer} acts={acts} isBehind={plan.isBehind} />}
    </section>
  );
}

/** The beds that have too much, each once. */
const mendedBeds = (mends: readonly MendMove[]): readonly string[] => [
  ...new Set(mends.map((move) => (move.kind === 'rake and carry' ? move.fromBedId : move.bedId))),
];

/** Under this share of the window's height there is room for the plan below its heading. */
const highEnough = 0.5;

function lookAt(heading: HTMLElement | null): void {
  if (!heading) return;
  heading.focus({ preventScroll: true });
  // the plan follows its heading: both belong in sight, and where they are already nothing moves
  const { top } = heading.getBoundingClientRect();
  if (top >= 0 && top < highEnough * window.innerHeight) return;
  heading.scrollIntoView({ block: 'start' });
}

/** Where a new plan takes away what was focused in the old one, the heading has the focus next. */
function useFocusKept(heading: { readonly current: HTMLElement | null }) {
  const within = useRef<Element | null>(null);
  useLayoutEffect(() => {
    const was = within.current;
    if (!was || was.isConnected) return;
    within.current = null;
    if (document.activeElement === document.body) heading.current?.focus();
  });
  return {
    onFocus: ({ target }: { readonly target: Element }) => {
      within.current = target;
    },
    onBlur: ({ target }: { readonly target: Element }) => {
      if (target.isConnected) within.current = null;
    },
  };
}

function Plan(props: {
  readonly answer: PlanAnswer;
  readonly acts: PlanActs;
  readonly isBehind: boolean;
}) {
  const { answer, acts } = props;
  const names = usePlanNames();
  const garden = useGarden();
  const bedsADay = useMowings((state) => state.planWishes.bedsADay);
  const setBedsADay = useMowings((state) => state.setBedsADay);
  const [elsewhere, setElsewhere] = useState<readonly PlanLine[] | null>(null);
  const [exact, setExact] = useState<string | null>(null);
  const exactBed = garden.beds.find(({ id }) => id === exact);
  const mayPin = pinnable(answer).length > 0;
  const { leftOut, mends, how } = answer;
  // until the next plan is there what was written down is not asked for again
  const lines = props.isBehind
    ? answer.lines.filter(({ bedId }) => !acts.isLaid(bedId))
    : answer.lines;
  const isSettled = lines.length === 0 && answer.lines.length > 0;
  const standing = lines.length === answer.lines.length ? answer : { ...answer, lines };
  const isReady = !acts.busy && !props.isBehind;
  const isCut = answer.sources.some(({ ref }) => ref.source === 'mowing');
  return (
    <>
      <AskFirst answer={answer} />
      {!isCut && <BeforeYouMow answer={answer} isOnItsOwn={lines.length === 0} />}
      {isSettled && <p className="plan-lay plan-lay-none soft">{planSays.goesOn}</p>}
      {!isSettled && (
        <PlanLines
          answer={standing}
          isReady={isReady}
          onDone={acts.doIt}
          onNothing={(some) => acts.doNothing(some.map(({ bedId }) => bedId))}
          onElse={setElsewhere}
          onExactly={setExact}
        />
      )}
      {how.kind === 'simple rule' && (
        <p>
          {planTroubleWords(how.because, names)} {simpleRuleWords}
        </p>
      )}
      {!isSettled && (
        <PlanRest answer={answer} isReady={isReady} onRest={(rests) => acts.doIt([], rests)} />
      )}
      {isCut && <BeforeYouMow answer={answer} />}
      <div className="plan-folds">
        {mends.length > 0 && (
          <Disclosure
            summary={planSays.mendHeading(mendedBeds(mends).map(names.bed))}
            open={answer.lines.length === 0}
          >
            <ul className="plan-mends">
              {mends.map((move) => {
                const words = mendWords(move, names);
                return (
                  <li key={words}>
                    <Figured says={words} figures={mendFigures(move, names)} />
                  </li>
                );
              })}
            </ul>
          </Disclosure>
        )}
        {!isSettled && <KeptLeaves answer={answer} />}
        {!isSettled && <WhereItWent answer={answer} />}
        {!isSettled && (
          <Disclosure summary={planSays.effectHeading}>
            <Figured
              says={effectWords(answer.effects, names)}
              figures={effectFigures(answer.effects, names)}
            />
          </Disclosure>
        )}
        {(leftOut.length > 0 || answer.coming.length > 0) && (
          <Disclosure
            summary={leftOutTitle(
              leftOut.length,
              answer.coming.length > 0,
              answer.lines.length > 0,
            )}
          >
            {leftOut.length > 0 && (
              <ul>
                {leftOut.map((left) => (
                  <li key={left.bedId}>
                    <strong>{names.bed(left.bedId)}</strong>: {leftOutWords(left, names)}{' '}
                    {left.reason.kind !== 'pinned' && mayPin && (
                      <button
                        type="button"
                        className="button-small"
                        aria-label={`Exactly this: ${names.bed(left.bedId)}`}
                        onClick={() => setExact(left.bedId)}
                      >
                        Exactly this…
                      </button>
                    )}
                    {left.reason.kind === 'pinned' && (
                      <button
                        type="button"
                        className="button-small"
                        aria-label={`Count ${names.bed(left.bedId)} in again`}
                        onClick={() => acts.countIn(left.bedId)}
                      >
                        Count it in again
                      </button>
                    )}
                  </li>
                ))}
              </ul>
            )}
            <ComingWeeks answer={answer} />
          </Disclosure>
        )}
      </div>
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
      {exactBed && (
        <exactDialog.Part
          bed={exactBed}
          answer={answer}
          onClose={() => setExact(null)}
          onKept={(words) => {
            setExact(null);
            acts.wasDone(words);
          }}
        />
      )}
      {elsewhere && (
        <somethingElse.Part
          title={
            elsewhere.length === 1 && elsewhere[0]
              ? `Something else than on ${names.bed(elsewhere[0].bedId)}`
              : 'What was laid instead'
          }
          lines={elsewhere}
          onClose={() => setElsewhere(null)}
          onLaid={() => {
            setElsewhere(null);
            acts.wasDone(planSays.somethingElse);
          }}
        />
      )}
    </>
  );
}
