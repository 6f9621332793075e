import type { WaterAnswer } from '../core/season/waterNeeds';
import { waterQuestions } from '../document/waterQuestion';
import { limits } from '../tables/thresholds';
import type { WorkState } from './contract';
import type { Read, Write } from './gardenSlice';
import { resultsPauseMilliseconds, type Surroundings } from './surroundings';
import { todayDayOf } from './today';

/** The water of all beds. */
export interface Water {
  readonly state: WorkState;
  readonly reason: string | null;
  /** by bed id; the last good answer stays while a newer is worked at */
  readonly beds: Readonly<Record<string, WaterAnswer>>;
}

export interface WaterSlice {
  readonly water: Water;
  /** a place that shows it is open: reckoned, and reckoned anew after every change */
  wantWater(): void;
  /** that place was left */
  leaveWater(): void;
}

export interface WaterDoor {
  readonly slice: WaterSlice;
  /** garden or day are other than before */
  changed(): void;
}

const noWater: Water = { state: 'idle', reason: null, beds: {} };

/** When each bed is due for water: asked for while it is shown, after the beds themselves. */
export function waterDoor(
  read: Read,
  write: Write,
  { engine, later, computerToday }: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): WaterDoor {
  let isWanted = false;
  let callOff: (() => void) | null = null;

  const put = (changes: Partial<Water>): void =>
    write((state) => ({ water: { ...state.water, ...changes } }));

  const reckon = async (): Promise<void> => {
    const { garden } = read();
    if (!garden || !isWanted) return;
    try {
      const today = todayDayOf(read(), computerToday);
      const beds = waterQuestions(garden, today);
      const settled = await engine.ask<'water'>({ kind: 'water', beds, limits });
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
      water: noWater,
      wantWater: () => {
        isWanted = true;
        ask();
      },
      leaveWater: () => {
        isWanted = false;
        callOff?.();
        callOff = null;
        if (read().water.state === 'working') put({ state: 'idle' });
      },
    },
    changed: () => {
      const { garden, water } = read();
      const isThere = new Set(garden?.beds.map(({ id }) => id) ?? []);
      const kept = Object.entries(water.beds).filter(([id]) => isThere.has(id));
      write({ water: { ...noWater, beds: Object.fromEntries(kept) } });
      ask();
    },
  };
}
