import { expect, test } from 'vitest';
import { bagHolds } from '../../app/document/bagHolds';
import { exampleGarden } from './exampleGarden';

const garden = exampleGarden();
const bag = { id: 'bag', name: 'bag', plural: 'bags', litres: 50, weighed: null };
const weighed = { date: '2021-06-01', kilograms: 11.3, wetness: 'damp' } as const;
const width = ({ low, high }: { low: number; high: number }): number => high / low;

test('a weight in place of the table’s narrows what a bag may hold', () => {
  const { byTable, weighed: own } = bagHolds(garden, bag, weighed);
  expect(width(own)).toBeLessThan(0.75 * width(byTable));
  expect(own.low).toBeLessThan(own.typical);
  expect(own.high).toBeGreaterThan(own.typical);
});

test('twice the weight is twice the dry weight, whatever the tables say', () => {
  const heavy = bagHolds(garden, bag, { ...weighed, kilograms: 22.6 });
  const { byTable, weighed: own } = bagHolds(garden, bag, weighed);
  expect(heavy.byTable).toEqual(byTable);
  expect(heavy.weighed.typical).toBeCloseTo(2 * own.typical, 9);
});

test('what was in it is asked of its own row: straw is no grass', () => {
  const straw = bagHolds(garden, bag, { ...weighed, of: 'straw-wheat', wetness: 'dry' });
  // a kilogram of straw is mostly straw, a kilogram of grass mostly water
  expect(straw.weighed.typical).toBeGreaterThan(
    2 * bagHolds(garden, bag, { ...weighed, wetness: 'dry' }).weighed.typical,
  );
});
