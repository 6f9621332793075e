import {
  dayFromParts,
  dayOf,
  partsFromDay,
  seasonStart,
  textFromDay,
  yearOf,
} from '../../core/days';
import { staysForYears } from '../../tables/crops';
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
