import { useCallback, useEffect, useRef } from 'react';
import type { DaySpan } from '../../charts/season/data';
import { seasonEnd } from '../../core/days';
import {
  comingRangesDoor,
  type ComingRanges,
  type ComingRangesDoor,
} from '../../store/comingRanges';
import type { ComingSeason } from '../../store/nextSeasonSlice';
import { useGarden, useMowings, useMowingsStore } from '../store';
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

/** Its ranges, and what stops imagining them or lets it go on. */
export interface UsedComingRanges extends Pick<ComingRangesDoor, 'stop' | 'goOn'> {
  /** null: this season is not the coming one */
  readonly ranges: ComingRanges | null;
}

/** The coming season's ranges, imagined while it is the one shown. */
export function useComingRanges(span: DaySpan): UsedComingRanges {
  const isComing = useIsComing(span);
  const store = useMowingsStore();
  const open = useRef<ComingRangesDoor | null>(null);
  useEffect(() => {
    if (!isComing) return undefined;
    const door = store.getState().openDoor(comingRangesDoor);
    open.current = door;
    return () => {
      open.current = null;
      door.close();
    };
  }, [isComing, store]);
  const stop = useCallback(() => open.current?.stop(), []);
  const goOn = useCallback(() => open.current?.goOn(), []);
  return { ranges: useMowings((state) => state.comingRanges), stop, goOn };
}
