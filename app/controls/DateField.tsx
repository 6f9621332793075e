import { useEffect, useRef, useState, type ReactNode } from 'react';
import { readDay, weekdayPattern, type DayFailure, type YearChoice } from '../amounts/readDay';
import { dayOf, textFromDay, type DayNumber } from '../core/days';
import { useAnnounce } from './Announcer';
import { Field, type Trouble } from './Field';
import { Icon } from './marks/Icon';
import { useHeldForm } from './useHeldForm';

export interface DateFieldProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** YYYY-MM-DD, or null when not given */
  readonly day: string | null;
  /** the garden's today, for "yesterday" and days without a year */
  readonly today: string;
  readonly onDay: (day: string | null) => void;
  readonly mayBeEmpty?: boolean;
  readonly latest?: string | undefined;
  /** the year of a day without one; unless said, lately where no later day fits, else the nearest */
  readonly year?: YearChoice;
  readonly earliest?: string | undefined;
  /** how a day is written out, for example "Saturday 15 June 2013" */
  readonly write: (day: DayNumber) => string;
  /** the sentence for a day that cannot be read */
  readonly sentence: (failure: DayFailure) => string;
}

/** A weekday before the date is for the eye; whoever changes the date leaves it as it stood. */
const leadingWeekday = new RegExp(`^\\s*(?:${weekdayPattern})[,\\s]+(?=.*\\d)`, 'i');

/**
 * A civil day, typed as people say it ("15 June", "yesterday", "2013-06-15") or moved a day at a
 * time with the buttons or the up and down arrows.
 */
export function DateField(props: DateFieldProps) {
  const shown = props.day === null ? '' : props.write(dayOf(props.day));
  const [draft, setDraft] = useState(shown);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const announce = useAnnounce();
  const field = useRef<HTMLInputElement>(null);
  useHeldForm(field, trouble !== null);
  useEffect(() => {
    setDraft(shown);
    setTrouble(null);
  }, [shown]);
  const within = (day: DayNumber): Trouble | null => {
    if (props.latest !== undefined && day > dayOf(props.latest))
      return {
        sentence: `That is after ${props.write(dayOf(props.latest))}, the last day that fits here.`,
        suggestion: props.write(dayOf(props.latest)),
      };
    if (props.earliest !== undefined && day < dayOf(props.earliest))
      return {
        sentence: `That is before ${props.write(dayOf(props.earliest))}, the first day that fits here.`,
        suggestion: props.write(dayOf(props.earliest)),
      };
    return null;
  };
  const settle = (text: string) => {
    if (text.trim() === shown) return setTrouble(null);
    if (text.trim() === '' && props.mayBeEmpty) {
      setTrouble(null);
      return props.onDay(null);
    }
    const choice =
      props.year ??
      (props.latest !== undefined && props.latest <= props.today ? 'lately' : 'nearest');
    const reading = readDay(text.replace(leadingWeekday, ''), dayOf(props.today), choice);
    if (!reading.ok) {
      setTrouble({
        sentence: props.sentence(reading.error),
        suggestion: props.write(dayOf(reading.error.suggestion)),
      });
      return;
    }
    const wrong = within(reading.value);
    setTrouble(wrong);
    if (wrong) return;
    if (textFromDay(reading.value) === props.day) setDraft(shown);
    else props.onDay(textFromDay(reading.value));
  };
  const move = (by: number) => {
    const next = dayOf(props.day ?? props.today) + (props.day === null ? 0 : by);
    const wrong = within(next);
    setTrouble(wrong);
    if (wrong) return;
    props.onDay(textFromDay(next));
    announce(props.write(next), 'day moved');
  };
  return (
    <Field
      label={props.label}
      hint={props.hint}
      trouble={trouble}
      onSuggestion={(text) => {
        setDraft(text);
        settle(text);
      }}
      className="field-date"
    >
      {(links) => (
        <span className="date-row">
          <input
            {...links}
            ref={field}
            type="text"
            autoComplete="off"
            spellCheck={false}
            data-settled={shown}
            value={draft}
            onChange={(event) => setDraft(event.target.value)}
            onBlur={() => settle(draft)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') {
                event.preventDefault();
                settle(draft);
              }
              if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
                event.preventDefault();
                move(event.key === 'ArrowUp' ? 1 : -1);
              }
            }}
          />
          <span className="date-steps">
            <button
              type="button"
              className="button-plain"
              aria-label="A day earlier"
              aria-describedby={`${links.id}-label`}
              onClick={() => move(-1)}
            >
              <Icon name="left" />
            </button>
            <button
              type="button"
              className="button-plain"
              aria-label="A day later"
              aria-describedby={`${links.id}-label`}
              onClick={() => move(1)}
            >
              <Icon name="right" />
            </button>
          </span>
        </span>
      )}
    </Field>
  );
}
