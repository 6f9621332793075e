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

  // model 10: ranges shown are 10-90 of draws, never the sum of ends
  test('the range of a heap long done is that of its row alone: 10 and 90 per cent points', () => {
    const done = heapOn([entry], 100_000, heapRows);
    const { low, typical, high } = heapRows.dryLost;
    const logit = (share: number): number => Math.log(share / (1 - share));
    // the ends of a row are its 5 and 95 per cent points (normal 1.645), those shown 1.282
    const way = 1.2815515655446004 / 1.6448536269514722;
    const shown = (end: number): number =>
      1 / (1 + Math.exp(-(logit(typical) + way * (logit(end) - logit(typical)))));
    expect(done.dryKilograms.low).toBeCloseTo(10 * (1 - shown(high)), 0);
    expect(done.dryKilograms.high).toBeCloseTo(10 * (1 - shown(low)), 0);
    expect(done.dryKilograms.low).toBeGreaterThan(10 * (1 - high) + 0.1);
    expect(done.dryKilograms.high).toBeLessThan(10 * (1 - low) - 0.1);
  });

  test('of a young heap it is narrower than all rows at their far ends at once', () => {
    const { dryKilograms } = heapOn([entry], 160, heapRows);
    const { dryLost, lossDays } = heapRows;
    const end = (loss: number, days: number): number => 10 * (1 - loss * -Math.expm1(-60 / days));
    expect(dryKilograms.low).toBeGreaterThan(end(dryLost.high, lossDays.low) + 0.2);
    expect(dryKilograms.high).toBeLessThan(end(dryLost.low, lossDays.high) - 0.2);
    expect(heapOn([entry], 160, heapRows)).toEqual(heapOn([entry], 160, heapRows));
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
