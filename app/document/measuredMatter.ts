import { ofBed } from './ofBed';
import type { Bed, Garden } from './schema';

/** Organic matter as it was measured last [% of dry soil]; null where nobody did. */
export function measuredMatter(
  garden: Pick<Garden, 'events'>,
  bed: Pick<Bed, 'id' | 'organicMatterPercent'>,
): number | null {
  let [latest, percent] = ['', bed.organicMatterPercent];
  for (const event of ofBed(garden.events, bed.id)) {
    if (event.kind !== 'soil test') continue;
    if (event.organicMatterPercent === null || event.date < latest) continue;
    [latest, percent] = [event.date, event.organicMatterPercent];
  }
  return percent;
}
