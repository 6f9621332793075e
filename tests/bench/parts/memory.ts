import { bigGarden } from '../bigGarden';
import { drawsQuestions } from '../drawsQuestions';
import { DrawsWorkers } from '../drawsWorkers';
import type { BenchPart } from '../part';
import { table, verdictOf } from '../table';

const limit = 300;
const lookMilliseconds = 50;
const megabytes = (bytes: number): number => bytes / 2 ** 20;

export const part: BenchPart = {
  title: 'memory of a worker with 60 beds, 10 years, 1000 draws',
  async run({ worker, say }) {
    const questions = drawsQuestions(bigGarden({ beds: 60, years: 10, seed: 1 }), 1000, 1);
    say('the garden is made');
    const pool = await DrawsWorkers.start(worker('drawsWorker'), 1);
    const before = process.memoryUsage.rss();
    let most = before;
    const looking = setInterval(() => {
      most = Math.max(most, process.memoryUsage.rss());
    }, lookMilliseconds);
    const start = performance.now();
    const replies = await pool.ask(questions);
    const seconds = (performance.now() - start) / 1000;
    clearInterval(looking);
    await pool.stop();
    const held = megabytes(Math.max(...replies.map(({ mostBytes }) => mostBytes)));
    const grown = megabytes(most - before);
    const steps = questions.reduce(
      (sum, { input, count }) => sum + count * (input.lastDay - input.firstDay + 1),
      0,
    );
    return `One worker alone, ${(steps / 1e6).toFixed(0)} million days in ${seconds.toFixed(0)} s. Held is the worker's own heap, free room in it included, and its arrays; grown is what the whole program took more from the system than before the question.

${table(
  ['', 'most [MB]', `limit ${limit} MB`],
  [
    ['held by the worker', held.toFixed(0), verdictOf(held, limit)],
    ['grown, whole program', grown.toFixed(0), verdictOf(grown, limit)],
  ],
)}`;
  },
};
