import { useMemo } from 'react';
import { planNamesOf } from '../../../document/planNames';
import type { PlanNames } from '../../../words/planWords';
import { useShown } from '../../shown';
import { useGarden } from '../../store';

/** Names and units of the open garden, for the sentences of its plan. */
export function usePlanNames(): PlanNames {
  const garden = useGarden();
  const { units } = useShown();
  return useMemo(() => planNamesOf(garden, units), [garden, units]);
}
