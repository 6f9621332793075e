import { useState } from 'react';
import { Dialog } from '../../controls/Dialog';
import { Field, type Trouble } from '../../controls/Field';
import { hostSentence } from '../../words/messages';
import { useCommands } from '../frame/commands';
import { useMowings } from '../store';

/** Saving under a name in a browser window; the folder is shown, replacing is asked. */
export function SaveAsDialog() {
  const folder = useMowings((state) => state.about?.folder ?? '');
  const fileName = useMowings((state) => state.fileName);
  const gardenName = useMowings((state) => state.garden?.garden.name ?? '');
  const saveAs = useMowings((state) => state.saveAs);
  const saving = useMowings((state) => state.saving);
  const showDialog = useMowings((state) => state.showDialog);
  const commands = useCommands();
  const [name, setName] = useState((fileName || gardenName).replace(/\.mowings$/i, ''));
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const [taken, setTaken] = useState<string | null>(null);

  const save = async (replace: boolean) => {
    const wanted = name.trim();
    if (wanted === '') {
      setTrouble({ sentence: 'A file needs a name.', suggestion: gardenName || 'My garden' });
      return;
    }
    const result = await saveAs(wanted, replace);
    if (result.ok) {
      showDialog(null);
      commands.goOnAfterSave();
    } else if (result.error.kind === 'name-taken') setTaken(wanted);
    else setTrouble({ sentence: hostSentence('save', result.error) });
  };

  return (
    <Dialog title="Save the garden as" onClose={() => showDialog(null)}>
      <form
        className="form"
        onSubmit={(event) => {
          event.preventDefault();
          void save(taken === name.trim());
        }}
      >
        <Field
          label="Name of the file"
          hint={`In the folder ${folder}. The ending .mowings is added.`}
          trouble={trouble}
          onSuggestion={(text) => {
            setName(text);
            setTrouble(null);
          }}
        >
          {(links) => (
            <input
              {...links}
              type="text"
              maxLength={120}
              autoComplete="off"
              value={name}
              onChange={(event) => {
                setName(event.target.value);
                setTrouble(null);
                setTaken(null);
              }}
            />
          )}
        </Field>
        {taken !== null && (
          <p role="alert" className="field-trouble">
            <span aria-hidden="true" className="field-trouble-mark" />A garden called “{taken}” is
            already there. Replacing it puts this one in its place.
          </p>
        )}
        <div className="button-row">
          <button type="submit" className={taken === null ? 'button-main' : 'button-stop'}>
            {saving ? 'Saving…' : taken === null ? 'Save' : `Replace “${taken}”`}
          </button>
          <button type="button" className="button" onClick={() => showDialog(null)}>
            Cancel
          </button>
        </div>
      </form>
    </Dialog>
  );
}
