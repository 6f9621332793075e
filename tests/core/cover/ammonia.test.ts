import { describe, expect, test } from 'vitest';
import {
  type AmmoniaStores,
  ammoniaDay,
  ammoniaDepthFactor,
  ammoniaPotential,
} from '../../../app/core/cover/ammonia';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = typicalCoefficients();

/** Numbers: section on ammonia of the model; slope and intercept recalled from de Ruijter & Huijsmans 2019. */
describe('what a layer may lose', () => {
  test.each([
    [0, 0.5],
    [6, 0.5],
    [8, 0.75],
    [10, 1],
    [17.5, 2],
    [25, 3],
    [80, 3],
  ])('%d mm of just-cut material: times %d', (millimetres, factor) =>
    expect(ammoniaDepthFactor(millimetres)).toBeCloseTo(factor, 12),
  );

  // de Ruijter & Huijsmans 2019, coefficients recalled; by hand 0.40 x - 5.08 gives 0 at 11.5, 3.4 at 21.2, 6.9 at 30 and 12.2 % at 43.3 g/kg.
  test.each([
    [11.5, '0.0'],
    [21.2, '3.4'],
    [30, '6.9'],
    [43.3, '12.2'],
  ])('%d g N/kg at 10 mm: %s %%', (content, printed) => {
    const percent = 100 * ammoniaPotential(content, 'just cut', 10, c);
    expect(Math.abs(percent - Number(printed))).toBeLessThanOrEqual(0.05);
  });

  test('deep and rich is held at 45 %, limp is 0.3 of the line and crisp 0.1, whatever the depth', () => {
    expect(ammoniaPotential(60, 'just cut', 25, c)).toBeCloseTo(0.45, 12);
    expect(ammoniaPotential(30, 'limp', 40, c)).toBeCloseTo((0.3 * 6.92) / 100, 12);
    expect(ammoniaPotential(30, 'crisp', 40, c)).toBeCloseTo((0.1 * 6.92) / 100, 12);
  });
});

describe('how it leaves', () => {
  const season = (fill: number, celsius: number): number => {
    const stores: AmmoniaStores = { unripe: 1, ripe: 0, manure: 0 };
    let asked = 0;
    for (let day = 0; day < 400; day++) asked += ammoniaDay(stores, fill, celsius, c);
    return asked;
  };

  test('soaked and warm all of the promise is asked for in the end, dry a tenth', () => {
    expect(season(1, 20)).toBeCloseTo(1, 9);
    expect(season(0, 20)).toBeCloseTo(0.1, 9);
    expect(season(0.25, 20)).toBeCloseTo(0.55, 9);
  });

  test('only the product of wetness and warmth is held at 1: soaked, cool air takes as much', () => {
    // Lloyd & Taylor 1994: fT(10) over fT(20)
    const cool = Math.exp(308.56 / 66.02 - 308.56 / 56.02);
    expect(season(0.5, 10)).toBeCloseTo(cool, 4);
    expect(season(1, 10)).toBeCloseTo(1.9 * cool, 3);
    expect(season(1, 15)).toBeCloseTo(1, 9);
  });

  test('warmth counts against 20 C, at most one and a half times; frozen nothing leaves', () => {
    expect(season(0, 40)).toBeCloseTo(0.15, 9);
    expect(season(0, 10)).toBeLessThan(0.05);
    expect(season(1, -5)).toBe(0);
  });

  test('little in the first four days, most within a month (Whitehead 1988, Larsson 1998)', () => {
    const stores: AmmoniaStores = { unripe: 1, ripe: 0, manure: 0 };
    const byDay: number[] = [];
    for (let day = 0; day < 30; day++)
      byDay.push((byDay.at(-1) ?? 0) + ammoniaDay(stores, 1, 20, c));
    expect(byDay[3]).toBeLessThan(0.16);
    expect(byDay[29]).toBeGreaterThan(0.9);
  });

  // Lauer, Bouldin & Klausner 1976, abstract: half of what goes is gone in 1.86 to 3.36 days
  test('of manure left on top half of the promise is gone in two to four days, wet or dry', () => {
    for (const wetness of [0, 1]) {
      const stores: AmmoniaStores = { unripe: 0, ripe: 0, manure: 1 };
      let days = 0;
      while (stores.manure > 0.5) {
        ammoniaDay(stores, wetness, 20, c);
        days += 1;
      }
      expect(days).toBe(3);
      const before = stores.manure;
      expect(ammoniaDay(stores, wetness, 20, c)).toBeCloseTo(before - stores.manure, 12);
      expect(ammoniaDay(stores, wetness, -5, c)).toBe(0);
    }
  });
});
