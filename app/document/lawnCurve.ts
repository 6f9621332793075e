import { seasonEnd, type DayNumber } from '../core/days';
import { likelyAround, logSpreadOfRange } from '../core/lawn/calibration';
import type { LikelyRange } from '../core/lawn/clippings';
import { lawnOutlook, type LawnOutlook } from './lawnOutlook';
import { lawnRounds } from './lawnRounds';
import { lawnSeason } from './lawnWeather';
import { expectedKilograms, growthBetween, sumOf } from './lawnYield';
import type { Garden, Lawn } from './schema';
import { typicalSeed } from './seasonInput';

/** A mowing of the whole lawn, with the days in which it grew. */
export interface LawnCut {
  /** day after the mowing before it; null where none is known this season */
  readonly from: DayNumber | null;
  readonly day: DayNumber;
  /** kg dry matter, 8 times in 10 */
  readonly dryKilograms: LikelyRange;
  /** kg dry matter a week over the days it grew; null where those are not known */
  readonly aWeek: number | null;
}

/** What a lawn was expected to give through the season, and what it gave; kg dry matter of the whole lawn. */
export interface LawnCurve {
  readonly outlook: LawnOutlook;
  readonly weeks: readonly {
    readonly from: DayNumber;
    /** as learnt from its mowings */
    readonly expected: LikelyRange;
    /** as its kind usually does */
    readonly usual: number;
  }[];
  readonly cuts: readonly LawnCut[];
  readonly lastDay: DayNumber;
  /** what the lawn would give in a week's time: what its clippings fill and weigh is read from it */
  readonly inAWeek: LawnOutlook;
}

/** z of the 90 % point of a normal distribution: a definition. */
const normalAt90 = 1.281_551_565_545;

const daysOfWeek = 7;
/** Seasons imagined for the weeks ahead, to see how far apart they grow. */
const imaginedAhead = 20;

/** Growth of each week that begins after today over imagined weathers: the mean, and the 10 and 90 % points. */
function growthOfWeeksAhead(
  garden: Garden,
  lawn: Lawn,
  today: DayNumber,
  lastDay: DayNumber,
  weeks: LawnOutlook['weeks'],
): ReadonlyMap<DayNumber, LikelyRange> {
  const later = weeks.filter(({ from }) => from > today);
  if (later.length === 0) return new Map();
  const seasons = Array.from({ length: imaginedAhead }, (_unused, at) =>
    lawnSeason(garden, lawn.grass, today, lastDay, today, typicalSeed + at),
  );
  return new Map(
    later.map(({ from }): [DayNumber, LikelyRange] => {
      const sums = seasons
        .map((one) => growthBetween(one, from, from + daysOfWeek - 1))
        .sort((one, other) => one - other);
      const mean = sums.reduce((sum, one) => sum + one, 0) / sums.length;
      const at = (share: number): number => sums[Math.round(share * (sums.length - 1))] ?? mean;
      return [from, { low: Math.min(mean, at(0.1)), typical: mean, high: Math.max(mean, at(0.9)) }];
    }),
  );
}

/** Logged mowings of a lawn between two days, both included, each as what grew a week. */
export function lawnCuts(
  garden: Garden,
  lawnId: string,
  from: DayNumber,
  to: DayNumber,
): readonly LawnCut[] {
  const rounds = lawnRounds(garden, lawnId, from, to);
  return rounds.map((round, at): LawnCut => {
    const before = rounds[at - 1];
    const { median, spread } = sumOf([round], 'dry');
    return {
      from: before ? before.day + 1 : null,
      day: round.day,
      dryKilograms: likelyAround(median, spread),
      aWeek: before ? (median * 7) / (round.day - before.day) : null,
    };
  });
}

/**
 * The yield curve of a lawn in the season that holds `today`, and its logged mowings beside it. A mowing is told as
 * what grew in a week of the days since the one before, so that it can be held against the curve
 * however far apart mowings lie.
 *
 * @throws when the garden has no such lawn
 */
export function lawnCurve(garden: Garden, lawnId: string, today: DayNumber): LawnCurve {
  const lawn = garden.lawns.find(({ id }) => id === lawnId);
  if (!lawn) throw new Error(`No lawn ${lawnId}`);
  const outlook = lawnOutlook(garden, lawnId, today);
  const kilograms = (gramsPerM2: number): number => (gramsPerM2 * lawn.areaM2) / 1000;
  const first = outlook.weeks[0]?.from ?? today;
  const lastDay = seasonEnd(today, garden.garden.seasonStartMonth);
  const ahead = growthOfWeeksAhead(garden, lawn, today, lastDay, outlook.weeks);
  const logRatio = logSpreadOfRange(outlook.ratio);
  const expectedOf = (growth: LikelyRange): LikelyRange => {
    const of = (one: number) => expectedKilograms(garden, lawn, today, one) * outlook.ratio.typical;
    const typical = of(growth.typical);
    // either side for itself: growth of a cold week ends at nothing
    const side = (end: number): number =>
      Math.exp(
        Math.hypot(logRatio * normalAt90, Math.log(Math.max(end, typical / 1000) / typical)),
      );
    return typical > 0
      ? { low: typical / side(of(growth.low)), typical, high: typical * side(of(growth.high)) }
      : { low: 0, typical: 0, high: of(growth.high) };
  };
  return {
    outlook,
    lastDay,
    inAWeek: lawnOutlook(garden, lawnId, today + daysOfWeek, today),
    weeks: outlook.weeks.map(({ from, expected }) => {
      const growth = ahead.get(from);
      const likely = growth
        ? expectedOf(growth)
        : {
            low: kilograms(expected.low),
            typical: kilograms(expected.typical),
            high: kilograms(expected.high),
          };
      return { from, expected: likely, usual: likely.typical / outlook.ratio.typical };
    }),
    cuts: lawnCuts(garden, lawnId, first, today),
  };
}
