import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { growthPotential } from '../../../app/core/lawn/growth';
import { lawnDays, type LawnWeather } from '../../../app/core/lawn/lawnWater';
import { growthCurveOf } from '../../../app/tables/lawnGrowth';
import { lawnGroundOf } from '../../../app/tables/lawnGrowthWater';

const curve = growthCurveOf('cool');
const ground = lawnGroundOf('cool', 'loam');
const days = (count: number, mean: number, rain: number, et0: number): LawnWeather => ({
  meanCelsius: Array<number>(count).fill(mean),
  rainMillimetres: Array<number>(count).fill(rain),
  evapotranspiration: Array<number>(count).fill(et0),
});

describe('water and growth under a lawn', () => {
  // Allen et al. 1998, table 12 and 22: turf of the cool season Kc 0.95, p 0.40; table 19, loam,
  // middle of 0.20-0.30 less 0.07-0.17: 0.13 m3/m3, times half a metre of roots
  test('the ground is that of the tables', () => {
    expect(ground.cropCoefficient).toBe(0.95);
    expect(ground.depletionShare).toBe(0.4);
    expect(ground.available).toBeCloseTo(65, 10);
  });

  test('as long as rain keeps up, warmth alone counts', () => {
    const { growth, water } = lawnDays(days(60, 17, 5, 4), ground, curve);
    expect(new Set(water)).toEqual(new Set([1]));
    expect(growth[59]).toBe(growthPotential(17, curve));
  });

  // FAO-56 eq. 81, 84, 85 by hand: 5 mm x 0.95 a day from a full 65 mm, p 0.4 + 0.04 (5 - 4.75)
  test('without rain: full use until the easy water is gone, then ever less, never below nought', () => {
    const { water } = lawnDays(days(60, 20, 0, 5), ground, curve);
    const readily = (0.4 + 0.04 * 0.25) * 65;
    const easyDays = Math.ceil(readily / 4.75);
    expect(water[easyDays - 1]).toBe(1);
    expect(water[easyDays + 1]).toBeLessThan(1);
    for (let day = 1; day < 60; day++) expect(water[day]!).toBeLessThanOrEqual(water[day - 1]!);
    expect(water[59]).toBeGreaterThanOrEqual(0);
    expect(water[59]).toBeLessThan(0.1);
  });

  test('one good rain brings it back the same day', () => {
    const weather = days(40, 20, 0, 5);
    const rainMillimetres = Array.from(weather.rainMillimetres);
    rainMillimetres[39] = 65;
    const { water } = lawnDays({ ...weather, rainMillimetres }, ground, curve);
    expect(water[38]).toBeLessThan(0.3);
    expect(water[39]).toBe(1);
  });

  test('more rain on any day never means less growth on any other', () => {
    const rain = fc.array(fc.double({ min: 0, max: 30, noNaN: true }), {
      minLength: 30,
      maxLength: 30,
    });
    fc.assert(
      fc.property(
        rain,
        fc.nat(29),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (given, at, more) => {
          const weather = { ...days(30, 20, 0, 5), rainMillimetres: given };
          const wetter = given.map((one, day) => (day === at ? one + more : one));
          const before = lawnDays(weather, ground, curve).growth;
          const after = lawnDays({ ...weather, rainMillimetres: wetter }, ground, curve).growth;
          before.forEach((one, day) => expect(after[day]!).toBeGreaterThanOrEqual(one - 1e-9));
        },
      ),
      { numRuns: 300, seed: 20_130_607 },
    );
  });
});
