import type { PlanAnswer } from '../../../core/plan/answer';
import { planLayerWords } from '../../../words/planWords';
import { useShown } from '../../shown';
import { usePlanNames } from './usePlanNames';

/** On paper only: a box to tick, the bed, the buckets, and a line to write on. */
export function PaperList({ answer }: { readonly answer: PlanAnswer }) {
  const names = usePlanNames();
  const shown = useShown();
  return (
    <div className="only-printed paper-list">
      <h3>To take outside, {shown.day(answer.today)}</h3>
      <ul className="plain-list">
        {answer.lines.flatMap(({ bedId, layers }) =>
          layers.map((layer) => (
            <li key={`${bedId} ${layer.layerId}`}>
              ☐ <strong>{names.bed(bedId)}</strong>: {planLayerWords(layer, names)}. Laid: ________
            </li>
          )),
        )}
      </ul>
    </div>
  );
}
