import type { PlanAnswer } from '../../../core/plan/answer';
import { planSays } from '../../../words/planSays';
import { planAmountWords, planLayerWords, planSourceWords } from '../../../words/planWords';
import { restActWords } from '../../../words/restWords';
import { useShown } from '../../shown';
import { plannedRests, toldRests } from './planRests';
import { usePlanNames } from './usePlanNames';

/** On paper only: all that "I did all of this" writes down, a box to tick each, and room to write. */
export function PaperList({ answer }: { readonly answer: PlanAnswer }) {
  const names = usePlanNames();
  const shown = useShown();
  const rests = plannedRests(answer);
  const told = toldRests(rests);
  const steps = [
    ...answer.lines.flatMap(({ bedId, layers }) =>
      layers.map((layer) => ({
        id: `${bedId} ${layer.layerId}`,
        where: names.bed(bedId),
        what: planLayerWords(layer, names),
      })),
    ),
    ...rests.flatMap(({ mowingId }, at) => {
      const rest = told[at];
      const source = answer.sources.find(
        ({ ref }) => ref.source === 'mowing' && ref.mowingId === mowingId,
      );
      return rest && source
        ? [
            {
              id: `rest ${mowingId}`,
              where: restActWords(rest, names),
              what: planSays.restOf(
                planAmountWords(source.rest, names),
                planSourceWords(source.ref, names),
              ),
            },
          ]
        : [];
    }),
  ];
  return (
    <div className="only-printed paper-list">
      <h3>To take outside, {shown.day(answer.today)}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">To do</th>
            <th scope="col">What was done</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ id, where, what }) => (
            <tr key={id}>
              <td>
                ☐ <strong>{where}</strong>: {what}.
              </td>
              <td aria-label={planSays.toWrite} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
