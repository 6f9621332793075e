import { type RefObject, useEffect, useRef, useState, type ReactNode } from 'react';
import { Field, type Trouble } from './Field';
import { useHeldForm } from './useHeldForm';

export interface QuantityFieldProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly echo?: ReactNode;
  readonly trouble?: Trouble | null | undefined;
  readonly onEnter?: (() => void) | undefined;
  readonly onEnd?: (() => void) | undefined;
  /** the arrow keys up and down, for an amount that has steps */
  readonly onStep?: ((by: 1 | -1) => void) | undefined;
  readonly wide?: boolean;
  /** the words last handed over; see the undo keys */
  readonly settled?: string;
  readonly input?: RefObject<HTMLInputElement | null>;
}

/** An amount as it is being typed. The text is the caller's; what it means is shown under it. */
export function QuantityField(props: QuantityFieldProps) {
  return (
    <Field
      label={props.label}
      hint={props.hint}
      echo={props.echo}
      trouble={props.trouble}
      onSuggestion={props.onText}
      className={props.wide ? 'field-wide' : 'field-quantity'}
    >
      {(links) => (
        <input
          {...links}
          ref={props.input}
          type="text"
          inputMode="text"
          autoComplete="off"
          spellCheck={false}
          maxLength={200}
          data-settled={props.settled ?? ''}
          value={props.text}
          onChange={(event) => props.onText(event.target.value)}
          onBlur={props.onEnd}
          onKeyDown={(event) => {
            if (event.key === 'Enter' && props.onEnter) {
              event.preventDefault();
              props.onEnter();
            }
            if (props.onStep && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
              event.preventDefault();
              props.onStep(event.key === 'ArrowUp' ? 1 : -1);
            }
          }}
        />
      )}
    </Field>
  );
}

/** Reads what was typed: a number in the inside unit, or what is wrong with it. */
export type Reading<More = unknown> =
  { readonly value: number; readonly more?: More } | { readonly trouble: Trouble };

export interface SettledQuantityFieldProps<More> {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** number in the inside unit, or null when not given */
  readonly value: number | null;
  readonly show: (value: number) => string;
  readonly read: (text: string) => Reading<More>;
  /** null only when `mayBeEmpty`; `more` is what the reading said besides the number */
  readonly onCommit: (value: number | null, more?: More) => void;
  readonly mayBeEmpty?: boolean;
  readonly echo?: ReactNode;
}

/**
 * A quantity that belongs to the garden. While somebody types, only the text changes; leaving the
 * field hands out what it means, in the inside unit whatever the screen shows.
 */
export function SettledQuantityField<More = unknown>(props: SettledQuantityFieldProps<More>) {
  const shown = props.value === null ? '' : props.show(props.value);
  const [draft, setDraft] = useState(shown);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  useEffect(() => {
    setDraft(shown);
    setTrouble(null);
  }, [shown]);
  const input = useRef<HTMLInputElement>(null);
  useHeldForm(input, trouble !== null);
  const settle = (text: string) => {
    if (text.trim() === shown) {
      setTrouble(null);
      return;
    }
    if (text.trim() === '' && props.mayBeEmpty) {
      setTrouble(null);
      props.onCommit(null);
      return;
    }
    const reading = props.read(text);
    if ('trouble' in reading) {
      setTrouble(reading.trouble);
      return;
    }
    setTrouble(null);
    const isSame = reading.value === props.value;
    if (isSame) setDraft(shown);
    // the same number may have been said with more: a length times a width
    if (!isSame || (reading.more ?? null) !== null) props.onCommit(reading.value, reading.more);
  };
  return (
    <QuantityField
      label={props.label}
      hint={props.hint}
      text={draft}
      settled={shown}
      input={input}
      echo={props.echo}
      trouble={trouble}
      onText={(text) => {
        setDraft(text);
        if (trouble && !('trouble' in props.read(text))) setTrouble(null);
      }}
      onEnd={() => settle(draft)}
      onEnter={() => settle(draft)}
    />
  );
}
