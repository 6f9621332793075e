import { freeze, produce } from 'immer';
import { failure, success } from '../core/result';
import { faultOfChange } from '../document/change';
import type { Garden } from '../document/schema';
import { faultPhrase } from '../words/messages';
import type { GardenSlice, MowingsState } from './contract';

export type Read = () => MowingsState;
export type Write = (
  change: Partial<MowingsState> | ((state: MowingsState) => Partial<MowingsState>),
) => void;

/** Another garden altogether: history starts afresh. */
export interface GardenDoor {
  readonly slice: GardenSlice;
  /**
   * Opens a garden, or puts it away with null; `isSaved` when its file holds just this. What else
   * changes with it is written in the same breath.
   */
  replace(garden: Garden | null, isSaved: boolean, also: Partial<MowingsState>): void;
  /** a file holds just this garden, which may no longer be the one on screen */
  wasSaved(garden: Garden): void;
}

/**
 * The garden and its history: one door for changes, and a step of undo for each thing somebody meant to do. A change that would
 * leave a garden which its own file could not hold is refused and leaves everything as it was.
 */
export function gardenDoor(read: Read, write: Write): GardenDoor {
  /** all typing in a field, or a drag; open until something else happens */
  let openGesture: string | undefined;
  let saved: Garden | null = null;
  const isUnsaved = (garden: Garden | null): boolean => garden !== null && garden !== saved;

  const slice: GardenSlice = {
    garden: null,
    past: [],
    future: [],

    edit: (label, recipe, gesture) => {
      const { garden: before, past } = read();
      if (!before) return failure({ kind: 'no-garden' });
      const garden = produce(before, (draft) => {
        recipe(draft);
      });
      if (garden === before) return success(null);
      const fault = faultOfChange(before, garden);
      if (fault) {
        return failure({ kind: 'broken', where: fault.where, what: faultPhrase(fault) });
      }
      const continues = gesture !== undefined && gesture === openGesture && past.length > 0;
      openGesture = gesture;
      write({
        garden,
        unsaved: isUnsaved(garden),
        future: [],
        past: continues ? past : [...past, { label, garden: before }],
      });
      return success(null);
    },

    endGesture: () => {
      openGesture = undefined;
    },

    undo: () => {
      const { garden, past, future } = read();
      const step = past.at(-1);
      if (!step || !garden) return;
      openGesture = undefined;
      write({
        garden: step.garden,
        unsaved: isUnsaved(step.garden),
        past: past.slice(0, -1),
        future: [{ label: step.label, garden }, ...future],
      });
    },

    redo: () => {
      const { garden, past, future } = read();
      const [step, ...rest] = future;
      if (!step || !garden) return;
      openGesture = undefined;
      write({
        garden: step.garden,
        unsaved: isUnsaved(step.garden),
        past: [...past, { label: step.label, garden }],
        future: rest,
      });
    },
  };

  return {
    slice,
    replace: (garden, isSaved, also) => {
      openGesture = undefined;
      saved = isSaved ? garden : null;
      write({
        ...also,
        garden: garden && freeze(garden, true),
        unsaved: isUnsaved(garden),
        past: [],
        future: [],
        // a tour goes through one garden only
        tourStop: null,
      });
    },
    wasSaved: (garden) => {
      saved = garden;
      write({ unsaved: isUnsaved(read().garden) });
    },
  };
}
