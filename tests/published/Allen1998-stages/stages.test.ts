import { describe, expect, test } from 'vitest';
import { halfUnitsOff, readCases } from '../readCases';
import { stageDaysOf } from './ours';

const table = readCases(import.meta.dirname);

describe('FAO-56 Table 11: lengths of stages, to the day', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('crop,region,initial,development,middle,late');
    expect(table.rows).toHaveLength(28);
  });

  test.each(table.rows)('%s, %s: %s, %s, %s, %s', (crop = '', _region, ...printed) => {
    stageDaysOf(crop).forEach((days, at) => {
      expect(halfUnitsOff(days, printed[at]!)).toBeLessThanOrEqual(1);
    });
  });
});
