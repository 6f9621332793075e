import type { ProposalAnswer } from '../core/season/bedAnswer';
import { withOddsOfLayers } from '../core/season/cautions/cautions';
import { cautionFacts } from '../document/cautionFacts';
import { drawsQuestion, type DrawsOptions, type YearsOfGarden } from '../document/drawsQuestion';
import type { Application, Garden } from '../document/schema';
import { limits } from '../tables/thresholds';
import type { ProposalDrawsAnswer, QuestionOf } from '../worker/protocol';
import type { PreviewBed } from './contract';
import { quickDraws } from './surroundings';

/**
 * What is asked about the imagined seasons of beds with and without proposed applications.
 *
 * @param reckoned the same beds at likely values
 */
export function proposalDrawsOf(
  garden: Garden,
  applications: readonly Application[],
  today: number,
  reckoned: readonly ProposalAnswer[],
): QuestionOf<'proposal draws'> {
  const laidOut: YearsOfGarden = new Map();
  const beds = reckoned.map(({ bedId, before, after }) => {
    const extraApplications = applications.filter((application) => application.bedId === bedId);
    const ask = (options: DrawsOptions) =>
      drawsQuestion(garden, bedId, today, quickDraws, { laidOut, ...options });
    return {
      before: ask({ input: before.input }),
      after: ask({ input: after.input, extraApplications }),
    };
  });
  return { kind: 'proposal draws', beds, limits };
}

/** A bed of a preview with what its imagined seasons say. */
export function withDraws(
  garden: Garden,
  applications: readonly Application[],
  today: number,
  bed: PreviewBed,
  answers: readonly ProposalDrawsAnswer[],
): PreviewBed {
  const draws = answers.find(({ bedId }) => bedId === bed.bedId);
  if (!draws) return bed;
  const { input, season, verdict } = bed.after;
  const facts = cautionFacts(garden, bed.bedId, today, applications);
  const cautions = withOddsOfLayers(
    bed.cautions,
    { input, result: season, verdict },
    bed.layerIds,
    draws,
    facts,
    limits,
  );
  return { ...bed, cautions, draws: { before: draws.before, after: draws.after } };
}
