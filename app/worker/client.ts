import { answer, reasonOf } from './answer';
import type { Answers, Asked, Engine, Question, QuestionKind, Replied, Settled } from './protocol';

/** The part of a `Worker` that is used, so that tests can stand in for it. */
export interface WorkerLike {
  postMessage(message: Asked): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Replied>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
}

interface Waiting {
  readonly id: number;
  readonly question: Question;
  readonly settle: (settled: Settled<Answers[QuestionKind]>) => void;
}

/**
 * One worker with at most one question in it. Newer questions wait outside, one of each kind, and
 * a newer one takes the place of the one that waits: the worker never computes what nobody wants.
 * Every reply is matched by id; the one in the worker settles as superseded at once, and its reply
 * is dropped when it comes.
 */
class Lane {
  private worker: WorkerLike | null = null;
  private inside: Waiting | null = null;
  private readonly waiting = new Map<QuestionKind, Waiting>();
  private readonly makeWorker: () => WorkerLike;

  constructor(makeWorker: () => WorkerLike) {
    this.makeWorker = makeWorker;
  }

  put(next: Waiting): void {
    const { kind } = next.question;
    this.waiting.get(kind)?.settle({ state: 'superseded' });
    this.waiting.set(kind, next);
    if (this.inside?.question.kind === kind) this.inside.settle({ state: 'superseded' });
    this.send();
  }

  stop(): void {
    for (const one of this.waiting.values()) one.settle({ state: 'superseded' });
    this.waiting.clear();
    this.inside?.settle({ state: 'superseded' });
    this.inside = null;
    this.worker?.terminate();
    this.worker = null;
  }

  private send(): void {
    if (this.inside) return;
    const [next] = this.waiting.values();
    if (!next) return;
    this.waiting.delete(next.question.kind);
    this.inside = next;
    try {
      this.worker ??= this.start();
      this.worker.postMessage({ id: next.id, question: next.question });
    } catch (error) {
      this.broken(reasonOf(error));
    }
  }

  private start(): WorkerLike {
    const worker = this.makeWorker();
    worker.onmessage = ({ data }) => {
      if (data.id !== this.inside?.id) return;
      const { settle } = this.inside;
      this.inside = null;
      settle(
        data.ok
          ? { state: 'answered', answer: data.answer }
          : { state: 'failed', reason: data.reason },
      );
      this.send();
    };
    worker.onerror = (event) => this.broken(event.message || 'the worker stopped');
    worker.onmessageerror = () => this.broken('an answer did not survive the crossing');
    return worker;
  }

  /** The worker itself failed: what was in it fails with it, the next question gets a new one. */
  private broken(reason: string): void {
    this.worker?.terminate();
    this.worker = null;
    const lost = this.inside;
    this.inside = null;
    lost?.settle({ state: 'failed', reason });
    this.send();
  }
}

/**
 * Questions answered in workers: what is on screen in one, the slow look back in another, so that
 * neither waits for the other.
 */
export function workerEngine(makeWorker: () => WorkerLike): Engine {
  const now = new Lane(makeWorker);
  const past = new Lane(makeWorker);
  let lastId = 0;
  return {
    ask: (question) => {
      const id = ++lastId;
      return new Promise((resolve) => {
        // Settling twice is harmless: a promise keeps its first answer.
        const settle = resolve as Waiting['settle'];
        (question.kind === 'history' ? past : now).put({ id, question, settle });
      });
    },
    stop: () => {
      now.stop();
      past.stop();
    },
  };
}

/** The same without a worker, for tests, the command line, and where workers cannot be had. */
export function sameThreadEngine(): Engine {
  const newest = new Map<QuestionKind, number>();
  let lastId = 0;
  return {
    ask: async (question) => {
      const id = ++lastId;
      newest.set(question.kind, id);
      // A question asked in the same breath takes this one's place before it costs anything.
      await Promise.resolve();
      if (newest.get(question.kind) !== id) return { state: 'superseded' };
      try {
        return { state: 'answered', answer: answer(question) as never };
      } catch (error) {
        return { state: 'failed', reason: reasonOf(error) };
      }
    },
    stop: () => newest.clear(),
  };
}

/** The program's own worker. */
export const startSeasonWorker = (): WorkerLike =>
  new Worker(new URL('./season.worker.ts', import.meta.url), { type: 'module' }) as WorkerLike;
