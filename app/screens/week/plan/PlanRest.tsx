import { Disclosure } from '../../../controls/Disclosure';
import { Figured } from '../../../controls/Figured';
import { Icon } from '../../../controls/marks/Icon';
import type { PlanAnswer, SourceAccount } from '../../../core/plan/answer';
import { mowingAccount, unaskedSource } from '../../../store/selectors';
import { planAmountWords, planSourceWords } from '../../../words/planWords';
import { restActWords, restWords } from '../../../words/restWords';
import { planSays } from '../../../words/planSays';
import { useGarden } from '../../store';
import { CautionList } from '../../CautionList';
import { MowingShares } from '../MowingShares';
import {
  hasRest,
  homesInOrder,
  leavesLitres,
  plannedRests,
  waysOfRest,
  type PlannedRest,
} from './planRests';
import { amountFigure } from '../../why/planWhys';
import { restFigures } from '../../why/restWhys';
import { usePlanNames } from './usePlanNames';

/** Every kilogram of what is cut: what is laid, what is left, and where that goes, best first. */
export function PlanRest(props: {
  readonly answer: PlanAnswer;
  readonly isReady: boolean;
  readonly onRest: (rests: readonly PlannedRest[]) => void;
}) {
  const { answer } = props;
  const cut = answer.sources.filter(
    ({ ref, role, was }) => role === 'greens' && ref.source !== 'coming' && was.litres > 0,
  );
  if (cut.length === 0) return null;
  return (
    <div className="plan-rest">
      <h3>
        <Icon name="bag" /> What is cut, and where all of it goes
      </h3>
      {cut.map((source) => (
        <CutAndWaiting key={source.sourceId} source={source} {...props} />
      ))}
    </div>
  );
}

function CutAndWaiting(props: {
  readonly answer: PlanAnswer;
  readonly source: SourceAccount;
  readonly isReady: boolean;
  readonly onRest: (rests: readonly PlannedRest[]) => void;
}) {
  const { source, isReady } = props;
  const { ref, was, laid, rest, choices } = source;
  const names = usePlanNames();
  const garden = useGarden();
  const mowing =
    ref.source === 'mowing' ? garden.mowings.find(({ id }) => id === ref.mowingId) : undefined;
  // a heap keeps what was put on a lawn as a bed does
  const isUnasked = ref.source === 'mowing' && unaskedSource(garden, ref) !== null;
  const [best, ...others] = homesInOrder(choices);
  // while beds still wait for some of it, where the rest goes is part of doing it all
  const mayGo = mowing !== undefined && laid.litres <= 0;
  const planned = plannedRests(props.answer).find(({ mowingId }) => mowingId === mowing?.id);
  const goes = planned && planned.choice === best ? leavesLitres(planned) : null;
  const acts = mayGo ? waysOfRest(mowing.id, choices, planned) : [];
  const actWords = (act: PlannedRest): string =>
    restActWords({ choice: act.choice, leavesLitres: leavesLitres(act) }, names);
  const isPartLaid = mowing !== undefined && mowingAccount(garden, mowing).laidDryKilograms > 0;
  return (
    <div className="plan-cut">
      <Figured
        says={planSays.inHand(
          planSourceWords(ref, names),
          planAmountWords(was, names),
          planAmountWords(laid, names),
          planAmountWords(rest, names),
        )}
        figures={[
          amountFigure(was, planSays.whyWas, names),
          amountFigure(laid, planSays.whyLaid, names),
          amountFigure(rest, planSays.whyRest, names),
        ]}
      />
      {source.heldBack && <CautionList cautions={[source.heldBack]} />}
      {mowing && isPartLaid && <MowingShares mowing={mowing} />}
      {isUnasked && <p>{planSays.restAsks}</p>}
      {hasRest(source) && best && !isUnasked && (
        <>
          <Figured
            says={planSays.forTheRest(restWords(best, names, goes))}
            figures={restFigures(best, names, goes)}
          />
          {acts.length > 0 && (
            <div className="button-row not-printed">
              {acts.map((act) => (
                <button
                  key={act.choice.place.to}
                  type="button"
                  className="button"
                  aria-label={`${actWords(act)}: ${planAmountWords(rest, names)} of ${planSourceWords(ref, names)}`}
                  aria-disabled={!isReady}
                  onClick={() => {
                    if (isReady) props.onRest([act]);
                  }}
                >
                  {actWords(act)}
                </button>
              ))}
            </div>
          )}
          {others.length > 0 && (
            <Disclosure summary="Other homes for it" quiet>
              <ul>
                {others.map((choice) => (
                  <li key={choice.place.to}>
                    <Figured says={restWords(choice, names)} figures={restFigures(choice, names)} />
                  </li>
                ))}
              </ul>
            </Disclosure>
          )}
        </>
      )}
    </div>
  );
}
