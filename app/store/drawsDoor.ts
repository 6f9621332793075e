import { dayFromText } from '../core/days';
import { withOddsOfBed } from '../core/season/cautions/cautions';
import type { DrawsAnswer, DrawsQuestion } from '../core/season/draws/runDraws';
import { bedQuestion } from '../document/bedQuestion';
import { drawsQuestion, type YearsOfGarden } from '../document/drawsQuestion';
import type { Garden } from '../document/schema';
import { limits } from '../tables/thresholds';
import type { Progress } from '../worker/protocol';
import type { BedDraws, BedResults, DrawsWork, ResultsSlice } from './contract';
import type { Read, Write } from './gardenSlice';
import { sameQuestion } from './sameQuestion';
import {
  bedsInABreath,
  quickDraws,
  wholeDraws,
  wholeDrawsPauseMilliseconds,
  type Surroundings,
} from './surroundings';
import { todayDayOf, todayTextOf } from './today';
import { togetherInTime } from './togetherInTime';
import { touchedBeds } from './touchedBeds';

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
 * The imagined seasons of all beds: a hundred after each change of those that are asked about anew,
 * once the beds are reckoned, and a thousand when nothing has changed for a while. The last good
 * ones stay until better ones come.
 */
export function drawsDoor(
  read: Read,
  write: Write,
  {
    engine,
    later,
    computerToday,
    breathe,
  }: Pick<Surroundings, 'engine' | 'later' | 'computerToday' | 'breathe'>,
): DrawsDoor {
  let callOffWhole: (() => void) | null = null;
  let running: AbortController | null = null;
  /** the garden the draws are of: a bed of another may bear the same id */
  let openings = 0;
  /** whether the draws on screen were held against the questions of the garden as it is now */
  let isCompared = false;
  /** as it was before the last change, to tell what that touched */
  let before: Garden | null = null;
  /** what the draws on screen were answers to, by bed */
  const answered = new Map<string, DrawsQuestion>();

  const work = (changes: Partial<DrawsWork>): void =>
    write({ drawsWork: { ...read().drawsWork, ...changes } });

  /** puts on screen what has come since the last time */
  let showCome: (() => void) | null = null;

  const end = (): void => {
    callOffWhole?.();
    callOffWhole = null;
    showCome = null;
    running?.abort();
    running = null;
  };

  const oddsOf = (garden: Garden, bed: BedResults, draws: DrawsAnswer | undefined): BedResults => {
    if (!draws) return bed;
    const { input, season, verdict } = bed;
    const { facts } = bedQuestion(garden, bed.bedId, todayDayOf(read(), computerToday));
    const run = { input, result: season, verdict };
    return { ...bed, cautions: withOddsOfBed(bed.cautions, run, draws, facts, limits) };
  };

  /** Takes over what was answered about beds, in one step. */
  const take = (
    garden: Garden,
    questions: readonly DrawsQuestion[],
    answers: readonly DrawsAnswer[],
    stage: Stage,
  ): void => {
    for (const question of questions)
      if (answers.some(({ bedId }) => bedId === question.input.bedId))
        answered.set(question.input.bedId, question);
    const draws = { ...read().draws };
    const bedResults = { ...read().bedResults };
    for (const answer of answers) {
      draws[answer.bedId] = { answer, stage, isBehind: false };
      const bed = bedResults[answer.bedId];
      if (bed) bedResults[answer.bedId] = oddsOf(garden, bed, answer);
    }
    write({ draws, bedResults });
  };

  /** The questions of all beds, the one that is looked at first; null when called off meanwhile. */
  const questionsOf = async (
    garden: Garden,
    signal: AbortSignal,
  ): Promise<readonly DrawsQuestion[] | null> => {
    const { openBedId, bedResults } = read();
    const bedIds = garden.beds
      .map(({ id }) => id)
      .sort((one, other) => Number(other === openBedId) - Number(one === openBedId));
    const questions: DrawsQuestion[] = [];
    const laidOut: YearsOfGarden = new Map();
    for (const [at, bedId] of bedIds.entries()) {
      if (at > 0 && at % bedsInABreath === 0) await breathe();
      if (signal.aborted) return null;
      // reckoned just before, of the same garden
      const input = bedResults[bedId]?.input;
      const day = todayDayOf(read(), computerToday);
      questions.push(drawsQuestion(garden, bedId, day, quickDraws, { laidOut, input }));
    }
    return questions;
  };

  const begin = (): AbortSignal => {
    end();
    running = new AbortController();
    return running.signal;
  };

  const ask = async (
    garden: Garden,
    stage: Stage,
    questions: readonly DrawsQuestion[],
    signal: AbortSignal,
  ): Promise<void> => {
    const of = questions.length * countOf[stage];
    work({ state: 'working', done: 0, of, reason: null });
    const taken = new Set<string>();
    // Beds come faster than anybody reads. The first is shown at once, others together with what comes
    // a moment later: each drawn by itself would keep the page from its keys.
    let come: DrawsAnswer[] = [];
    let far: Pick<DrawsWork, 'done' | 'of'> = { done: 0, of };
    const show = (): void => {
      if (signal.aborted || come.length === 0) return;
      const some = come;
      come = [];
      work(far);
      take(garden, questions, some, stage);
    };
    showCome = show;
    const showInTime = togetherInTime(later, show, () => come.length > 0);
    const onProgress = ({ done, of: all, bed }: Progress): void => {
      if (signal.aborted) return;
      far = { done, of: all };
      if (!bed) return work(far);
      taken.add(bed.bedId);
      come.push(bed);
      showInTime();
    };
    try {
      const beds = questions.map((one) => ({ ...one, count: countOf[stage] }));
      const question = { kind: 'draws', beds, limits } as const;
      const settled = await engine.ask<'draws'>(question, { onProgress, signal });
      show();
      if (signal.aborted || settled.state === 'superseded') return;
      if (settled.state === 'failed') {
        work({ state: 'failed', reason: settled.reason });
        return;
      }
      take(
        garden,
        questions,
        settled.answer.filter(({ bedId }) => !taken.has(bedId)),
        stage,
      );
      if (stage === 'quick') callOffWhole = later(wholeDrawsPauseMilliseconds, start);
      else work({ state: 'ready' });
    } catch (error) {
      if (!signal.aborted) work({ state: 'failed', reason: messageOf(error) });
    }
  };

  /** Goes on from what is there: nothing is run twice, and nothing whose answer still stands. */
  const goOn = async (): Promise<void> => {
    const { garden, drawsWork, draws: shown } = read();
    if (!garden || garden.beds.length === 0 || drawsWork.isStopped) return;
    const isWhole = ({ id }: { readonly id: string }): boolean =>
      shown[id]?.stage === 'whole' && !shown[id].isBehind;
    if (isCompared && garden.beds.every(isWhole)) return work({ state: 'ready' });
    const signal = begin();
    try {
      const questions = await questionsOf(garden, signal);
      if (questions === null || read().garden !== garden) return;
      const draws = { ...read().draws };
      const stands = (question: DrawsQuestion): boolean =>
        sameQuestion(answered.get(question.input.bedId), question);
      for (const question of questions) {
        const known = draws[question.input.bedId];
        const isBehind = !stands(question);
        if (known && known.isBehind !== isBehind)
          draws[question.input.bedId] = { ...known, isBehind };
      }
      write({ draws });
      isCompared = true;
      const quick = questions.filter((one) => !draws[one.input.bedId] || !stands(one));
      const whole = questions.filter((one) => draws[one.input.bedId]?.stage !== 'whole');
      if (quick.length > 0) await ask(garden, 'quick', quick, signal);
      else if (whole.length > 0) await ask(garden, 'whole', whole, signal);
      else work({ state: 'ready' });
    } catch (error) {
      if (!signal.aborted) work({ state: 'failed', reason: messageOf(error) });
    }
  };
  const start = (): void => void goOn();

  return {
    slice: {
      draws: {},
      drawsWork: idle,
      stopDraws: () => {
        showCome?.();
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
      const isSame = garden !== null && read().openings === openings;
      // the same garden, so it is the day that is another: of before are all
      const was = isSame && before !== garden ? before : null;
      const touched = garden ? touchedBeds(was, garden) : new Set<string>();
      before = garden;
      isCompared = false;
      openings = read().openings;
      if (!isSame) answered.clear();
      if (!garden || dayFromText(todayTextOf(read(), computerToday)) === null) {
        write({ draws: {}, drawsWork: { ...idle, isStopped } });
        return;
      }
      const draws = Object.fromEntries(
        garden.beds.flatMap(({ id }): [string, BedDraws][] => {
          const own = isSame ? read().draws[id] : undefined;
          // what else follows from the change is known once the beds are reckoned
          return own ? [[id, touched.has(id) ? { ...own, isBehind: true } : own]] : [];
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
