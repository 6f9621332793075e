import { describe, expect, test } from 'vitest';
import { drawShare } from '../../app/core/drawRow';
import { seeded } from '../../app/core/random';
import { rowOrMeasured } from '../../app/document/measuredRow';
import { materialOf } from '../../app/tables/materials';

const { moisturePercent, nitrogenPercent, densityKgPerM3 } = materialOf('seaweed')!;

describe('what was measured in place of a row', () => {
  test('has a tenth to either side', () => {
    expect(rowOrMeasured(nitrogenPercent, 3)).toMatchObject({ low: 2.7, typical: 3, high: 3.3 });
    expect(rowOrMeasured(densityKgPerM3, 200)).toMatchObject({ low: 180, high: 220 });
    expect(rowOrMeasured(nitrogenPercent, nitrogenPercent.typical)).toBe(nitrogenPercent);
  });

  test.each([12, 50, 80, 92, 95, 97])('of water, %i %%, stays water and can be drawn', (water) => {
    const { low, high } = rowOrMeasured(moisturePercent, water);
    expect(low).toBeGreaterThan(0);
    expect(high).toBeLessThan(100);
    const random = seeded(1);
    const drawn = Array.from({ length: 20 }, () =>
      drawShare({ low: low / 100, typical: water / 100, high: high / 100 }, random),
    );
    expect(new Set(drawn).size).toBe(20);
  });
});
