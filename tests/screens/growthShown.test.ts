import { expect, test } from 'vitest';
import { growthShown } from '../../app/screens/lawn/growthShown';

test('weeks and mowings of a curve are all told in one unit, nothing but scaled', () => {
  const week = { low: 1, typical: 2, high: 3 };
  const { weeks, cuts } = growthShown(
    {
      weeks: [{ from: 100, expected: week, usual: 1.5 }],
      cuts: [
        { from: 90, day: 97, aWeek: 2.5 },
        { from: null, day: 80, aWeek: null },
      ],
    } as unknown as Parameters<typeof growthShown>[0],
    4,
  );
  expect(weeks).toEqual([{ from: 100, low: 4, typical: 8, high: 12, usual: 6 }]);
  // of a first mowing nobody knows how long it grew
  expect(cuts).toEqual([
    { from: 90, day: 97, aWeek: 10 },
    { from: null, day: 80, aWeek: null },
  ]);
});
