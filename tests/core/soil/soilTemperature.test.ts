import { describe, expect, test } from 'vitest';
import { soilTemperatureAfter } from '../../../app/core/soil/temperature';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = typicalCoefficients();
const after = (days: number, start: number, air: number, covered: number): number => {
  let soil = start;
  for (let day = 0; day < days; day++) soil = soilTemperatureAfter(soil, air, covered, c);
  return soil;
};

/** Rates 0.17, 0.4 and 1.5 of the section on temperature of the model (assumed). */
describe('soil follows the air', () => {
  test('bare: 0.17 of the way in a day, all of it in the end', () => {
    expect(after(1, 10, 20, 0)).toBeCloseTo(11.7, 12);
    expect(after(300, 10, 20, 0)).toBeCloseTo(20, 9);
  });

  // Parker & Larson 1962 (abstract): 1-2 C cooler under mulch.
  test('covered: slower, and 1.5 C cooler once it is warm', () => {
    expect(after(1, 10, 20, 1)).toBeCloseTo(10 + 0.17 * 0.6 * (20 - 1.5 - 10), 12);
    expect(after(500, 10, 20, 1)).toBeCloseTo(18.5, 9);
    expect(after(500, 10, 12, 1)).toBeCloseTo(12 - 0.75, 9);
  });

  test('a cover does not cool the soil in the cold half of the year', () => {
    expect(after(500, 10, 8, 1)).toBeCloseTo(8, 9);
    expect(after(500, 10, -3, 1)).toBeCloseTo(-3, 9);
  });
});
