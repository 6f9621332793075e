import { describe, expect, test } from 'vitest';
import { emergenceOf } from '../../../app/core/crop/emergence';
import { emergenceTrials, trialsOf, type EmergenceName } from '../../../app/tables/emergence';
import { readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const sown = 100;
const steady = (name: string, celsius: number): number | null => {
  const soil = {
    firstDay: sown,
    days: 300,
    soilTemperature: new Float64Array(300).fill(celsius),
  };
  const found = emergenceOf(trialsOf(name as EmergenceName), sown, soil);
  return found.kind === 'up' ? found.day - sown : null;
};

test('no row of it is missing', () => {
  expect(table.header).toBe('vegetable,celsius,days');
  expect(table.rows).toHaveLength(131);
  const names = new Set(table.rows.map(([name]) => name));
  expect(names.size).toBe(23);
  // these two come from elsewhere
  expect(Object.keys(emergenceTrials).filter((name) => !names.has(name))).toEqual([
    'squash',
    'cowpea',
  ]);
});

const differing = new Map<string, number | null>([
  ['asparagus 35', 19],
  ['asparagus 40', null],
]);

describe('soil of one warmth', () => {
  test.each(table.rows)('%s at %s °C is up after %s days', (name, celsius, days) => {
    const known = differing.get(`${name} ${celsius}`);
    expect(steady(name!, Number(celsius))).toBe(known === undefined ? Number(days) : known);
  });

  // "NG" in the second copy
  test.each([
    ['snap bean', 10],
    ['cucumber', 10],
    ['lettuce', 35],
    ['onion', 40],
    ['parsnip', 35],
    ['tomato', 5],
    ['sweet corn', 5],
    ['spinach', 35],
    ['celery', 30],
    ['carrot', 0],
  ])('%s never comes up at %d °C', (name, celsius) => expect(steady(name, celsius)).toBeNull());
});
