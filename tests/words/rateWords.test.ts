import { expect, test } from 'vitest';
import { coefficientRows } from '../../app/tables/coefficients';
import { rateWords } from '../../app/words/rateWords';
import { rowUnit } from '../../app/words/rowUnit';

test('every number of the sums has a name of its own, one that says no row’s key', () => {
  expect(Object.keys(rateWords).sort()).toEqual(Object.keys(coefficientRows).sort());
  const names = Object.values(rateWords);
  expect(new Set(names).size).toBe(names.length);
  for (const name of names) expect(name).toMatch(/^[A-Z][^.:;]*$/);
});

test('a rate is told by a day that can be pictured', () => {
  for (const { unit } of Object.values(coefficientRows))
    expect(rowUnit(unit)).not.toMatch(/normalised|m2/);
});
