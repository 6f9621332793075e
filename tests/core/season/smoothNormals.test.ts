import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import {
  daysInMonth,
  monthlyKnots,
  smoothNormal,
  smoothNormalOn,
} from '../../../app/core/season/smoothNormals';
import { newYorkNormals } from './handMadeBed';

test('days of months, leap years by the calendar of today', () => {
  const of = (year: number) => Array.from({ length: 12 }, (_, at) => daysInMonth(year, at + 1));
  expect(of(2013)).toEqual([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
  expect([2012, 2000, 1900].map((year) => daysInMonth(year, 2))).toEqual([29, 29, 28]);
});

describe('knots', () => {
  test('straight lines between them have the months’ means: 3/4 of one and 1/8 of each neighbour', () => {
    for (const means of [newYorkNormals.minimumCelsius, newYorkNormals.rainMillimetres]) {
      const knots = monthlyKnots(means);
      means.forEach((mean, at) => {
        const around = knots[(at + 11) % 12]! + knots[(at + 1) % 12]!;
        expect(0.75 * knots[at]! + 0.125 * around).toBeCloseTo(mean, 9);
      });
    }
  });

  test('a year that is always the same has the same knots; the means stay as they were', () => {
    const means = new Array<number>(12).fill(7);
    expect(monthlyKnots(means)).toEqual(means);
    const own = [...newYorkNormals.maximumCelsius];
    monthlyKnots(own);
    expect(own).toEqual(newYorkNormals.maximumCelsius);
  });

  test('twelve of them or none', () => {
    expect(() => monthlyKnots(new Array<number>(11).fill(7))).toThrow('twelve');
  });
});

describe('a smooth day', () => {
  const knots = [10, 20, 40, 50, 60, 70, 80, 75, 65, 45, 30, 16];

  test('in the middle of its month is the knot, on its edges nearly half way to the neighbour', () => {
    // the 16th of 31 days lies in the middle; the 31st (30.5/31 - 1/2) = 0.48387 past it
    const part = 30.5 / 31 - 0.5;
    expect(smoothNormal(knots, dayOf('2013-01-16'))).toBeCloseTo(10, 12);
    expect(smoothNormal(knots, dayOf('2013-01-31'))).toBeCloseTo(10 + part * 10, 12);
    expect(smoothNormal(knots, dayOf('2013-01-01'))).toBeCloseTo(10 + part * 6, 12);
    expect(smoothNormal(knots, dayOf('2013-12-31'))).toBeCloseTo(16 - part * 6, 12);
    expect(smoothNormal(knots, dayOf('2013-12-01'))).toBeCloseTo(16 + part * 14, 12);
  });

  test('goes by the length of its own month', () => {
    const leap = smoothNormal(knots, dayOf('2012-02-29'));
    expect(leap).toBeCloseTo(20 + (28.5 / 29 - 0.5) * 20, 12);
    expect(smoothNormalOn(knots, 2, 29, 29)).toBe(leap);
    expect(smoothNormal(knots, dayOf('2013-02-28'))).toBeCloseTo(20 + (27.5 / 28 - 0.5) * 20, 12);
  });
});
