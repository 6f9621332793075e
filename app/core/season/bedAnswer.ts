import { bedCautions, layerCautions, type CautionFacts } from './cautions/cautions';
import type { BedSeason } from './input';
import type { Limits } from './limits';
import type { SeasonResult } from './result';
import { runSeason } from './season';
import { bedVerdict } from './state';
import type { BedVerdict, Caution } from './verdict';

/** A bed and what its cautions need besides. */
export interface BedQuestion {
  readonly input: BedSeason;
  /** the same bed as it was known a week ago, so that its state does not flicker; null when it was not */
  readonly weekAgo: BedSeason | null;
  readonly facts: CautionFacts;
}

/** A bed run at the coefficients of its input, judged on its `today`. */
export interface BedAnswer {
  readonly bedId: string;
  readonly input: BedSeason;
  readonly season: SeasonResult;
  readonly verdict: BedVerdict;
  /** bed-wide and per layer, strongest first */
  readonly cautions: readonly Caution[];
}

/** The same bed without and with layers that are only proposed. */
export interface ProposalQuestion {
  readonly before: BedQuestion;
  readonly after: BedQuestion;
  readonly layerIds: readonly string[];
}

export interface ProposalAnswer {
  readonly bedId: string;
  readonly before: BedAnswer;
  readonly after: BedAnswer;
  /** of the proposed layers alone */
  readonly cautions: readonly Caution[];
  readonly layerIds: readonly string[];
}

/**
 * Runs a bed and says what to make of it: the one way for the window and the command line.
 *
 * The state holds to last week's by the margins of `bedVerdict`. Last week's is judged without a
 * state before it, so the same garden always gives the same answer.
 *
 * @throws on a broken promise of ours only (`runSeason`, `bedVerdict`)
 */
export function answerBed({ input, weekAgo, facts }: BedQuestion, limits: Limits): BedAnswer {
  const season = runSeason(input);
  const previous =
    weekAgo === null ? null : bedVerdict(weekAgo, runSeason(weekAgo), weekAgo.today, limits).state;
  const verdict = bedVerdict(input, season, input.today, limits, previous);
  const cautions = bedCautions({ input, result: season, verdict }, facts, limits);
  return { bedId: input.bedId, input, season, verdict, cautions };
}

/** What proposed layers would do to a bed, and what speaks against them. */
export function answerProposal(
  { before, after, layerIds }: ProposalQuestion,
  limits: Limits,
): ProposalAnswer {
  const without = answerBed(before, limits);
  const withLayers = answerBed(after, limits);
  const cautions = layerCautions(
    { input: without.input, result: without.season, verdict: without.verdict },
    { input: withLayers.input, result: withLayers.season, verdict: withLayers.verdict },
    layerIds,
    after.facts,
    limits,
  );
  return {
    bedId: before.input.bedId,
    before: without,
    after: withLayers,
    cautions,
    layerIds,
  };
}
