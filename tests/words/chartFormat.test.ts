import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import {
  accountAmount,
  amount,
  dayFull,
  dayShort,
  dayWord,
  listed,
} from '../../app/words/chartFormat';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';

const { nitrogen, depth } = metricChartUnits;

describe('amounts show two figures at most', () => {
  test.each([
    [0, '0.0'],
    [0.04, '0.0'],
    [0.26, '0.3'],
    [9.94, '9.9'],
    [9.96, '10'],
    [12.4, '12'],
    [83.4, '83'],
    [126, '130'],
    [1234, '1200'],
    [-2.17, '−2.2'],
    [-0.01, '0.0'],
  ])('%s g/m2 is "%s"', (value, text) => {
    expect(amount(value, nitrogen)).toBe(text);
  });

  test('depths are whole millimetres, or inches as on a ruler', () => {
    expect(amount(7.6, depth)).toBe('8');
    expect(amount(7.6, usChartUnits.depth)).toBe('5/16');
    expect(amount(53, usChartUnits.depth)).toBe('2 1/8');
  });

  test('4.88243 g/m2 is one pound on a thousand square feet (exact: 453.59237 g on 92.90304 m2)', () => {
    expect(4.882_427_6 * usChartUnits.nitrogen.perInside).toBeCloseTo(1, 6);
  });

  test('an account keeps its decimals, whatever the size', () => {
    expect([0.004, 9, 83.417, -2.174].map((value) => accountAmount(value, nitrogen))).toEqual([
      '0.00',
      '9.00',
      '83.42',
      '−2.17',
    ]);
  });
});

describe('days', () => {
  const day = dayOf('2013-06-15');

  test('day first', () => {
    expect(dayWord(day, metricChartUnits)).toBe('15 June');
    expect(dayShort(day, metricChartUnits)).toBe('15 Jun');
    expect(dayFull(day, metricChartUnits)).toBe('Saturday 15 June 2013');
  });

  test('month first', () => {
    expect(dayWord(day, usChartUnits)).toBe('June 15');
    expect(dayFull(day, usChartUnits)).toBe('Saturday, June 15, 2013');
  });
});

test('lists', () => {
  expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(listed)).toEqual([
    '',
    'a',
    'a and b',
    'a, b and c',
  ]);
});
