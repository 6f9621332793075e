import type { PlanAnswer, PlanTrouble } from '../core/plan/answer';
import type { GrassHeight, PlanWishes } from '../core/plan/question';
import type { PlanProgress } from '../worker/planProtocol';
import type { WorkState } from './contract';

/** The proposal for this week. */
export interface WeekPlan {
  readonly state: WorkState;
  /** the last good one stays while a newer is worked at */
  readonly answer: PlanAnswer | null;
  /** the garden, the day or the wishes are others since `answer` was made */
  readonly isBehind: boolean;
  /** what kept a plan from being made at all; null where there is one */
  readonly trouble: PlanTrouble | null;
  /** why it failed, in the engine's words, for a "why" line */
  readonly reason: string | null;
  readonly progress: PlanProgress | null;
  /** by `stopPlan`; until `resumePlan` none is made */
  readonly isStopped: boolean;
}

export interface PlanSlice {
  readonly plan: WeekPlan;
  /** forgotten with the garden; in no file and in no history */
  readonly planWishes: PlanWishes;
  /** a place that shows the plan is open: it is made, and made anew after every change */
  wantPlan(): void;
  /** that place was left: what is under way is stopped, what was made stays until the garden changes */
  leavePlan(): void;
  /** stops what is under way; no change and no visit starts it again until `resumePlan` */
  stopPlan(): void;
  /** the person asked for it: after a stop, a failure, or sooner than it would come by itself */
  resumePlan(): void;
  /** "just so much of this" (or, with no source, of anything); null takes the pin out */
  pinPlan(bedId: string, sourceId: string | null, litres: number | null): void;
  /** null: as many beds as it takes */
  setBedsADay(beds: number | null): void;
  setGrassHeight(lawnId: string, height: GrassHeight): void;
}
