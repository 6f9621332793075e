import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayFromParts, yearOf } from '../../../app/core/days';
import { startingState } from '../../../app/core/season/startingState';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { stepDay } from '../../../app/core/season/day';
import { makeDraws } from '../../../app/core/season/draws/columns';
import { carriedRelease } from '../../../app/core/season/draws/carriedRelease';
import type { SeasonSpread } from '../../../app/core/season/draws/spread';
import { flowIndex, flowKinds, type Place, type Pool, pools } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { carriedOverOf, seasonAccounts, seasonsOf } from '../../../app/core/season/seasonAccounts';
import { anyBed } from './anyBed';
import { bareBed, beanCrop, clippings, compost, fruitingCrop, planted, straw } from './handMadeBed';

const day = (year: number, month: number, date: number): number => dayFromParts(year, month, date);
const tenYears = (over: Partial<BedSeason> = {}): BedSeason => {
  const seasonStarts: number[] = [];
  for (let year = 2012; year <= 2021; year++) seasonStarts.push(day(year, 1, 1));
  const years = Array.from({ length: 10 }, (_, at) => 2012 + at);
  return bareBed({
    firstDay: day(2011, 11, 20),
    lastDay: day(2021, 12, 31),
    today: day(2021, 7, 15),
    seasonStarts,
    layers: years.flatMap((year) => [
      clippings(day(year, 6, 1), 8, { id: `June ${year}` }),
      straw(day(year, 10, 20), 60, { id: `autumn ${year}` }),
      compost(day(year, 4, 1), 5, { id: `April ${year}`, placement: year % 2 ? 'dug' : 'laid' }),
    ]),
    plantings: years.map((year) =>
      planted(year % 2 ? fruitingCrop : beanCrop, day(year, 5, 15), {
        id: `of ${year}`,
        topsFate: year % 3 ? 'left' : 'dug in',
      }),
    ),
    ...over,
  });
};

describe('ten years of a bed', () => {
  const bed = tenYears();
  const result = runSeason(bed);
  const accounts = seasonAccounts(bed, result, 1);

  test('one account per season, called by the year it starts in', () => {
    expect(accounts.map(({ year }) => year)).toEqual([
      2011, 2012, 2013, 2014, 2015, 2016, 2017, 2018, 2019, 2020, 2021,
    ]);
    expect(accounts[0]).toMatchObject({ firstDay: bed.firstDay, lastDay: day(2011, 12, 31) });
    expect(accounts.map(({ isOver }) => isOver)).toEqual([...Array(10).fill(true), false]);
  });

  test('each season starts from the end of the one before, to the last digit of every pool', () => {
    expect(accounts[0]!.start).toEqual(result.start);
    for (let at = 1; at < accounts.length; at++)
      for (const pool of pools)
        expect(Object.is(accounts[at]!.start[pool], accounts[at - 1]!.end[pool])).toBe(true);
    expect(accounts.at(-1)!.lastDay).toBe(bed.lastDay);
  });

  test('nothing is lost between seasons: residual and every ledger below 1e-9', () => {
    expect(result.residual).toBeLessThan(1e-9);
    for (const { ledger } of accounts) expect(Math.abs(ledger.difference)).toBeLessThan(1e-9);
  });

  test('what is carried over is all but the soil’s own store', () => {
    for (const { end, carriedOver } of accounts) {
      const all = pools.reduce((sum, pool) => sum + end[pool], 0) - end.soilOrganic;
      const named = Object.values(carriedOver).reduce(
        (sum: number, grams: number) => sum + grams,
        0,
      );
      expect(named).toBeCloseTo(all, 9);
      expect(Math.min(...Object.values(carriedOver))).toBeGreaterThanOrEqual(-1e-9);
    }
  });

  test('the same every other year, it settles: nothing that rots piles up beyond what is laid', () => {
    const cover = (year: number): number =>
      accounts.find((one) => one.year === year)!.carriedOver.inCover;
    // crops alternate by two years, the fate of tops by three
    expect(cover(2021) / cover(2015)).toBeGreaterThan(0.8);
    expect(cover(2021) / cover(2015)).toBeLessThan(1.2);
    for (let at = 2; at < accounts.length; at++) {
      const { ledger, carriedOver } = accounts[at]!;
      const grown = carriedOver.youngHumus - accounts[at - 1]!.carriedOver.youngHumus;
      const left = ledger.moved.find(({ key }) => key === 'left by the crop')!.gM2;
      // humus is what lasts: it grows, and by less than all that was laid, fixed and left in a year
      expect(grown).toBeGreaterThan(0);
      expect(grown).toBeLessThan(ledger.totals.cameIn + left);
    }
  });
});

test('a bare bed in ten equal years drifts nowhere: ready nitrogen follows the soil’s own store', () => {
  const bed = tenYears({ layers: [], plantings: [] });
  const accounts = seasonAccounts(bed, runSeason(bed), 1).slice(2);
  for (let at = 1; at < accounts.length; at++) {
    const [before, now] = [accounts[at - 1]!, accounts[at]!];
    const store = now.start.soilOrganic / before.start.soilOrganic;
    expect(store).toBeGreaterThan(0.97);
    expect(store).toBeLessThan(1);
    // leap days move a month's rain by a day: a hundredth either way
    expect(now.carriedOver.ready / before.carriedOver.ready).toBeCloseTo(store, 1);
    expect(Math.abs(now.carriedOver.ready / before.carriedOver.ready - store)).toBeLessThan(0.02);
  }
});

test('a bed left alone for ten years runs down: every pool that rots falls, the drains take the rest', () => {
  const bed = tenYears({ layers: [clippings(day(2012, 6, 1), 40)], plantings: [] });
  const accounts = seasonAccounts(bed, runSeason(bed), 1);
  const rotting = accounts
    .slice(2)
    .map(({ carriedOver: one }) => one.inCover + one.inSoilResidue + one.youngHumus);
  for (let at = 1; at < rotting.length; at++) expect(rotting[at]!).toBeLessThan(rotting[at - 1]!);
  const store = accounts.map(({ end }) => end.soilOrganic);
  for (let at = 1; at < store.length; at++) expect(store[at]!).toBeLessThan(store[at - 1]!);
});

test('once every crop has had its turn a day is no more work each year: the same classes rot', () => {
  const bed = tenYears();
  const state = startingState(bed, lowerDepthFor(bed));
  const flows = new Float64Array(flowKinds.length);
  const classes = new Map<number, number>();
  for (let index = 0; index <= bed.lastDay - bed.firstDay; index++) {
    stepDay(bed, state, flows, index);
    if (bed.seasonStarts.includes(bed.firstDay + index + 1))
      classes.set(yearOf(bed.firstDay + index), state.classes.length);
  }
  // two crops by three fates of tops: six years in which all of it has lain
  const most = (from: number, to: number): number =>
    Math.max(...[...classes].filter(([year]) => year >= from && year <= to).map(([, all]) => all));
  expect(classes.get(2017)).toBeGreaterThan(classes.get(2012)!);
  expect(most(2018, 2021)).toBeLessThanOrEqual(most(2012, 2017));
});

test('law: accounts of any bed chain and close', () => {
  fc.assert(
    fc.property(anyBed, (bed) => {
      const within = {
        ...bed,
        seasonStarts: bed.seasonStarts.filter((start) => start <= bed.lastDay),
      };
      const accounts = seasonAccounts(within, runSeason(within), 1);
      expect(accounts).toHaveLength(within.seasonStarts.length + 1);
      accounts.forEach(({ ledger, start, end, carriedOver }, at) => {
        expect(Math.abs(ledger.difference)).toBeLessThan(1e-9);
        expect(carriedOver).toEqual(carriedOverOf(end));
        if (at > 0) expect(start).toEqual(accounts[at - 1]!.end);
      });
    }),
    { numRuns: 60, seed: 20_131_231 },
  );
});

test('seasons are whole days without gap: of a run within one, from its first to its last', () => {
  expect(seasonsOf(bareBed())).toEqual([{ firstDay: day(2013, 1, 1), lastDay: day(2013, 12, 31) }]);
  const leap = seasonsOf({
    firstDay: day(2012, 2, 29),
    lastDay: day(2014, 12, 31),
    seasonStarts: [day(2013, 1, 1), day(2014, 1, 1)],
  });
  expect(leap.map(({ firstDay, lastDay }) => lastDay - firstDay + 1)).toEqual([307, 365, 365]);
});

test('what is carried over, pool by pool', () => {
  const end = Object.fromEntries(pools.map((pool, at) => [pool, 2 ** at])) as Record<Pool, number>;
  const of = (...names: readonly Pool[]): number => names.reduce((sum, pool) => sum + end[pool], 0);
  expect(carriedOverOf(end)).toEqual({
    ready: of('mineralTop', 'mineralLower'),
    inCover: of('coverResidue', 'coverMicrobes', 'coverFree'),
    inSoilResidue: of('dugResidue', 'dugMicrobes'),
    inCompost: of('slow'),
    youngHumus: of('youngHumus', 'coverHumus', 'dugHumus'),
    inCrop: of('crop'),
  });
});

describe('what is carried gives in its next season', () => {
  const nothing: SeasonSpread = { coefficients: [], layers: {}, needs: {}, organicMatter: null };
  const wide: SeasonSpread = {
    ...nothing,
    coefficients: [
      {
        key: 'youngHumusRate',
        name: 'youngHumusRate',
        shape: 'amount',
        low: 1e-4,
        typical: 3e-4,
        high: 1e-3,
      },
    ],
  };
  const bed = bareBed({
    lastDay: day(2014, 12, 31),
    today: day(2013, 12, 31),
    seasonStarts: [day(2014, 1, 1)],
    layers: [
      clippings(day(2013, 6, 1), 15),
      straw(day(2013, 10, 1), 80, { placement: 'dug' }),
      compost(day(2013, 11, 1), 10),
    ],
  });

  test('what the run itself moves, less what rotting takes', () => {
    const band = carriedRelease(
      { input: bed, spread: nothing, fromDay: day(2014, 1, 1) },
      makeDraws(1, 3),
    );
    const { flows, firstDay } = runSeason(bed);
    const from = day(2014, 1, 1) - firstDay;
    const sum = (names: readonly (readonly [Place, Place, string])[]): number =>
      names.reduce(
        (all, name) =>
          all + flows[flowIndex(...name)]!.slice(from).reduce((total, grams) => total + grams, 0),
        0,
      );
    const given = sum([
      ['youngHumus', 'mineralTop', 'released by last year’s humus'],
      ['dugMicrobes', 'mineralTop', 'released'],
      ['slow', 'mineralTop', 'released from compost'],
      ['coverFree', 'mineralTop', 'washed in'],
    ]);
    const taken = sum([
      ['mineralTop', 'dugMicrobes', 'held back'],
      ['mineralTop', 'coverMicrobes', 'held back from the soil'],
    ]);
    expect(given).toBeGreaterThan(1);
    expect(taken).toBeGreaterThan(0.1);
    expect(band.middle).toBeCloseTo(given - taken, 9);
    expect(band.low).toBeCloseTo(band.high, 9);
  });

  test('and ranges as far as its rates do', () => {
    const band = carriedRelease(
      { input: bed, spread: wide, fromDay: day(2014, 1, 1) },
      makeDraws(1, 40),
    );
    const plain = carriedRelease(
      { input: bed, spread: nothing, fromDay: day(2014, 1, 1) },
      makeDraws(1, 3),
    );
    expect(band.low).toBeLessThan(plain.middle);
    expect(band.high).toBeGreaterThan(plain.middle);
  });
});
