import type { PlanAnswer, PlanTrouble } from '../core/plan/answer';
import { makePlan } from '../core/plan/makePlan';
import type { Solver } from '../core/plan/linearProgramme';
import type { PlanQuestion } from '../core/plan/question';
import type { Result } from '../core/result';
import { reasonOf } from './answer';
import type { PlanAsked, PlanProgress, PlanReplied } from './planProtocol';
import type { Settled } from './protocol';

export type { PlanProgress } from './planProtocol';

/** The part of a `Worker` that is used, so that tests can stand in for it. */
export interface PlanWorkerLike {
  postMessage(message: PlanAsked): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<PlanReplied>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
}

export type SettledPlan = Settled<Result<PlanAnswer, PlanTrouble>>;

/** Where plans are made. */
export interface Planner {
  /** starts what is slow to start, so that the first plan is not kept waiting */
  warm(): void;
  /** never rejects; a newer question supersedes an older one, whose work is stopped */
  plan(question: PlanQuestion, onProgress?: (progress: PlanProgress) => void): Promise<SettledPlan>;
  /** stops what is being worked at: it settles as superseded. The next question finds a worker again */
  cancel(): void;
  /** `cancel`, and lets the worker go */
  stop(): void;
}

interface Open {
  readonly id: number;
  readonly onProgress: ((progress: PlanProgress) => void) | undefined;
  readonly settle: (settled: SettledPlan) => void;
}

class WorkerPlanner implements Planner {
  private worker: PlanWorkerLike | null = null;
  private open: Open | null = null;
  private lastId = 0;
  private readonly makeWorker: () => PlanWorkerLike;

  constructor(makeWorker: () => PlanWorkerLike) {
    this.makeWorker = makeWorker;
  }

  warm(): void {
    try {
      this.started().postMessage({ kind: 'warm' });
    } catch {
      // The question itself will say what is wrong.
      this.worker = null;
    }
  }

  plan(
    question: PlanQuestion,
    onProgress?: (progress: PlanProgress) => void,
  ): Promise<SettledPlan> {
    this.cancel();
    const id = ++this.lastId;
    return new Promise((resolve) => {
      this.open = { id, onProgress, settle: resolve };
      try {
        this.started().postMessage({ kind: 'plan', id, question });
      } catch (error) {
        this.broken(reasonOf(error));
      }
    });
  }

  cancel(): void {
    const { open } = this;
    if (!open) return;
    this.open = null;
    // The solver cannot be talked to while it works: only its worker can be ended.
    this.worker?.terminate();
    this.worker = null;
    open.settle({ state: 'superseded' });
    this.warm();
  }

  stop(): void {
    this.open?.settle({ state: 'superseded' });
    this.open = null;
    this.worker?.terminate();
    this.worker = null;
  }

  private started(): PlanWorkerLike {
    if (this.worker) return this.worker;
    const worker = this.makeWorker();
    this.worker = worker;
    // What one that was ended still had to say is of no use to the next.
    const ifStill = (then: () => void): void => {
      if (this.worker === worker) then();
    };
    worker.onmessage = ({ data }) => ifStill(() => this.hear(data));
    worker.onerror = (event) => ifStill(() => this.broken(event.message || 'the worker stopped'));
    worker.onmessageerror = () =>
      ifStill(() => this.broken('an answer did not survive the crossing'));
    return worker;
  }

  private hear(reply: PlanReplied): void {
    const { open } = this;
    if (!open || reply.id !== open.id) return;
    switch (reply.kind) {
      case 'progress':
        open.onProgress?.(reply.progress);
        return;
      case 'answered':
        this.open = null;
        open.settle({ state: 'answered', answer: reply.answer });
        return;
      case 'broken':
        this.open = null;
        open.settle({ state: 'failed', reason: reply.reason });
    }
  }

  private broken(reason: string): void {
    this.worker?.terminate();
    this.worker = null;
    const { open } = this;
    this.open = null;
    open?.settle({ state: 'failed', reason });
  }
}

/** Plans made in a worker of their own, so that neither the page nor the season's worker waits. */
export const workerPlanner = (makeWorker: () => PlanWorkerLike): Planner =>
  new WorkerPlanner(makeWorker);

/** The same in this very thread, for tests and where workers cannot be had. */
export function sameThreadPlanner(solve: Solver): Planner {
  let newest = 0;
  return {
    warm: () => undefined,
    plan: async (question, onProgress) => {
      const id = ++newest;
      await Promise.resolve();
      if (id !== newest) return { state: 'superseded' };
      try {
        return { state: 'answered', answer: makePlan(question, solve, onProgress) };
      } catch (error) {
        return { state: 'failed', reason: reasonOf(error) };
      }
    },
    cancel: () => void newest++,
    stop: () => void newest++,
  };
}

/** Where no plan can be made: every question is overtaken, so that nothing waits and nothing is shown. */
export const noPlanner: Planner = {
  warm: () => undefined,
  plan: () => Promise.resolve({ state: 'superseded' }),
  cancel: () => undefined,
  stop: () => undefined,
};

/** The program's own worker. */
export const startPlanWorker = (): PlanWorkerLike =>
  new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' }) as PlanWorkerLike;
