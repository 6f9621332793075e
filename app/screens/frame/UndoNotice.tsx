import { useEffect, useRef, useState } from 'react';
import { useMowings } from '../store';
import { useCommands } from './commands';

const isDeletion = (label: string | undefined): label is string =>
  label?.startsWith('Delete ') ?? false;

/**
 * A deletion shows at the foot of the window, wherever one is, with the way back beside it; it
 * goes with the next change, with undo, or when it is put away.
 */
export function UndoNotice() {
  const past = useMowings((state) => state.past);
  const openings = useMowings((state) => state.openings);
  const commands = useCommands();
  const steps = useRef({ count: past.length, openings });
  const [told, setTold] = useState<number | null>(null);
  const last = past.at(-1)?.label;
  useEffect(() => {
    const before = steps.current;
    steps.current = { count: past.length, openings };
    // a step that came back by redo was told of when it was done
    const isNew = before.openings === openings && past.length > before.count && isDeletion(last);
    setTold(isNew ? past.length : null);
  }, [past, openings, last]);
  if (told !== past.length || !isDeletion(last)) return null;
  return (
    <div className="undo-notice not-printed" role="group" aria-label="Deleted">
      <p>{last.replace(/^Delete /, 'Deleted: ')}.</p>
      <button type="button" className="button-small" onClick={commands.undo}>
        Undo this
      </button>
      <button type="button" className="button-small" onClick={() => setTold(null)}>
        All right
      </button>
    </div>
  );
}
