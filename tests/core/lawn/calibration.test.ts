import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  joinedSpread,
  learn,
  likelyAround,
  logSpreadOfRange,
  logSpreadOfRow,
  spreadOfSum,
  startCalibration,
} from '../../../app/core/lawn/calibration';
import { normal, seeded } from '../../../app/core/random';

const row = { low: 350, typical: 450, high: 520 };

describe('what logged mowings teach of a lawn', () => {
  test('before any, the kind’s own range stands', () => {
    const start = startCalibration(row);
    expect([start.logRatio, start.mowings]).toEqual([0, 0]);
    expect(start.spread).toBe(logSpreadOfRow(row));
  });

  test('two equally sure numbers meet half way, on the scale of ratios', () => {
    const start = { logRatio: 0, spread: 0.3, mowings: 0 };
    const after = learn(start, 4, 1, 0.3);
    expect(Math.exp(after.logRatio)).toBeCloseTo(2, 12);
    expect(after.spread).toBeCloseTo(0.3 / Math.SQRT2, 12);
    expect(after.mowings).toBe(1);
  });

  test('the range narrows with each mowing, whatever it says, and order does not matter', () => {
    const weighed = fc.array(
      fc.tuple(
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
      ),
      { minLength: 1, maxLength: 20 },
    );
    fc.assert(
      fc.property(weighed, (mowings) => {
        let known = startCalibration(row);
        for (const [ratio, error] of mowings) {
          const next = learn(known, ratio, 1, error);
          expect(next.spread).toBeLessThan(known.spread);
          known = next;
        }
        const back = mowings.reduceRight(
          (before, [ratio, error]) => learn(before, ratio, 1, error),
          startCalibration(row),
        );
        expect(back.logRatio).toBeCloseTo(known.logRatio, 9);
        expect(back.spread).toBeCloseTo(known.spread, 9);
      }),
      { numRuns: 500, seed: 20_130_615 },
    );
  });

  test('a lawn that gives twice as much is found out', () => {
    let known = startCalibration(row);
    for (let at = 0; at < 50; at++) known = learn(known, 2, 1, 0.4);
    expect(Math.exp(known.logRatio)).toBeGreaterThan(1.7);
    expect(Math.exp(known.logRatio)).toBeLessThan(2);
  });

  test('nothing is learnt from nothing', () => {
    const start = startCalibration(row);
    expect(learn(start, 0, 1, 0.3)).toBe(start);
    expect(learn(start, 1, 0, 0.3)).toBe(start);
  });
});

describe('ranges of log-normal numbers', () => {
  test('there and back', () => {
    expect(logSpreadOfRange(likelyAround(77, 0.4))).toBeCloseTo(0.4, 12);
    expect(likelyAround(77, 0)).toEqual({ low: 77, typical: 77, high: 77 });
  });

  test('independent spreads join by their squares', () => {
    expect(joinedSpread(0.3, 0.4)).toBeCloseTo(0.5, 12);
  });

  // checked against 20 000 seeded draws of the sum itself
  test('a sum of several is surer than one of them', () => {
    const parts = [
      { median: 2, spread: 0.5 },
      { median: 3, spread: 0.4 },
      { median: 5, spread: 0.3 },
    ];
    const random = seeded(20_130_615);
    const sums = Array.from({ length: 20_000 }, () =>
      parts.reduce(
        (sum, { median, spread }) => sum + median * Math.exp(spread * normal(random)),
        0,
      ),
    ).map(Math.log);
    const mean = sums.reduce((sum, one) => sum + one, 0) / sums.length;
    const drawn = Math.sqrt(
      sums.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (sums.length - 1),
    );
    expect(Math.abs(spreadOfSum(parts) / drawn - 1)).toBeLessThan(0.05);
    expect(spreadOfSum([{ median: 4, spread: 0.35 }])).toBeCloseTo(0.35, 12);
    expect(spreadOfSum([])).toBe(0);
  });
});
