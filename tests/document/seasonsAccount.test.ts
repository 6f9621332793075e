import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runSeason } from '../../app/core/season/season';
import { bedSeasonAccounts } from '../../app/document/seasonsAccount';
import type { Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { exampleGarden } from './exampleGarden';

const gardenOf = (change: (garden: Garden) => void): Garden => {
  const garden = exampleGarden();
  garden.beds[0]!.knownSince = '2019-03-01';
  garden.plantings = [];
  garden.events = [];
  change(garden);
  return garden;
};
const accountsOf = (garden: Garden, today = '2021-06-20') => {
  const input = bedSeason(garden, 'bed-1', dayOf(today));
  return bedSeasonAccounts(garden, input, runSeason(input));
};
const laid = (garden: Garden, date: string, litres: number): void => {
  const [one] = garden.applications;
  garden.applications.push({
    ...one!,
    id: `extra ${date}`,
    date,
    from: { source: 'elsewhere', materialId: 'grass-fresh-generic' },
    amount: { ...one!.amount, text: `${litres} L`, quantity: { kind: 'volume', litres } },
  });
};

describe('what is left for the next season', () => {
  test('is said of this season and the one before; longer ago it is known', () => {
    const accounts = accountsOf(gardenOf(() => undefined));
    expect(accounts.map(({ year }) => year)).toEqual([2019, 2020, 2021]);
    expect(accounts.map(({ expectedNextSeason }) => expectedNextSeason !== null)).toEqual([
      false,
      true,
      true,
    ]);
  });

  test('has a range, and a likely value inside', () => {
    const band = accountsOf(gardenOf(() => undefined)).at(-1)!.expectedNextSeason!;
    expect(band.low).toBeLessThan(band.middle);
    expect(band.middle).toBeLessThan(band.high);
  });

  test('the next season run with everything known does what was foretold, likely values apart', () => {
    const garden = gardenOf(() => undefined);
    const foretold = accountsOf(garden).at(-1)!;
    const onHand = Object.values(foretold.carriedOver).reduce((sum, grams) => sum + grams, 0);
    expect(foretold.expectedNextSeason!.middle).toBeGreaterThan(0);
    expect(foretold.expectedNextSeason!.high).toBeLessThan(onHand);
  });

  test('a layer of the season to come does not count: only what is there', () => {
    const plain = accountsOf(gardenOf(() => undefined))[1]!;
    const fed = accountsOf(gardenOf((one) => laid(one, '2021-04-10', 60)))[1]!;
    expect(fed.carriedOver).toEqual(plain.carriedOver);
    expect(fed.expectedNextSeason!.middle).toBeCloseTo(plain.expectedNextSeason!.middle, 12);
  });

  test('more laid leaves more, and gives more', () => {
    const plain = accountsOf(gardenOf(() => undefined)).at(-1)!;
    const fed = accountsOf(gardenOf((one) => laid(one, '2021-06-10', 120))).at(-1)!;
    expect(fed.carriedOver.inCover).toBeGreaterThan(plain.carriedOver.inCover);
    expect(fed.expectedNextSeason!.middle).toBeGreaterThan(plain.expectedNextSeason!.middle);
  });

  test('the run that looks a season further is the same run so far', () => {
    const garden = gardenOf(() => undefined);
    const today = dayOf('2021-06-20');
    const plain = runSeason(bedSeason(garden, 'bed-1', today));
    const further = runSeason(bedSeason(garden, 'bed-1', today, { throughNextSeason: true }));
    expect(further.days).toBe(plain.days + 365);
    for (const [pool, series] of Object.entries(plain.pools))
      expect(further.pools[pool as 'crop'].subarray(0, plain.days)).toEqual(series);
  });
});
