import type { NextSeasonRange } from '../core/season/draws/nextSeasonDraws';
import type { DrawsQuestion } from '../core/season/draws/runDraws';
import { nextSeasonQuestions } from '../document/nextSeasonQuestion';
import type { Garden } from '../document/schema';
import { limits } from '../tables/thresholds';
import type { WorkState } from './resultsContract';
import type { LateDoor, MakeLateDoor } from './lateDoors';
import { sameQuestion } from './sameQuestion';
import {
  bedsInABreath,
  quickDraws,
  resultsPauseMilliseconds,
  wholeDraws,
  wholeDrawsPauseMilliseconds,
} from './surroundings';
import { todayDayOf } from './today';
import { togetherInTime } from './togetherInTime';
import { touchedBeds } from './touchedBeds';

/** Where the beds are in most imagined next seasons. */
export interface ComingRanges {
  readonly state: WorkState;
  readonly isStopped: boolean;
  /** imagined seasons run, of all beds, and how many it will be */
  readonly done: number;
  readonly of: number;
  readonly reason: string | null;
  /** by bed id; none of what was reckoned before a change that touched its bed */
  readonly beds: Readonly<Record<string, NextSeasonRange>>;
}

export interface ComingRangesSlice {
  /** null while no place shows them */
  readonly comingRanges: ComingRanges | null;
}

export interface ComingRangesDoor extends LateDoor {
  stop(): void;
  goOn(): void;
}

const nothingYet: ComingRanges = {
  state: 'idle',
  isStopped: false,
  done: 0,
  of: 0,
  reason: null,
  beds: {},
};

const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/**
 * The imagined seasons of all beds through the season to come: a hundred after each change of those
 * that are asked about anew, and a thousand when nothing has changed for a while.
 */
export const comingRangesDoor: MakeLateDoor<ComingRangesDoor> = (
  read,
  write,
  { engine, later, computerToday, breathe },
) => {
  let running: AbortController | null = null;
  let callOff: (() => void) | null = null;
  /** as it was before the last change, to tell what that touched; of which opening it is */
  let before: Garden | null = null;
  let openings = 0;
  /** what the ranges on screen are answers to, by bed */
  const answered = new Map<string, DrawsQuestion>();

  const put = (changes: Partial<ComingRanges>): void =>
    write(({ comingRanges }) => ({ comingRanges: { ...nothingYet, ...comingRanges, ...changes } }));

  const end = (): void => {
    callOff?.();
    callOff = null;
    running?.abort();
    running = null;
  };
  const keepOnly = (isKept: (bedId: string) => boolean): void => {
    const kept = Object.entries(read().comingRanges?.beds ?? {}).filter(([id]) => isKept(id));
    put({ beds: Object.fromEntries(kept) });
  };

  const ask = async (
    questions: readonly DrawsQuestion[],
    count: number,
    signal: AbortSignal,
  ): Promise<boolean> => {
    let come: NextSeasonRange[] = [];
    let far = { done: 0, of: questions.length * count };
    put({ state: 'working', reason: null, ...far });
    const show = (): void => {
      if (signal.aborted) return;
      const some = come;
      come = [];
      for (const { bedId } of some) {
        const question = questions.find(({ input }) => input.bedId === bedId);
        if (question) answered.set(bedId, question);
      }
      const beds = Object.fromEntries(some.map((range) => [range.bedId, range]));
      put({ ...far, ...(some.length > 0 && { beds: { ...read().comingRanges?.beds, ...beds } }) });
    };
    // beds that come in a moment are shown together
    const showInTime = togetherInTime(later, show, () => come.length > 0);
    const beds = questions.map((question) => ({ ...question, count }));
    const settled = await engine.ask<'next season draws'>(
      { kind: 'next season draws', beds, limits },
      {
        signal,
        onProgress: ({ done, of, nextSeason }) => {
          far = { done, of };
          if (nextSeason) come.push(nextSeason);
          showInTime();
        },
      },
    );
    if (signal.aborted || settled.state === 'superseded') return false;
    if (settled.state === 'failed') throw new Error(settled.reason);
    come = [...settled.answer];
    show();
    return true;
  };

  const reckon = async (garden: Garden): Promise<void> => {
    end();
    running = new AbortController();
    const { signal } = running;
    try {
      const today = todayDayOf(read(), computerToday);
      const questionOf = nextSeasonQuestions(garden, today);
      const questions: DrawsQuestion[] = [];
      for (const [at, { id }] of garden.beds.entries()) {
        if (at > 0 && at % bedsInABreath === 0) await breathe();
        if (signal.aborted) return;
        questions.push(questionOf(id, quickDraws));
      }
      const stands = new Set(
        questions
          .filter((one) => sameQuestion(answered.get(one.input.bedId), one))
          .map(({ input }) => input.bedId),
      );
      keepOnly((bedId) => stands.has(bedId));
      if (read().comingRanges?.isStopped) return;
      const lacking = (count: number): readonly DrawsQuestion[] =>
        questions.filter(
          ({ input }) => (read().comingRanges?.beds[input.bedId]?.count ?? 0) < count,
        );
      const quick = lacking(quickDraws);
      if (quick.length > 0 && !(await ask(quick, quickDraws, signal))) return;
      const goOn = async (): Promise<void> => {
        try {
          const whole = lacking(wholeDraws);
          if (whole.length > 0 && !(await ask(whole, wholeDraws, signal))) return;
          put({ state: 'ready' });
        } catch (error) {
          if (!signal.aborted) put({ state: 'failed', reason: messageOf(error) });
        }
      };
      if (quick.length === 0) await goOn();
      else callOff = later(wholeDrawsPauseMilliseconds, () => void goOn());
    } catch (error) {
      if (!signal.aborted) put({ state: 'failed', reason: messageOf(error) });
    }
  };

  /** What stands is told from what does not even where no more is asked. */
  const begin = (garden: Garden): void => {
    if (!read().comingRanges?.isStopped) {
      const of = garden.beds.length * quickDraws;
      put({ state: 'working', reason: null, done: 0, of });
    }
    callOff = later(resultsPauseMilliseconds, () => void reckon(garden));
  };

  const changed = (): void => {
    end();
    const { garden, openings: now } = read();
    const was = openings === now && before !== garden ? before : null;
    before = garden;
    openings = now;
    if (!garden) return put(nothingYet);
    const touched = touchedBeds(was, garden);
    keepOnly((bedId) => !touched.has(bedId));
    begin(garden);
  };

  changed();
  return {
    changed,
    close: () => {
      end();
      write({ comingRanges: null });
    },
    stop: () => {
      end();
      put({ state: 'idle', isStopped: true });
    },
    goOn: () => {
      put({ isStopped: false });
      const { garden } = read();
      if (garden) begin(garden);
    },
  };
};
