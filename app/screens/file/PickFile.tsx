import { useId, useRef } from 'react';
import { useCommands } from '../frame/commands';

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
