import { useCommands } from '../frame/commands';
import { useMowings } from '../store';

/** Where this garden lives, and the file commands with their keys. */
export function FilePart() {
  const commands = useCommands();
  const fileId = useMowings((state) => state.fileId);
  const fileName = useMowings((state) => state.fileName);
  const unsaved = useMowings((state) => state.unsaved);
  const draft = useMowings((state) => state.draft);
  const about = useMowings((state) => state.about);
  const buttons = [
    { words: 'Save', keys: 'Ctrl S', run: commands.save },
    { words: 'Save as…', keys: 'Ctrl Shift S', run: commands.saveAs },
    { words: 'Open…', keys: 'Ctrl O', run: commands.open },
    { words: 'New garden…', keys: 'Ctrl N', run: commands.newGarden },
    { words: 'Print…', keys: 'Ctrl P', run: commands.print },
  ];
  return (
    <div className="sheet">
      <p>
        {fileId === null
          ? 'This garden is in no file of its own yet.'
          : unsaved
            ? `Changes since the last save to ${fileName}.`
            : `Saved in ${fileName}.`}{' '}
        {draft === 'kept' &&
          'Everything is kept aside within seconds as well, and is brought back if the program ends.'}
        {draft === 'failed' && 'It cannot be kept aside on this computer just now: save it.'}
      </p>
      {about && <p className="small soft">Gardens go into {about.folder}.</p>}
      <div className="button-row">
        {buttons.map(({ words, keys, run }) => (
          <button key={words} type="button" className="button" onClick={run}>
            {words} <small className="soft">{keys}</small>
          </button>
        ))}
      </div>
    </div>
  );
}
