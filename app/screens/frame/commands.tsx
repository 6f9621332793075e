import { createContext, useContext, useMemo, useRef, type ReactNode } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { useMowingsStore } from '../store';

/** Everything that can be asked of the program from the menu, a key or a button. */
export interface Commands {
  newGarden(): void;
  open(): void;
  openRecent(id: string): void;
  openPicked(file: File): void;
  save(): void;
  saveAs(): void;
  print(): void;
  undo(): void;
  redo(): void;
  /** any command, place, bed or setting by typing */
  find(): void;
  /** from its first stop; again from there when it is under way */
  tour(): void;
  /** light or dark, by one's own choice */
  colourScheme(): void;
  about(): void;
  guide(): void;
  /** answers the question "save the changes first?" */
  answerUnsaved(answer: 'save' | 'throw away' | 'cancel'): void;
  /** after a save-as that stood between the person and what they asked for */
  goOnAfterSave(): void;
}

/** The commands as a menu names them; the shell's own list is the same. */
export type CommandName =
  | 'new'
  | 'open'
  | 'save'
  | 'save-as'
  | 'print'
  | 'undo'
  | 'redo'
  | 'find'
  | 'tour'
  | 'colour-scheme'
  | 'about'
  | 'guide';

const CommandsContext = createContext<Commands | null>(null);

export function useCommands(): Commands {
  const commands = useContext(CommandsContext);
  if (!commands) throw new Error('No commands around this part of the window');
  return commands;
}

/**
 * Makes the commands from the store. What would put an unsaved garden away waits until the
 * question about the changes is answered.
 */
export function CommandsProvider({ children }: { readonly children: ReactNode }) {
  const store = useMowingsStore();
  const announce = useAnnounce();
  const waiting = useRef<(() => void) | null>(null);

  const commands = useMemo<Commands>(() => {
    const afterChangesAreSafe = (next: () => void) => {
      const state = store.getState();
      if (state.garden && state.unsaved) {
        waiting.current = next;
        state.showDialog({ kind: 'close-unsaved' });
      } else next();
    };
    const goOn = () => {
      const next = waiting.current;
      waiting.current = null;
      next?.();
    };
    const save = async (then?: () => void) => {
      const state = store.getState();
      if (!state.garden || state.saving) return;
      const result = await state.save();
      if (result.ok) then?.();
      else if (result.error.kind === 'cancelled' && !store.getState().about?.native)
        store.getState().showDialog({ kind: 'save-as' });
      else waiting.current = null;
    };
    return {
      newGarden: () => afterChangesAreSafe(() => void store.getState().closeGarden()),
      open: () =>
        afterChangesAreSafe(() => {
          const state = store.getState();
          if (state.about?.native) void state.openFile(null);
          else {
            void state.refreshRecent();
            state.showDialog({ kind: 'open' });
          }
        }),
      openRecent: (id) => afterChangesAreSafe(() => void store.getState().openFile(id)),
      openPicked: (file) =>
        afterChangesAreSafe(() => {
          void file.text().then((text) => store.getState().openText(text, file.name));
        }),
      save: () => void save(),
      saveAs: () => {
        const state = store.getState();
        if (!state.garden) return;
        if (state.about?.native) void state.saveAs(state.fileName, false);
        else state.showDialog({ kind: 'save-as' });
      },
      print: () =>
        void import('../print/beforePrint').then(
          ({ printOrAsk }) => printOrAsk(store),
          // what does not come can still be printed unmeasured
          () => window.print(),
        ),
      undo: () => {
        const { past, undo } = store.getState();
        const step = past.at(-1);
        if (!step) return announce('Nothing to undo.');
        undo();
        announce(`Undone: ${step.label}.`);
      },
      redo: () => {
        const { future, redo } = store.getState();
        const step = future[0];
        if (!step) return announce('Nothing to redo.');
        redo();
        announce(`Done again: ${step.label}.`);
      },
      find: () => store.getState().showDialog({ kind: 'find' }),
      tour: () => {
        const { garden, goOnTour } = store.getState();
        if (garden) goOnTour(0);
      },
      colourScheme: () => store.getState().showDialog({ kind: 'colour-scheme' }),
      about: () => store.getState().showDialog({ kind: 'about' }),
      guide: () => store.getState().showDialog({ kind: 'guide' }),
      answerUnsaved: (answer) => {
        store.getState().showDialog(null);
        if (answer === 'cancel') waiting.current = null;
        else if (answer === 'throw away') goOn();
        else void save(goOn);
      },
      goOnAfterSave: goOn,
    };
  }, [store, announce]);

  return <CommandsContext.Provider value={commands}>{children}</CommandsContext.Provider>;
}
