import type { WorkerLike } from '../../app/worker/client';
import { desk } from '../../app/worker/desk';
import type { Asked, Replied } from '../../app/worker/protocol';
import { lookUpEvery } from '../../app/worker/slices';

export const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** A worker that works, in this thread: what crosses is cloned, and it looks up every ten draws. */
export class WorkingWorker implements WorkerLike {
  static made: WorkingWorker[] = [];
  readonly heard: Asked[] = [];
  readonly said: Replied[] = [];
  isGone = false;
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;
  onmessageerror: WorkerLike['onmessageerror'] = null;
  private readonly take = desk(
    (reply) => {
      this.said.push(reply);
      if (!this.isGone) this.onmessage?.({ data: structuredClone(reply) } as MessageEvent<Replied>);
    },
    () => {
      const lookUp = lookUpEvery(10);
      return () => (lookUp() === null ? null : turn());
    },
  );
  constructor() {
    WorkingWorker.made.push(this);
  }
  postMessage(message: Asked): void {
    this.heard.push(message);
    const crossed = structuredClone(message);
    setTimeout(() => {
      if (!this.isGone) this.take(crossed);
    });
  }
  terminate(): void {
    this.isGone = true;
  }
}
