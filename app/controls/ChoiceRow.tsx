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
  /** keeps the legend for readers of the screen when the words around it already say it */
  readonly legendHidden?: boolean;
  readonly stacked?: boolean;
  readonly disabled?: boolean;
}

/** A question with a few answers in view. Real radio buttons: arrow keys move among them. */
export function ChoiceRow<Value extends string>(props: ChoiceRowProps<Value>) {
  const name = useId();
  return (
    <fieldset className={`choices ${props.stacked ? 'choices-stacked' : ''}`}>
      <legend className={props.legendHidden ? 'only-heard' : 'field-label'}>{props.legend}</legend>
      <div className="choices-row">
        {props.choices.map((choice) => (
          <label key={choice.value} className="choice">
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={props.value === choice.value}
              disabled={props.disabled}
              onChange={() => props.onChoose(choice.value)}
            />
            <span className="choice-words">
              {choice.label}
              {choice.hint && <small className="choice-hint">{choice.hint}</small>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
