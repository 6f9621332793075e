import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  nitrateAsTest,
  nitrateFromTest,
  nitrateUnits,
  type NitrateUnit,
} from '../../../app/core/soil/nitrateTest';

describe('a laboratory’s nitrate in mg/kg', () => {
  // derived, mg/kg x density x depth / 10: 20 ppm in 30 cm at 1.3 kg/L is 78 kg/ha, 7.8 g/m2
  test.each<[number, NitrateUnit]>([
    [20, 'mg/kg'],
    [78, 'kg/ha'],
    [7.8, 'g/m2'],
  ])('%d %s to 30 cm at 1.3 kg/L is 20', (value, unit) => {
    expect(nitrateFromTest(value, unit, 30, 1.3)).toBeCloseTo(20, 10);
  });

  // printed (Lundy, University of California): 8 ppm more in the top foot is 32 to 40 lb per acre,
  // 4 to 5 for one; that is soil of 1.47 to 1.84 kg/L, the heavy mineral soils the note is about
  test.each([
    [32, 1.47],
    [40, 1.84],
  ])('%d lb per acre in a foot at %d kg/L is 8', (pounds, density) => {
    expect(nitrateFromTest(pounds, 'lb/acre', 30.48, density)).toBeCloseTo(8, 1);
  });

  // printed (county converter page): lb per acre = 2 x ppm for each 6 inches. 2 million lb of soil
  // in an acre furrow slice of 6 inches: 1.47 kg/L
  test('the rule of two for 6 inches', () => {
    expect(nitrateFromTest(35, 'lb/acre', 15.24, 1.47)).toBeCloseTo(35 / 2, 1);
  });

  // printed factor: 4.43 mg of nitrate hold 1 mg of nitrogen (atomic masses)
  test('whole nitrate is 4.43 times its nitrogen', () => {
    expect(nitrateFromTest(88.6, 'mg/kg', 30, 1.3, 'nitrate')).toBeCloseTo(20, 1);
  });

  test('the same amount in lighter or shallower soil is more to the kilogram', () => {
    const of = (depth: number, density: number) => nitrateFromTest(50, 'kg/ha', depth, density);
    expect(of(30, 0.8)).toBeCloseTo((of(30, 1.3) * 1.3) / 0.8, 10);
    expect(of(15, 1.3)).toBeCloseTo(2 * of(30, 1.3), 10);
  });

  test('there and back in every unit', () => {
    const positive = (max: number) => fc.double({ min: 0.1, max, noNaN: true });
    fc.assert(
      fc.property(
        positive(500),
        fc.constantFrom(...nitrateUnits),
        positive(90),
        positive(1.8),
        (value, unit, depth, density) => {
          const mgPerKg = nitrateFromTest(value, unit, depth, density);
          const back = nitrateAsTest(mgPerKg, unit, depth, density);
          expect(Math.abs(back / value - 1)).toBeLessThan(1e-12);
        },
      ),
      { numRuns: 500, seed: 20_130_528 },
    );
  });
});
