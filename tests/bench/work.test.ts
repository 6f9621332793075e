import { describe, expect, test } from 'vitest';
import { sharedDraws, startDraws, type DrawsQuestion } from '../../app/core/season/draws/runDraws';
import { lowerDepthFor, runPlan } from '../../app/core/season/runPlan';
import { limits } from '../../app/tables/thresholds';
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

test('the same seed makes the same garden, another one another', () => {
  const size = { beds: 4, years: 2 };
  expect(bigGarden({ ...size, seed: 3 })).toEqual(bigGarden({ ...size, seed: 3 }));
  expect(bigGarden({ ...size, seed: 4 })).not.toEqual(bigGarden({ ...size, seed: 3 }));
});
