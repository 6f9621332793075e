import { useEffect, useRef } from 'react';
import type { MenuCommand } from '../../host/contract';
import { useCommands, type Commands } from './commands';

/** What the shell asks for: commands of its menu, files it was handed. */
export function MenuCommands(props: {
  readonly onMenu: (listener: (command: MenuCommand) => void) => void;
  readonly onOpenFile: (listener: (id: string) => void) => void;
}) {
  const commands = useCommands();
  const current = useRef<Commands>(commands);
  current.current = commands;
  const { onMenu, onOpenFile } = props;
  const listening = useRef(false);
  useEffect(() => {
    // The shell keeps its listeners for the life of the page: one of each is enough.
    if (listening.current) return;
    listening.current = true;
    onMenu((command) => {
      if (document.querySelector('dialog[open]')) return;
      const { newGarden, open, save, saveAs, print, undo, redo, about, guide } = current.current;
      const runs: Readonly<Record<MenuCommand, () => void>> = {
        new: newGarden,
        open,
        save,
        'save-as': saveAs,
        print,
        undo,
        redo,
        about,
        guide,
      };
      runs[command]();
    });
    onOpenFile((id) => current.current.openRecent(id));
  }, [onMenu, onOpenFile]);
  return null;
}
