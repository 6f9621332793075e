import { startPaired, type PairedAnswer, type PairedQuestion } from '../core/plan/pairedDraws';
import { assertNever } from '../core/result';
import { startNextSeason } from '../core/season/draws/nextSeasonDraws';
import {
  startDraws,
  type DrawsAnswer,
  type DrawsQuestion,
  type DrawsRun,
} from '../core/season/draws/runDraws';
import type { Limits } from '../core/season/limits';
import type { Answers, Progress, ProposalDrawsAnswer, QuestionOf, SlicedKind } from './protocol';
import type { SharedKept } from './sharedKept';

/** Asked after every draw: null to go on, or a promise to wait for while others have their turn. */
export type LookUp = () => Promise<void> | null;

/** Longest time [ms] without looking up. A draw of ten years' log takes a few of them. */
const sliceMilliseconds = 12;

/** Lets everything that waits in this thread have its turn, without a timer's least delay. */
const everyoneElse = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

/** Looks up by the clock. */
export function lookUpByClock(): LookUp {
  let started = performance.now();
  return () => {
    if (performance.now() - started < sliceMilliseconds) return null;
    return everyoneElse().then(() => {
      started = performance.now();
    });
  };
}

/** Looks up after so many draws, for where the same must happen every time. */
export function lookUpEvery(draws: number): LookUp {
  let asked = 0;
  return () => (++asked % draws === 0 ? Promise.resolve() : null);
}

interface Slicer {
  readonly limits: Limits;
  readonly shared: SharedKept;
  readonly lookUp: LookUp;
  readonly isStopped: () => boolean;
  readonly tell: (progress: Progress) => void;
}

/**
 * Runs beds one after the other; null when it was stopped: there are no half answers.
 *
 * @param start of one bed
 * @param told what is told of a bed that has just been finished
 */
async function runBeds<Answer>(
  beds: readonly DrawsQuestion[],
  { lookUp, isStopped, tell }: Slicer,
  start: (question: DrawsQuestion) => DrawsRun<Answer>,
  told: (bed: Answer) => Partial<Progress>,
): Promise<Answer[] | null> {
  const answers: Answer[] = [];
  let doneBefore = 0;
  let planned = beds.reduce((sum, { count }) => sum + count, 0);
  const progress = (run: DrawsRun<Answer>): Progress => ({
    done: doneBefore + run.done,
    of: planned,
  });
  for (const question of beds) {
    const run = start(question);
    let asked = run.of;
    while (!run.isDone) {
      run.next();
      planned += run.of - asked;
      asked = run.of;
      const others = lookUp();
      if (others === null) continue;
      tell(progress(run));
      await others;
      if (isStopped()) return null;
    }
    const bed = run.answer();
    answers.push(bed);
    tell({ ...progress(run), ...told(bed) });
    doneBefore += run.done;
  }
  return answers;
}

/** Runs a bed and others of it side by side; null when it was stopped. */
async function runPairs(
  question: PairedQuestion,
  { limits, shared, lookUp, isStopped, tell }: Slicer,
): Promise<PairedAnswer | null> {
  const run = startPaired(question, limits, shared(question.base));
  while (!run.isDone) {
    run.next();
    const others = lookUp();
    if (others === null) continue;
    tell({ done: run.done, of: run.of });
    await others;
    if (isStopped()) return null;
  }
  return run.answer();
}

/**
 * Answers a long question in slices of some twelve milliseconds.
 *
 * @returns null when it was stopped. Of 'draws', whole beds that were told of before stay right
 * @throws on a broken promise of ours only
 */
export async function answerInSlices(
  question: QuestionOf<SlicedKind>,
  slicer: Slicer,
): Promise<Answers[SlicedKind] | null> {
  const { limits, shared } = slicer;
  const start = (bed: DrawsQuestion): DrawsRun<DrawsAnswer> => startDraws(bed, limits, shared(bed));
  switch (question.kind) {
    case 'draws':
      return runBeds(question.beds, slicer, start, (bed) => ({ bed }));
    case 'next season draws':
      return runBeds(
        question.beds,
        slicer,
        (bed) => startNextSeason(bed, shared(bed)),
        (nextSeason) => ({ nextSeason }),
      );
    case 'proposal draws': {
      const pairs = question.beds.flatMap(({ before, after }) => [before, after]);
      const answers = await runBeds(pairs, slicer, start, () => ({}));
      if (answers === null) return null;
      return question.beds.map((_, at): ProposalDrawsAnswer => {
        const [before, after] = [answers[2 * at]!, answers[2 * at + 1]!];
        return { bedId: before.bedId, before, after };
      });
    }
    case 'what if draws':
      return runPairs(question.paired, slicer);
    case 'plan draws': {
      const answers: PairedAnswer[] = [];
      for (const line of question.lines) {
        const answer = await runPairs(line, slicer);
        if (answer === null) return null;
        answers.push(answer);
      }
      return answers;
    }
    default:
      return assertNever(question);
  }
}
