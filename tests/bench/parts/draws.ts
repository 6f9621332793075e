import { bigGarden } from '../bigGarden';
import { drawsQuestions } from '../drawsQuestions';
import { DrawsWorkers } from '../drawsWorkers';
import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';

const workers = 2;
const goals = [
  { count: 100, limit: 200, aim: 200 },
  { count: 1000, limit: 2000, aim: 1500 },
] as const;
const coldRounds = 5;
const warmRounds = 7;
const warmUps = 3;

interface Took {
  /** from the question's leaving to the last answer [ms] */
  readonly wall: number;
  /** processor time of the whole program in that time [ms] */
  readonly processor: number;
}

async function timed(work: () => Promise<unknown>): Promise<Took> {
  const before = process.cpuUsage();
  const start = performance.now();
  await work();
  const wall = performance.now() - start;
  const { user, system } = process.cpuUsage(before);
  return { wall, processor: (user + system) / 1000 };
}

export const part: BenchPart = {
  title: `draws of 12 beds over a year in ${workers} workers`,
  async run({ worker, say }) {
    const file = worker('drawsWorker');
    const garden = bigGarden({ beds: 12, years: 1, seed: 1 });
    const question = (count: number, seed: number) => drawsQuestions(garden, count, seed);
    const rows: string[][] = [];
    let starting: number[] = [];
    const warming: Took[] = [];
    for (const { count, limit, aim } of goals) {
      const cold: Took[] = [];
      for (let round = 0; round < coldRounds; round++) {
        const asked = question(count, 100 + round);
        const start = performance.now();
        const pool = await DrawsWorkers.start(file, workers);
        starting = [...starting, performance.now() - start];
        cold.push(await timed(() => pool.ask(asked)));
        await pool.stop();
      }
      const ready: Took[] = [];
      for (let round = 0; round < coldRounds; round++) {
        const asked = question(count, 150 + round);
        const pool = await DrawsWorkers.start(file, workers);
        warming.push(await timed(() => pool.warm()));
        ready.push(await timed(() => pool.ask(asked)));
        await pool.stop();
      }
      const pool = await DrawsWorkers.start(file, workers);
      for (let seed = 1; seed <= warmUps; seed++) await pool.ask(question(count, seed));
      const warm: Took[] = [];
      // another seed each time, so that nothing can be left over from the last
      for (let round = 0; round < warmRounds; round++) {
        const asked = question(count, 200 + round);
        warm.push(await timed(() => pool.ask(asked)));
      }
      await pool.stop();
      for (const [words, all] of [
        ['first question, straight after the start', cold],
        ['first question, once the start-up’s warming is over', ready],
        ['later questions', warm],
      ] as const) {
        const wall = median(all.map((took) => took.wall));
        const processor = median(all.map((took) => took.processor));
        say(`${count} draws, ${words}: ${wall.toFixed(0)} ms`);
        rows.push([
          `${count} draws, ${words}`,
          wall.toFixed(0),
          Math.min(...all.map((took) => took.wall)).toFixed(0),
          (processor / workers).toFixed(0),
          `${limit}${aim < limit ? `, aim ${aim}` : ''}`,
          verdictOf(wall, limit, aim),
        ]);
      }
    }
    return `The program’s own worker code, bundled as for the program, half of the beds in each of the workers. Time runs from the question's leaving to the last answer; starting the two workers takes ${median(starting).toFixed(0)} ms more, once. When its window stands, the program lets them run two beds of the sample, so that their code is fast before anybody asks: ${(median(warming.map(({ processor }) => processor)) / workers).toFixed(0)} ms of processor time a core, left lying as soon as a question comes. Medians of ${coldRounds} new pairs of workers and of ${warmRounds} questions after ${warmUps} others. Processor time is that of all threads, compiling and collecting included, shared by ${workers} cores: what the wall would be on a machine with nothing else to do.

${table(['', 'wall [ms]', 'fastest [ms]', 'processor time, a core [ms]', 'limit [ms]', ''], rows)}`;
  },
};
