import type { Garden } from '../document/schema';

/** Parts of a garden that every bed is reckoned with. */
const common = ['garden', 'weather', 'materials', 'containers'] as const;
/** Lists whose entries name the bed they belong to. */
const ofBeds = ['applications', 'plantings', 'events'] as const;

/**
 * Beds that an edit itself touched, by what is another object than before: those that are certain
 * to have been meant. Others may follow from them; only their questions tell.
 *
 * @param before null: a garden that has just been opened
 */
export function touchedBeds(before: Garden | null, after: Garden): ReadonlySet<string> {
  const all = () => new Set(after.beds.map(({ id }) => id));
  if (before === null || common.some((part) => before[part] !== after[part])) return all();
  const touched = new Set<string>();
  const were = new Set(before.beds);
  for (const bed of after.beds) if (!were.has(bed)) touched.add(bed.id);
  for (const part of ofBeds) {
    if (before[part] === after[part]) continue;
    const [old, now] = [new Set<object>(before[part]), new Set<object>(after[part])];
    const others = [
      ...before[part].filter((entry) => !now.has(entry)),
      ...after[part].filter((entry) => !old.has(entry)),
    ];
    for (const entry of others) {
      // rain falls on all of them
      if (!('bedId' in entry)) return all();
      touched.add(entry.bedId);
    }
  }
  return touched;
}
