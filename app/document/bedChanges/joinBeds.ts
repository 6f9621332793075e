import { failure, type Result } from '../../core/result';
import type { Garden } from '../schema';
import type { BedChangeFailure } from './changeFailure';
import { matterOf, newGround, plantingsFrom, type Made } from './newGround';
import { bedLike } from './splitBed';

/**
 * The garden with beds joined into one on a day. Each is run by its own log to the evening before,
 * and the new bed starts from what they hold together, by area. What one of them is asked of once
 * (soil, roof, watering, steps) is that of the largest; organic matter is by area where it is known
 * of all.
 */
export function joinBeds(
  garden: Garden,
  bedIds: readonly string[],
  on: string,
  name: string,
  today: string,
): Result<Made, BedChangeFailure> {
  const beds = bedIds.flatMap((id) => garden.beds.find((bed) => bed.id === id) ?? []);
  if (beds.length < 2 || new Set(bedIds).size < bedIds.length) return failure({ kind: 'one bed' });
  const largest = [...beds].sort((one, other) => other.areaM2 - one.areaM2)[0]!;
  const matter = matterOf(
    garden,
    beds.map((bed) => [bed, bed.areaM2] as const),
  );
  return newGround(
    garden,
    bedIds,
    [
      {
        bed: {
          ...bedLike(largest),
          organicMatterPercent: matter,
          // of a bed without a test its years of mulching say how rich it is
          mulchYears: largest.mulchYears,
          name,
        },
        parts: beds.map(({ id, areaM2 }) => ({ bedId: id, areaM2 })),
        portions: new Map(
          beds.flatMap(({ id }) =>
            plantingsFrom(garden, id, on).map((planting): [string, number] => [planting.id, 1]),
          ),
        ),
      },
    ],
    on,
    today,
  );
}
