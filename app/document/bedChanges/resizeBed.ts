import { failure, success, type Result } from '../../core/result';
import type { Garden } from '../schema';
import type { BedChangeFailure } from './changeFailure';

export interface NewSize {
  readonly areaM2: number;
  /** longest first; null: only the area is known */
  readonly sides: readonly [number, number] | null;
}

/**
 * The garden with a bed of another size from a day on. What was done before keeps the area it was
 * done on. What a square metre holds stays as it is: ground given up takes its nitrogen along,
 * ground added is taken to be like the rest.
 */
export function resizeBed(
  garden: Garden,
  bedId: string,
  from: string,
  { areaM2, sides }: NewSize,
  today: string,
): Result<Garden, BedChangeFailure> {
  const bed = garden.beds.find(({ id }) => id === bedId);
  if (!bed) return failure({ kind: 'no bed' });
  if (from > today) return failure({ kind: 'still to come' });
  const last = bed.earlierAreas?.at(-1)?.until ?? '';
  if (from < last || (bed.ground && from <= bed.ground.on))
    return failure({
      kind: 'made since',
      bed: bed.name,
      date: from < last ? last : (bed.ground?.on ?? last),
    });
  const earlierAreas =
    from === last
      ? bed.earlierAreas
      : [...(bed.earlierAreas ?? []), { until: from, areaM2: bed.areaM2 }];
  const changed = {
    ...bed,
    areaM2,
    lengthMetres: sides?.[0] ?? null,
    widthMetres: sides?.[1] ?? null,
    ...(earlierAreas && { earlierAreas }),
  };
  return success({ ...garden, beds: garden.beds.map((one) => (one === bed ? changed : one)) });
}
