import type { DayNumber } from '../../days';
import { mgPerKgFromGramsPerM2 } from '../../units';
import { flowKinds } from '../flows';
import type { BedSeason } from '../input';
import type { Limits } from '../limits';
import { judgeNitrogen } from '../nitrogenState';
import { nitrogenStates, type NitrogenState } from '../verdict';
import { newWatch, watchSeason, type SeasonWatch } from '../watchSeason';
import { bandReader, effectiveCount, type Band } from './bands';
import { makeDraws, type Draws } from './columns';
import { drawnBed } from './drawnBed';
import { drawnPlan } from './drawnPlan';
import type { WeatherSource } from './drawnWeather';
import { imaginedMonths, type ImaginedMonths } from './imaginedMonths';
import { mattersMost, type Influence } from './mattersMost';
import { countedSigns, signLikelihood, type Look, type Sign, type SignCoefficients } from './signs';
import { bedSeen } from './bedSeen';
import type { SeasonSpread } from './spread';
import { weatherWriter } from './weatherWriter';

/** A nitrate test of 0-30 cm; on its day the draws are weighed by it, and keep their weights. */
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
  /** what was seen, smelt and felt; weighs the draws far less than a test */
  readonly signs?: {
    readonly looks: readonly Look[];
    readonly coefficients: SignCoefficients;
  };
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
  readonly mattersMost: readonly Influence[];
}

/** What the draws of a garden share from bed to bed. */
export interface SharedDraws {
  readonly draws: Draws;
  readonly months: ImaginedMonths;
}

/**
 * @returns what `question` shares with those of other beds of one garden: same seed, count, place,
 *   normals and spread of the weather
 */
export function sharedDraws({ input, weather, seed, count }: DrawsQuestion): SharedDraws {
  const months =
    weather.kind === 'generated'
      ? imaginedMonths(input.normals, weather.spread, input.latitudeDegrees, seed, count)
      : { write: () => undefined };
  return { draws: makeDraws(seed, count), months };
}

/** Draws under way, one `next()` at a time, so that whoever runs them can look up in between. */
export interface DrawsRun {
  readonly isDone: boolean;
  /** the days stepped so far, for those who count the work */
  readonly steps: number;
  next(): void;
  /** when it is done */
  answer(): DrawsAnswer;
}

/** Least [mg/kg] a reading may be off, so that a test of 0 mg/kg does not shut all draws out. */
const leastDeviation = 1.5;

/** How well a draw fits what was measured: the product of its tests' normal errors. */
function weightOf(
  tests: readonly TestedNitrate[],
  { input }: DrawsQuestion,
  watch: SeasonWatch,
  perGram: number,
): number {
  let weight = 1;
  for (const test of tests) {
    if (test.day < input.firstDay || test.day > input.today) continue;
    const reckoned = watch.pools.mineralTop[test.day - input.firstDay]! * perGram;
    const deviation = Math.max(leastDeviation, test.spread * test.mgPerKg);
    const away = (reckoned - test.mgPerKg) / deviation;
    weight *= Math.exp(-0.5 * away * away);
  }
  return weight;
}

/** How well a draw fits what was seen: the product of its signs' likelihoods. */
function signWeight(
  signs: readonly Sign[],
  coefficients: SignCoefficients,
  input: BedSeason,
  watch: SeasonWatch,
): number {
  let weight = 1;
  for (const { look, kind } of signs) {
    const bed = bedSeen(input, watch, look.day, coefficients);
    weight *= signLikelihood(look, kind, bed, coefficients);
  }
  return weight;
}

/** Share of all plantings' need that was met; 1 where nothing was wanted. */
function needMetIn({ plantings }: SeasonWatch): number {
  let demand = 0;
  let met = 0;
  for (const planting of plantings) {
    demand += planting.demand;
    met += planting.demand * planting.demandMet;
  }
  return demand > 0 ? met / demand : 1;
}

const fixedIn = ({ plantings }: SeasonWatch): number =>
  plantings.reduce((sum, planting) => sum + planting.fixed, 0);

/**
 * Runs a bed in many imagined seasons: every quantity of its spread and the weather to come drawn
 * together, the same seed giving the same answer for ever. A draw is the same day by day as a run
 * of `runSeason`, and keeps only what it is judged by.
 *
 * A nitrate test weighs each draw by how near it came, as a normal error of the test's own spread
 * (at least 1.5 mg/kg): what was measured outranks what was reckoned, from its day on and through
 * the quantities that the fitting draws share. What was seen on a bed weighs each draw by
 * `signLikelihood`, and far less.
 *
 * @param shared with other beds of the garden, so that what is common is made once
 * @source readings of ranges and re-weighting: model section 10 (the error model is assumed)
 */
export function startDraws(
  question: DrawsQuestion,
  limits: Limits,
  { draws, months }: SharedDraws = sharedDraws(question),
): DrawsRun {
  const { spread, weather, tests, count } = question;
  const { firstDay, lastDay, today } = question.input;
  const bed = drawnBed(question.input, spread, draws);
  const { input } = bed;
  const sky = weatherWriter(input, weather, months);
  const { plan, reorder } = drawnPlan(input, sky.plan);
  const signs = question.signs
    ? countedSigns(question.signs.looks, firstDay, today, question.signs.coefficients)
    : [];
  const lookDays = [...new Set(signs.map(({ look }) => look.day - firstDay))];
  const watch = newWatch(input, lookDays);
  const flows = new Float64Array(flowKinds.length);
  const perGram = mgPerKgFromGramsPerM2(1, input.soil.bulkDensityKgPerL, 30);

  const weights = new Float64Array(count).fill(1);
  const states: NitrogenState[] = [];
  const ratios = new Float64Array(count);
  const needMet = new Float64Array(count);
  const fixed = new Float64Array(count);
  const leached = new Float64Array(count);
  const nitrateDays: DayNumber[] = [];
  for (let day = firstDay; day <= lastDay; day += 7) nitrateDays.push(day);
  const nitrate = nitrateDays.map(() => new Float64Array(count));
  let hasRatio = true;
  let draw = 0;

  const next = (): void => {
    bed.write(draw);
    sky.write(draw);
    reorder();
    watchSeason(input, plan, watch, flows);
    const judged = judgeNitrogen(input, watch, today, limits);
    states.push(judged?.state ?? 'nothing planted');
    hasRatio &&= judged !== null;
    ratios[draw] = judged?.ratio ?? 0;
    needMet[draw] = needMetIn(watch);
    fixed[draw] = fixedIn(watch);
    leached[draw] = watch.leached;
    const { mineralTop } = watch.pools;
    for (let week = 0; week < nitrate.length; week++)
      nitrate[week]![draw] = mineralTop[7 * week]! * perGram;
    weights[draw] =
      weightOf(tests, question, watch, perGram) *
      (question.signs ? signWeight(signs, question.signs.coefficients, input, watch) : 1);
    draw += 1;
  };

  const answer = (): DrawsAnswer => {
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    // No draw came near a test: better all of them, said to be worth nothing, than one by chance.
    if (!(total > 0)) weights.fill(1);
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    const odds = Object.fromEntries(
      nitrogenStates.map((state) => [
        state,
        states.reduce((sum, one, at) => (one === state ? sum + weights[at]! : sum), 0) / all,
      ]),
    ) as Record<NitrogenState, number>;
    const bandOfDraws = bandReader(weights);
    return {
      bedId: input.bedId,
      count,
      effectiveCount: total > 0 ? effectiveCount(weights) : 0,
      states: odds,
      ratio: hasRatio ? bandOfDraws(ratios) : null,
      needMet: bandOfDraws(needMet),
      fixed: bandOfDraws(fixed),
      leached: bandOfDraws(leached),
      nitrateDays,
      nitrate: nitrate.map(bandOfDraws),
      mattersMost: mattersMost(spread, draws, hasRatio ? ratios : needMet),
    };
  };

  return {
    get isDone() {
      return draw >= count;
    },
    get steps() {
      return watch.steps;
    },
    next,
    answer,
  };
}

/**
 * `startDraws` to the end.
 *
 * @param isStopped asked between draws, for a question that nobody waits for any more
 * @returns null when it was stopped
 */
export function runDraws(
  question: DrawsQuestion,
  limits: Limits,
  isStopped: () => boolean = () => false,
  shared?: SharedDraws,
): DrawsAnswer | null {
  const run = startDraws(question, limits, shared);
  while (!run.isDone) {
    if (isStopped()) return null;
    run.next();
  }
  return run.answer();
}
