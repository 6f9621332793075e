import { materialById, materialFrom } from '../../document/materialValues';
import type { Garden } from '../../document/schema';
import { coefficientWords, type Remedy } from '../../words/drawnWords';
import { stuffName } from './chartData';
import { cropName } from '../../document/cropValues';

/** Something that is not known for sure, as a gardener asks about it, and what would settle it. */
export interface DrawnName {
  readonly words: string;
  readonly remedy: Remedy;
}

const after = (name: string, start: string): string | null =>
  name.startsWith(start) ? name.slice(start.length) : null;

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

/** "Clippings, ordinary lawn" inside a sentence: "clippings (ordinary lawn)" */
const plainName = (name: string): string => lower(name).replace(/, (.+)$/, ' ($1)');

function massOfLot(garden: Garden, id: string, day: (date: string) => string): string | null {
  const mowing = garden.mowings.find((one) => one.id === id);
  if (mowing) return `how much was in the mowing of ${day(mowing.date)}`;
  const layer = garden.applications.find((one) => one.id === id);
  if (!layer) return null;
  const stuff = lower(stuffName(materialFrom(garden, layer.from)));
  return `how much ${stuff} was laid on ${day(layer.date)}`;
}

/**
 * The words for a quantity that the draws of a garden vary, by the name it is drawn under; null for
 * one that belongs to something no longer in the garden.
 *
 * @param day how this person reads dates
 */
export function drawnName(
  garden: Garden,
  name: string,
  day: (date: string) => string,
): DrawnName | null {
  const lot = after(name, 'mass of ');
  if (lot !== null) {
    const words = massOfLot(garden, lot, day);
    return words === null ? null : { words, remedy: 'weigh' };
  }
  const measured = after(name, 'nitrogen of lot ');
  if (measured !== null) {
    const layer = garden.applications.find(({ id }) => id === measured);
    return (
      (layer && {
        words: `how true the measured nitrogen of ${day(layer.date)} is`,
        remedy: 'analysis',
      }) ??
      null
    );
  }
  const material = after(name, 'nitrogen of ');
  if (material !== null)
    return {
      words: `how much nitrogen is in ${plainName(materialById(garden, material).name)}`,
      remedy: 'analysis',
    };
  const rotting = after(name, 'acting ratio of ');
  if (rotting !== null)
    return {
      words: `how readily nitrogen comes free from ${plainName(materialById(garden, rotting).name)}`,
      remedy: 'nitrate test',
    };
  const ready = after(name, 'ready share of ');
  if (ready !== null)
    return {
      words: `how much of the nitrogen of ${plainName(materialById(garden, ready).name)} is ready at once`,
      remedy: 'nitrate test',
    };
  const later = after(name, 'slow share of ');
  if (later !== null)
    return {
      words: `how much of the nitrogen of ${plainName(materialById(garden, later).name)} comes later`,
      remedy: 'nitrate test',
    };
  const crop = after(name, 'need of ');
  if (crop !== null)
    return {
      words: `the appetite of ${lower(cropName(garden, crop))}`,
      remedy: 'picks',
    };
  const fixing = after(name, 'fixing of ');
  if (fixing !== null)
    return {
      words: `how much of its nitrogen the air gives: ${lower(cropName(garden, fixing))}`,
      remedy: 'nodules',
    };
  const limit = after(name, 'nodule limit of ');
  if (limit !== null)
    return {
      words: `how much nitrate stops the nodules: ${lower(cropName(garden, limit))}`,
      remedy: 'nodules',
    };
  if (after(name, 'organic matter of ') !== null)
    return { words: 'how true the measured organic matter is', remedy: 'nitrate test' };
  if (after(name, 'organic matter ') !== null)
    return { words: 'how much organic matter the soil holds', remedy: 'humus test' };
  return (coefficientWords as Readonly<Record<string, DrawnName>>)[name] ?? null;
}
