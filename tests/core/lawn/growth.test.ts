import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  expectedDryKilograms,
  growthOfYear,
  growthPotential,
  mowingQuestion,
  shareOfYearGrown,
} from '../../../app/core/lawn/growth';
import { growthCurves, growthCurveOf } from '../../../app/tables/lawnGrowth';

const cool = growthCurveOf('cool');
const warm = growthCurveOf('warm');
/** Central Park, climates: monthly means are made up here in that order of size. */
const months = [0.5, 2, 6, 12, 17, 22, 25, 24, 20, 14, 9, 3];

describe('growth on temperature', () => {
  test('1 at the best, exp(-1/2) one spread from it, less on both sides', () => {
    expect(growthPotential(cool.bestCelsius, cool)).toBe(1);
    for (const side of [-1, 1])
      expect(growthPotential(cool.bestCelsius + side * cool.spreadCelsius, cool)).toBeCloseTo(
        Math.exp(-0.5),
        12,
      );
    expect(growthPotential(-10, cool)).toBeLessThan(1e-6);
  });

  test('warm-season grass does not slow in heat, cool-season grass does', () => {
    expect(growthPotential(38, warm)).toBe(1);
    expect(growthPotential(35, cool)).toBeLessThan(0.1);
  });

  // 68 F and 88 F are printed as the best of cool- and warm-season turf
  test('the rows say what was read', () => {
    expect(growthCurves.cool.best.typical).toBeCloseTo((68 - 32) / 1.8, 0);
    expect(growthCurves.warm.best.typical).toBeCloseTo((88 - 32) / 1.8, 0);
  });
});

describe('what a lawn can have grown', () => {
  test('a whole year at the normals is the whole yearly yield', () => {
    const year = growthOfYear(months, cool);
    const days = months.flatMap((mean, month) =>
      Array.from<number>({
        length: [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month] ?? 0,
      }).fill(mean),
    );
    const share = shareOfYearGrown(days, months, cool);
    // February has 28.25 days in a normal year
    expect(share).toBeCloseTo(1 - (0.25 * growthPotential(2, cool)) / year, 12);
    expect(expectedDryKilograms(220, 450, 1)).toBeCloseTo(99, 12);
  });

  test('days add up, and order does not matter', () => {
    const means = fc.array(fc.double({ min: -20, max: 38, noNaN: true }), { maxLength: 30 });
    fc.assert(
      fc.property(means, means, (one, other) => {
        const share = (days: number[]): number => shareOfYearGrown(days, months, cool);
        expect(share([...one, ...other])).toBeCloseTo(share(one) + share(other), 10);
        expect(share([...one].reverse())).toBeCloseTo(share(one), 10);
      }),
      { numRuns: 1000, seed: 20_130_615 },
    );
  });

  test('where it never grows nothing is expected', () => {
    const frozen: number[] = Array.from<number>({ length: 12 }).fill(-300);
    expect(shareOfYearGrown([20], frozen, cool)).toBe(0);
  });
});

describe('a mowing that is asked about', () => {
  // a week in May at 450 g/m2 a year on 220 m2; 2 1/2 bags of 2.26 kg dry are believable, 20 are not
  const week: number[] = Array.from<number>({ length: 7 }).fill(17);
  const grown = expectedDryKilograms(220, 450, shareOfYearGrown(week, months, cool));

  test('over three times what can have grown', () => {
    expect(mowingQuestion(2.5 * 2.26, grown)).toBeNull();
    const question = mowingQuestion(20 * 2.26, grown);
    expect(question?.times).toBeGreaterThan(3);
    expect(question?.expectedDryKilograms).toBe(grown);
  });

  test('three times is the line', () => {
    expect(mowingQuestion(3 * grown, grown)).toBeNull();
    expect(mowingQuestion(3.01 * grown, grown)).not.toBeNull();
    expect(mowingQuestion(1, 0)?.times).toBe(Infinity);
  });
});
