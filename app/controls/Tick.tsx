import type { ReactNode } from 'react';

export interface TickProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

/** A yes-or-no with its words beside it; the whole line can be pressed. */
export function Tick(props: TickProps) {
  return (
    <label className="tick">
      <input
        type="checkbox"
        checked={props.checked}
        onChange={(event) => props.onChange(event.target.checked)}
      />
      <span>
        {props.label}
        {props.hint && <small className="choice-hint">{props.hint}</small>}
      </span>
    </label>
  );
}
