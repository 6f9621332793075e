import type { WaterAnswer } from '../core/season/waterNeeds';
import { waterQuestions } from '../document/waterQuestion';
import { limits } from '../tables/thresholds';
import type { Read, Write } from './gardenSlice';
import type { Surroundings } from './surroundings';
import { nothingShown, whileShown, type ShownAnswers } from './whileShown';

/** The water of all beds. */
export type Water = ShownAnswers<WaterAnswer>;

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

/** When each bed is due for water: asked for while it is shown, after the beds themselves. */
export function waterDoor(
  read: Read,
  write: Write,
  surroundings: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): WaterDoor {
  const put = (changes: Partial<Water>): void =>
    write((state) => ({ water: { ...state.water, ...changes } }));
  const water = whileShown<WaterAnswer>(
    read,
    surroundings,
    (garden, today) =>
      surroundings.engine.ask<'water'>({
        kind: 'water',
        beds: waterQuestions(garden, today),
        limits,
      }),
    put,
  );
  return {
    slice: {
      water: nothingShown,
      wantWater: water.want,
      leaveWater: () => {
        water.leave();
        if (read().water.state === 'working') put({ state: 'idle' });
      },
    },
    changed: () => {
      const now = read();
      const isThere = new Set(now.garden?.beds.map(({ id }) => id) ?? []);
      const kept = Object.entries(now.water.beds).filter(([id]) => isThere.has(id));
      write({ water: { ...nothingShown, beds: Object.fromEntries(kept) } });
      water.ask();
    },
  };
}
