import { useAnnounce } from '../../controls/Announcer';
import { DeleteButton } from '../../controls/DeleteButton';
import type { Edited } from '../../store/contract';
import { editFailureSentence } from '../../words/messages';

/** Deletes a row of one's own, or says what still uses it; the focus goes to the table's first row. */
export function DeleteOwnRow(props: {
  readonly name: string;
  readonly onDelete: () => Edited;
  readonly onGone: () => void;
  readonly onRefused: (sentence: string) => void;
}) {
  const announce = useAnnounce();
  return (
    <DeleteButton
      onDelete={(event) => {
        const table = event.currentTarget.closest('table');
        const result = props.onDelete();
        if (!result.ok) return props.onRefused(editFailureSentence(result.error));
        props.onGone();
        announce(`Deleted: ${props.name}. Undo brings it back.`);
        table?.querySelector<HTMLElement>('.row-name')?.focus();
      }}
    >
      Delete {props.name}
    </DeleteButton>
  );
}
