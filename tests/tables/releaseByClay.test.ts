import { describe, expect, test } from 'vitest';
import { coefficientRows } from '../../app/tables/coefficients';
import { releaseByClay, soils, type TextureName } from '../../app/tables/soils';

/**
 * Rémy & Marin-Laflèche 1976 as recalled: of the soil's nitrogen, per cent a year at 10 deg C,
 * clay and lime in g/kg; 1.5 % at 200 g/kg of clay.
 */
const yearly = (clay: number, lime = 0): number => 120_000 / ((200 + clay) * (200 + 0.3 * lime));

describe('clay on what a soil gives of its own: said, not reckoned', () => {
  test.each(Object.entries(soils))('%s as in the recalled relation', (name, { clay }) => {
    expect(yearly(200)).toBeCloseTo(1.5, 12);
    expect(releaseByClay(name as TextureName)).toBeCloseTo(yearly(1000 * clay) / 1.5, 12);
  });

  test('what it says of any texture lies within a tenth of the range that is drawn', () => {
    const { low, typical, high } = coefficientRows.soilReleaseRate;
    for (const name of Object.keys(soils) as TextureName[]) {
      expect(typical * releaseByClay(name)).toBeGreaterThan(low * 0.9);
      expect(typical * releaseByClay(name)).toBeLessThan(high);
    }
  });

  test('a third of lime would take a third off, as is said where lime is left out', () => {
    expect(yearly(200, 333) / yearly(200)).toBeCloseTo(2 / 3, 2);
  });
});
