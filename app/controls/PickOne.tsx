import type { ReactNode } from 'react';
import { Field } from './Field';

export interface PickGroup {
  readonly label: string | null;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

export interface PickOneProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly value: string;
  readonly groups: readonly PickGroup[];
  readonly onPick: (value: string) => void;
  readonly echo?: ReactNode;
  /** id of what stands elsewhere about what is picked, and is read out with it */
  readonly describedBy?: string | undefined;
}

/** One of a longer list. After a pick the focus is where it was, and what was open is open. */
export function PickOne(props: PickOneProps) {
  return (
    <Field label={props.label} hint={props.hint} echo={props.echo}>
      {(links) => (
        <span className="pick">
          <select
            {...links}
            aria-describedby={
              [links['aria-describedby'], props.describedBy].filter(Boolean).join(' ') || undefined
            }
            value={props.value}
            onChange={(event) => props.onPick(event.target.value)}
          >
            {props.groups.map((group, index) =>
              group.label === null ? (
                group.options.map((option) => (
                  <option key={option.value} value={option.value}>
                    {option.label}
                  </option>
                ))
              ) : (
                <optgroup key={`${group.label}-${index}`} label={group.label}>
                  {group.options.map((option) => (
                    <option key={option.value} value={option.value}>
                      {option.label}
                    </option>
                  ))}
                </optgroup>
              ),
            )}
          </select>
        </span>
      )}
    </Field>
  );
}
