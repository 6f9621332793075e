import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandOf } from '../../../app/core/season/draws/bands';
import { dotsDrawn, quantileDots } from '../../../app/core/season/draws/quantileDots';

const draws = fc.array(
  fc.tuple(
    fc.double({ min: 0, max: 9, noNaN: true }),
    fc.double({ min: 0, max: 5, noNaN: true }).map((weight) => (weight < 0.1 ? 0 : weight)),
  ),
  { minLength: 1, maxLength: 200 },
);
const columns = (pairs: readonly (readonly [number, number])[]) =>
  [
    Float64Array.from(pairs, ([value]) => value),
    Float64Array.from(pairs, ([, weight]) => weight),
  ] as const;

describe('a distribution as dots', () => {
  test('forty draws alike in weight: the 1st, 3rd, 5th … of them', () => {
    const values = Float64Array.from({ length: 40 }, (_, at) => (at * 7) % 40);
    const dots = quantileDots(values, new Float64Array(40).fill(0.3));
    expect(dots).toEqual(Array.from({ length: 20 }, (_, at) => 2 * at));
  });

  test('a draw of three times the weight has three times the dots', () => {
    const dots = quantileDots(Float64Array.of(5, 1), Float64Array.of(1, 3));
    expect(dots.filter((value) => value === 1)).toHaveLength(15);
    expect(dots.filter((value) => value === 5)).toHaveLength(5);
  });

  test('law: as many as asked, rising, and past any line as much of the weight, within one dot', () => {
    fc.assert(
      fc.property(draws, fc.double({ min: 0, max: 9, noNaN: true }), (pairs, line) => {
        const [values, weights] = columns(pairs);
        const all = weights.reduce((sum, weight) => sum + weight, 0);
        const dots = quantileDots(values, weights);
        if (all === 0) {
          expect(dots).toEqual([]);
          return;
        }
        expect(dots).toHaveLength(dotsDrawn);
        expect([...dots].sort((one, other) => one - other)).toEqual(dots);
        const past = pairs.reduce((sum, [value, weight]) => sum + (value > line ? weight : 0), 0);
        const counted = dots.filter((value) => value > line).length / dotsDrawn;
        expect(Math.abs(counted - past / all)).toBeLessThanOrEqual(1 / dotsDrawn);
        // eight draws of ten lie within the band: so do 16 dots of 20, but for those on its ends
        const { low, high } = bandOf(values, weights);
        const inside = dots.filter((value) => value >= low && value <= high).length;
        expect(inside).toBeGreaterThanOrEqual(16);
      }),
    );
  });
});
