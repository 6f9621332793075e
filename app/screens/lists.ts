import type { PickGroup } from '../controls/PickOne';
import type { ExcessClass } from '../core/season/input';
import type { Garden } from '../document/schema';
import { cropRows } from '../tables/crops';
import { materialRows } from '../tables/materials';

const classWords: readonly (readonly [ExcessClass, string])[] = [
  ['fruit', 'Fruit'],
  ['legume', 'Beans and peas'],
  ['tender storage', 'Roots that fork when over-fed'],
  ['storage', 'Roots, bulbs and tubers'],
  ['leaf', 'Leaves and herbs'],
  ['head', 'Heads'],
  ['flower', 'Flowers'],
  ['perennial', 'Standing for years'],
  ['cover', 'Cover crops'],
];

const byName = <Named extends { readonly label: string }>(list: readonly Named[]): Named[] =>
  [...list].sort((one, other) => one.label.localeCompare(other.label));

/** Every crop of the tables, as a gardener would look for it. */
export const cropGroups: readonly PickGroup[] = classWords
  .map(([excessClass, label]) => ({
    label,
    options: byName(
      cropRows
        .filter((crop) => crop.excessClass === excessClass)
        .map((crop) => ({ value: crop.id, label: crop.name })),
    ),
  }))
  .filter((group) => group.options.length > 0);

/** One's own crops first. */
export function cropGroupsOf(garden: Pick<Garden, 'crops'>): readonly PickGroup[] {
  const own = (garden.crops ?? []).map(({ id, name }) => ({ value: id, label: name }));
  return own.length > 0 ? [{ label: 'Your own', options: byName(own) }, ...cropGroups] : cropGroups;
}

/** Materials of the tables and of the garden itself. */
export function materialGroups(garden: Garden): readonly PickGroup[] {
  const option = (row: { id: string; name: string }) => ({ value: row.id, label: row.name });
  return [
    { label: 'Your own', options: byName(garden.materials.map(option)) },
    { label: 'Browns', options: byName(materialRows.filter((row) => row.isBrowns).map(option)) },
    { label: 'Greens', options: byName(materialRows.filter((row) => row.isGreens).map(option)) },
    {
      label: 'Compost, manure and the rest',
      options: byName(materialRows.filter((row) => !row.isBrowns && !row.isGreens).map(option)),
    },
  ].filter((group) => group.options.length > 0);
}
