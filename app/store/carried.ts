import type { CarriedAnswer } from '../core/season/draws/carriedRelease';
import { bedSeason } from '../document/seasonInput';
import { carriedQuestions } from '../document/seasonsAccount';
import { limits } from '../tables/thresholds';
import type { WorkState } from './resultsContract';
import type { LateDoor, MakeLateDoor } from './lateDoors';
import { resultsPauseMilliseconds } from './surroundings';
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
}

/**
 * What a season leaves to the next takes many runs: asked for while the page of a bed shows it, in a
 * worker, and reckoned anew after every change.
 */
export const carriedDoor =
  (bedId: string): MakeLateDoor<LateDoor> =>
  (read, write, { engine, later, computerToday }) => {
    let callOff: (() => void) | null = null;

    const put = (changes: Partial<Carried>): void =>
      write(({ carried }) =>
        carried?.bedId === bedId ? { carried: { ...carried, ...changes } } : {},
      );

    const reckon = async (): Promise<void> => {
      const { garden } = read();
      if (!garden?.beds.some(({ id }) => id === bedId)) return;
      try {
        const today = todayDayOf(read(), computerToday);
        const carried = carriedQuestions(garden, bedSeason(garden, bedId, today));
        const settled = await engine.ask<'carried'>({ kind: 'carried', carried, limits });
        if (settled.state === 'superseded' || read().garden !== garden) return;
        if (todayDayOf(read(), computerToday) !== today) return;
        if (settled.state === 'failed') return put({ state: 'failed', reason: settled.reason });
        put({ state: 'ready', reason: null, ends: settled.answer });
      } catch (error) {
        put({ state: 'failed', reason: error instanceof Error ? error.message : String(error) });
      }
    };

    const changed = (): void => {
      callOff?.();
      put({ state: 'working', reason: null });
      callOff = later(resultsPauseMilliseconds, () => void reckon());
    };

    write({ carried: { bedId, state: 'idle', reason: null, ends: [] } });
    changed();
    return {
      changed,
      close: () => {
        callOff?.();
        write({ carried: null });
      },
    };
  };
