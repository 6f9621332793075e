import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { Compared } from './compareGardens';

export interface PlayerData {
  readonly solverFolder: string;
}

/**
 * Plays gardens in so many threads at once; each gets the next garden when it is done with one.
 *
 * @param tell told of each garden as it is done, in any order
 * @returns rejects with what a thread failed by
 */
export async function playGardens(
  file: URL,
  data: PlayerData,
  seeds: readonly number[],
  threads: number,
  tell: (done: Compared) => void,
): Promise<void> {
  const waiting = [...seeds];
  const play = async (): Promise<void> => {
    const worker = new Worker(file, { workerData: data });
    try {
      await once(worker, 'message');
      for (let seed = waiting.shift(); seed !== undefined; seed = waiting.shift()) {
        const answer = once(worker, 'message') as Promise<[Compared]>;
        worker.postMessage(seed);
        const [done] = await answer;
        tell(done);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(threads, seeds.length) }, play));
}
