import { parentPort } from 'node:worker_threads';
import { sharedDraws, startDraws } from '../../../app/core/season/draws/runDraws';
import { limits } from '../../../app/tables/thresholds';
import type { DrawsAsked, DrawsReplied } from '../drawsWorkers';

/** Draws between two looks at the memory. */
const drawsPerLook = 25;

/** What this thread holds by itself: its heap as it stands, and the numbers kept outside of it. */
function heldBytes(): number {
  const { heapTotal, external } = process.memoryUsage();
  return heapTotal + external;
}

parentPort!.on('message', ({ questions }: DrawsAsked) => {
  const [first] = questions;
  let steps = 0;
  let mostBytes = heldBytes();
  const shared = first && sharedDraws(first);
  const answers = questions.map((question) => {
    const run = startDraws(question, limits, shared);
    for (let draw = 1; !run.isDone; draw++) {
      run.next();
      if (draw % drawsPerLook === 0) mostBytes = Math.max(mostBytes, heldBytes());
    }
    steps += run.steps;
    return run.answer();
  });
  const reply: DrawsReplied = { answers, steps, mostBytes };
  parentPort!.postMessage(reply);
});
parentPort!.postMessage('ready');
