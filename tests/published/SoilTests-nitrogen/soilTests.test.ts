import { describe, expect, test } from 'vitest';
import { halfUnitsOff, readCases } from '../readCases';
import { ours, poundsAnAcre } from './ours';

const table = readCases(import.meta.dirname);
const printed = (at: number): string => table.rows[at]?.[3] ?? 'missing';

describe('organic stock and soil tests', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('source,place,quantity,printed');
    expect(table.rows).toHaveLength(ours.length);
  });

  test('carbon and nitrogen of 10 cm of soil', () => {
    expect(halfUnitsOff(ours[0]!, printed(0))).toBeLessThanOrEqual(1);
    expect(halfUnitsOff(ours[1]!, printed(1))).toBeLessThanOrEqual(1);
  });

  test('rules for pounds an acre hold at the density they stand for, and ours lies below at 1.3', () => {
    expect(halfUnitsOff(poundsAnAcre(1, 15.24, 1.47), printed(2))).toBeLessThanOrEqual(1);
    expect(halfUnitsOff(poundsAnAcre(8, 30.48, 1.47), printed(3))).toBeLessThanOrEqual(1);
    expect(halfUnitsOff(poundsAnAcre(8, 30.48, 1.84), printed(4))).toBeLessThanOrEqual(1);
    for (const at of [2, 3, 4]) expect(ours[at]).toBeLessThan(Number(printed(at)));
  });
});
