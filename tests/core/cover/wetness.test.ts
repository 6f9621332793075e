import { describe, expect, test } from 'vitest';
import { coverFraction, coverWaterCapacity, wetnessFactor } from '../../../app/core/cover/wetness';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = typicalCoefficients();

/** Numbers: section on the cover of the model (3 g per g, 8 mm, w0 0.15, 5 m2 per kg). */
describe('the cover as a bucket and a blanket', () => {
  test('holds three times its dry weight of water, at most 8 mm', () => {
    expect(coverWaterCapacity(0, c)).toBe(0);
    expect(coverWaterCapacity(0.3, c)).toBeCloseTo(0.9, 12);
    expect(coverWaterCapacity(10, c)).toBe(8);
  });

  test('decays at 0.15 of its speed when dry, at all of it when full', () => {
    expect(wetnessFactor(0, c)).toBeCloseTo(0.15, 12);
    expect(wetnessFactor(0.5, c)).toBeCloseTo(0.575, 12);
    expect(wetnessFactor(1, c)).toBeCloseTo(1, 12);
  });

  test('hides 1 - exp(-5 kg/m2) of the ground', () => {
    expect(coverFraction(0, c)).toBe(0);
    expect(coverFraction(0.3, c)).toBeCloseTo(1 - Math.exp(-1.5), 12);
  });
});
