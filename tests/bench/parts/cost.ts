import {
  sharedDraws,
  startDraws,
  type DrawsQuestion,
} from '../../../app/core/season/draws/runDraws';
import { startingState } from '../../../app/core/season/startingState';
import { stepDay } from '../../../app/core/season/day';
import { flowKinds } from '../../../app/core/season/flows';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { limits } from '../../../app/tables/thresholds';
import { bigGarden } from '../bigGarden';
import { drawsQuestions } from '../drawsQuestions';
import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';

const rounds = 5;
const limit = 1.2;
const drawsOfEach = 100;
const daysAYear = 365.25;

/** Runs the draws of beds of one garden and counts the days stepped. */
function work(questions: readonly DrawsQuestion[]): number {
  const shared = sharedDraws(questions[0]!);
  let steps = 0;
  for (const question of questions) {
    const run = startDraws(question, limits, shared);
    while (!run.isDone) run.next();
    run.answer();
    steps += run.steps;
  }
  return steps;
}

/** Classes of plant material that a day steps and those of them with residue, mean of the likely runs. */
function classesADay(questions: readonly DrawsQuestion[]): { all: number; rotting: number } {
  const sum = { days: 0, all: 0, rotting: 0 };
  const flows = new Float64Array(flowKinds.length);
  for (const { input } of questions) {
    const plan = runPlan(input, lowerDepthFor(input));
    const state = startingState(input, plan.lowerDepth, plan, false);
    for (let index = 0; index <= input.lastDay - input.firstDay; index++) {
      stepDay(input, state, flows, index);
      sum.days += 1;
      sum.all += state.classes.length;
      sum.rotting += state.classes.filter(({ residue }) => residue > 0).length;
    }
  }
  return { all: sum.all / sum.days, rotting: sum.rotting / sum.days };
}

interface Cost {
  readonly steps: number;
  /** processor time [ms] */
  readonly took: number;
}

/** Each of some works in turn, over and over, so that all meet the same moods of the machine. */
function costs(works: readonly (readonly DrawsQuestion[])[], say: (line: string) => void): Cost[] {
  const times = works.map((): number[] => []);
  const steps = works.map((questions) => work(questions));
  for (let round = 0; round < rounds; round++)
    works.forEach((questions, at) => {
      const before = process.cpuUsage();
      work(questions);
      const { user, system } = process.cpuUsage(before);
      times[at]!.push((user + system) / 1000);
    });
  return works.map((_, at) => {
    const took = median(times[at]!);
    say(`${steps[at]} days: ${took.toFixed(0)} ms`);
    return { steps: steps[at]!, took };
  });
}

/** How cost grows with a size: time and days against those of the smallest. */
function growth(sizes: readonly number[], measured: readonly Cost[]): string[][] {
  const [first] = measured;
  return sizes.map((size, at) => {
    const { steps, took } = measured[at]!;
    const more = size / sizes[0]!;
    return [
      `${size}`,
      `${steps}`,
      took.toFixed(0),
      ((1e6 * took) / steps).toFixed(0),
      (steps / first!.steps / more).toFixed(3),
      (took / first!.took / more).toFixed(2),
    ];
  });
}

export const part: BenchPart = {
  title: 'what more beds, draws and days cost',
  run: async ({ say }) => {
    const head = ['days', 'time [ms]', 'ns a day', 'days ÷ size', 'time ÷ size'];
    const bedCounts = [3, 6, 12, 24, 48];
    const beds = costs(
      bedCounts.map((count) =>
        drawsQuestions(bigGarden({ beds: count, years: 1, seed: 1 }), 100, 1),
      ),
      say,
    );
    const drawCounts = [50, 100, 200, 400, 800];
    const twelve = bigGarden({ beds: 12, years: 1, seed: 1 });
    const draws = costs(
      drawCounts.map((count) => drawsQuestions(twelve, count, 1)),
      say,
    );
    const yearCounts = [1, 2, 4, 8];
    const years = costs(
      yearCounts.map((count) =>
        drawsQuestions(bigGarden({ beds: 12, years: count, seed: 1 }), 100, 1),
      ),
      say,
    );
    // a year of log to the day against ten of them: a bed that begins on New Year's Day has half a
    // year of log in June, and begins bare
    const log = (bedCount: number, yearCount: number, toTheDay: boolean) => ({
      words: `${bedCount} beds, ${yearCount} year${yearCount > 1 ? 's' : ''} of log${toTheDay ? '' : ' from New Year'}`,
      questions: drawsQuestions(
        bigGarden({ beds: bedCount, years: yearCount, seed: 1, toTheDay }),
        100,
        1,
      ),
    });
    const compared = [
      log(12, 1, true),
      log(60, 10, true),
      log(12, 1, false),
      log(60, 10, false),
    ] as const;
    const measured = costs(
      compared.map(({ questions }) => questions),
      say,
    );
    const rows = compared.map(({ words, questions }, at) => {
      const { took, steps } = measured[at]!;
      const { all, rotting } = classesADay(questions);
      const ratio =
        at % 2 === 0 ? null : took / steps / (measured[at - 1]!.took / measured[at - 1]!.steps);
      return [
        words,
        took.toFixed(0),
        ((daysAYear * drawsOfEach * took) / steps).toFixed(2),
        `${all.toFixed(1)}, ${rotting.toFixed(1)} of them with residue`,
        ratio === null ? '' : ratio.toFixed(2),
        ratio === null ? '' : at === 1 ? verdictOf(ratio, limit) : 'for comparison',
      ];
    });
    return `In one thread, warm, processor time, medians of ${rounds} rounds taken in turn. The last two columns are 1 where cost is in proportion.

${table(['beds (1 year, 100 draws)', ...head], growth(bedCounts, beds))}

${table(['draws (12 beds, 1 year)', ...head], growth(drawCounts, draws))}

${table(['years (12 beds, 100 draws)', ...head], growth(yearCounts, years))}

${table(
  [
    '100 draws',
    'time [ms]',
    'a bed and year [ms]',
    'classes a day steps',
    `ratio, limit ${limit}`,
    '',
  ],
  rows,
)}

A bed of ten years is not one bed ten times over: leaves and straw of earlier years lie on it and rot, joined by kind at each season's turn. Its days step so many times the plant material, and the part \`kernel\` says what the same days cost in C. Two rows begin the log on a New Year's Day, as was measured until November 2026: the one year is then five and a half months of log on bare soil and a forecast.`;
  },
};
