import { dayOf, seasonEnd, seasonStart, type DayNumber } from '../core/days';
import { joinedSpread, likelyAround, logSpreadOfRow } from '../core/lawn/calibration';
import { likelyLot, type LikelyRange } from '../core/lawn/clippings';
import { clippingsMinerals, leavingClippings } from '../tables/lawns';
import { fullness } from '../tables/certainty';
import { unloggedGrowth, usualMowingDays } from '../tables/lawnGrowthWater';
import type { Row } from '../tables/shapes';
import { lawnKindOn, lawnWaterShare } from './lawnKind';
import { lawnRounds, type LawnRound, type Weighed } from './lawnRounds';
import { lawnSeason, type LawnSeason } from './lawnWeather';
import {
  calibrationOf,
  expectedKilograms,
  fullLoss,
  growthBetween,
  mowingScatter,
  sumOf,
} from './lawnYield';
import { lotInputOf } from './layerMass';
import { clippingsOfKind, type MaterialValues } from './materialValues';
import type { Container, Garden, Lawn, LawnKind } from './schema';
import { typicalSeed } from './seasonInput';

/** Nitrogen, phosphorus and potassium that went off a lawn [g per m2 of lawn], with dry matter [kg]. */
export interface TakenOff {
  readonly dryKilograms: LikelyRange;
  readonly nitrogen: LikelyRange;
  readonly phosphorus: LikelyRange;
  readonly potassium: LikelyRange;
}

/** A week of the season: what is expected to grow, and what was mown in it. */
export interface LawnWeek {
  readonly from: DayNumber;
  /** g dry matter per m2 */
  readonly expected: LikelyRange;
  /** null: nothing was mown */
  readonly mown: number | null;
}

export interface LawnOutlook {
  readonly lawnId: string;
  /** the day asked about */
  readonly day: DayNumber;
  /** last mowing before it, or the day before the season began; see `isSinceSupposed` */
  readonly since: DayNumber;
  readonly wasMown: boolean;
  /** more has grown since than any lawn is left to: `since` is then its usual days before `day` */
  readonly isSinceSupposed: boolean;
  /** days from one mowing to the next, as was said of the lawn or as most people mow */
  readonly usualDays: Row;
  /** what the clippings of that day count as: lean after drought */
  readonly kind: LawnKind;
  /** share of its wanted water the lawn got over the two weeks before, where it is known */
  readonly waterShare: number | null;
  /** what stands there to be mown on that day */
  readonly dryKilograms: LikelyRange;
  readonly freshKilograms: LikelyRange;
  readonly litres: LikelyRange;
  readonly nitrogenGrams: LikelyRange;
  /** the same in the container that the gardener counts in; null where the garden has none */
  readonly containers: { readonly containerId: string; readonly count: LikelyRange } | null;
  /** measured against expected: 1 is a lawn as its kind usually is */
  readonly ratio: LikelyRange;
  /** mowings the ratio was learnt from */
  readonly learntFrom: number;
  /** from the season's first day to its last */
  readonly weeks: readonly LawnWeek[];
  /** carried off so far this season; what nobody has decided about yet counts as carried off */
  readonly taken: TakenOff;
  /** carried off by the season's end if all that grows from now on is taken as well */
  readonly takenByEnd: TakenOff;
  readonly cost: {
    /** share of what grew that was carried off so far, 0-1 */
    readonly collectedShare: number;
    /** share of its yield that the lawn loses in the end if that goes on */
    readonly yieldLost: LikelyRange;
    /** share of a lawn's feed that leaving all clippings would save at first, in the long run */
    readonly feedSavedAtFirst: number;
    readonly feedSavedInTheLongRun: LikelyRange;
  };
}

/** Seasons imagined for the days ahead, to see how far apart they grow. */
const imaginedAhead = 20;

const scaled = ({ low, typical, high }: LikelyRange, factor: number): LikelyRange => ({
  low: low * factor,
  typical: typical * factor,
  high: high * factor,
});

/** Growth over days of which some lie ahead: the middle and how far imagined weathers part. */
function growthAhead(
  garden: Garden,
  lawn: Lawn,
  season: LawnSeason,
  from: DayNumber,
  to: DayNumber,
  today: DayNumber,
): Weighed {
  const known = growthBetween(season, from, Math.min(to, today));
  if (to <= today) return { median: known, spread: 0 };
  const first = Math.min(from, today);
  const sums = Array.from({ length: imaginedAhead }, (_unused, at) => {
    const one = lawnSeason(garden, lawn.grass, first, to, today, typicalSeed + at);
    return growthBetween(one, from, to);
  }).sort((one, other) => one - other);
  const middle = ((sums[imaginedAhead / 2 - 1] ?? 0) + (sums[imaginedAhead / 2] ?? 0)) / 2;
  if (!(middle > 0)) return { median: Math.max(0, middle), spread: 0 };
  const logs = sums.map((sum) => Math.log(Math.max(sum, middle / 100)));
  const mean = logs.reduce((sum, one) => sum + one, 0) / logs.length;
  const variance = logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (logs.length - 1);
  return { median: middle, spread: Math.sqrt(variance) };
}

/** The container amounts of clippings are counted in: the one used last, else one that was weighed, else the first. */
function usualContainer(garden: Garden): Container | null {
  const counted = garden.mowings
    .filter(({ amount }) => amount.quantity.kind === 'containers')
    .sort((one, other) => (one.date < other.date ? 1 : -1))
    .map(({ amount }) =>
      amount.quantity.kind === 'containers' ? amount.quantity.containerId : '',
    );
  return (
    garden.containers.find(({ id }) => id === counted[0]) ??
    garden.containers.find(({ weighed }) => weighed !== null) ??
    garden.containers[0] ??
    null
  );
}

const mineral = (row: Row, dry: Weighed, areaM2: number): LikelyRange =>
  likelyAround(
    (dry.median * 1000 * row.typical) / 100 / areaM2,
    joinedSpread(dry.spread, logSpreadOfRow(row)),
  );

/** Nitrogen, phosphorus, potassium in dry matter and nitrogen that went off. */
const takenOff = (lawn: Lawn, dry: Weighed, nitrogen: Weighed): TakenOff => ({
  dryKilograms: likelyAround(dry.median, dry.spread),
  nitrogen: likelyAround(nitrogen.median / lawn.areaM2, nitrogen.spread),
  phosphorus: mineral(clippingsMinerals.phosphorusPercent, dry, lawn.areaM2),
  potassium: mineral(clippingsMinerals.potassiumPercent, dry, lawn.areaM2),
});

/** The content of nitrogen is shared by all of a lawn's clippings, so its spread does not shrink with their number. */
const withContent = ({ median, spread }: Weighed, content: Row): Weighed => ({
  median,
  spread: joinedSpread(spread, logSpreadOfRow(content)),
});

/** How far a habit is departed from (assumed). */
const habitSpread = 0.25;

/** How many days lie between the mowings of a lawn: as was said of it, else as most people mow. */
export const mowingHabit = ({ mownEveryDays: days }: Pick<Lawn, 'mownEveryDays'>): Row =>
  days === undefined
    ? usualMowingDays
    : {
        ...usualMowingDays,
        low: days * (1 - habitSpread),
        typical: days,
        high: days * (1 + habitSpread),
        place: 'as was said of the lawn; a quarter either way, for rain and journeys, is ours',
        standing: 'measured',
      };

/**
 * What a lawn is expected to give on a day, what it gave, and what taking it costs.
 *
 * Expected: the yearly yield of its kind, spread over the year by warmth (growth potential, by
 * season of the grass) and water (a bucket under turf, FAO-56), then multiplied by the ratio that
 * logged mowings taught. Ranges (8 times in 10) join what is not known of the ratio, how far one
 * mowing lies from its like, and how far imagined weathers of the days ahead part. The lawn's soil
 * is the one most beds have; it is taken as not watered.
 *
 * @param day the day one means to mow, not before the last mowing
 * @param today last day whose weather and mowings are known; `day` unless said otherwise
 * @throws when the garden has no such lawn
 */
export function lawnOutlook(
  garden: Garden,
  lawnId: string,
  day: DayNumber,
  today: DayNumber = day,
): LawnOutlook {
  const lawn = garden.lawns.find(({ id }) => id === lawnId);
  if (!lawn) throw new Error(`No lawn ${lawnId}`);
  const startMonth = garden.garden.seasonStartMonth;
  const first = seasonStart(day, startMonth);
  const last = seasonEnd(day, startMonth);
  const season = lawnSeason(garden, lawn.grass, first, last, today, typicalSeed);
  const rounds = lawnRounds(garden, lawnId, first, Math.min(day, today));
  const lastRound = rounds.at(-1);
  const logged = lastRound
    ? Math.max(...lastRound.mowings.map(({ date }) => dayOf(date)))
    : first - 1;
  // nobody lets a lawn stand for months: where no mowing is written down it was mown all the same
  const usualDays = mowingHabit(lawn);
  const isSinceSupposed = growthBetween(season, logged + 1, day) > unloggedGrowth.typical;
  const since = isSinceSupposed ? Math.max(logged, day - Math.round(usualDays.typical)) : logged;

  const known = calibrationOf(garden, lawn, season, rounds, day);
  const ratio = Math.exp(known.logRatio);
  const growth = growthAhead(garden, lawn, season, since + 1, day, today);
  const expected = expectedKilograms(garden, lawn, day, growth.median) * ratio;
  const spread = joinedSpread(
    known.spread,
    mowingScatter,
    growth.spread,
    isSinceSupposed ? logSpreadOfRow(usualDays) : 0,
  );

  const kind = lawnKindOn(garden, lawn, Math.min(day, today + 1));
  const material = clippingsOfKind(garden, lawn, kind);
  const content = material.row.nitrogenPercent;
  const dryKilograms = likelyAround(expected, spread);
  const justCut = { condition: 'just cut', wetness: 'dry' } as const;
  const quantity = { kind: 'mass', kilograms: 1 } as const;
  const perKilogram = likelyLot(
    lotInputOf(garden, { quantity, certainty: 'plain' }, material, justCut, null),
  );
  const of = (perDry: number, row?: Row): LikelyRange =>
    likelyAround(expected * perDry, joinedSpread(spread, row ? logSpreadOfRow(row) : 0));

  const growthToEnd = growthBetween(season, day + 1, last);
  const toEnd: Weighed = {
    median: expectedKilograms(garden, lawn, day, growth.median + growthToEnd) * ratio,
    spread: joinedSpread(known.spread, growth.spread),
  };
  const dry = sumOf(rounds, 'taken');
  const nitrogen = sumOf(rounds, 'nitrogenTaken');
  const gramsPerDry = 1000 * material.nitrogen;
  const soFar = expectedKilograms(garden, lawn, day, growthBetween(season, first, logged)) * ratio;
  const collectedShare = soFar > 0 ? Math.min(1, dry.median / soFar) : 0;
  return {
    lawnId,
    day,
    since,
    wasMown: lastRound !== undefined,
    isSinceSupposed,
    usualDays,
    kind,
    waterShare: lawnWaterShare(garden, lawn.grass, Math.min(day, today + 1)),
    dryKilograms,
    freshKilograms: of(perKilogram.freshKilograms / perKilogram.dryKilograms),
    litres: of(perKilogram.litres / perKilogram.dryKilograms, material.row.densityKgPerM3),
    nitrogenGrams: of(gramsPerDry, content),
    containers: containersOf(garden, material, expected, spread),
    ratio: likelyAround(ratio, known.spread),
    learntFrom: known.mowings,
    weeks: weeksOf(garden, lawn, season, rounds, { first, last, day, ratio, spread: known.spread }),
    taken: takenOff(lawn, dry, withContent(nitrogen, content)),
    takenByEnd: takenOff(
      lawn,
      joined(dry, toEnd),
      withContent(
        joined(nitrogen, { median: toEnd.median * gramsPerDry, spread: toEnd.spread }),
        content,
      ),
    ),
    cost: {
      collectedShare,
      yieldLost: {
        low: collectedShare * fullLoss(leavingClippings.yieldRaised.low),
        typical: collectedShare * fullLoss(leavingClippings.yieldRaised.typical),
        high: collectedShare * fullLoss(leavingClippings.yieldRaised.high),
      },
      feedSavedAtFirst: leavingClippings.feedSavedAtFirst.typical,
      feedSavedInTheLongRun: leavingClippings.feedSavedInTheLongRun,
    },
  };
}

/** Two amounts that were reckoned apart. */
function joined(one: Weighed, other: Weighed): Weighed {
  const median = one.median + other.median;
  const spread = joinedSpread(one.spread * one.median, other.spread * other.median);
  return { median, spread: median > 0 ? spread / median : 0 };
}

function containersOf(
  garden: Garden,
  material: MaterialValues,
  expected: number,
  spread: number,
): LawnOutlook['containers'] {
  const container = usualContainer(garden);
  if (!container) return null;
  const one = likelyLot(
    lotInputOf(
      garden,
      {
        quantity: { kind: 'containers', count: 1, containerId: container.id },
        certainty: 'plain',
      },
      material,
      { condition: 'just cut', wetness: 'dry' },
      null,
    ),
  );
  if (!(one.dryKilograms > 0)) return null;
  // a bag that was weighed is off by how full it is, one that was not by how dense the stuff lies
  const own = container.weighed ? fullness : material.row.densityKgPerM3;
  return {
    containerId: container.id,
    count: likelyAround(expected / one.dryKilograms, joinedSpread(spread, logSpreadOfRow(own))),
  };
}

const daysOfWeek = 7;

function weeksOf(
  garden: Garden,
  lawn: Lawn,
  season: LawnSeason,
  rounds: readonly LawnRound[],
  at: {
    readonly first: DayNumber;
    readonly last: DayNumber;
    readonly day: DayNumber;
    readonly ratio: number;
    readonly spread: number;
  },
): LawnWeek[] {
  const weeks: LawnWeek[] = [];
  for (let from = at.first; from <= at.last; from += daysOfWeek) {
    const growth = growthBetween(season, from, Math.min(from + daysOfWeek - 1, at.last));
    const grams = (1000 * expectedKilograms(garden, lawn, at.day, growth) * at.ratio) / lawn.areaM2;
    const own = rounds.filter(({ day }) => day >= from && day < from + daysOfWeek);
    weeks.push({
      from,
      expected: scaled(likelyAround(1, at.spread), grams),
      mown: own.length === 0 ? null : (1000 * sumOf(own, 'dry').median) / lawn.areaM2,
    });
  }
  return weeks;
}
