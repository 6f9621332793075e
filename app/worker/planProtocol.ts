import type { PlanAnswer, PlanTrouble } from '../core/plan/answer';
import type { PlanQuestion } from '../core/plan/question';
import type { Result } from '../core/result';

/** Over the wire to the plan's worker. `warm`: load the solver, nothing else. */
export type PlanAsked =
  | { readonly kind: 'warm' }
  | { readonly kind: 'plan'; readonly id: number; readonly question: PlanQuestion };

/** How far a plan is: how many of its steps are done. */
export interface PlanProgress {
  readonly done: number;
  readonly of: number;
}

export type PlanReplied =
  | { readonly kind: 'progress'; readonly id: number; readonly progress: PlanProgress }
  | {
      readonly kind: 'answered';
      readonly id: number;
      readonly answer: Result<PlanAnswer, PlanTrouble>;
    }
  /** a broken promise of ours */
  | { readonly kind: 'broken'; readonly id: number; readonly reason: string };
