import { describe, expect, test } from 'vitest';
import { mixCarbonToNitrogen } from '../../../app/core/cover/mix';
import { kilogramsPerPound } from '../../../app/core/conversions';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);

describe('handout: hay, kitchen scraps and coffee grounds, printed to one decimal', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('material,pounds,carbon_percent_as_is,nitrogen_percent_as_is');
    expect(table.rows).toHaveLength(3);
  });

  test('34.7, in pounds or in kilograms', () => {
    for (const scale of [1, kilogramsPerPound]) {
      const ratio = mixCarbonToNitrogen(
        table.rows.map(([, pounds, carbon, nitrogen]) => ({
          freshKilograms: Number(pounds) * scale,
          moistureFraction: 0,
          carbonFraction: Number(carbon) / 100,
          nitrogenFraction: Number(nitrogen) / 100,
        })),
      );
      expect(ratio.ok && halfUnitsOff(ratio.value, '34.7')).toBeLessThanOrEqual(1);
    }
  });
});
