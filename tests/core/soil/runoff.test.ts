import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveNumberOnSlope, runoffMillimetres } from '../../../app/core/soil/runoff';
import { curveNumberOf } from '../../../app/tables/runoffRows';

describe('rain that runs off', () => {
  // 25 400/76.8 - 254 = 76.73 mm held; (74.4 - 15.35)^2/(74.4 + 61.38) = 25.68: the printed equation by hand
  test('a day of 74.4 mm on a curve number of 76.8 sheds 25.7', () => {
    expect(Math.abs(runoffMillimetres(74.4, 76.8) - 25.7)).toBeLessThanOrEqual(0.05);
  });

  test('nothing before a fifth of what the ground can hold has fallen, all of it from a roof', () => {
    const held = 25_400 / 78 - 254;
    expect(runoffMillimetres(0.2 * held, 78)).toBe(0);
    expect(runoffMillimetres(0.2 * held + 1, 78)).toBeGreaterThan(0);
    expect(runoffMillimetres(33, 100)).toBe(33);
    expect(runoffMillimetres(0, 100)).toBe(0);
    expect(runoffMillimetres(500, 0)).toBe(0);
    expect(runoffMillimetres(500, -5)).toBe(0);
  });

  test('never more than fell; more on wetter ground and in heavier rain', () => {
    const rain = fc.double({ min: 0, max: 500, noNaN: true });
    const number = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(rain, number, rain, number, (fell, curve, more, higher) => {
        const off = runoffMillimetres(fell, curve);
        expect(off).toBeGreaterThanOrEqual(0);
        expect(off).toBeLessThanOrEqual(fell + 1e-9);
        expect(runoffMillimetres(fell + more, curve)).toBeGreaterThanOrEqual(off - 1e-9);
        expect(runoffMillimetres(fell, Math.max(curve, higher))).toBeGreaterThanOrEqual(off - 1e-9);
      }),
      { numRuns: 1000, seed: 20_130_607 },
    );
  });

  test('steeper ground sheds more; the tables stand for some five in a hundred', () => {
    expect(curveNumberOnSlope(78, 0.05)).toBeCloseTo(78, 2);
    expect(curveNumberOnSlope(78, 0.15)).toBeGreaterThan(78);
    expect(curveNumberOnSlope(78, 0)).toBeLessThan(78);
  });

  // By hand: CN3 = 78 e^(0.00673 x 22) = 78 x 1.15958 = 90.447; a third of the rise 4.1492; on 15 in
  // a hundred 1 - 2 e^-2.079 = 0.74989 of it.
  test('the printed relation of curve number and slope, reckoned by hand', () => {
    expect(curveNumberOnSlope(78, 0.15)).toBeCloseTo(81.11, 2);
    expect(curveNumberOnSlope(100, 0.3)).toBe(100);
  });
});

describe('which beds shed rain', () => {
  // TR-55, table 2-2b, straight rows in good condition, groups A to D, recalled
  test.each([
    ['sandy loam', 67],
    ['silt loam', 78],
    ['sandy clay loam', 85],
    ['sandy clay', 89],
  ] as const)('%s: curve number %d on a gentle slope', (texture, printed) =>
    expect(Math.abs((curveNumberOf(texture, 'gentle') ?? NaN) - printed)).toBeLessThan(0.5),
  );

  test('only those of which a slope was given', () => {
    expect(curveNumberOf('loam', undefined)).toBeNull();
    expect(curveNumberOf('loam', 'flat')).toBeNull();
    expect(curveNumberOf('loam', 'gentle')).toBeCloseTo(78, 1);
  });

  test('sand less than loam, loam less than clay, steep more than gentle', () => {
    const of = (texture: Parameters<typeof curveNumberOf>[0], slope: 'gentle' | 'steep') =>
      curveNumberOf(texture, slope) ?? NaN;
    expect(of('sand', 'gentle')).toBeLessThan(of('loam', 'gentle'));
    expect(of('loam', 'gentle')).toBeLessThan(of('clay', 'gentle'));
    expect(of('loam', 'steep')).toBeGreaterThan(of('loam', 'gentle'));
    expect(of('clay', 'steep')).toBeLessThan(100);
  });
});
