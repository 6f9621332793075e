import { expect, test } from 'vitest';
import { metricUnits, usUnits } from '../../app/amounts/unitSystem';
import { coverWorth } from '../../app/words/coverWorth';

const weeds = { smallSeeds: 20, annuals: 50 };

test.each([
  [10, 'is too thin to keep weeds down'],
  [19.9, 'is too thin to keep weeds down'],
  [20, 'keeps small weed seeds down while it is topped up'],
  [49.9, 'keeps small weed seeds down while it is topped up'],
  [50, 'keeps down most weeds that come from seed'],
])('%d mm', (millimetres, held) =>
  expect(coverWorth(millimetres, 0.5, weeds, metricUnits)).toContain(` deep it ${held}, and`),
);

test('the whole sentence, in both kinds of units', () => {
  expect(coverWorth(30, 0.53, weeds, metricUnits)).toBe(
    'At 30 mm deep it keeps small weed seeds down while it is topped up, and wet ground under it dries at roughly 53 % of the pace of bare ground.',
  );
  expect(coverWorth(25.4, 0.53, weeds, usUnits)).toMatch(/^At 1 in deep/);
});

test('nothing of a cover that is hardly there', () => {
  expect(coverWorth(0.9, 1, weeds, metricUnits)).toBe('');
});
