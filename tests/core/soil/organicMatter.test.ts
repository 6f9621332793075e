import { describe, expect, test } from 'vitest';
import { moistureFactor, soilOrganicNitrogen } from '../../../app/core/soil/organicMatter';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = { ...typicalCoefficients(), soilCarbonToNitrogen: 10 };

describe('organic nitrogen of the top 30 cm', () => {
  test('3 % organic matter, 1.2 kg/L, C:N 10: 4176 kg/ha in 20 cm (derived)', () => {
    const kilogramsPerHectare = 10 * soilOrganicNitrogen(3, 1.2, c) * (20 / 30);
    expect(Math.abs(kilogramsPerHectare - 4176)).toBeLessThanOrEqual(0.5);
  });

  // Read on the page of soilsconnect.com.au, question 97: 1.3 % carbon, 1.5 kg/L, 10 cm, a tenth of the carbon.
  test('1.3 % carbon at 1.5 kg/L: 1.95 t nitrogen per hectare in 10 cm', () => {
    const organicMatter = 1.3 * c.organicMatterPerCarbon;
    const tonnes = soilOrganicNitrogen(organicMatter, 1.5, c) / 100 / 3;
    expect(tonnes).toBeCloseTo(1.95, 10);
    expect(0.02 * 1000 * tonnes).toBeCloseTo(39, 10);
  });
});

describe('moisture (linear, recalled): 0.2 at wilting point to 1 at field capacity, not beyond', () => {
  test.each([
    [-0.5, 0.2],
    [0, 0.2],
    [0.5, 0.6],
    [1, 1],
    [1.7, 1],
  ])('%d of the available water: %d', (share, factor) =>
    expect(moistureFactor(share)).toBeCloseTo(factor, 12),
  );
});
