import type { DayNumber } from '../core/days';
import type { Garden } from '../document/schema';
import type { Settled } from '../worker/protocol';
import type { WorkState } from './contract';
import type { Read } from './gardenSlice';
import { resultsPauseMilliseconds, type Surroundings } from './surroundings';
import { todayDayOf } from './today';

/** What is reckoned of every bed for a place that shows it. */
export interface ShownAnswers<Answer> {
  readonly state: WorkState;
  readonly reason: string | null;
  /** by bed id; the last good answer stays while a newer is worked at */
  readonly beds: Readonly<Record<string, Answer>>;
}

/** Before anything was asked. */
export const nothingShown: ShownAnswers<never> = { state: 'idle', reason: null, beds: {} };

/** Asks while it is wanted; what becomes of former answers is for its slice to say. */
export interface WhileShown {
  isWanted(): boolean;
  /** from now on, and at once */
  want(): void;
  /** no more: what is about to be asked is called off */
  leave(): void;
  /** anew after a pause, where it is wanted: garden or day are other than before */
  ask(): void;
}

/**
 * Asks the engine about all beds as long as a place shows what it answers: after every change once
 * more, a moment later. An answer to a garden or a day that is no longer the present one is dropped.
 *
 * @param question  puts it to the engine; may throw, which is told as a failure
 * @param put       writes what is new of the answers
 */
export function whileShown<Answer extends { readonly bedId: string }>(
  read: Read,
  { later, computerToday }: Pick<Surroundings, 'later' | 'computerToday'>,
  question: (garden: Garden, today: DayNumber) => Promise<Settled<readonly Answer[]>>,
  put: (changes: Partial<ShownAnswers<Answer>>) => void,
): WhileShown {
  let isWanted = false;
  let callOff: (() => void) | null = null;

  const reckon = async (): Promise<void> => {
    const { garden } = read();
    if (!garden || !isWanted) return;
    try {
      const today = todayDayOf(read(), computerToday);
      const settled = await question(garden, today);
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

  const forget = (): void => {
    callOff?.();
    callOff = null;
  };
  const ask = (): void => {
    forget();
    if (!isWanted || !read().garden) return;
    put({ state: 'working', reason: null });
    callOff = later(resultsPauseMilliseconds, () => void reckon());
  };
  return {
    isWanted: () => isWanted,
    want: () => {
      isWanted = true;
      ask();
    },
    leave: () => {
      isWanted = false;
      forget();
    },
    ask,
  };
}
