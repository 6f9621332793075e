import type { Standing } from '../../core/reference';
import type { CropId } from '../crops';
import { row, single } from '../row';
import type { Row } from '../shapes';
import type { SourceKey } from '../sources';

/**
 * What a frost does to a plant: `very hardy` stands hard frost once hardened, `frost tolerant` a
 * light one, `tender` dies in frost, `very tender` also stops in cold soil.
 */
export type FrostClass = 'very hardy' | 'frost tolerant' | 'tender' | 'very tender';

/** How it is set in the ground. */
export type Start =
  'seed' | 'plant' | 'seed or plant' | 'seed or set' | 'set' | 'tuber' | 'crown' | 'clove' | 'slip';

export interface FrostRow {
  readonly name: string;
  /** rows of the crop table it speaks for */
  readonly crops: readonly CropId[];
  readonly frostClass: FrostClass;
  /** air temperature that kills it, unprotected and hardened: low the coldest reading, high the mildest */
  readonly killedAt: Row | null;
  /** weeks from the average last spring frost, negative before it: low the earliest, high the latest */
  readonly weeks: Row | null;
  readonly soilFrom: Row | null;
  readonly start: Start | null;
  readonly note?: string;
}

/** Growers' records more than trials; plants that were not hardened die several degrees sooner. */
export const killedAt = (low: number, high: number, source: SourceKey, standing: Standing): Row =>
  row(
    low,
    (low + high) / 2,
    high,
    'deg C of air',
    source,
    low === high ? 'killing temperature' : 'killing temperatures, coldest and mildest reading',
    standing,
  );

export const weeks = (
  earliest: number,
  latest: number,
  source: SourceKey,
  standing: Standing,
): Row =>
  row(
    earliest,
    (earliest + latest) / 2,
    latest,
    'weeks from the last frost',
    source,
    standing === 'memory' ? 'no list found' : 'limits of its class; the weeks within them are ours',
    standing,
  );

export const soilFrom = (celsius: number): Row =>
  single(celsius, 'deg C of soil', 'Recalled', 'coldest soil worth planting in', 'memory');

export const plant = (
  name: string,
  frostClass: FrostClass,
  killed: Row | null,
  planting: Row | null,
  soil: Row,
  start: Start,
  crops: readonly CropId[],
  note?: string,
): FrostRow => ({
  name,
  crops,
  frostClass,
  killedAt: killed,
  weeks: planting,
  soilFrom: soil,
  start,
  ...(note === undefined ? {} : { note }),
});

/** A cover crop has no planting weeks here: it is sown when a bed falls empty. */
export const coverCrop = (
  name: string,
  frostClass: FrostClass,
  killed: Row,
  crops: readonly CropId[],
  note?: string,
): FrostRow => ({
  name,
  crops,
  frostClass,
  killedAt: killed,
  weeks: null,
  soilFrom: null,
  start: null,
  ...(note === undefined ? {} : { note }),
});
