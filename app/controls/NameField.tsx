import type { ReactNode } from 'react';
import { Field, type Trouble } from './Field';

/** as long as a name may be, in letters */
const longest = 80;

/** What something is to be called, handed out with every letter. */
export function NameField(props: {
  readonly label: ReactNode;
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly trouble?: Trouble | null;
}) {
  return (
    <Field label={props.label} trouble={props.trouble ?? null} onSuggestion={props.onName}>
      {(links) => (
        <input
          {...links}
          type="text"
          maxLength={longest}
          autoComplete="off"
          value={props.name}
          onChange={(event) => props.onName(event.target.value)}
        />
      )}
    </Field>
  );
}
