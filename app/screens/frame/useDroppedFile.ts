import { useEffect } from 'react';
import { useCommands } from './commands';

/** A garden file dropped on the window is opened; "Open…" does the same without dragging. */
export function useDroppedFile(): void {
  const commands = useCommands();
  useEffect(() => {
    const isFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const onOver = (event: DragEvent) => {
      if (isFile(event)) event.preventDefault();
    };
    const onDrop = (event: DragEvent) => {
      if (!isFile(event)) return;
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file && !document.querySelector('dialog[open]')) commands.openPicked(file);
    };
    window.addEventListener('dragover', onOver);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('drop', onDrop);
    };
  }, [commands]);
}
