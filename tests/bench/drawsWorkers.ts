import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { DrawsQuestion } from '../../app/core/season/draws/runDraws';
import { warmQuestion } from '../../app/document/warmQuestion';
import { limits } from '../../app/tables/thresholds';
import type { Asked, Replied } from '../../app/worker/protocol';

const restMilliseconds = 250;

export interface DrawsReplied {
  readonly reply: Replied;
  /** the most the worker was seen to hold so far */
  readonly mostBytes: number;
}

/** One worker's beds, answered. */
export interface DrawsDone {
  readonly answers: unknown;
  readonly mostBytes: number;
}

/** Worker threads among which the beds of a garden are dealt out. */
export class DrawsWorkers {
  private readonly workers: readonly Worker[];
  private lastId = 0;

  private constructor(workers: readonly Worker[]) {
    this.workers = workers;
  }

  /** Ready when all have loaded the engine. */
  static async start(file: URL, count: number): Promise<DrawsWorkers> {
    const workers = Array.from({ length: count }, () => new Worker(file));
    await Promise.all(workers.map((worker) => once(worker, 'message')));
    return new DrawsWorkers(workers);
  }

  /** Gets all of them warm as the program does when it starts; ready when they have come to rest. */
  async warm(): Promise<void> {
    const question = { kind: 'draws', beds: warmQuestion(), limits } as const;
    for (const worker of this.workers) {
      const asked: Asked = { id: 0, warm: question };
      worker.postMessage(asked);
    }
    // no reply comes to it: it is over when the program does nothing any more
    for (let isBusy = true; isBusy;) {
      const before = process.cpuUsage();
      await new Promise((resolve) => setTimeout(resolve, restMilliseconds));
      const { user, system } = process.cpuUsage(before);
      isBusy = (user + system) / 1000 > restMilliseconds / 10;
    }
  }

  /** Throws what a worker failed by. */
  ask(questions: readonly DrawsQuestion[]): Promise<DrawsDone[]> {
    const dealt = this.workers.flatMap((worker, at) => {
      const beds = questions.filter((_, bed) => bed % this.workers.length === at);
      return beds.length > 0 ? [{ worker, beds }] : [];
    });
    return Promise.all(
      dealt.map(({ worker, beds }) => {
        const id = ++this.lastId;
        const asked: Asked = { id, question: { kind: 'draws', beds, limits } };
        return new Promise<DrawsDone>((resolve, reject) => {
          const hear = ({ reply, mostBytes }: DrawsReplied): void => {
            if (reply.id !== id || !('ok' in reply)) return;
            worker.off('message', hear);
            if (reply.ok) resolve({ answers: reply.answer, mostBytes });
            else reject(new Error(reply.reason));
          };
          worker.on('message', hear);
          worker.postMessage(asked);
        });
      }),
    );
  }

  async stop(): Promise<void> {
    await Promise.all(this.workers.map((worker) => worker.terminate()));
  }
}
