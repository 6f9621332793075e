import { useId } from 'react';
import { Dialog } from '../../controls/Dialog';
import { useCommands } from '../frame/commands';
import { useMowings } from '../store';

/** Stands between unsaved changes and whatever would put the garden away. */
export function UnsavedDialog() {
  const name = useMowings((state) => state.garden?.garden.name ?? state.fileName);
  const isKept = useMowings((state) => state.draft === 'kept');
  const commands = useCommands();
  const saysId = useId();
  return (
    <Dialog
      title={`Save the changes to ${name}?`}
      describedBy={saysId}
      onClose={() => commands.answerUnsaved('cancel')}
    >
      <p id={saysId}>
        {isKept
          ? 'Until now they are kept aside, in no file. “Don’t save” throws them away for good.'
          : 'They are in no file yet. “Don’t save” throws them away for good.'}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="button-main"
          onClick={() => commands.answerUnsaved('save')}
        >
          Save
        </button>
        <button
          type="button"
          className="button"
          onClick={() => commands.answerUnsaved('throw away')}
        >
          Don’t save
        </button>
        <button type="button" className="button" onClick={() => commands.answerUnsaved('cancel')}>
          Cancel
        </button>
      </div>
    </Dialog>
  );
}
