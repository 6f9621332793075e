import type { CropId } from './crops';
import type { FrostClass, FrostRow } from './frost/cells';
import { coverCrops } from './frost/coverCrops';
import { tender } from './frost/tender';
import { tolerant } from './frost/tolerant';
import { veryHardy } from './frost/veryHardy';
import { row, single } from './row';
import type { Row } from './shapes';

export type { FrostClass, FrostRow, Start } from './frost/cells';

/** Frost hardiness and planting time of plants, those of the crop table and others. */
export const frostRows: readonly FrostRow[] = [...veryHardy, ...tolerant, ...tender, ...coverCrops];

/** The frost row that speaks for a crop. */
export const frostOf = (cropId: CropId): FrostRow | undefined =>
  frostRows.find(({ crops }) => crops.includes(cropId));

/** Below this, in the air, a frost counts as light or hard. */
export const frostLimits = {
  light: single(0, 'deg C of air', 'MichiganFreeze2013', 'light frost 32-28 F', 'read'),
  hard: single(-2.2, 'deg C of air', 'MichiganFreeze2013', 'hard frost below 28 F', 'read'),
} as const;

const classWeeks = (earliest: number, latest: number, place: string): Row =>
  row(
    earliest,
    (earliest + latest) / 2,
    latest,
    'weeks from the last frost',
    'PurdueFrost',
    place,
    'derived',
  );

/** Planting time of a whole class, for a plant that has no row of its own. */
export const weeksByClass: Readonly<Record<FrostClass, Row>> = {
  'very hardy': classWeeks(-6, -4, '4-6 weeks before; Colorado 2-4, where nights are dry and cold'),
  'frost tolerant': classWeeks(-3, -2, '2-3 weeks before; Colorado 0-2'),
  tender: classWeeks(0, 1, 'on or after the date'),
  'very tender': classWeeks(1, 2, '1-2 weeks after; Illinois 2 for vine crops'),
};
