import { leftOutWords, planLayersWords } from '../../../words/planWords';
import { planSays } from '../../../words/planSays';
import { mayOffer, usePlanOfBed } from './planOfBed';
import { usePlanNames } from './usePlanNames';

/** What the week's plan says of a bed, where it lays something or has a reason against it. */
export function PlanOfBedLine({ bedId }: { readonly bedId: string }) {
  const plan = usePlanOfBed(bedId);
  const names = usePlanNames();
  if (plan?.kind === 'line')
    return <p className="small">{planSays.inPlan(planLayersWords(plan.line.layers, names))}</p>;
  // that a bed has enough its state says already
  if (plan === null || mayOffer(plan) || plan.left.reason.kind === 'enough') return null;
  return <p className="small">{planSays.notToday(leftOutWords(plan.left, names))}</p>;
}
