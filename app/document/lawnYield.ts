import { dayFromParts, partsFromDay, seasonStart, type DayNumber } from '../core/days';
import {
  joinedSpread,
  learn,
  logSpreadOfRow,
  spreadOfSum,
  startCalibration,
  type Calibration,
} from '../core/lawn/calibration';
import {
  oneMowingScatter,
  warmSeasonYield,
  yearsUntilCollectingShows,
} from '../tables/lawnGrowthWater';
import { leavingClippings, yearlyYieldOf } from '../tables/lawns';
import { takenKilograms, type LawnRound } from './lawnRounds';
import { usualGrowth, type LawnSeason } from './lawnWeather';
import type { Garden, Lawn } from './schema';

/** Likely dry matter of a usual year for the kind of lawn and grass [g/m2]. */
export const yearlyDryGrams = (lawn: Pick<Lawn, 'kind' | 'grass'>): number =>
  yearlyYieldOf(lawn.kind).typical * (lawn.grass === 'warm' ? warmSeasonYield.typical : 1);

/** Growth of some days within a season [days of fastest growth], ends included. */
export function growthBetween(season: LawnSeason, from: DayNumber, to: DayNumber): number {
  let sum = 0;
  const last = Math.min(to - season.firstDay, season.growth.length - 1);
  for (let at = Math.max(0, from - season.firstDay); at <= last; at++)
    sum += season.growth[at] ?? 0;
  return sum;
}

/** Dry matter a lawn of its kind is expected to grow in so much growth [kg]. */
export const expectedKilograms = (
  garden: Garden,
  lawn: Lawn,
  day: DayNumber,
  growth: number,
): number =>
  (lawn.areaM2 * yearlyDryGrams(lawn) * growth) / usualGrowth(garden, lawn.grass, day) / 1000;

/** Less than this has nothing to say of a lawn: some days of slow growth [days of fastest growth]. */
const leastGrowth = 1;

/** The season before the one that begins on a day. */
const seasonBefore = (first: DayNumber): DayNumber => {
  const { year, month } = partsFromDay(first);
  return dayFromParts(year - 1, month, 1);
};

/** Seasons before this one that are looked at for collecting. */
const mostSeasons = 10;

/**
 * What is left of a lawn's yield after the seasons of collecting that were logged before this one,
 * 0-1. Lawns whose clippings were left yield half as much again (30-72 %); taking them all costs
 * that third, in proportion to what was taken, by and by over some years (assumed).
 */
export function shareAfterCollecting(garden: Garden, lawn: Lawn, day: DayNumber): number {
  const yearly = (lawn.areaM2 * yearlyDryGrams(lawn)) / 1000;
  let first = seasonStart(day, garden.garden.seasonStartMonth);
  let [years, taken] = [0, 0];
  for (; years < mostSeasons; years++) {
    const before = seasonBefore(first);
    const kilograms = takenKilograms(garden, lawn.id, before, first - 1);
    if (kilograms === null) break;
    taken += kilograms;
    first = before;
  }
  if (years === 0) return 1;
  const share = Math.min(1, taken / (years * yearly));
  const shown = 1 - Math.exp(-years / yearsUntilCollectingShows.typical);
  return 1 - share * shown * fullLoss(leavingClippings.yieldRaised.typical);
}

/** Share of the yield that a lawn loses in the end when everything is taken. */
export const fullLoss = (yieldRaised: number): number => 1 - 1 / (1 + yieldRaised);

/** All parts of all rounds together [kg or g]. */
export function sumOf(
  rounds: readonly LawnRound[],
  key: 'dry' | 'taken' | 'nitrogenTaken',
): { readonly median: number; readonly spread: number } {
  const parts = rounds.flatMap((round) => round[key]);
  return {
    median: parts.reduce((sum, { median }) => sum + median, 0),
    spread: spreadOfSum(parts),
  };
}

/** What one mowing may be off by, besides how it was weighed. */
export const mowingScatter = logSpreadOfRow(oneMowingScatter);

/**
 * What a lawn yields against its kind, learnt from this season's logged mowings. Each is held
 * against what grew since the one before; the first of a season is left out, because nobody knows
 * how short the grass stood when winter began.
 *
 * @param season covers the garden's season up to `today` at least
 */
export function calibrationOf(
  garden: Garden,
  lawn: Lawn,
  season: LawnSeason,
  rounds: readonly LawnRound[],
  day: DayNumber,
): Calibration {
  const row = yearlyYieldOf(lawn.kind);
  const kind = startCalibration(row, Math.log(shareAfterCollecting(garden, lawn, day)));
  let known: Calibration =
    lawn.grass === 'warm'
      ? { ...kind, spread: joinedSpread(kind.spread, logSpreadOfRow(warmSeasonYield)) }
      : kind;
  rounds.forEach((round, at) => {
    const before = rounds[at - 1];
    if (!before) return;
    const grown = growthBetween(season, before.day + 1, round.day);
    if (grown < leastGrowth) return;
    const dry = sumOf([round], 'dry');
    known = learn(
      known,
      dry.median,
      expectedKilograms(garden, lawn, day, grown),
      joinedSpread(dry.spread, mowingScatter),
    );
  });
  return known;
}
