import { supplyBySource, type SupplySource, supplySources } from '../../core/season/ledger';
import type { DayNumber } from '../../core/days';
import type { SeasonResult } from '../../core/season/result';
import { mgPerKgFromGramsPerM2 } from '../../core/units';
import type { DaySpan } from './data';

/** The bands from the bottom up: what was ready on the first day shown, then by source. */
export const bandNames = ['start', ...supplySources] as const;
export type BandName = 'start' | SupplySource;

/**
 * What the season chart draws, added up from the first day shown. Every series has one value per
 * edge of a day: index 0 is the morning of `span.from`, index i the evening of day i. g N/m2 of bed.
 */
export interface SeasonSeries {
  readonly span: DaySpan;
  readonly bands: readonly { readonly name: BandName; readonly grams: Float64Array }[];
  /** all bands together */
  readonly supply: Float64Array;
  /** of it: washed out, lost from wet soil, held back by browns and by cover crops */
  readonly gone: Float64Array;
  /** supply without what is gone: the crops took it, or it is still ready */
  readonly usable: Float64Array;
  /** what the crops could use; cover crops are no part of it */
  readonly demand: Float64Array;
  /** what they got, from the soil and the air */
  readonly got: Float64Array;
  /** ready in 0-30 cm, not added up */
  readonly readyTop: Float64Array;
  readonly nitrateMgPerKg: Float64Array;
}

const depthCentimetres = 30;

/**
 * What is ready in 0-30 cm at each edge of the days of a span: the morning of the first, then every
 * evening. g N/m2 of bed; the days must be days of the run.
 */
export function readyTopOf(
  result: {
    readonly firstDay: DayNumber;
    readonly pools: Pick<SeasonResult['pools'], 'mineralTop'>;
    readonly start: Pick<SeasonResult['start'], 'mineralTop'>;
  },
  span: DaySpan,
): Float64Array {
  const first = span.from - result.firstDay;
  return Float64Array.from({ length: span.to - span.from + 2 }, (_value, edge) =>
    first + edge === 0 ? result.start.mineralTop : (result.pools.mineralTop[first + edge - 1] ?? 0),
  );
}

/**
 * Adds a bed's supply, demand and losses up over the days shown.
 *
 * @param span days of the run, both included; throws RangeError otherwise
 * @param coverCrops ids of plantings that are grown to be laid or dug in
 * @source sums of the run's flows; no measured constant enters
 */
export function seasonSeries(
  result: SeasonResult,
  span: DaySpan,
  bulkDensityKgPerL: number,
  coverCrops: readonly string[] = [],
): SeasonSeries {
  const first = span.from - result.firstDay;
  const count = span.to - span.from + 1;
  if (first < 0 || count < 1 || first + count > result.days)
    throw new RangeError(`Days ${span.from} to ${span.to} are not days of this run`);

  const addUp = (daily: (index: number) => number, from = 0): Float64Array => {
    const edges = new Float64Array(count + 1);
    edges[0] = from;
    for (let day = 0; day < count; day += 1)
      edges[day + 1] = (edges[day] ?? 0) + daily(first + day);
    return edges;
  };
  const pool = (name: 'mineralTop' | 'mineralLower', index: number): number =>
    index < 0 ? result.start[name] : (result.pools[name][index] ?? 0);

  const supply = supplyBySource(result);
  const readyAtStart = pool('mineralTop', first - 1) + pool('mineralLower', first - 1);
  const bands = bandNames.map((name) => ({
    name,
    grams:
      name === 'start'
        ? addUp(() => 0, readyAtStart)
        : addUp((index) => supply.bySource[name][index] ?? 0),
  }));
  const all = new Float64Array(count + 1);
  for (const band of bands)
    for (let edge = 0; edge <= count; edge += 1)
      all[edge] = (all[edge] ?? 0) + (band.grams[edge] ?? 0);

  const readyTop = readyTopOf(result, span);
  const covers = result.plantings.filter(({ id }) => coverCrops.includes(id));
  const crops = result.plantings.filter(({ id }) => !coverCrops.includes(id));
  const inCovers = (index: number): number =>
    covers.reduce(
      (sum, planting) =>
        sum + (planting.dailyUptake[index] ?? 0) + (planting.dailyFixed[index] ?? 0),
      0,
    );
  const gone = addUp(
    (index) => (supply.lost[index] ?? 0) + (supply.heldBack[index] ?? 0) + inCovers(index),
  );
  return {
    span,
    bands,
    supply: all,
    gone,
    usable: all.map((grams, edge) => grams - (gone[edge] ?? 0)),
    demand: addUp((index) =>
      crops.reduce((sum, planting) => sum + (planting.dailyNeed[index] ?? 0), 0),
    ),
    got: addUp(
      (index) => (supply.taken[index] ?? 0) + (supply.bySource.air[index] ?? 0) - inCovers(index),
    ),
    readyTop,
    nitrateMgPerKg: readyTop.map((grams) =>
      mgPerKgFromGramsPerM2(grams, bulkDensityKgPerL, depthCentimetres),
    ),
  };
}
