import type { PlanAnswer } from '../../../core/plan/answer';
import { planSays } from '../../../words/planSays';
import { planAmountWords, planSourceWords } from '../../../words/planWords';
import { useShown } from '../../shown';
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
        {days.map((day) => (
          <li key={day}>
            {shown.dayWord(day)}:{' '}
            {answer.coming
              .filter((layer) => layer.day === day)
              .map(
                (layer) =>
                  `${names.bed(layer.bedId)}, ${planAmountWords(layer.amount, names)} of ${planSourceWords(layer.ref, names)}`,
              )
              .join('; ')}
            .
          </li>
        ))}
      </ul>
      <p className="small soft">{planSays.coming}</p>
    </>
  );
}
