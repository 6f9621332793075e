import { dayOf, seasonStart, yearOf } from '../core/days';
import { familyOf, type FamilyRow } from '../tables/families';
import { idsOfPast } from './bedPast';
import { cropById } from './cropValues';
import type { Bed, Garden, Planting } from './schema';

/** Too soon after its own family on the same ground. */
export interface TooSoon {
  readonly family: FamilyRow;
  /** the last crop of the family there, and the day it was started */
  readonly crop: string;
  readonly started: string;
  /** whole seasons between the two without the family; below 0 where they meet in one */
  readonly seasonsAway: number;
  /** one of the two is a cover crop, of which the years that were read do not speak */
  readonly isCover: boolean;
}

type Started = Pick<Planting, 'cropId' | 'started'>;

/** What stood on a bed's ground, on the bed itself and on those it was made of. */
export function plantingsOfGround(garden: Garden, bed: Bed): readonly Planting[] {
  const past = idsOfPast(garden, bed);
  return garden.plantings.filter(({ bedId }) => past.has(bedId));
}

/**
 * Whether a crop comes back to its ground before its family's free seasons are over; null when
 * nothing is known against it. What was started in the same season counts as one crop with it:
 * succession and neighbours are no rotation. What stood over a season's turn was there until it was
 * cleared.
 *
 * @param onGround what stood there, in any order
 * @source seasons by family: `families` in the tables, with their own sources
 */
export function tooSoonOn(
  garden: Garden,
  { cropId, started }: Started,
  onGround: readonly Planting[],
): TooSoon | null {
  const latin = cropById(garden, cropId)?.family;
  const family = latin === undefined ? undefined : familyOf(latin);
  if (!family) return null;
  const { seasonStartMonth } = garden.garden;
  const seasonOf = (date: string): number => yearOf(seasonStart(dayOf(date), seasonStartMonth));
  const season = seasonOf(started);
  let last: { readonly planting: Planting; readonly season: number } | null = null;
  for (const planting of onGround) {
    if (planting.started >= started || cropById(garden, planting.cropId)?.family !== latin)
      continue;
    if (seasonOf(planting.started) === season) continue;
    const { cleared } = planting;
    const stoodTo = cleared !== null && cleared < started ? cleared : planting.started;
    const inSeason = seasonOf(stoodTo);
    if (last === null || inSeason > last.season) last = { planting, season: inSeason };
  }
  if (!last) return null;
  const seasonsAway = season - last.season - 1;
  return seasonsAway < family.freeSeasons.typical
    ? {
        family,
        crop: cropById(garden, last.planting.cropId)?.name ?? '',
        started: last.planting.started,
        seasonsAway,
        isCover: [cropId, last.planting.cropId].some(
          (id) => cropById(garden, id)?.excessClass === 'cover',
        ),
      }
    : null;
}

/** `tooSoonOn` for a bed of the garden. */
export function tooSoonAfter(
  garden: Garden,
  cropId: string,
  bedId: string,
  started: string,
): TooSoon | null {
  const bed = garden.beds.find(({ id }) => id === bedId);
  return bed ? tooSoonOn(garden, { cropId, started }, plantingsOfGround(garden, bed)) : null;
}
