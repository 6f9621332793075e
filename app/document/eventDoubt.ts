import { areaOn } from './bedPast';
import type { Garden, GardenEvent } from './schema';
import { cropById } from './cropValues';

/** Something written down that is hardly believable: asked about, never refused. */
export type EventDoubt =
  | {
      readonly kind: 'harvest';
      readonly crop: string;
      /** of the planting so far, this pick included [kg per m2 of its ground] */
      readonly kilogramsPerM2: number;
      /** the most of the crop's own row [kg per m2] */
      readonly mostPerM2: number;
    }
  | { readonly kind: 'water'; readonly millimetres: number };

type AsKept = GardenEvent extends infer Kind
  ? Kind extends GardenEvent
    ? Omit<Kind, 'id'>
    : never
  : never;

/** A pick may well be twice what is usual at best before it is asked about; our own choice. */
const timesTheMost = 2;
/** Over this a bed of any soil runs over: more than its top 30 cm can take up. Our own choice. */
const mostWatered = 60;

/**
 * Whether a pick is far beyond what its crop can give on its ground, or a watering more than a bed
 * can take in; null when it is believable.
 *
 * @param exceptId  an entry that is being changed, which the new one replaces
 * @source the high end of the crop's row "good yield"; twice that, and 60 mm, are ours
 */
export function eventDoubt(
  garden: Garden,
  event: AsKept,
  exceptId: string | null,
): EventDoubt | null {
  if (event.kind === 'water')
    return event.millimetres > mostWatered
      ? { kind: 'water', millimetres: event.millimetres }
      : null;
  if (event.kind !== 'harvest') return null;
  const planting = garden.plantings.find(({ id }) => id === event.plantingId);
  const bed = garden.beds.find(({ id }) => id === planting?.bedId);
  const crop = planting && cropById(garden, planting.cropId);
  if (!planting || !bed || !crop) return null;
  const before = garden.events.reduce(
    (sum, one) =>
      one.kind === 'harvest' && one.plantingId === planting.id && one.id !== exceptId
        ? sum + one.kilograms
        : sum,
    0,
  );
  const kilogramsPerM2 = (before + event.kilograms) / (areaOn(bed, event.date) * planting.share);
  const mostPerM2 = crop.goodYield.high;
  return kilogramsPerM2 > timesTheMost * mostPerM2
    ? { kind: 'harvest', crop: crop.name, kilogramsPerM2, mostPerM2 }
    : null;
}
