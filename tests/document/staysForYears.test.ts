import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { bedVerdict } from '../../app/core/season/state';
import { bedCautions } from '../../app/core/season/cautions/cautions';
import { runSeason } from '../../app/core/season/season';
import { cautionFacts } from '../../app/document/cautionFacts';
import { bedSeason } from '../../app/document/seasonInput';
import type { Garden, Planting } from '../../app/document/schema';
import { cropOf, staysForYears } from '../../app/tables/crops';
import { limits } from '../../app/tables/thresholds';
import { wantedShares } from '../../app/tables/wanted';
import { exampleGarden } from './exampleGarden';

const gardenWith = (changes: Partial<Planting>, knownSince: string | null = null): Garden => {
  const garden = exampleGarden();
  garden.plantings = [
    {
      ...garden.plantings[1]!,
      firstHarvest: null,
      cleared: null,
      share: 1,
      wanted: 'usual',
      how: 'planted',
      ...changes,
    },
  ];
  garden.events = [];
  garden.applications = [];
  garden.beds[0]!.knownSince = knownSince;
  return garden;
};
const input = (garden: Garden, today = '2021-06-20') => bedSeason(garden, 'bed-1', dayOf(today));
const kinds = ['asparagus', 'rhubarb', 'strawberry'] as const;

test('three crops of the tables stay for years', () => {
  for (const kind of kinds) expect(staysForYears(kind)).toBe(true);
  expect(staysForYears('tomato')).toBe(false);
  expect(staysForYears('toString')).toBe(false);
});

describe.each(kinds)('%s', (cropId) => {
  const row = cropOf(cropId)!;
  const old = input(gardenWith({ cropId, started: '2015-04-01' }, '2019-03-01'));

  test('of 2015 stands over the whole run and starts anew each season', () => {
    const [planting] = old.plantings;
    expect(planting).toMatchObject({
      standsSince: dayOf('2015-04-01'),
      startDay: dayOf('2021-01-01'),
      clearingDay: null,
    });
    expect(planting!.seasons!.map(({ seasonDay }) => textFromDay(seasonDay))).toEqual([
      '2019-01-01',
      '2020-01-01',
      '2021-01-01',
    ]);
    for (const season of planting!.seasons!) {
      expect(season.isRegrowth).toBe(true);
      // the invented normals pass 3 C in March and 7 C in April
      expect(textFromDay(season.startDay).slice(5, 7)).toMatch(/0[345]/);
      expect(season.firstHarvestDay - season.startDay).toBe(row.firstHarvestDays.typical);
      expect(season.usualEndDay - season.startDay).toBeLessThanOrEqual(row.usualDays.typical);
    }
  });

  test('wants its row’s uptake, no roots added, at the usual pick: each season alike', () => {
    const result = runSeason(old);
    expect(result.residual).toBeLessThan(1e-9);
    const wanted = row.uptake.typical * wantedShares.usual.typical;
    const [own] = result.plantings;
    expect(own!.earlierSeasons).toHaveLength(2);
    for (const { demand } of [own!.earlierSeasons![1]!, own!]) {
      expect(demand).toBeGreaterThan(0.8 * wanted);
      expect(demand).toBeLessThan(1.001 * wanted);
    }
    expect(own!.earlierSeasons![1]!.harvested).toBeGreaterThan(0);
  });

  test('is never asked whether it still stands, and may use nothing more in winter', () => {
    const today = '2021-12-10';
    const garden = gardenWith({ cropId, started: '2015-04-01' });
    const bed = input(garden, today);
    const result = runSeason(bed);
    const verdict = bedVerdict(bed, result, dayOf(today), limits);
    expect(verdict.state).not.toBe('nothing planted');
    const facts = cautionFacts(garden, 'bed-1', dayOf(today));
    const cautions = bedCautions({ input: bed, result, verdict }, facts, limits);
    expect(cautions.map(({ kind }) => kind)).not.toContain('overdue');
  });
});

test('one planted this season has one season, from its day on', () => {
  const [planting] = input(gardenWith({ cropId: 'rhubarb', started: '2021-04-10' })).plantings;
  expect(planting!.seasons).toHaveLength(1);
  expect(planting!.seasons![0]).toMatchObject({ isRegrowth: false, startDay: dayOf('2021-04-10') });
});

test('a first harvest that was typed holds for its own season', () => {
  const garden = gardenWith(
    { cropId: 'asparagus', started: '2019-04-01', firstHarvest: '2021-05-20' },
    '2019-03-01',
  );
  const picks = input(garden).plantings[0]!.seasons!.map((one) => textFromDay(one.firstHarvestDay));
  expect(picks[2]).toBe('2021-05-20');
  expect(picks[1]!.slice(0, 7)).toMatch(/2020-0[45]/);
});

test('one cleared two seasons ago is no part of a run that begins after it', () => {
  const garden = gardenWith(
    { cropId: 'rhubarb', started: '2012-04-10', cleared: '2018-10-01' },
    '2020-03-01',
  );
  expect(input(garden).plantings).toEqual([]);
});

test('one cleared in an earlier season of the run has no season after that', () => {
  const garden = gardenWith(
    { cropId: 'rhubarb', started: '2012-04-10', cleared: '2020-10-01' },
    '2019-03-01',
  );
  const [planting] = input(garden).plantings;
  expect(planting!.seasons).toHaveLength(2);
  const result = runSeason(input(garden));
  expect(result.plantings[0]!.clearingDay).toBe(dayOf('2020-10-01'));
  expect(result.pools.crop.at(-1)).toBeCloseTo(0, 12);
});

test('years of it need no run of years: without a log the bed starts with this season', () => {
  const bed = input(gardenWith({ cropId: 'rhubarb', started: '2012-04-10' }));
  expect(bed.firstDay).toBe(dayOf('2021-01-01'));
  expect(runSeason(bed).start.crop).toBeGreaterThan(1);
});
