import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { metricUnits, usUnits } from '../../app/amounts/unitSystem';
import { dayOf } from '../../app/core/days';
import { dayNear, dayRange, dayStyle } from '../../app/words/dates';
import {
  countOf,
  estimateSpoken,
  estimateWithUnit,
  rulerFraction,
  twoFigures,
} from '../../app/words/figures';
import { rangeWords, withRange } from '../../app/words/ranges';

describe('estimates', () => {
  test.each([
    [0, '0'],
    [77.4, '77'],
    [105, '110'],
    [1234, '1200'],
    [12_345, '12,000'],
    [345_678, '350,000'],
    [2, '2'],
    [2.04, '2'],
    [2.26, '2.3'],
    [0.0456, '0.046'],
    [0.00003, '0.00003'],
    [-3.14, '−3.1'],
    [9.96, '10'],
    [NaN, '–'],
  ])('%d is %s', (value, text) => expect(twoFigures(value)).toBe(text));

  // an estimate shows at most two figures (the rule of `figures.ts`)
  test('never more than two figures, never half a unit of them away', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 9e5, noNaN: true }), (value) => {
        const text = twoFigures(value).replace(/,/g, '');
        const figures = text.replace('.', '').replace(/^0+|0+$/g, '');
        expect(figures.length).toBeLessThanOrEqual(2);
        expect(Math.abs(Number(text) / value - 1)).toBeLessThanOrEqual(0.0501);
      }),
      { numRuns: 1000, seed: 20_130_615 },
    );
  });

  test.each([
    [0, '0'],
    [0.06, '1/16'],
    [0.236, '1/4'],
    [0.51, '1/2'],
    [0.787, '3/4'],
    [1, '1'],
    [1.49, '1 1/2'],
    [2.4, '2 3/8'],
    [7.3, '7 1/2'],
    [-0.5, '−1/2'],
  ])('%d in on a ruler is %s', (value, text) => expect(rulerFraction(value)).toBe(text));

  test('in the units of the garden', () => {
    // 6 mm is a quarter of an inch, 13 mm a half, 25 mm one inch (definitions, rounded on a ruler)
    expect(estimateWithUnit(6, usUnits.depth)).toBe('1/4 in');
    expect(estimateWithUnit(13, usUnits.depth)).toBe('1/2 in');
    expect(estimateWithUnit(25, usUnits.depth)).toBe('1 in');
    expect(estimateWithUnit(6, metricUnits.depth)).toBe('6 mm');
    expect(estimateWithUnit(77, usUnits.nitrogen)).toBe('2.7 oz');
    expect(estimateWithUnit(9.8, usUnits.nitrogenPerArea)).toBe('2 lb/1,000 sq ft');
    expect(estimateWithUnit(38.9, usUnits.temperature)).toBe('102 °F');
    expect(estimateWithUnit(-0.2, metricUnits.temperature)).toBe('0 °C');
    expect(estimateSpoken(0.4536, usUnits.mass)).toBe('1 pound');
    expect(estimateSpoken(77, metricUnits.nitrogen)).toBe('77 grams');
  });

  test.each([
    [2.5, '2 1/2 bags'],
    [1, '1 bag'],
    [0.5, '1/2 bag'],
    [0.05, 'less than 1/4 bag'],
    [0, '0 bags'],
    [3.9, '4 bags'],
    [12.4, '12 bags'],
  ])('%d bags', (count, text) => expect(countOf(count, 'bag', 'bags')).toBe(text));
});

describe('ranges stand in the line, with how often they hold', () => {
  test('a mowing', () => {
    const range = { low: 55.2, typical: 77, high: 106 };
    expect(withRange(range, metricUnits.nitrogen)).toBe(
      'about 77 g, likely 55 to 110 g (8 times in 10)',
    );
    expect(withRange(range, usUnits.nitrogen)).toBe(
      'about 2.7 oz, likely 1.9 to 3.7 oz (8 times in 10)',
    );
    expect(rangeWords(range, metricUnits.nitrogen)).toEqual({
      likely: '77 g',
      between: '55 to 110 g',
    });
  });

  test('what is certain is said plainly, what differs too little to show without a range', () => {
    expect(withRange({ low: 6, typical: 6, high: 6 }, metricUnits.mass)).toBe('6 kg');
    expect(withRange({ low: 5.99, typical: 6, high: 6.01 }, metricUnits.mass)).toBe('about 6 kg');
  });

  test('a depth on a ruler', () => {
    expect(withRange({ low: 4, typical: 6, high: 10 }, usUnits.depth)).toBe(
      'about 1/4 in, likely 3/16 to 3/8 in (8 times in 10)',
    );
  });
});

describe('days as people say them', () => {
  const today = dayOf('2013-06-15');
  const near = (text: string, shown: 'metric' | 'us' = 'metric'): string =>
    dayNear(dayOf(text), today, dayStyle(shown));
  test.each([
    ['2013-06-15', 'today'],
    ['2013-06-14', 'yesterday'],
    ['2013-06-16', 'tomorrow'],
    ['2013-06-10', 'Monday 10 June'],
    ['2013-06-20', 'Thursday 20 June'],
    ['2013-06-08', '8 June'],
    ['2013-11-10', '10 November'],
    ['2012-11-10', '10 November 2012'],
  ])('%s', (text, words) => expect(near(text)).toBe(words));

  test('month first in gardens shown in US units', () => {
    expect(near('2013-06-10', 'us')).toBe('Monday June 10');
    expect(near('2012-11-10', 'us')).toBe('November 10, 2012');
  });

  test('from a day to a day', () => {
    const range = (first: string, last: string): string =>
      dayRange(dayOf(first), dayOf(last), today, dayStyle('metric'));
    expect(range('2013-05-01', '2013-06-15')).toBe('1 May to 15 June');
    expect(range('2012-05-01', '2012-06-15')).toBe('1 May to 15 June 2012');
    expect(range('2012-05-01', '2013-06-15')).toBe('1 May 2012 to 15 June');
  });
});
