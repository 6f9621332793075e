import { Figured } from '../../../controls/Figured';
import { leftOutWords, planLayersWords } from '../../../words/planWords';
import { planSays } from '../../../words/planSays';
import { mayOffer, usePlanOfBed } from './planOfBed';
import { layerFigures } from '../../why/planWhys';
import { usePlanNames } from './usePlanNames';

/** What the week's plan says of a bed, where it lays something or has a reason against it. */
export function PlanOfBedLine(props: {
  readonly bedId: string;
  /** it stands under a heading that says so */
  readonly isHeaded?: boolean;
}) {
  const { bedId, isHeaded = false } = props;
  const plan = usePlanOfBed(bedId);
  const names = usePlanNames();
  if (plan?.kind === 'line') {
    const layers = planLayersWords(plan.line.layers, names);
    return (
      <Figured
        className="small"
        says={isHeaded ? `${layers}.` : planSays.inPlan(layers)}
        figures={plan.line.layers.flatMap((layer) => layerFigures(layer, names).slice(0, 1))}
      />
    );
  }
  if (plan?.left.reason.kind === 'beds a day')
    return <p className="small">{planSays.otherDay(leftOutWords(plan.left, names))}</p>;
  // that a bed has enough its state says already
  if (plan === null || mayOffer(plan) || plan.left.reason.kind === 'enough') return null;
  return <p className="small">{planSays.notToday(leftOutWords(plan.left, names))}</p>;
}
