import type { Treatment } from '../document/schema';
import { labelInItsWords, treatedWords } from './treatedWords';
import { useShown } from './shown';

/** What was put on a lawn or a store, as it was answered, and the way to the question. */
export function TreatmentLine(props: {
  readonly name: string;
  readonly treatment: Treatment;
  readonly onAsk: () => void;
}) {
  const { treatment } = props;
  const shown = useShown();
  return (
    <p>
      {[treatedWords(treatment, shown), labelInItsWords(treatment)].filter(Boolean).join(' ')}{' '}
      <button
        type="button"
        className="button-small"
        aria-label={`What was put on ${props.name}`}
        onClick={props.onAsk}
      >
        {treatment.answer === 'not asked' ? 'Answer now' : 'Change the answer'}
      </button>
    </p>
  );
}
