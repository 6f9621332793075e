import fc from 'fast-check';
import { produce } from 'immer';
import { dayOf, textFromDay } from '../../app/core/days';
import type { Garden } from '../../app/document/schema';

type Leaf = string | number | boolean | null;
type Holder = Record<string, unknown>;

interface Place {
  readonly holder: Holder;
  readonly key: string;
  readonly path: readonly string[];
}

/** What changes the shape of an entry and not what it says, or tells entries apart. */
const shapeKeys = ['id', 'source', 'to', 'format', 'schemaVersion', 'text', 'unit', 'basedOn'];
const isKindOfGrass = ([part, , ...rest]: readonly string[]): boolean =>
  (part === 'lawns' || part === 'mowings') && rest.length === 1;

function places(holder: Holder, path: readonly string[]): Place[] {
  return Object.entries(holder).flatMap(([key, value]): Place[] => {
    const own = [...path, key];
    if (typeof value === 'object' && value !== null) return places(value as Holder, own);
    if (shapeKeys.includes(key) || (key === 'kind' && !isKindOfGrass(own))) return [];
    return [{ holder, key, path: own }];
  });
}

const isDate = (value: Leaf): value is string =>
  typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value);

/** Another value for a place: another day, number or answer, or one that stands at its like elsewhere. */
function another(place: Place, all: readonly Place[], roll: number): Leaf {
  const value = place.holder[place.key] as Leaf;
  if (typeof value === 'boolean') return !value;
  if (isDate(value)) return textFromDay(dayOf(value) + (roll % 81) - 40);
  if (place.key === 'seasonStartMonth') return 1 + (roll % 12);
  if (typeof value === 'number') return value * (0.5 + (roll % 101) / 100);
  const likes = all.filter(
    ({ key, path }) =>
      key === place.key && path[0] === place.path[0] && path.length === place.path.length,
  );
  const values = [...new Set(likes.map(({ holder, key }) => holder[key] as Leaf))];
  return values[roll % values.length] ?? value;
}

const lists = ['applications', 'plantings', 'events', 'mowings'] as const;

/** One thing done to a garden: where and what is rolled. */
export interface RandomEdit {
  readonly part: number;
  readonly place: number;
  readonly roll: number;
}

export const randomEdits: fc.Arbitrary<readonly RandomEdit[]> = fc.array(
  fc.record({ part: fc.nat(), place: fc.nat(), roll: fc.nat() }),
  { minLength: 1, maxLength: 4 },
);

/**
 * The garden after the edit, all that it left alone the same objects and nothing of it to be changed:
 * one value anywhere is another, or an entry of the log goes, or comes once more.
 */
export function edited(garden: Garden, { part, place, roll }: RandomEdit): Garden {
  return produce(garden, (draft) => {
    const parts = Object.keys(garden).filter((key) => key !== 'units');
    const name = parts[part % parts.length] as keyof Garden;
    const list = lists.find((one) => one === name);
    if (list !== undefined && roll % 4 === 0 && draft[list].length > 0) {
      const entries = draft[list] as { id: string }[];
      const at = place % entries.length;
      const copy = { ...structuredClone(garden[list][at]!), id: `copy-${place}` };
      // harvests and layers name what they are of
      if (list === 'plantings' || list === 'mowings' || roll % 8 === 0) entries.push(copy);
      else entries.splice(at, 1);
      return;
    }
    const within = draft[name];
    if (typeof within !== 'object' || within === null) return;
    const all = places(within as Holder, [name]);
    const chosen = all[place % all.length];
    if (chosen) chosen.holder[chosen.key] = another(chosen, all, roll);
  });
}
