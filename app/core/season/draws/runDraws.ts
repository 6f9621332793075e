import type { DayNumber } from '../../days';
import { mgPerKgFromGramsPerM2 } from '../../units';
import { flowIndex } from '../flows';
import type { BedSeason } from '../input';
import type { Limits } from '../limits';
import type { SeasonResult } from '../result';
import { runSeason } from '../season';
import { bedVerdict } from '../state';
import { nitrogenStates, type NitrogenState } from '../verdict';
import { bandOf, effectiveCount, type Band } from './bands';
import { drawnSeason, makeDraws } from './drawnSeason';
import { drawnWeather, type WeatherSource } from './drawnWeather';
import type { SeasonSpread } from './spread';

/** A nitrate test of 0-30 cm that weighs the draws from its day on. */
export interface TestedNitrate {
  readonly day: DayNumber;
  readonly mgPerKg: number;
  /** standard deviation of the test as a share of its value */
  readonly spread: number;
}

export interface DrawsQuestion {
  readonly input: BedSeason;
  readonly spread: SeasonSpread;
  readonly weather: WeatherSource;
  readonly tests: readonly TestedNitrate[];
  readonly seed: number;
  readonly count: number;
}

/** A bed over all its imagined seasons. Bands are 10-50-90; odds are shares of the weight. */
export interface DrawsAnswer {
  readonly bedId: string;
  readonly count: number;
  /** what the weighted draws are worth; well under `count` after a test that few draws foresaw */
  readonly effectiveCount: number;
  readonly states: Readonly<Record<NitrogenState, number>>;
  readonly ratio: Band | null;
  readonly needMet: Band;
  readonly fixed: Band;
  readonly leached: Band;
  /** nitrate of 0-30 cm [mg/kg], one band per `nitrateDays` */
  readonly nitrateDays: readonly DayNumber[];
  readonly nitrate: readonly Band[];
  /** the three quantities whose draws move the ratio (or need met) most, with rank correlation */
  readonly mattersMost: readonly { readonly name: string; readonly correlation: number }[];
}

const washedOut = flowIndex('mineralLower', 'leached', 'washed out');
const leachedIn = (result: SeasonResult): number =>
  result.flows[washedOut]!.reduce((sum, grams) => sum + grams, 0);

/** Least [mg/kg] a reading may be off, so that a test of 0 mg/kg does not shut all draws out. */
const leastDeviation = 1.5;

/**
 * Runs a bed in many imagined seasons: every quantity of its spread and the weather to come drawn
 * together, the same seed giving the same answer for ever.
 *
 * A nitrate test weighs each draw by how near it came, as a normal error of the test's own spread
 * (at least 1.5 mg/kg): what was measured outranks what was reckoned, from its day on and through
 * the quantities that the fitting draws share.
 *
 * @param isStopped asked between draws, for a question that nobody waits for any more
 * @returns null when it was stopped
 * @source readings of ranges and re-weighting: model section 10 (the error model is assumed)
 */
export function runDraws(
  { input, spread, weather, tests, seed, count }: DrawsQuestion,
  limits: Limits,
  isStopped: () => boolean = () => false,
): DrawsAnswer | null {
  const draws = makeDraws(seed, count);
  const weights = new Float64Array(count).fill(1);
  const states: NitrogenState[] = [];
  const ratios = new Float64Array(count);
  const needMet = new Float64Array(count);
  const fixed = new Float64Array(count);
  const leached = new Float64Array(count);
  const nitrateDays: DayNumber[] = [];
  for (let day = input.firstDay; day <= input.lastDay; day += 7) nitrateDays.push(day);
  const nitrate = nitrateDays.map(() => new Float64Array(count));
  let hasRatio = true;

  for (let draw = 0; draw < count; draw++) {
    if (isStopped()) return null;
    const season = drawnSeason(
      input,
      spread,
      drawnWeather(input, weather, seed, draw),
      draws,
      draw,
    );
    const result = runSeason(season);
    const verdict = bedVerdict(season, result, input.today, limits);
    states.push(verdict.state);
    hasRatio &&= verdict.ratio !== null;
    ratios[draw] = verdict.ratio ?? 0;
    const demand = result.plantings.reduce((sum, planting) => sum + planting.demand, 0);
    const met = result.plantings.reduce(
      (sum, planting) => sum + planting.demand * planting.demandMet,
      0,
    );
    needMet[draw] = demand > 0 ? met / demand : 1;
    fixed[draw] = result.plantings.reduce((sum, planting) => sum + planting.fixed, 0);
    leached[draw] = leachedIn(result);
    const perGram = mgPerKgFromGramsPerM2(1, season.soil.bulkDensityKgPerL, 30);
    nitrateDays.forEach((day, at) => {
      nitrate[at]![draw] = result.pools.mineralTop[day - input.firstDay]! * perGram;
    });
    for (const test of tests) {
      if (test.day < input.firstDay || test.day > input.today) continue;
      const reckoned = result.pools.mineralTop[test.day - input.firstDay]! * perGram;
      const deviation = Math.max(leastDeviation, test.spread * test.mgPerKg);
      const away = (reckoned - test.mgPerKg) / deviation;
      weights[draw]! *= Math.exp(-0.5 * away * away);
    }
  }
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  // No draw came near a test: better all of them, said to be worth nothing, than one by chance.
  if (!(total > 0)) weights.fill(1);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const odds = Object.fromEntries(
    nitrogenStates.map((state) => [
      state,
      states.reduce((sum, one, draw) => (one === state ? sum + weights[draw]! : sum), 0) / all,
    ]),
  ) as Record<NitrogenState, number>;
  return {
    bedId: input.bedId,
    count,
    effectiveCount: total > 0 ? effectiveCount(weights) : 0,
    states: odds,
    ratio: hasRatio ? bandOf(ratios, weights) : null,
    needMet: bandOf(needMet, weights),
    fixed: bandOf(fixed, weights),
    leached: bandOf(leached, weights),
    nitrateDays,
    nitrate: nitrate.map((values) => bandOf(values, weights)),
    mattersMost: ranking(spread, draws, hasRatio ? ratios : needMet),
  };
}

/** Rank of each draw among all, for a correlation that one wild draw cannot make. */
function ranks(values: Float64Array): Float64Array {
  const order = Array.from(values.keys()).sort((one, other) => values[one]! - values[other]!);
  const rank = new Float64Array(values.length);
  order.forEach((draw, place) => (rank[draw] = place));
  return rank;
}

function correlation(one: Float64Array, other: Float64Array): number {
  const middle = (one.length - 1) / 2;
  let both = 0;
  let square = 0;
  for (let at = 0; at < one.length; at++) {
    both += (one[at]! - middle) * (other[at]! - middle);
    square += (one[at]! - middle) ** 2;
  }
  return square > 0 ? both / square : 0;
}

/** Spearman's rank correlation of each drawn quantity with the outcome; the three largest. */
function ranking(
  spread: SeasonSpread,
  draws: ReturnType<typeof makeDraws>,
  outcome: Float64Array,
): DrawsAnswer['mattersMost'] {
  const quantities = [
    ...spread.coefficients,
    ...Object.values(spread.layers).flatMap(({ mass, nitrogen }) => [mass, nitrogen]),
    ...Object.values(spread.needs),
    ...(spread.organicMatter ? [spread.organicMatter] : []),
  ];
  const byName = new Map(quantities.map((quantity) => [quantity.name, quantity]));
  const outcomeRanks = ranks(outcome);
  return [...byName.values()]
    .filter((quantity) => quantity.high > quantity.low)
    .map((quantity) => ({
      name: quantity.name,
      correlation: correlation(
        ranks(Float64Array.from({ length: draws.count }, (_, draw) => draws.value(quantity, draw))),
        outcomeRanks,
      ),
    }))
    .sort((one, other) => Math.abs(other.correlation) - Math.abs(one.correlation))
    .slice(0, 3);
}
