import { mgPerKgFromGramsPerM2 } from '../../units';
import type { BedSeason } from '../input';
import type { SeasonWatch } from '../watchSeason';
import { bedSeen } from './bedSeen';
import type { DrawsQuestion, TestedNitrate } from './runDraws';
import { countedSigns, signLikelihood, type Sign, type SignCoefficients } from './signs';

/** Least [mg/kg] a reading may be off, so that a test of 0 mg/kg does not shut all draws out. */
const leastDeviation = 1.5;

/** How well a draw fits what was measured: the product of its tests' normal errors. */
function testWeight(
  tests: readonly TestedNitrate[],
  input: BedSeason,
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

/** What the draws of a bed are weighed by. */
export interface DrawWeigher {
  /** days of the run of which a watch must keep what could be seen */
  readonly lookDays: readonly number[];
  /** of a draw that was run; above 0 unless a test is out of all reach */
  weight(input: BedSeason, watch: SeasonWatch): number;
}

/**
 * A nitrate test weighs each draw by how near it came, as a normal error of the test's own spread
 * (at least 1.5 mg/kg): what was measured outranks what was reckoned, from its day on and through
 * the quantities that the fitting draws share. What was seen on a bed weighs each draw by
 * `signLikelihood`, and far less.
 *
 * @source re-weighting: model section 10 (the error model is assumed)
 */
export function drawWeigher({ input: bed, tests, signs: seen }: DrawsQuestion): DrawWeigher {
  const { firstDay, today } = bed;
  const perGram = mgPerKgFromGramsPerM2(1, bed.soil.bulkDensityKgPerL, 30);
  const signs = seen ? countedSigns(seen.looks, firstDay, today, seen.coefficients) : [];
  return {
    lookDays: [...new Set(signs.map(({ look }) => look.day - firstDay))],
    weight: (input, watch) =>
      testWeight(tests, input, watch, perGram) *
      (seen ? signWeight(signs, seen.coefficients, input, watch) : 1),
  };
}
