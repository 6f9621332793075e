import { describe, expect, test } from 'vitest';
import { sharedDraws, startDraws, type DrawsQuestion } from '../../app/core/season/draws/runDraws';
import { startingState } from '../../app/core/season/startingState';
import { stepDay } from '../../app/core/season/day';
import { flowKinds } from '../../app/core/season/flows';
import { lowerDepthFor, runPlan } from '../../app/core/season/runPlan';
import { limits } from '../../app/tables/thresholds';
import { remnant } from '../../app/core/cover/leftOver';
import { bigGarden, type GardenSize } from './bigGarden';
import { drawsQuestions } from './drawsQuestions';

const seed = 1;
const questionsOf = (size: Omit<GardenSize, 'seed'>, count: number): DrawsQuestion[] =>
  drawsQuestions(bigGarden({ ...size, seed }), count, seed);

/** Days stepped and draws run for all beds of a garden. */
function workOf(questions: readonly DrawsQuestion[]): { steps: number; draws: number } {
  const shared = sharedDraws(questions[0]!);
  const work = { steps: 0, draws: 0 };
  for (const question of questions) {
    const run = startDraws(question, limits, shared);
    while (!run.isDone) run.next();
    work.steps += run.steps;
    work.draws += run.done;
  }
  return work;
}

const daysOf = ({ input }: DrawsQuestion): number => input.lastDay - input.firstDay + 1;

describe('the work of draws is in proportion', () => {
  const { steps: least } = workOf(questionsOf({ beds: 3, years: 1 }, 4));

  test.each([6, 12])('to beds: %i', (beds) => {
    expect(workOf(questionsOf({ beds, years: 1 }, 4)).steps / least).toBe(beds / 3);
  });

  test.each([8, 20])('to draws: %i', (count) => {
    expect(workOf(questionsOf({ beds: 3, years: 1 }, count)).steps / least).toBe(count / 4);
  });

  test.each([2, 5])('to days: %i years', (years) => {
    const questions = questionsOf({ beds: 3, years }, 4);
    const days = daysOf(questions[0]!);
    // as many leap years as there are
    expect(days / 365).toBeCloseTo(years, 2);
    expect(workOf(questions).steps / least).toBe(days / 365);
  });

  test('no day is stepped but for a draw, and each draw steps each day once', () => {
    const questions = questionsOf({ beds: 4, years: 1 }, 5);
    const { steps, draws } = workOf(questions);
    expect(draws).toBe(4 * 5);
    expect(steps).toBe(5 * questions.reduce((sum, question) => sum + daysOf(question), 0));
  });
});

describe('a long log does not widen a day', () => {
  const counts = (years: number) =>
    questionsOf({ beds: 5, years, today: '2013-10-31' }, 1).map(({ input }) => ({
      layers: input.layers.length / years,
      plantings: input.plantings.length / years,
      events: input.events.length / years,
    }));
  const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;

  test('beds of ten years have ten times the log of one', () => {
    for (const key of ['layers', 'plantings', 'events'] as const) {
      const [one, ten] = [1, 10].map((years) => mean(counts(years).map((bed) => bed[key])));
      // few beds in one year happen to get more or less than their share
      expect(ten! / one!).toBeGreaterThan(0.7);
      expect(ten! / one!).toBeLessThan(1.4);
    }
  });

  test('a day looks at the plantings that may stand on it, not at all of the log', () => {
    for (const { input } of questionsOf({ beds: 5, years: 10 }, 1)) {
      const { plantsFrom, plantsTo } = runPlan(input, lowerDepthFor(input));
      const looked = [...plantsFrom].map((from, day) => Math.max(0, plantsTo[day]! - from));
      expect(input.plantings.length).toBeGreaterThan(10);
      expect(Math.max(...looked)).toBeLessThanOrEqual(2);
      const standing = input.plantings.reduce(
        (sum, { startDay, clearingDay }) =>
          sum + Math.min(input.lastDay, clearingDay! + 1) - startDay + 1,
        0,
      );
      expect(looked.reduce((sum, one) => sum + one, 0)).toBe(standing);
    }
  });
});

describe('a bed of ten years carries what decays, not all it was ever given', () => {
  /** Classes stepped on each day of a run, and those that earlier seasons left in the soil, by its years. */
  const classDays = ({ input }: DrawsQuestion) => {
    const plan = runPlan(input, lowerDepthFor(input));
    const state = startingState(input, plan.lowerDepth, plan, false);
    const flows = new Float64Array(flowKinds.length);
    const seasons: { days: number; all: number }[] = [];
    const leftOnMornings: number[] = [];
    for (let index = 0; index <= input.lastDay - input.firstDay; index++) {
      const opens = plan.seasonStarts.has(index);
      if (index === 0 || opens) seasons.push({ days: 0, all: 0 });
      stepDay(input, state, flows, index);
      const season = seasons.at(-1)!;
      season.days += 1;
      season.all += state.classes.length;
      if (opens)
        leftOnMornings.push(
          state.classes.filter(({ onTop, crumb }) => !onTop && crumb === remnant).length,
        );
    }
    return { seasons, leftOnMornings };
  };
  const runs = questionsOf({ beds: 10, years: 10 }, 1).map(classDays);
  const classesIn = (from: number, to: number): number => {
    const some = runs.flatMap(({ seasons }) => seasons.slice(from, to));
    const sum = (key: 'days' | 'all') => some.reduce((all, one) => all + one[key], 0);
    return sum('all') / sum('days');
  };

  test('of what earlier seasons left in the soil there is one class of greens and one of browns', () => {
    const mornings = runs.flatMap(({ leftOnMornings }) => leftOnMornings);
    expect(mornings.length).toBe(10 * 9);
    expect(Math.max(...mornings)).toBe(2);
  });

  test('a day of the last years steps no more classes than one of the middle years', () => {
    expect(classesIn(7, 10) / classesIn(4, 7)).toBeLessThan(1.1);
    // more than in the first year, in which little lies yet
    expect(classesIn(4, 7)).toBeGreaterThan(2 * classesIn(0, 1));
  });
});

test('the same seed makes the same garden, another one another', () => {
  const size = { beds: 4, years: 2 };
  expect(bigGarden({ ...size, seed: 3 })).toEqual(bigGarden({ ...size, seed: 3 }));
  expect(bigGarden({ ...size, seed: 4 })).not.toEqual(bigGarden({ ...size, seed: 3 }));
});
