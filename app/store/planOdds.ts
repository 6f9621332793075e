import type { DayNumber } from '../core/days';
import type { PlanAnswer, PlanLine } from '../core/plan/answer';
import { oddsOf } from '../core/plan/pairedDraws';
import { planOddsQuestions } from '../document/planOdds';
import type { Garden } from '../document/schema';
import { limits } from '../tables/thresholds';
import type { Engine } from '../worker/protocol';
import { quickDraws } from './surroundings';

/**
 * Counts for every line of a plan in how many imagined seasons its bed is better with it.
 *
 * @param signal of a plan that is of no use any more
 * @returns the lines with their odds; null where they could not be had: the plan stands without
 */
export async function linesWithOdds(
  engine: Engine,
  garden: Garden,
  today: DayNumber,
  plan: PlanAnswer,
  signal: AbortSignal,
): Promise<readonly PlanLine[] | null> {
  if (plan.lines.length === 0) return null;
  const lines = planOddsQuestions(garden, today, plan, quickDraws);
  const settled = await engine.ask<'plan draws'>({ kind: 'plan draws', lines, limits }, { signal });
  if (settled.state !== 'answered' || signal.aborted) return null;
  return plan.lines.map((line, at) => {
    const answer = settled.answer[at];
    return answer ? { ...line, odds: oddsOf(answer) } : line;
  });
}
