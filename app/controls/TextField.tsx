import { useEffect, useState, type ReactNode } from 'react';
import { Field, type Trouble } from './Field';

export interface TextFieldProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly value: string;
  /** called with the trimmed text when editing ends and it differs */
  readonly onCommit: (text: string) => void;
  readonly mayBeEmpty?: boolean;
  readonly maxLength?: number;
  readonly rows?: number;
  readonly autoComplete?: string;
  readonly emptySentence?: string;
}

/** A line (or a few) of plain words; handed out when the field is left, so that undo takes back all of it. */
export function TextField(props: TextFieldProps) {
  const [draft, setDraft] = useState(props.value);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  useEffect(() => {
    setDraft(props.value);
    setTrouble(null);
  }, [props.value]);
  const commit = () => {
    const text = draft.trim();
    if (text === '' && !props.mayBeEmpty) {
      setTrouble({
        sentence: props.emptySentence ?? 'It needs a name, so that it can be told apart.',
        suggestion: props.value || undefined,
      });
      return;
    }
    setTrouble(null);
    if (text !== props.value) props.onCommit(text);
  };
  return (
    <Field
      label={props.label}
      hint={props.hint}
      trouble={trouble}
      onSuggestion={(text) => {
        setDraft(text);
        setTrouble(null);
      }}
    >
      {(links) =>
        props.rows ? (
          <textarea
            {...links}
            rows={props.rows}
            maxLength={props.maxLength ?? 2000}
            data-settled={props.value}
            value={draft}
            onChange={(event) => setDraft(event.target.value)}
            onBlur={commit}
          />
        ) : (
          <input
            {...links}
            type="text"
            maxLength={props.maxLength ?? 80}
            autoComplete={props.autoComplete ?? 'off'}
            data-settled={props.value}
            value={draft}
            onChange={(event) => setDraft(event.target.value)}
            onBlur={commit}
            onKeyDown={(event) => {
              if (event.key === 'Enter') commit();
            }}
          />
        )
      }
    </Field>
  );
}
