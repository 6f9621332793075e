import type { BedLeftOut, PlanAnswer, PlanLine } from '../../../core/plan/answer';
import { useMowings } from '../../store';

/** What the week's plan has for a bed: a line, or why it gets nothing; null as long as there is no plan. */
export type PlanOfBed =
  | { readonly kind: 'line'; readonly line: PlanLine }
  | { readonly kind: 'left out'; readonly left: BedLeftOut };

export function planOfBed(
  answer: Pick<PlanAnswer, 'lines' | 'leftOut'> | null,
  bedId: string,
): PlanOfBed | null {
  const line = answer?.lines.find((one) => one.bedId === bedId);
  if (line) return { kind: 'line', line };
  const left = answer?.leftOut.find((one) => one.bedId === bedId);
  return left ? { kind: 'left out', left } : null;
}

/**
 * Whether laying something by hand may be offered for a bed. A line of the plan is done there, and
 * where the plan says that it does no good no room is offered; a walk too many is nobody's harm.
 */
export const mayOffer = (plan: PlanOfBed | null): boolean =>
  plan === null ||
  (plan.kind === 'left out' &&
    (plan.left.reason.kind === 'beds a day' || plan.left.reason.kind === 'nothing on hand'));

export const usePlanOfBed = (bedId: string): PlanOfBed | null => {
  const answer = useMowings((state) => state.plan.answer);
  return planOfBed(answer, bedId);
};
