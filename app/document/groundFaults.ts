import { areaOn } from './bedPast';
import type { Faults } from './faults';
import type { Bed, Garden, RetiredBed } from './schema';

/** Relative: areas are typed, shares of them reckoned. */
const rounding = 1e-6;
const isAbout = (one: number, other: number): boolean => Math.abs(one - other) <= rounding * other;
const isMore = (one: number, other: number): boolean => one > other * (1 + rounding);

/**
 * What beds were made of must come out to the square metre and to the plant, or nitrogen would be
 * made at a split: the parts of a bed are as big as it was on its first day; what was taken from a
 * retired bed was taken on the day it was retired, and is no bigger than it was then (smaller where
 * one of the new beds was deleted since); and no more of a planting goes on than there was. No bed
 * may come from itself.
 */
export function groundFaults(garden: Garden, faults: Faults): void {
  const retired = new Map((garden.retiredBeds ?? []).map((bed) => [bed.id, bed]));
  const taken = new Map<string, number>();
  const check = (list: 'beds' | 'retiredBeds', bed: Bed, index: number): void => {
    const areas = bed.earlierAreas ?? [];
    if (areas.some(({ until }, at) => at > 0 && until <= areas[at - 1]!.until))
      faults.broken(list, index, 'earlierAreas', 'the days must follow each other');
    const { ground } = bed;
    if (!ground) return;
    const whole = ground.parts.reduce((sum, { areaM2 }) => sum + areaM2, 0);
    if (!isAbout(whole, areaOn(bed, ground.on)))
      faults.broken(list, index, 'ground', 'its parts are not as big as the bed was that day');
    for (const { bedId, areaM2 } of ground.parts) {
      const before = retired.get(bedId);
      faults.points(list, index, before !== undefined, 'retired bed');
      if (before && before.retired !== ground.on)
        faults.broken(list, index, 'ground', 'it was not made on the day that bed was retired');
      taken.set(bedId, (taken.get(bedId) ?? 0) + areaM2);
    }
    if (comesFrom(bed, bed.id, retired))
      faults.broken(list, index, 'ground', 'it cannot come from itself');
  };
  garden.beds.forEach((bed, index) => check('beds', bed, index));
  garden.retiredBeds?.forEach((bed, index) => {
    check('retiredBeds', bed, index);
    if (bed.ground && bed.ground.on >= bed.retired)
      faults.broken('retiredBeds', index, 'retired', 'it lies before the bed was made');
  });
  garden.retiredBeds?.forEach((bed, index) => {
    const given = taken.get(bed.id);
    if (given !== undefined && isMore(given, areaOn(bed, bed.retired)))
      faults.broken('retiredBeds', index, null, 'the beds made of it are bigger than it was');
  });
  plantFaults(garden, faults);
}

function comesFrom(bed: Bed, id: string, retired: ReadonlyMap<string, RetiredBed>): boolean {
  const seen = new Set<string>();
  const open = [bed];
  for (let one = open.pop(); one; one = open.pop())
    for (const { bedId } of one.ground?.parts ?? []) {
      if (bedId === id) return true;
      const before = retired.get(bedId);
      if (before && !seen.has(bedId)) {
        seen.add(bedId);
        open.push(before);
      }
    }
  return false;
}

function plantFaults(garden: Garden, faults: Faults): void {
  if (!garden.plantings.some(({ continues }) => continues)) return;
  const beds = new Map([...garden.beds, ...(garden.retiredBeds ?? [])].map((bed) => [bed.id, bed]));
  const plantings = new Map(garden.plantings.map((planting) => [planting.id, planting]));
  const portions = new Map<string, number>();
  garden.plantings.forEach(({ bedId, continues }, index) => {
    if (!continues) return;
    const { plantingId, portion } = continues;
    const from = plantings.get(plantingId);
    const parts = beds.get(bedId)?.ground?.parts ?? [];
    const isThere = parts.some((part) => part.bedId === from?.bedId);
    faults.points('plantings', index, isThere, 'planting of a bed that this one was made of');
    portions.set(plantingId, (portions.get(plantingId) ?? 0) + portion);
  });
  garden.plantings.forEach(({ id }, index) => {
    const portion = portions.get(id);
    if (portion !== undefined && isMore(portion, 1))
      faults.broken('plantings', index, null, 'more of it goes on elsewhere than there was');
  });
}
