import { parentPort } from 'node:worker_threads';
import { desk } from '../../../app/worker/desk';
import type { Asked } from '../../../app/worker/protocol';
import { lookUpByClock } from '../../../app/worker/slices';
import type { DrawsReplied } from '../drawsWorkers';

// The program's own desk, between this kind of worker's mouth and ears.

/** What this thread holds by itself: its heap as it stands, and the numbers kept outside of it. */
function heldBytes(): number {
  const { heapTotal, external } = process.memoryUsage();
  return heapTotal + external;
}

let mostBytes = 0;
const take = desk((reply) => {
  // it tells how far it is every slice, some twenty times a second
  mostBytes = Math.max(mostBytes, heldBytes());
  const told: DrawsReplied = { reply, mostBytes };
  parentPort!.postMessage(told);
}, lookUpByClock);

parentPort!.on('message', (asked: Asked) => take(asked));
parentPort!.postMessage('ready');
