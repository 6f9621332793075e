import { useEffect } from 'react';
import { useCommands } from './commands';

/**
 * While a line holds words that have not gone out yet, Ctrl+Z takes back those words, as in any
 * program; otherwise it takes back the last thing done to the garden. A field says what it last
 * handed over in `data-settled`.
 */
const holdsUnsentWords = (element: Element | null): boolean =>
  (element instanceof HTMLInputElement && element.type === 'text') ||
  element instanceof HTMLTextAreaElement
    ? element.value !== (element.dataset['settled'] ?? '')
    : false;

/** The keys of the file and edit commands, for windows whose menu does not bring them. */
export function useKeys(): void {
  const commands = useCommands();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === 'F9' && !event.ctrlKey && !event.altKey && !event.metaKey) {
        event.preventDefault();
        if (!document.querySelector('dialog[open]')) commands.find();
        return;
      }
      if (event.altKey || !(event.ctrlKey || event.metaKey)) return;
      const key = event.key.toLowerCase();
      const wanted = (): (() => void) | null => {
        if (key === 'z' && !holdsUnsentWords(document.activeElement))
          return event.shiftKey ? commands.redo : commands.undo;
        if (key === 'y' && !event.shiftKey && !holdsUnsentWords(document.activeElement))
          return commands.redo;
        if (key === 's') return event.shiftKey ? commands.saveAs : commands.save;
        if (event.shiftKey) return null;
        if (key === 'n') return commands.newGarden;
        if (key === 'o') return commands.open;
        if (key === 'p') return commands.print;
        return null;
      };
      const command = wanted();
      if (!command) return;
      event.preventDefault();
      // A dialog is a question; nothing else happens until it is answered.
      if (document.querySelector('dialog[open]')) return;
      // A field that is still open hands over its words first, so that they are saved too.
      if (document.activeElement instanceof HTMLElement && key !== 'z' && key !== 'y')
        document.activeElement.dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
      command();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [commands]);
}
