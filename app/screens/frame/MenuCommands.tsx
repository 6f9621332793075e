import { useEffect, useRef } from 'react';
import { useCommands, type CommandName, type Commands } from './commands';

/** What the shell asks for: commands of its menu, files it was handed. */
export function MenuCommands(props: {
  readonly onMenu: (listener: (command: CommandName) => void) => void;
  readonly onOpenFile: (listener: (id: string) => void) => void;
}) {
  const commands = useCommands();
  const current = useRef<Commands>(commands);
  useEffect(() => {
    current.current = commands;
  }, [commands]);
  const { onMenu, onOpenFile } = props;
  const listening = useRef(false);
  useEffect(() => {
    // The shell keeps its listeners for the life of the page: one of each is enough.
    if (listening.current) return;
    listening.current = true;
    onMenu((command) => {
      if (document.querySelector('dialog[open]')) return;
      const {
        newGarden,
        open,
        save,
        saveAs,
        print,
        undo,
        redo,
        find,
        colourScheme,
        tour,
        about,
        guide,
      } = current.current;
      const runs: Readonly<Record<CommandName, () => void>> = {
        new: newGarden,
        open,
        save,
        'save-as': saveAs,
        print,
        undo,
        redo,
        find,
        'colour-scheme': colourScheme,
        tour,
        about,
        guide,
      };
      runs[command]();
    });
    onOpenFile((id) => current.current.openRecent(id));
  }, [onMenu, onOpenFile]);
  return null;
}
