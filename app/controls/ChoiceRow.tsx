import { useId, type ReactNode } from 'react';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
}

export interface ChoiceRowProps<Value extends string> {
  readonly legend: ReactNode;
  readonly choices: readonly Choice<Value>[];
  readonly value: Value | null;
  readonly onChoose: (value: Value) => void;
  /** one below the other, for longer answers */
  readonly stacked?: boolean;
}

/**
 * A question with a few answers in view. Real radio buttons: arrow keys move among them. A group
 * rather than a fieldset, so that it can stand on the same lines as the fields beside it.
 */
export function ChoiceRow<Value extends string>(props: ChoiceRowProps<Value>) {
  const name = useId();
  return (
    <div
      role="radiogroup"
      aria-labelledby={`${name}-legend`}
      className={`choices ${props.stacked ? 'choices-stacked' : ''}`}
    >
      <span id={`${name}-legend`} className="field-label">
        {props.legend}
      </span>
      <div className="choices-row">
        {props.choices.map((choice) => (
          <label key={choice.value} className="choice">
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={props.value === choice.value}
              onChange={() => props.onChoose(choice.value)}
            />
            <span className="choice-words">
              {choice.label}
              {choice.hint && <small className="choice-hint">{choice.hint}</small>}
            </span>
          </label>
        ))}
      </div>
    </div>
  );
}
