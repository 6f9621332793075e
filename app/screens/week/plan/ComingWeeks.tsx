import { Figured } from '../../../controls/Figured';
import type { PlanAnswer } from '../../../core/plan/answer';
import { planSays } from '../../../words/planSays';
import { planAmountWords, planSourceWords } from '../../../words/planWords';
import { useShown } from '../../shown';
import { amountFigure } from '../../why/planWhys';
import { usePlanNames } from './usePlanNames';

/** What the plan expects to be laid later; worked out anew when those weeks are there. */
export function ComingWeeks({ answer }: { readonly answer: PlanAnswer }) {
  const names = usePlanNames();
  const shown = useShown();
  const days = [...new Set(answer.coming.map(({ day }) => day))].sort((a, b) => a - b);
  if (days.length === 0) return null;
  return (
    <>
      <h3>Expected for the coming weeks</h3>
      <ul>
        {days.map((day) => {
          const layers = answer.coming.filter((layer) => layer.day === day);
          const told = layers.map(
            (layer) =>
              `${names.bed(layer.bedId)}, ${planAmountWords(layer.amount, names)} of ${planSourceWords(layer.ref, names)}`,
          );
          return (
            <li key={day}>
              <Figured
                says={`${shown.dayWord(day)}: ${told.join('; ')}.`}
                figures={layers.map(({ amount }) => amountFigure(amount, planSays.coming, names))}
              />
            </li>
          );
        })}
      </ul>
      <p className="small soft">{planSays.coming}</p>
    </>
  );
}
