import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { flowIndex } from '../../app/core/season/flows';
import { runSeason } from '../../app/core/season/season';
import { seasonAccounts } from '../../app/core/season/seasonAccounts';
import { bedSeason } from '../../app/document/seasonInput';
import type { Garden, Planting } from '../../app/document/schema';
import { exampleGarden } from './exampleGarden';

interface Wishes {
  readonly today: string;
  readonly month?: number;
  readonly latitude?: number;
  readonly knownSince?: string | null;
}

function runOf(plantings: readonly Partial<Planting>[], wishes: Wishes) {
  const garden: Garden = exampleGarden();
  const plain = garden.plantings[0]!;
  garden.garden.latitudeDegrees = wishes.latitude ?? 45;
  garden.garden.seasonStartMonth = wishes.month ?? 1;
  garden.beds[0]!.knownSince = wishes.knownSince ?? null;
  garden.events = [];
  garden.applications = [];
  garden.plantings = plantings.map((changes, at) => ({
    ...plain,
    id: `p${at}`,
    bedId: 'bed-1',
    share: 1,
    firstHarvest: null,
    cleared: null,
    ...changes,
  }));
  const input = bedSeason(garden, 'bed-1', dayOf(wishes.today));
  const result = runSeason(input);
  expect(result.residual).toBeLessThan(1e-9);
  const accounts = seasonAccounts(input, result, garden.garden.seasonStartMonth);
  accounts.slice(1).forEach(({ start }, at) => expect(start).toEqual(accounts[at]!.end));
  const on = (date: string): number => dayOf(date) - result.firstDay;
  return { input, result, accounts, on };
}

describe('what stands over the turn of the season stands on', () => {
  test('garlic over New Year in the north: its clock, its nitrogen and its bar run through', () => {
    const { input, result, on, accounts } = runOf(
      [{ cropId: 'garlic', how: 'planted', started: '2020-10-10', cleared: '2021-07-10' }],
      { today: '2021-06-20' },
    );
    expect(input.seasonStarts).toEqual([dayOf('2021-01-01')]);
    const [garlic] = result.plantings;
    const [before, after] = [on('2020-12-31'), on('2021-01-01')];
    expect(garlic!.progress[after]!).toBeGreaterThanOrEqual(garlic!.progress[before]!);
    expect(result.pools.crop[after]!).toBeGreaterThanOrEqual(result.pools.crop[before]! - 1e-12);
    expect(accounts[0]!.carriedOver.inCrop).toBe(result.pools.crop[before]);
    expect(garlic!.earlierSeasons).toBeUndefined();
    expect(textFromDay(garlic!.clearingDay!)).toBe('2021-07-10');
  });

  test('broad beans over the first of July in the south', () => {
    const { input, result, on } = runOf(
      [{ cropId: 'broad_bean', how: 'sown', started: '2021-05-10', cleared: '2021-11-20' }],
      { today: '2021-09-20', month: 7, latitude: -38 },
    );
    expect(input.seasonStarts).toEqual([dayOf('2021-07-01')]);
    expect(textFromDay(input.lastDay)).toBe('2022-06-30');
    expect(result.pools.crop[on('2021-07-01')]!).toBeGreaterThan(0);
    expect(result.pools.crop[on('2021-11-21')]!).toBeCloseTo(0, 12);
  });

  test.each([
    ['dug in', 'dugResidue', 'tops dug in'],
    ['left', 'coverResidue', 'tops left'],
  ] as const)('a cover crop sown in autumn and %s in spring', (tops, place, why) => {
    const { result, on, accounts } = runOf(
      [{ cropId: 'winter_rye', how: 'sown', started: '2020-09-10', cleared: '2021-04-15', tops }],
      { today: '2021-06-20' },
    );
    const flow = result.flows[flowIndex('crop', place, why)]!;
    expect(flow[on('2021-04-15')]!).toBeGreaterThan(0.1);
    expect(accounts[0]!.carriedOver.inCrop).toBeGreaterThan(0.05);
    // nothing of it is picked
    expect(result.plantings[0]!.harvested).toBe(0);
    const moved = accounts[1]!.ledger.moved.find(({ key }) => key === 'left by the crop')!;
    expect(moved.gM2).toBeGreaterThan(0.1);
  });

  test('succession and shares over the turn: each by its own days', () => {
    const { result, input, on } = runOf(
      [
        {
          cropId: 'garlic',
          how: 'planted',
          started: '2020-10-10',
          cleared: '2021-07-05',
          share: 0.5,
        },
        {
          cropId: 'winter_rye',
          how: 'sown',
          started: '2020-09-15',
          cleared: '2021-04-20',
          share: 0.5,
        },
        {
          cropId: 'lettuce_head',
          how: 'planted',
          started: '2021-05-01',
          cleared: '2021-06-15',
          share: 0.5,
        },
        {
          cropId: 'snap_bean_bush',
          how: 'sown',
          started: '2021-06-16',
          cleared: '2021-09-20',
          share: 0.5,
        },
      ],
      { today: '2021-06-20' },
    );
    expect(input.plantings).toHaveLength(4);
    const taken = result.plantings.map(({ uptake, fixed }) => uptake + fixed);
    for (const grams of taken) expect(grams).toBeGreaterThan(0.05);
    expect(result.pools.crop[on('2021-12-31')]!).toBeCloseTo(0, 9);
  });
});

describe('edges of the season', () => {
  test('29 February: known from it, sown on it, and a season that begins the day after', () => {
    const { input, accounts } = runOf([{ started: '2020-02-29', cleared: '2020-08-01' }], {
      today: '2020-06-20',
      month: 3,
      knownSince: '2020-02-29',
    });
    expect(textFromDay(input.firstDay)).toBe('2020-02-29');
    expect(input.seasonStarts).toEqual([dayOf('2020-03-01')]);
    expect(accounts.map(({ firstDay, lastDay }) => lastDay - firstDay + 1)).toEqual([1, 365]);
    expect(accounts.map(({ year }) => year)).toEqual([2019, 2020]);
  });

  test('a season with a 29 February in it has 366 days, and closes', () => {
    const { accounts } = runOf([{ started: '2019-05-01', cleared: '2019-09-01' }], {
      today: '2021-06-20',
    });
    expect(accounts.map(({ firstDay, lastDay }) => lastDay - firstDay + 1)).toEqual([
      365, 366, 365,
    ]);
  });

  test('sown three weeks into the first season: the run begins six weeks before, in the season before', () => {
    const { input, accounts } = runOf([{ cropId: 'pea', started: '2021-01-22' }], {
      today: '2021-06-20',
    });
    expect(input.firstDay).toBe(dayOf('2021-01-22') - 42);
    expect(accounts).toHaveLength(2);
    expect(accounts[0]!.year).toBe(2020);
  });

  test('known for less than six weeks before the sowing: the day it is known from holds', () => {
    const { input, result } = runOf([{ started: '2021-05-01' }], {
      today: '2021-06-20',
      knownSince: '2021-04-20',
    });
    expect(textFromDay(input.firstDay)).toBe('2021-04-20');
    expect(result.plantings[0]!.demand).toBeGreaterThan(0);
  });

  test('known from a day after the sowing: what stands then is taken from there', () => {
    const { result } = runOf([{ started: '2021-05-01' }], {
      today: '2021-06-20',
      knownSince: '2021-05-20',
    });
    expect(textFromDay(result.firstDay)).toBe('2021-05-20');
    expect(result.plantings[0]!.demand).toBeGreaterThan(0);
  });

  test('the first and the last day of a season as today', () => {
    for (const today of ['2021-01-01', '2021-12-31']) {
      const { accounts, input } = runOf([{ started: '2020-05-01', cleared: '2020-09-01' }], {
        today,
      });
      expect(textFromDay(input.lastDay)).toBe('2021-12-31');
      expect(accounts.map(({ isOver }) => isOver)).toEqual([true, today === '2021-12-31']);
    }
  });
});
