import type { DayNumber } from '../../days';
import { mgPerKgFromGramsPerM2 } from '../../units';
import type { BedSeason, FoundOnGround } from '../input';
import type { SeasonWatch } from '../seasonWatch';
import { bedSeen } from './bedSeen';
import type { DrawsQuestion } from './runDraws';
import { countedSigns, signLikelihood, type Look, type Sign, type SignCoefficients } from './signs';
import type { TestedNitrate } from './testedNitrate';

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

/** The tests and signs that a run is held against. */
interface Held {
  readonly tests: readonly TestedNitrate[];
  readonly signs: readonly Sign[];
  /** mg/kg of 0-30 cm for a gram on a m2 */
  readonly perGram: number;
}

const perGramOf = ({ soil }: BedSeason): number =>
  mgPerKgFromGramsPerM2(1, soil.bulkDensityKgPerL, 30);

/**
 * What was found on the grounds of a bed, by ground. Of two looks for one thing soon after each
 * other the later counts, though the first was at the ground and the second at the bed made of it.
 */
function heldOfGrounds(
  bed: BedSeason,
  later: readonly Look[],
  today: DayNumber,
  coefficients: SignCoefficients | undefined,
  held = new Map<FoundOnGround, Held>(),
): ReadonlyMap<FoundOnGround, Held> {
  for (const { input, found } of bed.ground ?? []) {
    const looks = [...(found?.looks ?? []), ...later];
    if (found)
      held.set(found, {
        tests: found.tests,
        signs: coefficients
          ? countedSigns(looks, input.firstDay, today, coefficients).filter(({ look }) =>
              found.looks.includes(look),
            )
          : [],
        perGram: perGramOf(input),
      });
    heldOfGrounds(input, looks, today, coefficients, held);
  }
  return held;
}

/**
 * A nitrate test weighs each draw by how near it came, as a normal error of the test's own spread
 * (at least 1.5 mg/kg): what was measured outranks what was reckoned, from its day on and through
 * the quantities that the fitting draws share. What was seen on a bed weighs each draw by
 * `signLikelihood`, and far less. What was found on ground that the bed was made of weighs it too,
 * by that ground's own days in the same draw.
 *
 * @source re-weighting: model section 10 (the error model is assumed)
 */
export function drawWeigher({ input: bed, tests, signs: seen }: DrawsQuestion): DrawWeigher {
  const { firstDay, today } = bed;
  const signs = seen ? countedSigns(seen.looks, firstDay, today, seen.coefficients) : [];
  const own: Held = { tests, signs, perGram: perGramOf(bed) };
  const ofGrounds = heldOfGrounds(bed, seen?.looks ?? [], today, seen?.coefficients);
  const weightBy = (held: Held, input: BedSeason, watch: SeasonWatch): number =>
    testWeight(held.tests, input, watch, held.perGram) *
    (seen ? signWeight(held.signs, seen.coefficients, input, watch) : 1);
  const weightOfGrounds = ({ ground }: BedSeason): number => {
    let weight = 1;
    for (const { input, found, watch } of ground ?? []) {
      const held = found && ofGrounds.get(found);
      if (held && watch) weight *= weightBy(held, input, watch);
      weight *= weightOfGrounds(input);
    }
    return weight;
  };
  return {
    lookDays: [...new Set(signs.map(({ look }) => look.day - firstDay))],
    weight: (input, watch) =>
      weightBy(own, input, watch) * (ofGrounds.size > 0 ? weightOfGrounds(input) : 1),
  };
}
