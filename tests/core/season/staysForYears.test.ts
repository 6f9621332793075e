import { describe, expect, test } from 'vitest';
import { dayFromParts, type DayNumber } from '../../../app/core/days';
import type {
  BedSeason,
  CropInput,
  GrowthSeason,
  PlantingInput,
} from '../../../app/core/season/input';
import { growsFrom } from '../../../app/core/season/plantingAccount';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { bareBed, fruitingCrop, moved, newYorkNormals, normalDegreeDays } from './handMadeBed';

const day = (year: number, month: number, date: number): number => dayFromParts(year, month, date);

/** Invented: a fifth below ground, so that what is kept can be told from what is not. */
const stalks: CropInput = {
  ...fruitingCrop,
  id: 'stalks',
  excessClass: 'perennial',
  need: 10,
  harvestNitrogen: 2,
  rootShare: 0.2,
  baseCelsius: 5,
  usualDays: 150,
  firstHarvestDays: 30,
  flowerDays: null,
  fullRootDepth: 900,
  frostTender: false,
};

function season(year: number, begun: DayNumber): GrowthSeason {
  const seasonDay = day(year, 1, 1);
  const startDay = Math.max(begun, day(year, 4, 1));
  return {
    seasonDay,
    isRegrowth: begun < seasonDay,
    startDay,
    firstHarvestDay: startDay + stalks.firstHarvestDays,
    usualEndDay: startDay + stalks.usualDays,
    normalDegreeDays: normalDegreeDays(newYorkNormals, startDay, stalks.usualDays, 5),
  };
}

function stalksOf(
  from: number,
  to: number,
  begun: DayNumber,
  over: Partial<PlantingInput> = {},
): PlantingInput {
  const seasons: GrowthSeason[] = [];
  for (let year = from; year <= to; year++) seasons.push(season(year, begun));
  const { seasonDay, isRegrowth: _isRegrowth, ...clock } = seasons.at(-1)!;
  return {
    id: 'stalks',
    crop: stalks,
    share: 0.5,
    ...clock,
    startDay: Math.max(begun, seasonDay),
    standsSince: begun,
    seasons,
    sown: false,
    clearingDay: null,
    cleared: false,
    topsFate: 'left',
    nodulesSeen: null,
    ...over,
  };
}

const years = (from: number, to: number, over: Partial<BedSeason>): BedSeason => {
  const seasonStarts: number[] = [];
  for (let year = from + 1; year <= to; year++) seasonStarts.push(day(year, 1, 1));
  return bareBed({
    firstDay: day(from, 1, 1),
    lastDay: day(to, 12, 31),
    seasonStarts,
    // well fed, so that need is what limits
    soil: { ...bareBed().soil, organicMatterPercent: 8, startingMineralTop: 15 },
    ...over,
  });
};
const on = (result: SeasonResult, date: DayNumber): number => date - result.firstDay;

describe('a plant that stays for years', () => {
  const bed = years(2013, 2015, { plantings: [stalksOf(2013, 2015, day(2013, 4, 1))] });
  // run in each test, so that a fault planted in the engine is seen by it
  const grown = () => {
    const result = runSeason(bed);
    return { result, own: result.plantings[0]! };
  };
  const whole = 10 * 0.5;

  test('stands from the day it was planted, through the winters, to the end of the run', () => {
    const { result, own } = grown();
    expect(own).toMatchObject({ startDay: day(2013, 4, 1), clearingDay: null });
    const { crop } = result.pools;
    expect(crop[on(result, day(2013, 3, 31))]).toBe(0);
    for (let at = on(result, day(2013, 8, 1)); at < result.days; at++)
      expect(crop[at]).toBeGreaterThan(0.15 * whole);
    expect(result.residual).toBeLessThan(1e-9);
  });

  test('wants the whole plant in its first season, and no crown in the next', () => {
    const { own } = grown();
    const [first, second] = own.earlierSeasons!;
    // the curve ends at the usual degree-days; this year repeats the normals
    expect(first!.demand).toBeCloseTo(whole, 6);
    expect(second!.demand).toBeCloseTo(0.8 * whole, 6);
    expect(own.demand).toBeCloseTo(0.8 * whole, 6);
  });

  test('its clock starts anew: it wants nothing before it grows again, and again the same', () => {
    const { result, own } = grown();
    const need = own.dailyNeed;
    for (let date = day(2014, 1, 1); date < day(2014, 4, 1); date++)
      expect(need[on(result, date)]).toBe(0);
    expect(own.progress[on(result, day(2013, 12, 31))]).toBe(1);
    expect(own.progress[on(result, day(2014, 1, 1))]).toBe(0);
    expect(need[on(result, day(2015, 6, 1))]).toBeCloseTo(need[on(result, day(2014, 6, 1))]!, 9);
  });

  test('its roots stay: on the first day of regrowth they are as deep as ever', () => {
    const { result, own } = grown();
    expect(own.rootDepth[on(result, day(2014, 4, 1))]).toBe(900);
    expect(own.rootDepth[on(result, day(2013, 4, 10))]).toBeLessThan(300);
  });

  test('each season’s account closes: crown before + taken = picked + left + crown after', () => {
    const { result, own } = grown();
    let crown = 0;
    for (const one of own.earlierSeasons!) {
      expect(crown + one.uptake + one.fixed).toBeCloseTo(one.removed + one.left + one.kept, 9);
      expect(one.harvested).toBeGreaterThan(0.5);
      expect(one.kept).toBeGreaterThanOrEqual(0.2 * (one.uptake - one.luxury));
      crown = one.kept;
    }
    const standing = result.pools.crop.at(-1)!;
    expect(crown + own.uptake).toBeCloseTo(own.removed + own.left + standing, 9);
    const [first, second] = own.earlierSeasons!;
    expect([first!.firstDay, first!.lastDay]).toEqual([day(2013, 4, 1), day(2013, 12, 31)]);
    expect([second!.firstDay, second!.lastDay]).toEqual([day(2014, 1, 1), day(2014, 12, 31)]);
  });

  test('tops lie on top when they die down, or are taken away', () => {
    const { result, own } = grown();
    const lying = moved(result, 'crop', 'coverResidue', 'tops left');
    expect(lying).toBeGreaterThan(1);
    expect(result.layers.map(({ id }) => id)).toContain(`tops of stalks ${day(2014, 1, 1)}`);
    for (const topsFate of ['taken away', 'pulled with roots'] as const) {
      const taken = runSeason(
        years(2013, 2015, { plantings: [stalksOf(2013, 2015, day(2013, 4, 1), { topsFate })] }),
      );
      expect(moved(taken, 'crop', 'coverResidue')).toBe(0);
      expect(moved(taken, 'crop', 'removed')).toBeGreaterThan(1);
      const [first] = taken.plantings[0]!.earlierSeasons!;
      expect(first!.left).toBe(0);
      expect(first!.uptake + first!.fixed).toBeCloseTo(first!.removed + first!.kept, 9);
      expect(first!.removed).toBeGreaterThan(first!.harvested + 1);
      expect(taken.plantings[0]!.earlierSeasons![0]!.kept).toBeCloseTo(
        own.earlierSeasons![0]!.kept,
        1,
      );
    }
  });
});

describe('one that was planted before the run', () => {
  const bed = years(2013, 2014, { plantings: [stalksOf(2013, 2014, day(2009, 4, 1))] });

  test('starts with its crown, roots’ share of a whole plant, and books it', () => {
    const result = runSeason(bed);
    expect(result.start.crop).toBeCloseTo(0.2 * 10 * 0.5, 12);
    expect(result.plantings[0]!.earlierSeasons![0]!.demand).toBeCloseTo(0.8 * 10 * 0.5, 6);
    expect(result.residual).toBeLessThan(1e-9);
  });

  test('cleared in winter it leaves its crown as roots', () => {
    const cleared = runSeason(
      years(2013, 2014, {
        plantings: [
          stalksOf(2013, 2014, day(2009, 4, 1), { clearingDay: day(2014, 2, 1), cleared: true }),
        ],
      }),
    );
    const kept = cleared.plantings[0]!.earlierSeasons![0]!.kept;
    expect(moved(cleared, 'crop', 'dugResidue', 'roots left')).toBeCloseTo(kept, 12);
    expect(cleared.pools.crop.at(-1)).toBeCloseTo(0, 12);
    expect(cleared.plantings[0]!.clearingDay).toBe(day(2014, 2, 1));
  });
});

test('in ten equal years it takes, gives and keeps the same', () => {
  const result = runSeason(
    years(2010, 2019, { plantings: [stalksOf(2010, 2019, day(2005, 4, 1))] }),
  );
  const seasons = result.plantings[0]!.earlierSeasons!;
  expect(seasons).toHaveLength(9);
  expect(result.residual).toBeLessThan(1e-9);
  for (const one of seasons.slice(3)) {
    expect(one.kept).toBeCloseTo(seasons[3]!.kept, 1);
    expect(one.demand).toBeCloseTo(seasons[3]!.demand, 1);
  }
});

test('picks of one season replace that season’s usual ones alone', () => {
  const picks = [
    { kind: 'harvest', day: day(2014, 6, 1), plantingId: 'stalks', kilogramsPerM2: 0.1 },
  ] as const;
  const plantings = [stalksOf(2013, 2015, day(2009, 4, 1))];
  const [usual] = runSeason(years(2013, 2015, { plantings })).plantings;
  const [logged] = runSeason(years(2013, 2015, { plantings, events: picks })).plantings;
  expect(logged!.earlierSeasons![1]!.harvested).toBeCloseTo(
    0.1 * stalks.harvestGramsPerKilogram,
    12,
  );
  expect(logged!.earlierSeasons![0]!.harvested).toBe(usual!.earlierSeasons![0]!.harvested);
  expect(logged!.harvested).toBeCloseTo(usual!.harvested, 1);
  expect(logged!.harvested).toBeGreaterThan(0.3);
});

test('growth counts from its day of regrowth', () => {
  expect(growsFrom(stalksOf(2013, 2014, day(2009, 4, 1)))).toBe(day(2014, 4, 1));
  expect(growsFrom({ ...stalksOf(2014, 2014, day(2014, 5, 1)) })).toBe(day(2014, 5, 1));
});
