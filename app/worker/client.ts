import { reasonOf } from './answer';
import { desk } from './desk';
import { askInParts } from './inParts';
import {
  isSliced,
  type Answers,
  type Asked,
  type AskOptions,
  type Engine,
  type Question,
  type QuestionKind,
  type QuestionOf,
  type Replied,
  type Settled,
  type Warmable,
} from './protocol';
import { lookUpEvery, type LookUp } from './slices';

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
  readonly options: AskOptions;
  readonly settle: (settled: Settled<Answers[QuestionKind]>) => void;
}

/**
 * One worker with at most one short question in it. Newer questions wait outside, one of each kind,
 * and a newer one takes the place of the one that waits: the worker never computes what nobody
 * wants. Long questions go in at once, one of each kind; they look up between slices, so a newer
 * one calls off the one inside. Every reply is matched by id; what was in the worker settles as
 * superseded at once, and its reply is dropped when it comes.
 */
class Lane {
  private worker: WorkerLike | null = null;
  private inside: Waiting | null = null;
  private readonly waiting = new Map<QuestionKind, Waiting>();
  private readonly long = new Map<QuestionKind, Waiting>();
  private readonly makeWorker: () => WorkerLike;

  constructor(makeWorker: () => WorkerLike) {
    this.makeWorker = makeWorker;
  }

  put(next: Waiting): void {
    const { kind } = next.question;
    const { signal } = next.options;
    if (signal?.aborted) return next.settle({ state: 'superseded' });
    signal?.addEventListener('abort', () => this.callOff(next), { once: true });
    if (isSliced(kind)) {
      this.endLong(kind);
      this.long.set(kind, next);
      this.post({ id: next.id, question: next.question });
      return;
    }
    this.waiting.get(kind)?.settle({ state: 'superseded' });
    this.waiting.set(kind, next);
    if (this.inside?.question.kind === kind) this.inside.settle({ state: 'superseded' });
    this.send();
  }

  /** Starts the worker before it is asked anything, so that its code is there when it is. */
  begin(): void {
    try {
      this.worker ??= this.start();
    } catch (error) {
      this.broken(reasonOf(error));
    }
  }

  warm(question: QuestionOf<'draws'>): void {
    this.post({ id: 0, warm: question });
  }

  stop(): void {
    for (const one of [...this.waiting.values(), ...this.long.values()])
      one.settle({ state: 'superseded' });
    this.waiting.clear();
    this.long.clear();
    this.inside?.settle({ state: 'superseded' });
    this.inside = null;
    this.worker?.terminate();
    this.worker = null;
  }

  private callOff(one: Waiting): void {
    const { kind } = one.question;
    if (this.waiting.get(kind) === one) this.waiting.delete(kind);
    if (this.long.get(kind) === one) this.endLong(kind);
    one.settle({ state: 'superseded' });
  }

  private endLong(kind: QuestionKind): void {
    const older = this.long.get(kind);
    if (!older) return;
    this.long.delete(kind);
    older.settle({ state: 'superseded' });
    this.post({ id: older.id, stop: true });
  }

  private send(): void {
    if (this.inside) return;
    const [next] = this.waiting.values();
    if (!next) return;
    this.waiting.delete(next.question.kind);
    this.inside = next;
    this.post({ id: next.id, question: next.question });
  }

  private post(message: Asked): void {
    try {
      this.worker ??= this.start();
      this.worker.postMessage(message);
    } catch (error) {
      this.broken(reasonOf(error));
    }
  }

  private start(): WorkerLike {
    const worker = this.makeWorker();
    worker.onmessage = ({ data }) => this.take(data);
    worker.onerror = (event) => this.broken(event.message || 'the worker stopped');
    worker.onmessageerror = () => this.broken('an answer did not survive the crossing');
    return worker;
  }

  private take(reply: Replied): void {
    const long = [...this.long.values()].find(({ id }) => id === reply.id);
    const from = long ?? (this.inside?.id === reply.id ? this.inside : null);
    if (!from) return;
    if ('progress' in reply) {
      from.options.onProgress?.(reply.progress);
      return;
    }
    if (long) this.long.delete(long.question.kind);
    else this.inside = null;
    from.settle(
      reply.ok
        ? { state: 'answered', answer: reply.answer }
        : { state: 'failed', reason: reply.reason },
    );
    this.send();
  }

  /** The worker itself failed: what was in it fails with it, the next question gets a new one. */
  private broken(reason: string): void {
    this.worker?.terminate();
    this.worker = null;
    const lost = [...this.long.values(), ...(this.inside ? [this.inside] : [])];
    this.inside = null;
    this.long.clear();
    for (const one of lost) one.settle({ state: 'failed', reason });
    this.send();
  }
}

/** Not for what is on the screen this moment, or long: asked beside it. */
const isSlow = (kind: QuestionKind): boolean =>
  kind === 'history' || kind === 'carried' || kind === 'next season' || isSliced(kind);

/**
 * Questions answered in at most two workers: what is on screen in one; the slow look back and the
 * imagined seasons in another, so that neither keeps the screen waiting. Where the machine has two
 * cores, the imagined seasons of several beds are run in both: the screen's worker looks up between
 * slices and answers what is asked meanwhile.
 *
 * @param cores what the machine can do at once
 */
export function workerEngine(makeWorker: () => WorkerLike, cores = 1): Engine & Warmable {
  const now = new Lane(makeWorker);
  const beside = new Lane(makeWorker);
  let lastId = 0;
  const put = <Kind extends QuestionKind>(
    lane: Lane,
    question: QuestionOf<Kind>,
    options: AskOptions,
  ): Promise<Settled<Answers[Kind]>> => {
    const id = ++lastId;
    return new Promise((resolve) => {
      // Settling twice is harmless: a promise keeps its first answer.
      lane.put({ id, question, options, settle: resolve as Waiting['settle'] });
    });
  };
  const drawnIn = cores >= 2 ? [beside, now] : [beside];
  return {
    ask: <Kind extends QuestionKind>(question: QuestionOf<Kind>, options: AskOptions = {}) => {
      const { kind } = question;
      if (kind !== 'draws') return put(isSlow(kind) ? beside : now, question, options);
      const whole: Question = question;
      const settled = askInParts(
        whole as QuestionOf<'draws'>,
        options,
        drawnIn.length,
        (at, ...part) => put<'draws'>(drawnIn[at]!, ...part),
      );
      return settled as Promise<Settled<Answers[Kind]>>;
    },
    begin: () => now.begin(),
    warm: (question) => {
      for (const lane of drawnIn) lane.warm(question);
    },
    stop: () => {
      now.stop();
      beside.stop();
    },
  };
}

/** Draws between two looks up where nothing runs beside: often enough to be called off. */
const drawsBetween = 50;

/** The same without a worker, for tests, the command line, and where workers cannot be had. */
export function sameThreadEngine(
  makeLookUp: () => LookUp = () => lookUpEvery(drawsBetween),
): Engine {
  interface Open {
    readonly kind: QuestionKind;
    readonly options: AskOptions;
    readonly settle: (settled: Settled<never>) => void;
  }
  const open = new Map<number, Open>();
  const take = desk((reply) => {
    const from = open.get(reply.id);
    if (!from) return;
    if ('progress' in reply) return from.options.onProgress?.(reply.progress);
    open.delete(reply.id);
    from.settle(
      reply.ok
        ? { state: 'answered', answer: reply.answer as never }
        : { state: 'failed', reason: reply.reason },
    );
  }, makeLookUp);
  const end = (id: number): void => {
    const from = open.get(id);
    if (!from) return;
    open.delete(id);
    take({ id, stop: true });
    from.settle({ state: 'superseded' });
  };
  let lastId = 0;
  return {
    ask: (question, options = {}) => {
      const id = ++lastId;
      const { kind } = question;
      return new Promise((resolve) => {
        for (const [older, { kind: itsKind }] of open) if (itsKind === kind) end(older);
        open.set(id, { kind, options, settle: resolve });
        if (options.signal?.aborted) return end(id);
        options.signal?.addEventListener('abort', () => end(id), { once: true });
        // A question asked in the same breath takes this one's place before it costs anything.
        void Promise.resolve().then(() => {
          if (open.has(id)) take({ id, question });
        });
      });
    },
    stop: () => {
      for (const id of [...open.keys()]) end(id);
    },
  };
}

/** The program's own worker. */
export const startSeasonWorker = (): WorkerLike =>
  new Worker(new URL('./season.worker.ts', import.meta.url), { type: 'module' }) as WorkerLike;
