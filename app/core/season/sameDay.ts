import type { BedEvent, LayerInput } from './input';

/** Same-day entries in one order whatever the file's: by what they are, then by id. */
export function sameDayOrder(a: LayerInput, b: LayerInput): number {
  const key = (one: LayerInput): string =>
    [
      one.materialId,
      one.placement,
      one.condition,
      one.nitrogen,
      one.carbon,
      one.dryKgPerM2,
      one.id,
    ].join(' ');
  const left = key(a);
  const right = key(b);
  return left < right ? -1 : left > right ? 1 : 0;
}

const eventRank: Readonly<Record<BedEvent['kind'], number>> = {
  'rake off': 0,
  'dig cover in': 1,
  water: 2,
  harvest: 3,
};
const eventSize = (event: BedEvent): number => {
  if (event.kind === 'water') return event.depth;
  return event.kind === 'harvest' ? event.kilogramsPerM2 : event.share;
};

/**
 * Events of one day in one order whatever the file's: raking off, digging in, watering, picking; the
 * smaller first, so that even the rounding is the same.
 */
export const sameDayEventOrder = (a: BedEvent, b: BedEvent): number =>
  eventRank[a.kind] - eventRank[b.kind] || eventSize(a) - eventSize(b);
