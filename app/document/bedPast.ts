import type { Bed, Garden, RetiredBed } from './schema';
import { withId } from './withId';

/** A bed of the garden, or one that was retired. */
export const anyBed = (garden: Garden, id: string): Bed | RetiredBed | undefined =>
  withId<Bed>(garden.beds, id) ?? (garden.retiredBeds && withId(garden.retiredBeds, id));

/** How big a bed was on a day [m2]: on the day of a change it has its new size. */
export const areaOn = ({ earlierAreas, areaM2 }: Bed, date: string): number =>
  earlierAreas?.find(({ until }) => date < until)?.areaM2 ?? areaM2;

/** The bed at the size it had on a day. */
export const bedOn = <Kind extends Bed>(bed: Kind, date: string): Kind =>
  bed.earlierAreas ? { ...bed, areaM2: areaOn(bed, date) } : bed;

/** Retired beds that a bed's ground goes back to, through all splits and joins; nearest first. */
export function bedsBefore(garden: Garden, bed: Bed): readonly RetiredBed[] {
  const found: RetiredBed[] = [];
  const walk = (from: Bed): void => {
    for (const { bedId } of from.ground?.parts ?? []) {
      const before = garden.retiredBeds?.find(({ id }) => id === bedId);
      if (!before || found.includes(before)) continue;
      found.push(before);
      walk(before);
    }
  };
  walk(bed);
  return found;
}

/** Beds, retired ones among them, whose ground was taken from a bed. */
export const bedsMadeOf = (garden: Garden, bedId: string): readonly Bed[] =>
  [...garden.beds, ...(garden.retiredBeds ?? [])].filter((bed) =>
    bed.ground?.parts.some((part) => part.bedId === bedId),
  );

/** Ids of a bed and of all it came from: whose entries are in its sums. */
export const idsOfPast = (garden: Garden, bed: Bed): ReadonlySet<string> =>
  new Set([bed.id, ...bedsBefore(garden, bed).map(({ id }) => id)]);

/** The bed whose soil a bed's is, through all splits and joins: of the first of what was joined. */
export function groundOf(garden: Garden, bed: Bed): string {
  const before = garden.retiredBeds?.find(({ id }) => id === bed.ground?.parts[0]?.bedId);
  return before ? groundOf(garden, before) : bed.id;
}
