import { useEffect } from 'react';
import type { DaySpan } from '../../charts/season/data';
import { seasonEnd } from '../../core/days';
import type { ComingSeason } from '../../store/nextSeasonSlice';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';

/** Whether a season is the one after that which holds today. */
export function useIsComing(span: DaySpan): boolean {
  const { seasonStartMonth } = useGarden().garden;
  return span.from === seasonEnd(useToday(), seasonStartMonth) + 1;
}

/** The coming season's sums, asked for while it is the one shown. */
export function useComingSeason(span: DaySpan): ComingSeason {
  const isComing = useIsComing(span);
  const want = useMowings((state) => state.wantComingSeason);
  const leave = useMowings((state) => state.leaveComingSeason);
  useEffect(() => {
    if (!isComing) return undefined;
    want();
    return leave;
  }, [isComing, want, leave]);
  return useMowings((state) => state.comingSeason);
}
