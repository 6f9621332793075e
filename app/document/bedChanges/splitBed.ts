import { failure, type Result } from '../../core/result';
import type { Bed, Garden } from '../schema';
import type { BedChangeFailure } from './changeFailure';
import { matterOf, newGround, plantingsFrom, type Made } from './newGround';

/** Where a planting stands after a split. */
export type PlantsAt = 'both' | 'first' | 'second';

export interface Split {
  readonly bedId: string;
  /** morning of the day */
  readonly on: string;
  readonly names: readonly [string, string];
  /** share of the area that the first part gets, over 0 and under 1 */
  readonly firstShare: number;
  /** by planting id; both parts by area where nothing is said */
  readonly plants: Readonly<Record<string, PlantsAt>>;
}

/** What a new bed has from the one it is made of. */
export function bedLike(bed: Bed): Omit<Bed, 'id' | 'ground' | 'earlierAreas' | 'areaM2'> {
  const { id: _id, ground: _ground, earlierAreas: _areas, areaM2: _area, ...rest } = bed;
  return { ...rest, lengthMetres: null, widthMetres: null, knownSince: null };
}

/**
 * The garden with a bed split into two on a day. Every square metre of both is as the old bed had
 * come to be by that morning; plants stand on both or on one alone, with all they hold. The grams of
 * the two together are those of the one.
 */
export function splitBed(
  garden: Garden,
  { bedId, on, names, firstShare, plants }: Split,
  today: string,
): Result<Made, BedChangeFailure> {
  const bed = garden.beds.find(({ id }) => id === bedId);
  if (!bed) return failure({ kind: 'no bed' });
  if (!(firstShare > 0 && firstShare < 1)) return failure({ kind: 'parts' });
  const areas = [firstShare * bed.areaM2, (1 - firstShare) * bed.areaM2] as const;
  const standing = plantingsFrom(garden, bedId, on);
  const portionAt = (at: 0 | 1, where: PlantsAt): number =>
    where === 'both'
      ? [firstShare, 1 - firstShare][at]!
      : (where === 'first') === (at === 0)
        ? 1
        : 0;
  const like = {
    ...bedLike(bed),
    organicMatterPercent: matterOf(garden, [[bed, bed.areaM2]]),
  };
  return newGround(
    garden,
    [bedId],
    ([0, 1] as const).map((at) => ({
      bed: { ...like, name: names[at] },
      parts: [{ bedId, areaM2: areas[at] }],
      portions: new Map(standing.map(({ id }) => [id, portionAt(at, plants[id] ?? 'both')])),
    })),
    on,
    today,
  );
}
