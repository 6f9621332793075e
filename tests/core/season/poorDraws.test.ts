import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { mattersMost } from '../../../app/core/season/draws/mattersMost';
import { makeDraws } from '../../../app/core/season/draws/columns';
import {
  runDraws,
  sharedDraws,
  startDraws,
  type DrawsAnswer,
  type DrawsQuestion,
} from '../../../app/core/season/draws/runDraws';
import type { TestedNitrate } from '../../../app/core/season/draws/testedNitrate';
import { drawsQuestion } from '../../../app/document/drawsQuestion';
import { limits } from '../../../app/tables/thresholds';
import { exampleGarden } from '../../document/exampleGarden';

const day = dayOf('2021-06-01');
const count = 50;
const plain = (): DrawsQuestion => ({
  ...drawsQuestion(exampleGarden(), 'bed-1', dayOf('2021-06-20'), count),
  tests: [],
});
let kept: DrawsAnswer | null = null;
/** Made when a test first asks for it. */
const untested = (): DrawsAnswer => (kept ??= runDraws(plain(), limits)!);
const week = (): number => untested().nitrateDays.findIndex((one) => one >= day);
const tested = (mgPerKg: number, spread: number): DrawsQuestion => {
  const one: TestedNitrate = { day: untested().nitrateDays[week()]!, mgPerKg, spread };
  return { ...plain(), tests: [one] };
};
const farOut = (): DrawsQuestion => tested(1.6 * untested().nitrate[week()]!.high, 0.08);

describe('where few draws fit what was measured', () => {
  test('more are drawn, up to four times as many, and are worth more together', () => {
    const run = startDraws(farOut(), limits);
    const planned: number[] = [];
    while (!run.isDone) {
      run.next();
      planned.push(run.of);
    }
    const answer = run.answer();
    expect(planned[0]).toBe(count);
    expect(planned).toEqual(planned.toSorted((one, other) => one - other));
    expect(run.of).toBeGreaterThan(count);
    expect(run.of).toBeLessThanOrEqual(4 * count);
    expect([run.done, answer.count]).toEqual([run.of, run.of]);
    expect(answer.effectiveCount).toBeGreaterThan(0);
    expect(Object.values(answer.states).reduce((sum, odds) => sum + odds, 0)).toBeCloseTo(1, 12);
  });

  test('until they are worth a tenth of what was asked for, and no longer', () => {
    // wide enough that the first fifty do
    const easy = runDraws(tested(untested().nitrate[week()]!.high, 0.3), limits)!;
    expect(easy.count).toBe(count);
    expect(easy.effectiveCount).toBeGreaterThan(count / 10);
    const hard = runDraws(farOut(), limits)!;
    if (hard.count < 4 * count) expect(hard.effectiveCount).toBeGreaterThanOrEqual(count / 10);
  });

  test('the middle of all blocks lies nearer to the test than that of the first', () => {
    const at = (answer: DrawsAnswer): number => answer.nitrate[week()]!.middle;
    const target = farOut().tests[0]!.mgPerKg;
    const away = (answer: DrawsAnswer): number => Math.abs(at(answer) - target);
    expect(away(runDraws(farOut(), limits)!)).toBeLessThan(away(untested()));
  });

  test('a test out of all reach is said to be worth nothing, after all four', () => {
    const answer = runDraws(tested(1e6, 1e-6), limits)!;
    expect(answer).toMatchObject({ count: 4 * count, effectiveCount: 0 });
    expect(answer.ratio!.middle).toBeGreaterThan(0);
  });

  test('a pure function of the seed all the same, alone or shared', () => {
    const shared = sharedDraws(farOut());
    const alone = runDraws(farOut(), limits);
    expect(runDraws(farOut(), limits, undefined, shared)).toEqual(alone);
    expect(runDraws(farOut(), limits, undefined, shared)).toEqual(alone);
    expect(runDraws({ ...farOut(), seed: farOut().seed + 1 }, limits)).not.toEqual(alone);
  });

  test('what joins is drawn anew, not again', () => {
    const shared = sharedDraws(plain());
    const drawn = { name: 'any', shape: 'amount', low: 0.5, typical: 1, high: 2 } as const;
    const columns = [0, 1, 2, 3].map((at) => [...shared.block(at).draws.column(drawn)]);
    expect(new Set(columns.flat()).size).toBe(4 * count);
    expect(shared.block(2)).toBe(shared.block(2));
  });
});

test('what matters most is asked of the draws that still fit', () => {
  const draws = makeDraws(4, 200);
  const name = (one: string) =>
    ({ name: one, shape: 'amount', low: 0.5, typical: 1, high: 2 }) as const;
  const spread = {
    coefficients: [],
    layers: {},
    needs: { one: name('one'), other: name('other') },
    organicMatter: null,
  };
  const [one, other] = [draws.column(name('one')), draws.column(name('other'))];
  const outcome = one.map((value, draw) => 3 * value + other[draw]!);
  const all = mattersMost(spread, [draws], outcome, new Float64Array(200).fill(1));
  expect(all.map((influence) => influence.name)).toEqual(['one', 'other']);
  // once "one" is all but known, the other is what is left to know
  const known = one.map((value) => (Math.abs(value - 1) < 0.05 ? 1 : 0));
  const left = mattersMost(spread, [draws], outcome, known);
  expect(left.map((influence) => influence.name)).toEqual(['other', 'one']);
  expect(mattersMost(spread, [draws], new Float64Array(200).fill(2), known)).toEqual([]);
});
