import { useMowings } from '../store';

/**
 * Where the work in hand is: in its file, kept aside, or neither. Read out only when it becomes
 * worth knowing; the save itself is announced by `FileMessages`.
 */
export function SaveState() {
  const saving = useMowings((state) => state.saving);
  const unsaved = useMowings((state) => state.unsaved);
  const draft = useMowings((state) => state.draft);
  const fileId = useMowings((state) => state.fileId);
  const fileName = useMowings((state) => state.fileName);
  const words = saving
    ? 'Saving…'
    : !unsaved
      ? fileId === null
        ? 'No changes yet'
        : `Saved in ${fileName}`
      : draft === 'kept'
        ? fileId === null
          ? 'Changes kept, not yet in a file'
          : `Changes kept, not yet saved in ${fileName}`
        : draft === 'failed'
          ? 'Changes could not be kept: save now'
          : 'Changed…';
  return <span className="head-state">{words}</span>;
}
