import { useMemo } from 'react';
import { Figured } from '../../controls/Figured';
import { lawnOutlook } from '../../document/lawnOutlook';
import type { Lawn } from '../../document/schema';
import {
  lawnCostSentence,
  lawnRatioSentence,
  lawnTakenSentence,
} from '../../words/lawnAccountWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { costFigures, ratioFigures, takenFigures } from '../why/lawnWhys';
import { useToday } from '../useReadingContext';

/** What was learnt of a lawn from its mowings, what went off it this season, and what that costs it. */
export function LawnAccount({ lawn }: { readonly lawn: Lawn }) {
  const garden = useGarden();
  const { units } = useShown();
  const today = useToday();
  const outlook = useMemo(() => lawnOutlook(garden, lawn.id, today), [garden, lawn.id, today]);
  return (
    <div className="lawn-account">
      <Figured says={lawnRatioSentence(outlook)} figures={ratioFigures(outlook, lawn)} />
      <Figured
        says={lawnTakenSentence(outlook.taken, units.nitrogenPerArea)}
        figures={takenFigures(outlook, lawn, units.nitrogenPerArea)}
      />
      <Figured says={lawnCostSentence(outlook)} figures={costFigures(outlook)} />
    </div>
  );
}
