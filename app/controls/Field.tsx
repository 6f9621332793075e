import { useId, type ReactNode } from 'react';

/** What is wrong with an entry, in a sentence, and a likely value where there is one. */
export interface Trouble {
  readonly sentence: string;
  readonly suggestion?: string | undefined;
}

/** What an input must carry so that its label, hint and trouble are read out with it. */
export interface FieldLinks {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

export interface FieldProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** what the entry was understood as; shown under the field while there is no trouble */
  readonly echo?: ReactNode;
  readonly trouble?: Trouble | null | undefined;
  /** puts the suggested value into the field */
  readonly onSuggestion?: ((value: string) => void) | undefined;
  readonly className?: string;
  readonly children: (links: FieldLinks) => ReactNode;
}

/**
 * A labelled place for one entry. The sentence about a wrong entry stands directly below it, tied
 * to the input, with the likely value as a button.
 */
export function Field(props: FieldProps) {
  const id = useId();
  const hintId = `${id}-hint`;
  const belowId = `${id}-below`;
  const describedBy = [props.hint ? hintId : '', props.trouble || props.echo ? belowId : '']
    .filter(Boolean)
    .join(' ');
  const suggestion = props.trouble?.suggestion;
  return (
    <div className={`field ${props.trouble ? 'field-wrong' : ''} ${props.className ?? ''}`}>
      <label htmlFor={id} className="field-label">
        {props.label}
      </label>
      {props.hint && (
        <p id={hintId} className="field-hint">
          {props.hint}
        </p>
      )}
      {props.children({
        id,
        'aria-describedby': describedBy || undefined,
        'aria-invalid': props.trouble ? true : undefined,
      })}
      {props.trouble ? (
        <p id={belowId} className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {props.trouble.sentence}{' '}
          {suggestion !== undefined && props.onSuggestion && (
            <button
              type="button"
              className="button-small"
              onClick={() => {
                props.onSuggestion?.(suggestion);
                document.getElementById(id)?.focus();
              }}
            >
              Use “{suggestion}”
            </button>
          )}
        </p>
      ) : (
        props.echo && (
          <p id={belowId} className="field-echo">
            {props.echo}
          </p>
        )
      )}
    </div>
  );
}
