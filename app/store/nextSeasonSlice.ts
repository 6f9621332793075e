import type { NextSeason } from '../core/season/nextSeason';
import { bedSeason } from '../document/seasonInput';
import { limits } from '../tables/thresholds';
import type { WorkState } from './contract';
import type { Read, Write } from './gardenSlice';
import { resultsPauseMilliseconds, type Surroundings } from './surroundings';
import { todayDayOf } from './today';

/** All beds through the season after the one that holds today. */
export interface ComingSeason {
  readonly state: WorkState;
  readonly reason: string | null;
  /** by bed id; the last good answer stays while a newer is worked at */
  readonly beds: Readonly<Record<string, NextSeason>>;
}

export interface NextSeasonSlice {
  readonly comingSeason: ComingSeason;
  /** a place that shows it is open: reckoned, and reckoned anew after every change */
  wantComingSeason(): void;
  /** that place was left */
  leaveComingSeason(): void;
}

export interface NextSeasonDoor {
  readonly slice: NextSeasonSlice;
  /** garden or day are other than before */
  changed(): void;
}

const nothingYet: ComingSeason = { state: 'idle', reason: null, beds: {} };

/** The coming season takes a run of every bed: asked for while it is shown. */
export function nextSeasonDoor(
  read: Read,
  write: Write,
  { engine, later, computerToday }: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): NextSeasonDoor {
  let isWanted = false;
  let callOff: (() => void) | null = null;

  const put = (changes: Partial<ComingSeason>): void =>
    write((state) => ({ comingSeason: { ...state.comingSeason, ...changes } }));

  const reckon = async (): Promise<void> => {
    const { garden } = read();
    if (!garden || !isWanted) return;
    try {
      const today = todayDayOf(read(), computerToday);
      const beds = garden.beds.map(({ id }) =>
        bedSeason(garden, id, today, { throughNextSeason: true }),
      );
      const settled = await engine.ask<'next season'>({ kind: 'next season', beds, limits });
      if (settled.state === 'superseded' || read().garden !== garden) return;
      if (todayDayOf(read(), computerToday) !== today) return;
      if (settled.state === 'failed') return put({ state: 'failed', reason: settled.reason });
      put({
        state: 'ready',
        reason: null,
        beds: Object.fromEntries(settled.answer.map((bed) => [bed.bedId, bed])),
      });
    } catch (error) {
      put({ state: 'failed', reason: error instanceof Error ? error.message : String(error) });
    }
  };

  const ask = (): void => {
    callOff?.();
    callOff = null;
    if (!isWanted || !read().garden) return;
    put({ state: 'working', reason: null });
    callOff = later(resultsPauseMilliseconds, () => void reckon());
  };

  return {
    slice: {
      comingSeason: nothingYet,
      wantComingSeason: () => {
        if (isWanted) return;
        isWanted = true;
        ask();
      },
      leaveComingSeason: () => {
        isWanted = false;
        callOff?.();
        callOff = null;
        // what it comes to may be another by the time it is looked at again
        write({ comingSeason: nothingYet });
      },
    },
    changed: ask,
  };
}
