import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emergenceOf, emergenceRate, type SowingTrial } from '../../../app/core/crop/emergence';
import { emergenceTrials, trialsOf, type EmergenceName } from '../../../app/tables/emergence';

// made up, so that the arithmetic can be done in the head
const trials: readonly SowingTrial[] = [
  { celsius: 5, days: null },
  { celsius: 10, days: 20 },
  { celsius: 20, days: 10 },
  { celsius: 30, days: 5 },
  { celsius: 35, days: null },
];
const soilOf = (temperatures: readonly number[], firstDay = 0) => ({
  firstDay,
  days: temperatures.length,
  soilTemperature: Float64Array.from(temperatures),
});

describe('the pace of a day', () => {
  test.each([
    [10, 1 / 20],
    [15, 0.075],
    [20, 1 / 10],
    [25, 0.15],
    [7.5, 0.025],
    [32.5, 0.1],
    [5, 0],
    [35, 0],
  ])('%d °C: %d of the way', (celsius, rate) =>
    expect(emergenceRate(trials, celsius)).toBeCloseTo(rate, 12),
  );

  test('nothing outside what was tried', () => {
    expect(emergenceRate(trials, 4.9)).toBe(0);
    expect(emergenceRate(trials, 35.1)).toBe(0);
    expect(emergenceRate(trials.slice(1), 9.9)).toBe(0);
    expect(emergenceRate([], 15)).toBe(0);
    expect(emergenceRate(trials, Number.NaN)).toBe(0);
  });
});

describe('the day it is up', () => {
  test('the first day that counts is the one after sowing', () => {
    const soil = soilOf([20, ...Array<number>(10).fill(20), 20]);
    expect(emergenceOf(trials, 0, soil)).toEqual({ kind: 'up', day: 10 });
    expect(emergenceOf(trials, -1, soil)).toEqual({ kind: 'up', day: 9 });
  });

  test('warm and cold days add up: five at 1/20, then 1/10', () => {
    const soil = soilOf([0, 10, 10, 10, 10, 10, ...Array<number>(20).fill(20)], 1000);
    // 5/20 + 8/10 is the first sum of at least 1
    expect(emergenceOf(trials, 1000, soil)).toEqual({ kind: 'up', day: 1013 });
  });

  test('cold soil holds it back, and nothing is lost of the way behind it', () => {
    const soil = soilOf([20, 20, 20, 20, 20, 20, ...Array<number>(30).fill(2), 20, 20, 20, 20, 20]);
    expect(emergenceOf(trials, 0, soil)).toEqual({ kind: 'up', day: 40 });
  });

  test('longer or shorter for the ends of a range', () => {
    const soil = soilOf(Array<number>(40).fill(20));
    expect(emergenceOf(trials, 0, soil, 0.75)).toEqual({ kind: 'up', day: 8 });
    expect(emergenceOf(trials, 0, soil, 1.3)).toEqual({ kind: 'up', day: 13 });
  });

  test('not yet by the end of the run; unknown where the run begins after sowing', () => {
    expect(emergenceOf(trials, 0, soilOf(Array<number>(10).fill(20)))).toEqual({ kind: 'not yet' });
    expect(emergenceOf(trials, 8, soilOf(Array<number>(5).fill(20)))).toEqual({ kind: 'not yet' });
    expect(emergenceOf(trials, 98, soilOf(Array<number>(50).fill(20), 100))).toEqual({
      kind: 'unknown',
    });
  });
});

describe('laws', () => {
  const names = Object.keys(emergenceTrials) as EmergenceName[];
  const anyTrials = fc.constantFrom(...names).map(trialsOf);

  test('no cliff between the temperatures tried', () => {
    fc.assert(
      fc.property(anyTrials, fc.double({ min: 0, max: 1, noNaN: true }), (of, way) => {
        const coldest = of[0]!.celsius;
        const celsius = coldest + way * (of.at(-1)!.celsius - coldest - 0.01);
        const step = Math.abs(emergenceRate(of, celsius + 0.01) - emergenceRate(of, celsius));
        // the steepest printed pair, melons from 15 to 25 °C, differs by 1/4 in 10 degrees
        expect(step).toBeLessThanOrEqual(0.01);
      }),
    );
  });

  test('sown a day later it is never up sooner', () => {
    const soils = fc.array(fc.double({ min: -5, max: 40, noNaN: true }), { maxLength: 120 });
    fc.assert(
      fc.property(anyTrials, soils, (of, temperatures) => {
        const soil = soilOf(temperatures);
        const dayOf = (sown: number): number => {
          const found = emergenceOf(of, sown, soil);
          return found.kind === 'up' ? found.day : Infinity;
        };
        for (let sown = 0; sown < 10; sown += 1)
          expect(dayOf(sown + 1)).toBeGreaterThanOrEqual(dayOf(sown));
      }),
    );
  });
});
