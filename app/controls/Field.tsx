import { useEffect, useId, useRef, type ReactNode } from 'react';
import { useAnnounce } from './Announcer';
import { useAfterPress } from './useAfterPress';

/** What is wrong with an entry, in a sentence, and a likely value where there is one. */
export interface Trouble {
  readonly sentence: string;
  readonly suggestion?: string | undefined;
}

/** What an input must carry so that its label, hint and trouble are read out with it. */
export interface FieldLinks {
  /** the label's own is this and `-label` */
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
  const trouble = useAfterPress(
    props.trouble,
    props.trouble ? `${props.trouble.sentence}|${props.trouble.suggestion ?? ''}` : '',
  );
  const hintId = `${id}-hint`;
  const belowId = `${id}-below`;
  const describedBy = [props.hint ? hintId : '', trouble || props.echo ? belowId : '']
    .filter(Boolean)
    .join(' ');
  const suggestion = trouble?.suggestion;
  const holder = useRef<HTMLDivElement>(null);
  const markLeft = useHeardTrouble(id, holder, props.trouble);
  return (
    <div
      ref={holder}
      className={`field ${trouble ? 'field-wrong' : ''} ${props.className ?? ''}`}
      onBlur={markLeft}
    >
      <label htmlFor={id} id={`${id}-label`} className="field-label">
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
      {trouble ? (
        <p id={belowId} className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {trouble.sentence}{' '}
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

/** While words are still being typed they may yet come right. */
const pauseMilliseconds = 900;
/** Trouble that comes up within this time of leaving a field is the answer to leaving it. */
const justLeftMilliseconds = 150;

/**
 * Says what is wrong with an entry when it comes up in the field one is in or has just left: its
 * sentence is drawn beside a field that the focus is no longer on. Trouble that a whole form finds
 * elsewhere is left to the form.
 *
 * @returns to be told when the focus leaves the field
 */
function useHeardTrouble(
  id: string,
  holder: { readonly current: HTMLElement | null },
  trouble: Trouble | null | undefined,
): () => void {
  const announce = useAnnounce();
  const leftAt = useRef(Number.NEGATIVE_INFINITY);
  const sentence = trouble?.sentence;
  const offer = trouble?.suggestion;
  useEffect(() => {
    if (sentence === undefined) return undefined;
    const isInside = holder.current?.contains(document.activeElement) ?? false;
    const isJustLeft = performance.now() - leftAt.current < justLeftMilliseconds;
    if (!isInside && !isJustLeft) return undefined;
    const timer = setTimeout(
      () => {
        const label = document.getElementById(`${id}-label`)?.textContent ?? '';
        announce(
          `${label} ${sentence}${offer === undefined ? '' : ` Offered beside it: ${offer}.`}`,
          id,
        );
      },
      isInside ? pauseMilliseconds : 0,
    );
    return () => clearTimeout(timer);
  }, [announce, holder, id, offer, sentence]);
  return () => {
    leftAt.current = performance.now();
  };
}
