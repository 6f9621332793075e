import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gramsPerM2FromMgPerKg, mgPerKgFromGramsPerM2 } from '../../../app/core/units';

/** Derived: mg/kg x bulk density x depth, by hand for an ordinary soil and a light one. */
const cases = [
  ['20 mg/kg in 30 cm at 1.3 kg/L', 20, 1.3, 30, '7.8'],
  ['20 mg/kg in 30 cm at 0.8 kg/L', 20, 0.8, 30, '4.8'],
] as const;

describe("a lab's mg/kg as g/m2 of bed", () => {
  test.each(cases)('%s', (_name, mgPerKg, density, depth, printed) => {
    expect(gramsPerM2FromMgPerKg(mgPerKg, density, depth)).toBeCloseTo(Number(printed), 10);
  });

  // Derived: lb per acre per foot = 2.72 x bulk density x mg/kg; 3.54 at 1.3 and 4.0 at 1.47.
  test.each([
    [1.3, '3.54'],
    [1.47, '4.00'],
  ])('one mg/kg in a foot at %d kg/L is %s lb per acre', (density, printed) => {
    const gramsPerM2PerPoundPerAcre = 453.59237 / 4046.8564224;
    const pounds = gramsPerM2FromMgPerKg(1, density, 30.48) / gramsPerM2PerPoundPerAcre;
    expect(Math.abs(pounds - Number(printed))).toBeLessThanOrEqual(0.005);
  });

  test('there and back', () => {
    const positive = (max: number) => fc.double({ min: 0.1, max, noNaN: true });
    fc.assert(
      fc.property(positive(200), positive(2), positive(60), (mgPerKg, density, depth) => {
        const back = mgPerKgFromGramsPerM2(
          gramsPerM2FromMgPerKg(mgPerKg, density, depth),
          density,
          depth,
        );
        expect(Math.abs(back / mgPerKg - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 1000, seed: 20_130_601 },
    );
  });
});
