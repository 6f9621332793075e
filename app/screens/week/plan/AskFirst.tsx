import type { PlanAnswer } from '../../../core/plan/answer';
import { planSays } from '../../../words/planSays';
import { unaskedSources } from '../../../words/unaskedSources';
import { useGarden, useMowings } from '../../store';

/** What a plan waits for: the answer what was put on a lawn, where it can be given at once. */
export function AskFirst({ answer }: { readonly answer: PlanAnswer }) {
  const { lawns } = useGarden();
  const showDialog = useMowings((state) => state.showDialog);
  const sources = unaskedSources(answer);
  if (sources.length === 0) return null;
  // answered, the button stays till the next plan comes: it has the focus when the question closes
  const unasked = lawns.filter(({ name }) => sources.includes(name));
  return (
    <p className="plan-ask">
      {planSays.askFirst(sources)}{' '}
      {unasked.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          className="button-small not-printed"
          onClick={() => showDialog({ kind: 'treatment', lawnId: id })}
        >
          {planSays.sayOf(name)}
        </button>
      ))}
    </p>
  );
}
