import { dayOf } from '../../core/days';
import { failure, success, type Result } from '../../core/result';
import { areaOn } from '../bedPast';
import { looksOf, nodulesKnown } from '../looks';
import type { Bed, Garden, Planting } from '../schema';
import type { BedChangeFailure } from './changeFailure';
import { lastEntry } from './lastEntry';

/** A bed to be made of the ground of others. */
export interface NewBed {
  readonly bed: Omit<Bed, 'id' | 'ground' | 'earlierAreas' | 'areaM2'>;
  /** so much of each [m2]; together its area */
  readonly parts: readonly { readonly bedId: string; readonly areaM2: number }[];
  /** of each planting that stands or is to come there, the portion that is this bed's 0-1 */
  readonly portions: ReadonlyMap<string, number>;
}

export interface Made {
  readonly garden: Garden;
  /** ids of the new beds, in the order they were asked for */
  readonly bedIds: readonly string[];
}

function freshId(prefix: string, taken: readonly { readonly id: string }[]): () => string {
  const used = new Set(taken.map(({ id }) => id));
  let number = used.size;
  return () => {
    do number += 1;
    while (used.has(`${prefix}-${String(number)}`));
    return `${prefix}-${String(number)}`;
  };
}

/** Plantings that stand on a bed on a day's morning, or are to come on it. */
export const plantingsFrom = (garden: Garden, bedId: string, on: string): readonly Planting[] =>
  garden.plantings.filter(
    (planting) => planting.bedId === bedId && (planting.cleared === null || planting.cleared >= on),
  );

/** The latest test's organic matter, which the new beds have from no log of their own. */
function testedMatter(garden: Garden, bed: Bed): number | null {
  const tests = garden.events
    .flatMap((event) =>
      event.kind === 'soil test' && event.bedId === bed.id && event.organicMatterPercent !== null
        ? [{ date: event.date, percent: event.organicMatterPercent }]
        : [],
    )
    .sort((one, other) => (one.date < other.date ? -1 : 1));
  return tests.at(-1)?.percent ?? bed.organicMatterPercent;
}

/** Organic matter of what is joined, by area; null where it is not known of all. */
export function matterOf(garden: Garden, beds: readonly (readonly [Bed, number])[]): number | null {
  let sum = 0;
  let whole = 0;
  for (const [bed, areaM2] of beds) {
    const percent = testedMatter(garden, bed);
    if (percent === null) return null;
    sum += percent * areaM2;
    whole += areaM2;
  }
  return sum / whole;
}

/**
 * The garden with beds retired on a day and others made of their ground. The old beds keep their
 * logs, that day's entries among them, which came before the change; what stands on them goes on in
 * the new ones, what is planned there is planned here.
 *
 * @param old ids of the beds that are used up, each wholly
 * @returns failure where a bed has an entry of a later day, which would belong to neither, or was
 *   itself made no earlier than that day
 */
export function newGround(
  garden: Garden,
  old: readonly string[],
  made: readonly NewBed[],
  on: string,
  today: string,
): Result<Made, BedChangeFailure> {
  if (on > today) return failure({ kind: 'still to come' });
  const beds = old.flatMap((id) => garden.beds.find((bed) => bed.id === id) ?? []);
  if (beds.length < old.length || beds.length === 0) return failure({ kind: 'no bed' });
  for (const bed of beds) {
    if (bed.ground && bed.ground.on >= on)
      return failure({ kind: 'made since', bed: bed.name, date: bed.ground.on });
    const date = lastEntry(garden, bed.id, today);
    if (date !== null && date > on) return failure({ kind: 'written since', bed: bed.name, date });
  }
  const isKept = ({ id }: Bed): boolean => !old.includes(id);
  const kept = garden.beds.filter(isKept);
  // in the order of the walk: where the first of them lay
  const place = garden.beds.findIndex((bed) => !isKept(bed));
  const names = [...kept.map(({ name }) => name), ...made.map(({ bed }) => bed.name)];
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  if (twice !== undefined) return failure({ kind: 'name', name: twice });

  const bedId = freshId('bed', [...garden.beds, ...(garden.retiredBeds ?? [])]);
  const plantingId = freshId('planting', garden.plantings);
  const newBeds = made.map(({ bed, parts }): Bed => ({
    ...bed,
    id: bedId(),
    areaM2: parts.reduce((sum, { areaM2 }) => sum + areaM2, 0),
    ground: { on, parts: parts.map((part) => ({ ...part })) },
  }));
  const goOn = beds.flatMap((was) =>
    plantingsFrom(garden, was.id, on).flatMap((planting) =>
      made.flatMap(({ portions }, at): Planting[] => {
        const portion = portions.get(planting.id) ?? 0;
        const now = newBeds[at]!;
        if (portion <= 0) return [];
        const { id, continues: _continues, ...rest } = planting;
        const stands = planting.started < on;
        const looks = looksOf(garden, was.id);
        return [
          {
            ...rest,
            id: plantingId(),
            bedId: now.id,
            share: (planting.share * portion * areaOn(was, on)) / now.areaM2,
            ...(stands && {
              nodules: nodulesKnown(planting, looks, dayOf(on), garden),
              continues: { plantingId: id, portion },
            }),
          },
        ];
      }),
    ),
  );
  const moved = new Set(
    beds.flatMap(({ id }) =>
      garden.plantings.filter((one) => one.bedId === id && one.started >= on).map((one) => one.id),
    ),
  );
  return success({
    garden: {
      ...garden,
      beds: [...kept.slice(0, place), ...newBeds, ...kept.slice(place)],
      retiredBeds: [...(garden.retiredBeds ?? []), ...beds.map((bed) => ({ ...bed, retired: on }))],
      plantings: [...garden.plantings.filter(({ id }) => !moved.has(id)), ...goOn],
    },
    bedIds: newBeds.map(({ id }) => id),
  });
}
