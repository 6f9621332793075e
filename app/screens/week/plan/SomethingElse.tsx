import { useState } from 'react';
import { Dialog } from '../../../controls/Dialog';
import type { PlanLine } from '../../../core/plan/answer';
import type { Garden } from '../../../document/schema';
import { planSays } from '../../../words/planSays';
import { useGarden } from '../../store';
import { LayForm } from '../LayForm';
import { newRow, type LayRow } from '../layRows';
import { planAmount } from './planDrafts';

/** A plan's lines as a person would have typed them; what is not cut yet is left out. */
export const rowsOfPlan = (garden: Garden, lines: readonly PlanLine[]): LayRow[] =>
  lines.flatMap(({ bedId, layers }) =>
    layers.flatMap((layer): LayRow[] => {
      const { ref, condition, placement } = layer;
      if (ref.source === 'coming') return [];
      const what = ref.source === 'mowing' ? `mowing:${ref.mowingId}` : `stock:${ref.stockId}`;
      const amount = planAmount(garden, layer).text;
      return [{ ...newRow(what, bedId), amount, condition, placement }];
    }),
  );

/** What was laid instead of what the plan says: its lines stand there and are changed. */
export function SomethingElse(props: {
  readonly title: string;
  readonly lines: readonly PlanLine[];
  readonly onClose: () => void;
  readonly onLaid: () => void;
}) {
  const garden = useGarden();
  const [rows] = useState(() => rowsOfPlan(garden, props.lines));
  return (
    <Dialog title={props.title} wide onClose={props.onClose}>
      <p className="small soft">{planSays.otherwise}</p>
      <LayForm
        what={null}
        bedId={null}
        filled={rows}
        insteadOn={props.lines.map(({ bedId }) => bedId)}
        onLaid={props.onLaid}
        onCancel={props.onClose}
      />
    </Dialog>
  );
}
