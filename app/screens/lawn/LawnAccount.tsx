import { useMemo } from 'react';
import { lawnOutlook } from '../../document/lawnOutlook';
import type { Lawn } from '../../document/schema';
import {
  lawnCostSentence,
  lawnRatioSentence,
  lawnTakenSentence,
} from '../../words/lawnOutlookWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';

/** What was learnt of a lawn from its mowings, what went off it this season, and what that costs it. */
export function LawnAccount({ lawn }: { readonly lawn: Lawn }) {
  const garden = useGarden();
  const { units } = useShown();
  const today = useToday();
  const outlook = useMemo(() => lawnOutlook(garden, lawn.id, today), [garden, lawn.id, today]);
  return (
    <div className="lawn-account">
      <p>{lawnRatioSentence(outlook)}</p>
      <p>{lawnTakenSentence(outlook.taken, units.nitrogenPerArea)}</p>
      <p>{lawnCostSentence(outlook)}</p>
    </div>
  );
}
