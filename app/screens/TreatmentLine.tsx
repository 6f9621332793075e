import { useId } from 'react';
import type { Treatment } from '../document/schema';
import { labelInItsWords, treatedWords } from './treatedWords';
import { useShown, type Shown } from './shown';

const treatmentText = (treatment: Treatment, shown: Shown): string =>
  [treatedWords(treatment, shown), labelInItsWords(treatment)].filter(Boolean).join(' ');

/** What was put on a lawn or a store, as it was answered, and the way to the question. */
export function TreatmentLine(props: {
  readonly name: string;
  readonly treatment: Treatment;
  readonly onAsk: () => void;
  /** of a lawn: what was put on it before, to take out what was not, and to write down more */
  readonly more?: {
    readonly earlier: readonly Treatment[];
    readonly onTakeOut: (index: number) => void;
    readonly onAdd: () => void;
  };
}) {
  const { treatment } = props;
  const shown = useShown();
  const earlierId = useId();
  const { more } = props;
  return (
    <>
      <p>
        {treatmentText(treatment, shown)}{' '}
        <button
          type="button"
          className="button-small"
          aria-label={`What was put on ${props.name}`}
          onClick={props.onAsk}
        >
          {treatment.answer === 'not asked' ? 'Answer now' : 'Change the answer'}
        </button>
        {more && (treatment.answer === 'treated' || more.earlier.length > 0) && (
          <>
            {' '}
            <button type="button" className="button-small" onClick={more.onAdd}>
              Something else was put on it
            </button>
          </>
        )}
      </p>
      {more && more.earlier.length > 0 && (
        <>
          <p id={earlierId}>Before that, which holds as well:</p>
          <ul aria-labelledby={earlierId}>
            {more.earlier.map((one, index) => (
              // oxlint-disable-next-line react/no-array-index-key -- treatments have no name of their own and keep their order
              <li key={index}>
                {treatmentText(one, shown)}{' '}
                <button
                  type="button"
                  className="button-small"
                  aria-label={`Take out: ${treatedWords(one, shown)}`}
                  onClick={() => more.onTakeOut(index)}
                >
                  Take it out
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
