import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { seasonOfYear } from '../../app/screens/frame/seasonOfYear';

describe('the season in the head of the window', () => {
  test.each([
    ['2013-02-28', 51, 'winter'],
    ['2013-03-01', 51, 'spring'],
    ['2013-06-15', 51, 'summer'],
    ['2013-11-30', 51, 'autumn'],
    ['2013-12-01', 51, 'winter'],
    ['2013-06-15', -37, 'winter'],
    ['2013-12-01', -37, 'summer'],
    ['2013-04-10', -37, 'autumn'],
    ['2013-09-01', 0, 'autumn'],
    ['2013-09-01', -1, 'spring'],
  ])('%s at latitude %d: %s', (day, latitude, season) => {
    expect(seasonOfYear(dayOf(day), latitude)).toBe(season);
  });
});
