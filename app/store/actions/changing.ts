import { failure, success } from '../../core/result';
import type { Garden } from '../../document/schema';
import type { Edited, GardenSlice, MowingsState } from '../contract';

/** What every action is made with. */
export interface ActionTools {
  readonly read: () => MowingsState;
  readonly edit: GardenSlice['edit'];
  /** the garden's own day, else the computer's, YYYY-MM-DD */
  readonly today: () => string;
}

type Lists = { [Key in keyof Garden]-?: NonNullable<Garden[Key]> };
type Listed = {
  [Key in keyof Lists]: Lists[Key] extends readonly { id: string }[] ? Key : never;
}[keyof Lists];
export type ThingOf<List extends Listed> = Lists[List][number];

/** The open garden, or the failure that there is none. */
export const openGarden = ({ read }: ActionTools): Edited<Garden> => {
  const { garden } = read();
  return garden ? success(garden) : failure({ kind: 'no-garden' });
};

/** A thing of a list, or the failure that it is not there. */
export function thingOf<List extends Listed>(
  tools: ActionTools,
  list: List,
  id: string,
): Edited<{ readonly garden: Garden; readonly thing: ThingOf<List> }> {
  const open = openGarden(tools);
  if (!open.ok) return open;
  const things: readonly { readonly id: string }[] = open.value[list] ?? [];
  const thing = things.find((one) => one.id === id);
  return thing
    ? success({ garden: open.value, thing: thing as ThingOf<List> })
    : failure({ kind: 'missing', what: list });
}

/** `edit`, answering a value when the change was made. */
export function editFor<Value>(
  tools: ActionTools,
  label: string,
  recipe: (garden: Garden) => void,
  value: Value,
  gesture?: string,
): Edited<Value> {
  const edited =
    gesture === undefined ? tools.edit(label, recipe) : tools.edit(label, recipe, gesture);
  return edited.ok ? success(value) : edited;
}

/** Replaces a thing of a list by itself with changes; a change to undefined takes the field out. */
export function changeIn<List extends Listed>(
  garden: Garden,
  list: List,
  id: string,
  changes: Partial<ThingOf<List>>,
): void {
  const things = (garden[list] ?? []) as { id: string }[];
  const index = things.findIndex((one) => one.id === id);
  const thing = things[index];
  if (!thing) return;
  const changed = Object.entries({ ...thing, ...changes, id }).filter(
    ([, value]) => value !== undefined,
  );
  const isSame =
    changed.length === Object.keys(thing).length &&
    changed.every(([key, value]) => (thing as Record<string, unknown>)[key] === value);
  if (!isSame) things[index] = Object.fromEntries(changed) as { id: string };
}
