import type { UnitSet } from '../amounts/unitSystem';
import type { EventDoubt } from '../document/eventDoubt';
import { estimateWithUnit } from './figures';

/** The question about an entry that is hardly believable, and what to look at. */
export function eventDoubtSentence(doubt: EventDoubt, units: UnitSet): string {
  if (doubt.kind === 'water')
    return `${estimateWithUnit(doubt.millimetres, units.rain)} at once is more than a bed can take in; most of it runs off or through. Check the number and its unit: 1 L on 1 m² is 1 mm.`;
  const made = estimateWithUnit(doubt.kilogramsPerM2, units.yieldPerArea);
  const most = estimateWithUnit(doubt.mostPerM2, units.yieldPerArea);
  return `With this the planting has given ${made}; a very good year of ${doubt.crop.toLowerCase()} gives ${most}. Check the number, its unit and the planting.`;
}
