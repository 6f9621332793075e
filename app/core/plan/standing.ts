import type { DayNumber } from '../days';
import type { BedAnswer } from '../season/bedAnswer';
import { classLines } from '../season/excessLines';
import type { BedSeason, ExcessClass } from '../season/input';
import { type Limits } from '../season/limits';
import { plantingAccounts } from '../season/plantingAccount';
import type { SeasonResult } from '../season/result';
import { at } from '../season/seasonAccount';
import { bedVerdict } from '../season/state';
import type { BedVerdict } from '../season/verdict';
import { watchedOf, type WatchedSeason } from '../season/watchedSeason';
import type { BedStanding, Distance } from './answer';
import type { PlanWeights } from './question';
import { judgedDay, sharesOf, spellsOf, type Look, type Spell } from './spells';

/** The need a bed is held to and what a gram too much counts, from the bed as it is. */
export interface Aim {
  /** g N per m2 to clearing; of legumes the soil's share at the nitrate forecast without the plan */
  readonly need: number;
  readonly excess: number;
  /** ratio past which the class's caution line lies; null: legumes, cover crops, nothing planted */
  readonly ratioLine: number | null;
}

/** The mean of what a gram too much counts, by the need of what grows there. */
function excessWeight(
  parts: readonly { readonly excessClass: ExcessClass; readonly need: number }[],
  weights: PlanWeights,
): number {
  const need = parts.reduce((sum, part) => sum + part.need, 0);
  return need > 0
    ? parts.reduce((sum, part) => sum + part.need * weights.excess[part.excessClass], 0) / need
    : weights.excessEmpty;
}

/** What a bed is aimed at on a day, by its run without the plan. */
export function aimAt(
  input: BedSeason,
  run: SeasonResult | WatchedSeason,
  day: DayNumber,
  limits: Limits,
  weights: PlanWeights,
): Aim {
  const parts = plantingAccounts(input, run, day).map((account) => ({
    excessClass: account.planting.crop.excessClass,
    // of the run alone, as is the supply it is held against
    need: Math.max(0, account.needOfRun),
  }));
  return {
    need: parts.reduce((sum, part) => sum + part.need, 0),
    excess: excessWeight(parts, weights),
    ratioLine: classLines(parts, limits, 'room')?.lines.caution ?? null,
  };
}

/** What a bed is aimed at in one of the times it is judged in. */
export type SpellAim = Aim & Spell;

/** What a bed is aimed at in each time it is judged in, earliest first. */
export function aimsOf(
  { input, season }: Pick<BedAnswer, 'input' | 'season'>,
  looks: readonly Look[],
  limits: Limits,
  weights: PlanWeights,
): readonly SpellAim[] {
  const run = watchedOf(season);
  return spellsOf(input, looks).map((spell) => ({
    ...spell,
    ...aimAt(input, run, spell.judgedOn, limits, weights),
  }));
}

/** Of a bed on which nothing stands and nothing is to come. */
export const noAim = (weights: PlanWeights): Aim => ({
  need: 0,
  excess: weights.excessEmpty,
  ratioLine: null,
});

/** On hand and to come for all that stands on a day [g N/m2]. */
export const supplyOn = (
  input: BedSeason,
  run: SeasonResult | WatchedSeason,
  day: DayNumber,
): number =>
  plantingAccounts(input, run, day).reduce(
    (sum, { inCrop, inReach, release, tieUp }) => sum + inCrop + inReach + release - tieUp,
    0,
  );

/** Nitrogen part of a bed's distance [g N per m2 of bed]: too little, and too much by its weight. */
export const nitrogenDistance = (supply: number, aim: Aim, weights: PlanWeights): number =>
  Math.max(0, weights.lowShare * aim.need - supply) +
  aim.excess * Math.max(0, supply - weights.highShare * aim.need);

/** Numerator of the ratio behind a bed's state [g N/m2]. */
const supplyOf = (verdict: BedVerdict): number =>
  verdict.need > 0
    ? verdict.inCrop + verdict.inReach + verdict.expectedRelease - verdict.expectedTieUp
    : 0;

/** Verdict on the day a bed is judged: today, or the next start where nothing stands. */
export function judged({ input, season, verdict }: BedAnswer, limits: Limits): BedVerdict | null {
  const day = judgedDay(input);
  if (day === null) return null;
  return day === input.today ? verdict : bedVerdict(input, season, day, limits);
}

/** Share of the ground that lies bare, over the weeks that the looks stand for. */
function bareShare({ season }: BedAnswer, looks: readonly Look[]): number {
  const shares = sharesOf(looks);
  return looks.reduce(
    (sum, { day }, look) => sum + shares[look]! * (1 - at(season.coverFraction, season, day)),
    0,
  );
}

/**
 * Where a bed stands by the full model, held to the aims of the bed without the plan. Its distance is
 * the mean of model 11's over the weeks to the season's end: nitrogen counts while something stands.
 */
export function standingOf(
  answer: BedAnswer,
  aims: readonly SpellAim[],
  looks: readonly Look[],
  limits: Limits,
  weights: PlanWeights,
): BedStanding {
  const then = judged(answer, limits);
  const supply = then === null ? 0 : supplyOf(then);
  const { areaM2: area } = answer.input;
  const run = watchedOf(answer.season);
  const nitrogen = aims.reduce(
    (sum, aim, spell) =>
      sum +
      aim.share *
        nitrogenDistance(
          spell === 0 ? supply : supplyOn(answer.input, run, aim.judgedOn),
          aim,
          weights,
        ),
    0,
  );
  const distance: Distance = {
    nitrogen: area * nitrogen,
    ground: area * weights.groundGrams * bareShare(answer, looks),
  };
  const { verdict, season } = answer;
  return {
    state: verdict.state,
    coverState: verdict.coverState,
    ratio: verdict.ratio,
    need: aims[0]?.need ?? 0,
    supply,
    covered: at(season.coverFraction, season, answer.input.today),
    forecastMet: verdict.forecastMet,
    shortOn: verdict.state === 'short' ? verdict.turnsOn : null,
    room: verdict.room,
    fixed: season.plantings.reduce((sum, { fixed }) => sum + fixed, 0),
    distance,
  };
}

/** A bed's input with layers added. */
export const withLayers = (input: BedSeason, layers: BedSeason['layers']): BedSeason => ({
  ...input,
  layers: [...input.layers, ...layers],
});
