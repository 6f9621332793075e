import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '../../app/charts/spread';

const places = fc
  .array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1, maxLength: 12 })
  .map((list) => list.toSorted((a, b) => a - b));

describe('law: labels', () => {
  test('keep their order and their distance, and stay inside when they fit', () => {
    fc.assert(
      fc.property(places, (wanted) => {
        const placed = spread(wanted, 20, 0, 300);
        expect(placed).toHaveLength(wanted.length);
        placed.forEach((place, index) => {
          if (index > 0) expect(place - (placed[index - 1] ?? 0)).toBeGreaterThan(20 - 1e-9);
          expect(place).toBeGreaterThan(-1e-9);
          expect(place).toBeLessThan(300 + 1e-9);
        });
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  test('that stand far enough apart are not moved', () => {
    expect(spread([10, 40, 90], 20, 0, 100)).toEqual([10, 40, 90]);
  });

  test('two on one spot go to both sides of it', () => {
    expect(spread([50, 50], 20, 0, 100)).toEqual([40, 60]);
  });

  test('too many for the room start at its top and run on', () => {
    expect(spread([5, 5, 5], 20, 0, 30)).toEqual([0, 20, 40]);
  });
});
