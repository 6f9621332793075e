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
import type { WatchedSeason } from '../season/watchedSeason';
import type { BedStanding, Distance } from './answer';
import { judgedDay } from './bedTrack';
import type { PlanWeights } from './question';

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
    need: Math.max(0, account.need),
  }));
  return {
    need: parts.reduce((sum, part) => sum + part.need, 0),
    excess: excessWeight(parts, weights),
    ratioLine: classLines(parts, limits, 'room')?.lines.caution ?? null,
  };
}

/** What a bed is aimed at on the day it is judged. */
export function aimOf({ input, season }: BedAnswer, limits: Limits, weights: PlanWeights): Aim {
  const day = judgedDay(input);
  return day === null
    ? { need: 0, excess: weights.excessEmpty, ratioLine: null }
    : aimAt(input, season, day, limits, weights);
}

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

/** Mean share of the ground that lies bare on the days of a plan. */
const bareShare = (answer: BedAnswer, days: readonly number[]): number =>
  days.reduce((sum, day) => sum + 1 - at(answer.season.coverFraction, answer.season, day), 0) /
  days.length;

/** Where a bed stands by the full model, held to the aim of the bed without the plan. */
export function standingOf(
  answer: BedAnswer,
  aim: Aim,
  days: readonly number[],
  limits: Limits,
  weights: PlanWeights,
): BedStanding {
  const then = judged(answer, limits);
  const supply = then === null ? 0 : supplyOf(then);
  const area = answer.input.areaM2;
  const distance: Distance = {
    nitrogen: area * nitrogenDistance(supply, aim, weights),
    ground: area * weights.groundGrams * bareShare(answer, days),
  };
  const { verdict, season } = answer;
  return {
    state: verdict.state,
    coverState: verdict.coverState,
    ratio: verdict.ratio,
    need: aim.need,
    supply,
    covered: at(season.coverFraction, season, days[0] ?? answer.input.today),
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
