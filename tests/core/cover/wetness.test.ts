import { describe, expect, test } from 'vitest';
import {
  coverFraction,
  coverWaterCapacity,
  fillOf,
  wetnessFactor,
} from '../../../app/core/cover/wetness';
import { meanOfDrying } from '../../../app/core/soil/water';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = typicalCoefficients();

/** Numbers: rows of the cover (3 g per g, 8 mm, w0 0.15, 5 m2 per kg). */
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

  test('is never more than full, and without dry matter holds nothing', () => {
    expect(fillOf(1, 4)).toBe(0.25);
    expect(fillOf(5, 4)).toBe(1);
    expect(fillOf(5, 0)).toBe(0);
  });

  test('over a day it holds the mean of a straight fall from its wettest', () => {
    expect(meanOfDrying(4, 0)).toBe(4);
    expect(meanOfDrying(4, 4)).toBe(2);
    // dry after a quarter of the day, at 2 mm in the mean till then
    expect(meanOfDrying(4, 16)).toBe(0.5);
    expect(meanOfDrying(0, 5)).toBe(0);
    expect(meanOfDrying(0, 0)).toBe(0);
  });

  test('hides 1 - exp(-5 kg/m2) of the ground', () => {
    expect(coverFraction(0, c)).toBe(0);
    expect(coverFraction(0.3, c)).toBeCloseTo(1 - Math.exp(-1.5), 12);
  });
});
