import { ChoiceRow } from '../../../controls/ChoiceRow';
import { Figured } from '../../../controls/Figured';
import { Icon } from '../../../controls/marks/Icon';
import type { PlanAnswer } from '../../../core/plan/answer';
import { grassHeights } from '../../../core/plan/question';
import { grassHeightWords, mowWords, worthWords } from '../../../words/planWords';
import { unaskedSources } from '../../../words/unaskedSources';
import { useMowings } from '../../store';
import { mowFigures, worthFigures } from '../../why/planWhys';
import { usePlanNames } from './usePlanNames';

/** For each lawn: how much to collect next time and why, by a glance at the grass. */
export function BeforeYouMow(props: {
  readonly answer: PlanAnswer;
  /** nothing is to be laid beside it, so that it has as much room */
  readonly isOnItsOwn?: boolean;
}) {
  const { answer } = props;
  const names = usePlanNames();
  const heights = useMowings((state) => state.planWishes.heights);
  const setGrassHeight = useMowings((state) => state.setGrassHeight);
  if (answer.mow.length === 0) return null;
  const unasked = unaskedSources(answer);
  return (
    <div className={props.isOnItsOwn ? 'plan-before plan-before-alone' : 'plan-before'}>
      <h3>
        <Icon name="blade" /> Before you mow
      </h3>
      <ul className="plain-list plan-lawns">
        {answer.mow.map((advice) => (
          <li key={advice.lawnId}>
            <Figured
              says={mowWords(
                advice,
                names,
                answer.today,
                unasked.includes(names.lawn(advice.lawnId)),
              )}
              figures={mowFigures(advice, names)}
            />
            {advice.why.kind !== 'held back' && !unasked.includes(names.lawn(advice.lawnId)) && (
              <Figured
                className="small soft"
                says={worthWords(advice, names)}
                figures={worthFigures(advice, names)}
              />
            )}
            {advice.why.kind !== 'held back' && (
              <div className="not-printed">
                <ChoiceRow
                  legend={`The grass of ${names.lawn(advice.lawnId)} stands`}
                  choices={grassHeights.map((value) => ({
                    value,
                    label: grassHeightWords[value],
                  }))}
                  value={heights[advice.lawnId] ?? 'usual'}
                  onChoose={(height) => setGrassHeight(advice.lawnId, height)}
                />
              </div>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}
