// A heap's loss dies away: e^-1 of it is still to come after one time constant, by definition.
import { describe, expect, test } from 'vitest';
import { heapOn } from '../../../app/core/heap/heap';
import { heapRows } from '../../../app/tables/heap';

const entry = { day: 100, dryKilograms: 10, nitrogenGrams: 300 };

describe('what is left on a heap', () => {
  test('is all of it on the day it is put on, and nothing before', () => {
    const now = heapOn([entry], 100, heapRows);
    expect(now.dryKilograms).toEqual({ low: 10, typical: 10, high: 10 });
    expect(heapOn([entry], 99, heapRows).nitrogenGrams.typical).toBe(0);
  });

  test('after one time constant has lost 63 % of what it will lose', () => {
    const now = heapOn([entry], 100 + heapRows.lossDays.typical, heapRows);
    expect(now.dryKilograms.typical).toBeCloseTo(10 * (1 - 0.5 * (1 - Math.exp(-1))), 12);
    expect(now.nitrogenGrams.typical).toBeCloseTo(300 * (1 - 0.4 * (1 - Math.exp(-1))), 12);
  });

  test('never grows, ends at what is not lost, and its range holds its middle', () => {
    let before = Infinity;
    for (let day = 100; day < 2000; day += 50) {
      const { low, typical, high } = heapOn([entry], day, heapRows).dryKilograms;
      expect(typical).toBeLessThanOrEqual(before);
      expect(low).toBeLessThanOrEqual(typical);
      expect(high).toBeGreaterThanOrEqual(typical);
      before = typical;
    }
    expect(before).toBeCloseTo(5, 6);
  });

  test('adds up over entries, and doubles with them', () => {
    const later = { ...entry, day: 150 };
    const both = heapOn([entry, later], 200, heapRows).dryKilograms.typical;
    const each = [entry, later].map((one) => heapOn([one], 200, heapRows).dryKilograms.typical);
    expect(both).toBeCloseTo(each[0]! + each[1]!, 12);
    const double = { ...entry, dryKilograms: 20 };
    expect(heapOn([double], 200, heapRows).dryKilograms.typical).toBeCloseTo(2 * each[0]!, 12);
  });
});
