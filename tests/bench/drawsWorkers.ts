import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { DrawsAnswer, DrawsQuestion } from '../../app/core/season/draws/runDraws';

export interface DrawsAsked {
  readonly questions: readonly DrawsQuestion[];
}

export interface DrawsReplied {
  readonly answers: readonly DrawsAnswer[];
  /** days stepped */
  readonly steps: number;
  /** the most this worker was seen to hold */
  readonly mostBytes: number;
}

/** Worker threads among which the beds of a garden are dealt out. */
export class DrawsWorkers {
  private readonly workers: readonly Worker[];

  private constructor(workers: readonly Worker[]) {
    this.workers = workers;
  }

  /** Ready when all have loaded the engine. */
  static async start(file: URL, count: number): Promise<DrawsWorkers> {
    const workers = Array.from({ length: count }, () => new Worker(file));
    await Promise.all(workers.map((worker) => once(worker, 'message')));
    return new DrawsWorkers(workers);
  }

  /** @returns a reply of each worker that was given a bed */
  ask(questions: readonly DrawsQuestion[]): Promise<DrawsReplied[]> {
    const dealt = this.workers.flatMap((worker, at) => {
      const own = questions.filter((_, bed) => bed % this.workers.length === at);
      return own.length > 0 ? [{ worker, questions: own }] : [];
    });
    return Promise.all(
      dealt.map(async ({ worker, questions: own }) => {
        const asked: DrawsAsked = { questions: own };
        const reply = once(worker, 'message') as Promise<[DrawsReplied]>;
        worker.postMessage(asked);
        return (await reply)[0];
      }),
    );
  }

  async stop(): Promise<void> {
    await Promise.all(this.workers.map((worker) => worker.terminate()));
  }
}
