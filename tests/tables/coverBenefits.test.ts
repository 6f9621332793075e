import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaporationByDepth, evaporationLeft, weedControl } from '../../app/tables/coverBenefits';

test('at the depths of the table it is the table', () => {
  for (const { millimetres, left } of evaporationByDepth)
    expect(evaporationLeft(millimetres)).toBe(left.typical);
  expect(evaporationLeft(0)).toBe(1);
});

test('half way between 20 mm (0.6) and 50 mm (0.4) is 0.5; beyond 100 mm nothing more is gained', () => {
  expect(evaporationLeft(35)).toBeCloseTo(0.5, 12);
  expect(evaporationLeft(10)).toBeCloseTo(0.8, 12);
  expect(evaporationLeft(150)).toBe(evaporationLeft(100));
});

test('law: a deeper cover never dries faster', () => {
  const depth = fc.double({ min: 0, max: 300, noNaN: true });
  fc.assert(
    fc.property(depth, depth, (one, more) => {
      expect(evaporationLeft(one + more)).toBeLessThanOrEqual(evaporationLeft(one) + 1e-12);
    }),
  );
});

test('the steps against weeds rise', () => {
  const depths = Object.values(weedControl).map(({ typical }) => typical);
  expect(depths).toEqual(depths.toSorted((one, other) => one - other));
});
