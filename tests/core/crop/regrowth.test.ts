import { describe, expect, test } from 'vitest';
import { dayFromParts, monthOf } from '../../../app/core/days';
import { regrowthDay } from '../../../app/core/crop/regrowth';
import { newYorkNormals } from '../season/handMadeBed';

const mirrored = {
  ...newYorkNormals,
  minimumCelsius: newYorkNormals.minimumCelsius.map(
    (_low, month) => newYorkNormals.minimumCelsius[(month + 6) % 12]!,
  ),
  maximumCelsius: newYorkNormals.maximumCelsius.map(
    (_high, month) => newYorkNormals.maximumCelsius[(month + 6) % 12]!,
  ),
};
const first = dayFromParts(2013, 1, 1);

// Monthly means of the normals: January 0.95, February 2.15, March 6.0, April 12.05, May 17.35 C.
describe('the day on which a plant grows again', () => {
  test.each([
    [4, 2, 3],
    [7, 3, 3],
    [10, 4, 4],
    [15, 4, 5],
  ])('at a base of %d C: between the months whose means lie on either side', (base, from, to) => {
    const month = monthOf(regrowthDay(newYorkNormals, first, base));
    expect(month).toBeGreaterThanOrEqual(from);
    expect(month).toBeLessThanOrEqual(to);
  });

  test('a warmer base is never earlier', () => {
    let before = first;
    for (let base = -3; base <= 20; base += 0.5) {
      const day = regrowthDay(newYorkNormals, first, base);
      expect(day).toBeGreaterThanOrEqual(before);
      before = day;
    }
  });

  test('where winter is never below the base: as soon as the year turns', () => {
    const mild = {
      ...newYorkNormals,
      minimumCelsius: newYorkNormals.minimumCelsius.map((low) => low + 12),
      maximumCelsius: newYorkNormals.maximumCelsius.map((high) => high + 12),
    };
    const day = regrowthDay(mild, first, 4);
    expect(day).toBeGreaterThan(first);
    expect(day).toBeLessThan(first + 31);
  });

  test('half a year later where the seasons are turned round', () => {
    const north = regrowthDay(newYorkNormals, first, 7) - first;
    const south = regrowthDay(mirrored, dayFromParts(2013, 7, 1), 7) - dayFromParts(2013, 7, 1);
    // July to September has two days more than January to March
    expect(Math.abs(north - south)).toBeLessThanOrEqual(2);
  });

  test('a season that begins in spring begins with it; one that begins in autumn waits', () => {
    const spring = dayFromParts(2013, 5, 1);
    expect(regrowthDay(newYorkNormals, spring, 7)).toBe(spring);
    const autumn = regrowthDay(newYorkNormals, dayFromParts(2013, 9, 1), 7);
    expect(monthOf(autumn)).toBe(3);
  });

  test('where it is never warm enough: with the season', () => {
    expect(regrowthDay(newYorkNormals, first, 40)).toBe(first);
  });
});
