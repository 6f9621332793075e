import type { CarriedAnswer } from '../core/season/draws/carriedRelease';
import { bedSeason } from '../document/seasonInput';
import { carriedQuestions } from '../document/seasonsAccount';
import { limits } from '../tables/thresholds';
import type { WorkState } from './contract';
import type { Read, Write } from './gardenSlice';
import { resultsPauseMilliseconds, type Surroundings } from './surroundings';
import { todayDayOf } from './today';

/** What one bed's seasons leave to the next ones. */
export interface Carried {
  readonly bedId: string;
  readonly state: WorkState;
  readonly reason: string | null;
  /** the last good answer stays while a newer is worked at */
  readonly ends: readonly CarriedAnswer[];
}

export interface CarriedSlice {
  /** null while no page shows it */
  readonly carried: Carried | null;
  /** the page of a bed is open: reckoned, and reckoned anew after every change */
  wantCarried(bedId: string): void;
  /** that page was left */
  leaveCarried(): void;
}

export interface CarriedDoor {
  readonly slice: CarriedSlice;
  /** garden or day are other than before */
  changed(): void;
}

/** What a season leaves to the next takes many runs: asked for while it is shown, in a worker. */
export function carriedDoor(
  read: Read,
  write: Write,
  { engine, later, computerToday }: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): CarriedDoor {
  let callOff: (() => void) | null = null;

  const put = (bedId: string, changes: Partial<Carried>): void =>
    write(({ carried }) =>
      carried?.bedId === bedId ? { carried: { ...carried, ...changes } } : {},
    );

  const reckon = async (bedId: string): Promise<void> => {
    const { garden } = read();
    if (!garden?.beds.some(({ id }) => id === bedId)) return;
    try {
      const today = todayDayOf(read(), computerToday);
      const carried = carriedQuestions(garden, bedSeason(garden, bedId, today));
      const settled = await engine.ask<'carried'>({ kind: 'carried', carried, limits });
      if (settled.state === 'superseded' || read().garden !== garden) return;
      if (todayDayOf(read(), computerToday) !== today) return;
      if (settled.state === 'failed')
        return put(bedId, { state: 'failed', reason: settled.reason });
      put(bedId, { state: 'ready', reason: null, ends: settled.answer });
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      put(bedId, { state: 'failed', reason });
    }
  };

  const ask = (): void => {
    callOff?.();
    callOff = null;
    const { carried } = read();
    if (!carried) return;
    put(carried.bedId, { state: 'working', reason: null });
    callOff = later(resultsPauseMilliseconds, () => void reckon(carried.bedId));
  };

  return {
    slice: {
      carried: null,
      wantCarried: (bedId) => {
        if (read().carried?.bedId === bedId) return;
        write({ carried: { bedId, state: 'idle', reason: null, ends: [] } });
        ask();
      },
      leaveCarried: () => {
        callOff?.();
        callOff = null;
        write({ carried: null });
      },
    },
    changed: ask,
  };
}
