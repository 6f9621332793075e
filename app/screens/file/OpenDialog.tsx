import { useId, useRef } from 'react';
import { Dialog } from '../../controls/Dialog';
import { useCommands } from '../frame/commands';
import { useMowings } from '../store';
import { RecentGardens } from './RecentGardens';

/** Choosing a garden in a browser window: those used lately, or any file of this computer. */
export function OpenDialog() {
  const folder = useMowings((state) => state.about?.folder);
  const recent = useMowings((state) => state.recent);
  const showDialog = useMowings((state) => state.showDialog);
  return (
    <Dialog title="Open a garden" onClose={() => showDialog(null)}>
      {recent.length > 0 && (
        <section className="form">
          <h3>Used lately{folder ? `, in ${folder}` : ''}</h3>
          <RecentGardens onPick={() => showDialog(null)} />
        </section>
      )}
      <PickFile onPick={() => showDialog(null)} />
      <div className="button-row">
        <button type="button" className="button" onClick={() => showDialog(null)}>
          Cancel
        </button>
      </div>
    </Dialog>
  );
}

/** Any garden file of this computer. What is opened this way is a copy: saving asks for a name. */
export function PickFile({ onPick }: { readonly onPick?: () => void }) {
  const commands = useCommands();
  const input = useRef<HTMLInputElement>(null);
  const hintId = useId();
  return (
    <div className="form">
      <div>
        <button
          type="button"
          className="button"
          aria-describedby={hintId}
          onClick={() => input.current?.click()}
        >
          Choose a file…
        </button>
      </div>
      <p id={hintId} className="small soft">
        Its name ends in .mowings. It opens as a copy; saving asks for a name.
      </p>
      <input
        ref={input}
        type="file"
        accept=".mowings,application/json"
        hidden
        aria-label="A garden file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (!file) return;
          onPick?.();
          commands.openPicked(file);
        }}
      />
    </div>
  );
}
