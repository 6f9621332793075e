import type { Result } from '../core/result';
import type { Garden } from '../document/schema';

/** One thought of the gardener: its name in the Edit menu, and the garden before it. */
export interface HistoryStep {
  readonly label: string;
  readonly garden: Garden;
}

/** Why a change was not made. The garden is as it was. */
export type EditFailure =
  | { readonly kind: 'no-garden' }
  /** the thing to be changed is not (or no longer) there */
  | { readonly kind: 'missing'; readonly what: string }
  /** the garden would hold something that its own file could not */
  | { readonly kind: 'broken'; readonly where: string; readonly what: string }
  /** something still points at it: "2 plantings", so it cannot be deleted alone */
  | { readonly kind: 'in-use'; readonly by: string }
  /** a planting stood on a bed that was split or joined, and goes on: it can be cleared, not deleted */
  | { readonly kind: 'goes-on' }
  /** a bundled record has no further days, or the garden has no bundled record */
  | { readonly kind: 'no-more-record' }
  /** what was put on this lawn forbids clippings anywhere but on it */
  | { readonly kind: 'label-forbids'; readonly source: string };

export type Edited<Value = null> = Result<Value, EditFailure>;

/** Changes a draft of the garden in place (immer); returns nothing. */
export type Recipe = (garden: Garden) => void;

export interface GardenSlice {
  /** null until one was started, opened or restored: the first-run screen */
  readonly garden: Garden | null;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
  /**
   * The one door for changes. `label` names the step in the menu ("Rename bed"). Changes
   * with one `gesture` (all typing in a field, a drag from start to drop) that follow each other are one step.
   */
  edit(label: string, recipe: Recipe, gesture?: string): Edited;
  /** the field was left: the next edit is a step of its own even with the same gesture */
  endGesture(): void;
  undo(): void;
  redo(): void;
}
