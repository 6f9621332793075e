import { describe, expect, test } from 'vitest';
import { mixCarbonToNitrogen } from '../../../app/core/cover/mix';
import { halfUnit, readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const ratioAt = (nitrogenPercent: number): number => {
  const ratio = mixCarbonToNitrogen([
    {
      freshKilograms: 3,
      moistureFraction: 0.8,
      carbonFraction: 0.4,
      nitrogenFraction: nitrogenPercent / 100,
    },
  ]);
  return ratio.ok ? ratio.value : NaN;
};

describe('NRCS Akron: nitrogen at 40 % carbon', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('ratio,nitrogen_percent');
    expect(table.rows).toHaveLength(12);
  });

  test.each(table.rows)('%s is %s % nitrogen', (ratio, printed = '') => {
    const nitrogen = Number(printed);
    // the printed ratio lies between those of the ends of the print's rounding
    expect(ratioAt(nitrogen + halfUnit(printed))).toBeLessThanOrEqual(Number(ratio));
    expect(ratioAt(nitrogen - halfUnit(printed))).toBeGreaterThanOrEqual(Number(ratio));
  });
});
