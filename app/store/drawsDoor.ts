import { dayFromText } from '../core/days';
import { withOddsOfBed } from '../core/season/cautions/cautions';
import type { DrawsAnswer } from '../core/season/draws/runDraws';
import { cautionFacts } from '../document/cautionFacts';
import { drawsQuestions } from '../document/drawsQuestion';
import type { Garden } from '../document/schema';
import { limits } from '../tables/thresholds';
import type { Progress } from '../worker/protocol';
import type { BedDraws, BedResults, DrawsWork, ResultsSlice } from './contract';
import type { Read, Write } from './gardenSlice';
import {
  quickDraws,
  wholeDraws,
  wholeDrawsPauseMilliseconds,
  type Surroundings,
} from './surroundings';
import { todayDayOf, todayTextOf } from './today';

type Stage = BedDraws['stage'];
const countOf: Readonly<Record<Stage, number>> = { quick: quickDraws, whole: wholeDraws };

export interface DrawsDoor {
  readonly slice: Pick<ResultsSlice, 'draws' | 'drawsWork' | 'stopDraws' | 'resumeDraws'>;
  /** garden or day are other than before: what is there is of before, and nothing goes on */
  changed(): void;
  /** the beds as they are now were reckoned: their imagined seasons may follow */
  bedsReckoned(): void;
  /** they could not be, so no imagined seasons either; or those of a proposal could not */
  failed(reason: string): void;
  /** a bed's results with the cautions that need its imagined seasons, if these are there */
  withOdds(garden: Garden, bed: BedResults): BedResults;
}

const idle: DrawsWork = { state: 'idle', isStopped: false, done: 0, of: 0, reason: null };

const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/**
 * The imagined seasons of all beds: a hundred after each change, once the beds are reckoned, and a
 * thousand when nothing has changed for a while. The last good ones stay until better ones come.
 */
export function drawsDoor(
  read: Read,
  write: Write,
  { engine, later, computerToday }: Pick<Surroundings, 'engine' | 'later' | 'computerToday'>,
): DrawsDoor {
  let callOffWhole: (() => void) | null = null;
  let running: AbortController | null = null;
  /** the garden the draws are of: a bed of another may bear the same id */
  let openings = 0;

  const work = (changes: Partial<DrawsWork>): void =>
    write({ drawsWork: { ...read().drawsWork, ...changes } });

  const end = (): void => {
    callOffWhole?.();
    callOffWhole = null;
    running?.abort();
    running = null;
  };

  const oddsOf = (garden: Garden, bed: BedResults, draws: DrawsAnswer | undefined): BedResults => {
    if (!draws) return bed;
    const { input, season, verdict } = bed;
    const facts = cautionFacts(garden, bed.bedId, todayDayOf(read(), computerToday));
    const run = { input, result: season, verdict };
    return { ...bed, cautions: withOddsOfBed(bed.cautions, run, draws, facts, limits) };
  };

  /** Takes over what was answered about beds, in one step. */
  const take = (garden: Garden, answers: readonly DrawsAnswer[], stage: Stage): void => {
    const draws = { ...read().draws };
    const bedResults = { ...read().bedResults };
    for (const answer of answers) {
      draws[answer.bedId] = { answer, stage, isBehind: false };
      const bed = bedResults[answer.bedId];
      if (bed) bedResults[answer.bedId] = oddsOf(garden, bed, answer);
    }
    write({ draws, bedResults });
  };

  const ask = async (stage: Stage): Promise<void> => {
    const { garden, openBedId } = read();
    if (!garden) return;
    end();
    const controller = new AbortController();
    running = controller;
    const { signal } = controller;
    // the bed that is looked at first
    const bedIds = garden.beds
      .map(({ id }) => id)
      .sort((one, other) => Number(other === openBedId) - Number(one === openBedId));
    const of = bedIds.length * countOf[stage];
    work({ state: 'working', done: 0, of, reason: null });
    const taken = new Set<string>();
    const onProgress = ({ done, of: all, bed }: Progress): void => {
      if (signal.aborted) return;
      work({ done, of: all });
      if (!bed) return;
      taken.add(bed.bedId);
      take(garden, [bed], stage);
    };
    try {
      const beds = drawsQuestions(
        garden,
        bedIds,
        todayDayOf(read(), computerToday),
        countOf[stage],
        // reckoned just before, of the same garden
        read().bedResults,
      );
      const question = { kind: 'draws', beds, limits } as const;
      const settled = await engine.ask<'draws'>(question, { onProgress, signal });
      if (signal.aborted || settled.state === 'superseded') return;
      if (settled.state === 'failed') {
        work({ state: 'failed', reason: settled.reason });
        return;
      }
      take(
        garden,
        settled.answer.filter(({ bedId }) => !taken.has(bedId)),
        stage,
      );
      if (stage === 'quick')
        callOffWhole = later(wholeDrawsPauseMilliseconds, () => void ask('whole'));
      else work({ state: 'ready' });
    } catch (error) {
      if (!signal.aborted) work({ state: 'failed', reason: messageOf(error) });
    }
  };

  /** Goes on from what is there: nothing is run twice. */
  const start = (): void => {
    const { garden, draws, drawsWork } = read();
    if (!garden || garden.beds.length === 0 || drawsWork.isStopped) return;
    const known = garden.beds.map(({ id }) => draws[id]);
    const isKnown = known.every((one) => one && !one.isBehind);
    if (isKnown && known.every((one) => one?.stage === 'whole')) work({ state: 'ready' });
    else void ask(isKnown ? 'whole' : 'quick');
  };

  return {
    slice: {
      draws: {},
      drawsWork: idle,
      stopDraws: () => {
        end();
        work({ state: 'idle', isStopped: true });
      },
      resumeDraws: () => {
        if (!read().drawsWork.isStopped) return;
        work({ isStopped: false });
        if (read().work === 'ready') start();
      },
    },
    changed: () => {
      end();
      const { garden, drawsWork } = read();
      const { isStopped } = drawsWork;
      if (!garden || dayFromText(todayTextOf(read(), computerToday)) === null) {
        write({ draws: {}, drawsWork: { ...idle, isStopped } });
        return;
      }
      const isSame = read().openings === openings;
      openings = read().openings;
      const draws = Object.fromEntries(
        garden.beds.flatMap(({ id }): [string, BedDraws][] => {
          const own = isSame ? read().draws[id] : undefined;
          return own ? [[id, { ...own, isBehind: true }]] : [];
        }),
      );
      const isAsked = !isStopped && garden.beds.length > 0;
      const of = isAsked ? garden.beds.length * quickDraws : 0;
      write({
        draws,
        drawsWork: { ...idle, isStopped, state: isAsked ? 'working' : 'idle', of },
      });
    },
    bedsReckoned: start,
    failed: (reason) => {
      const { garden, drawsWork } = read();
      if (garden && garden.beds.length > 0 && !drawsWork.isStopped)
        work({ state: 'failed', reason });
    },
    withOdds: (garden, bed) => oddsOf(garden, bed, read().draws[bed.bedId]?.answer),
  };
}
