import type { MouseEvent, ReactNode } from 'react';
import { Icon } from './marks/Icon';

/** Takes something out of the garden; undo brings it back, so that nothing is asked first. */
export function DeleteButton(props: {
  /** names what goes, where the words alone do not */
  readonly label?: string;
  readonly children: ReactNode;
  readonly onDelete: (event: MouseEvent<HTMLButtonElement>) => void;
}) {
  return (
    <button
      type="button"
      className="button-small button-delete"
      aria-label={props.label}
      onClick={props.onDelete}
    >
      <Icon name="pulled" /> {props.children}
    </button>
  );
}
