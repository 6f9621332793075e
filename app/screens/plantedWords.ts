import type { DayNumber } from '../core/days';
import { ofBed } from '../document/ofBed';
import type { Garden } from '../document/schema';
import { plantingsOn } from '../store/selectors';
import { listed } from '../words/chartFormat';
import type { Shown } from './shown';
import { cropName } from '../document/cropValues';

/** What stands on a bed: "Tomatoes, planted 18 May, and basil, planted 1 June". */
export function plantedWords(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  shown: Shown,
): string {
  const standing = plantingsOn(garden, bedId, today);
  if (standing.length === 0) {
    const coming = ofBed(garden.plantings, bedId)
      .filter(({ started }) => started > shown.iso(today))
      .sort((one, other) => (one.started < other.started ? -1 : 1))[0];
    const name = coming && cropName(garden, coming.cropId).toLowerCase();
    return coming
      ? `Nothing in the ground; ${name} to come ${shown.dayWord(coming.started)}`
      : 'Nothing in the ground';
  }
  return listed(
    standing.map(({ cropId, how, started }) => {
      const name = cropName(garden, cropId);
      return `${name}, ${how} ${shown.dayWord(started)}`;
    }),
  );
}
