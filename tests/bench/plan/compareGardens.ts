import type { Solver } from '../../../app/core/plan/linearProgramme';
import { planGarden } from './planGarden';
import {
  allOnNearest,
  evenly,
  planned,
  playSeason,
  scoreOf,
  totalScore,
  yieldsOf,
  type BedScore,
} from './playSeason';

export interface Compared {
  readonly seed: number;
  readonly beds: number;
  readonly nothing: number;
  readonly plan: number;
  readonly nearest: number;
  readonly evenly: number;
  /** where the plan loses most against the better of the two; empty where it wins */
  readonly why: string;
}

const parts = ['short', 'over', 'ground'] as const;

/** The bed and the part of the distance in which the plan is worst against another. */
function worstAgainst(plan: readonly BedScore[], other: readonly BedScore[]): string {
  let worst = '';
  let most = 0;
  plan.forEach((bed, at) => {
    for (const part of parts) {
      const more = bed[part] - (other[at]?.[part] ?? 0);
      if (more > most) {
        most = more;
        worst = `${bed.bedId}, ${part}: ${more.toFixed(0)} g N more`;
      }
    }
  });
  return worst;
}

/** Plays one garden's season by the plan and by the two rules of thumb. */
export function compareGarden(seed: number, solve: Solver): Compared {
  const start = planGarden(seed);
  const yields = yieldsOf(start);
  const of = (garden: typeof start.garden): readonly BedScore[] =>
    scoreOf(start, garden, start.garden);
  const plan = of(playSeason(start, yields, planned(solve)));
  const nearest = of(playSeason(start, yields, allOnNearest, 1));
  const spread = of(playSeason(start, yields, evenly, 1));
  const better = totalScore(nearest) < totalScore(spread) ? nearest : spread;
  return {
    seed,
    beds: start.garden.beds.length,
    nothing: totalScore(of(start.garden)),
    plan: totalScore(plan),
    nearest: totalScore(nearest),
    evenly: totalScore(spread),
    why: totalScore(plan) < totalScore(better) ? '' : worstAgainst(plan, better),
  };
}
