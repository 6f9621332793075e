import {
  dayFromParts,
  dayOf,
  partsFromDay,
  seasonStart,
  textFromDay,
  yearOf,
} from '../../core/days';
import { staysForYears } from '../../tables/crops';
import { families, type FamilyRow } from '../../tables/families';
import { idsOfPast } from '../bedPast';
import { cropById } from '../cropValues';
import type { Garden, Planting } from '../schema';

/** A planting of one season as it would be a year later. */
export interface YearLater {
  readonly from: Planting;
  readonly started: string;
  /** the bed it stood on, if that is still one: else it must be given another */
  readonly bedId: string | null;
  /** the same crop is written down there for that season already */
  readonly isThere: boolean;
}

const seasonYear = (garden: Garden, date: string): number =>
  yearOf(seasonStart(dayOf(date), garden.garden.seasonStartMonth));

/** Seasons in which something was sown or planted, latest first, by the year they began in. */
export const seasonsPlanted = (garden: Garden, today: string): readonly number[] =>
  [
    ...new Set(
      garden.plantings
        .filter(({ started, continues }) => started <= today && !continues)
        .map(({ started }) => seasonYear(garden, started)),
    ),
  ].sort((one, other) => other - one);

/** The same day of the next year; 29 February becomes the 28th. */
function yearLater(date: string): string {
  const { year, month, dayOfMonth } = partsFromDay(dayOf(date));
  const last = month === 2 && dayOfMonth === 29 ? 28 : dayOfMonth;
  return textFromDay(dayFromParts(year + 1, month, last));
}

/** A season's plantings a year later, earliest first; what stays for years needs no copy. */
export function plantingsYearLater(garden: Garden, season: number): readonly YearLater[] {
  const isBed = new Set(garden.beds.map(({ id }) => id));
  return garden.plantings
    .filter(({ started, cropId, continues }) => {
      const crop = cropById(garden, cropId);
      if (!crop || continues || staysForYears(crop.tableId)) return false;
      return seasonYear(garden, started) === season;
    })
    .map((from) => {
      const started = yearLater(from.started);
      const bedId = isBed.has(from.bedId) ? from.bedId : null;
      const isThere = garden.plantings.some(
        (one) =>
          one.bedId === bedId &&
          one.cropId === from.cropId &&
          seasonYear(garden, one.started) === seasonYear(garden, started),
      );
      return { from, started, bedId, isThere };
    })
    .sort((one, other) => (one.started < other.started ? -1 : 1));
}

/** Too soon after its own family on the same ground. */
export interface TooSoon {
  readonly family: FamilyRow;
  /** the last crop of the family there, and the day it was started */
  readonly crop: string;
  readonly started: string;
}

/**
 * Whether a crop comes back to a bed's ground before its family's free seasons are over; null when
 * nothing is known against it.
 *
 * @source seasons by family: `families` in the tables, with their own sources
 */
export function tooSoonAfter(
  garden: Garden,
  cropId: string,
  bedId: string,
  started: string,
): TooSoon | null {
  const row = cropById(garden, cropId);
  const bed = garden.beds.find(({ id }) => id === bedId);
  const family = (families as Readonly<Record<string, FamilyRow>>)[row?.family ?? ''];
  if (!row || !bed || !family) return null;
  const past = idsOfPast(garden, bed);
  const season = seasonYear(garden, started);
  const last = garden.plantings
    .filter(
      (one) =>
        past.has(one.bedId) &&
        one.started < started &&
        cropById(garden, one.cropId)?.family === row.family,
    )
    .sort((one, other) => (one.started < other.started ? 1 : -1))[0];
  if (!last) return null;
  const between = season - seasonYear(garden, last.started) - 1;
  return between < family.freeSeasons.typical
    ? { family, crop: cropById(garden, last.cropId)?.name ?? '', started: last.started }
    : null;
}

/** What a copy takes: its crop, how, share and what is wanted of it; days to come are reckoned anew. */
export const copyOf = (
  { from, started }: Pick<YearLater, 'from' | 'started'>,
  bedId: string,
): Omit<Planting, 'id'> => {
  const { id: _id, continues: _continues, ...rest } = from;
  return {
    ...rest,
    bedId,
    started,
    // a split or join made the share an odd one
    share: Math.min(1, from.share),
    firstHarvest: null,
    cleared: null,
    nodules: 'not looked',
  };
};
