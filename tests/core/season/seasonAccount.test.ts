import { describe, expect, test } from 'vitest';
import { flowIndex } from '../../../app/core/season/flows';
import {
  at,
  lastDayOf,
  meanDays,
  mineralInReach,
  nitrateMgPerKg,
  nitrogenOwed,
  seasonFirstDay,
  seasonLastDay,
  sumDays,
} from '../../../app/core/season/seasonAccount';
import { flowsByDay, watchedFlows, watchedOf } from '../../../app/core/season/watchedSeason';
import { dugGives, dugTakes, firstDay, lastDay, makeBed, makeResult } from '../madeBed';
import { all } from './cautionRuns';

/* What a run says of a day, on five days of known numbers. */

const run = { firstDay: 100, days: 5 };
const series = Float64Array.from([1, 2, 4, 8, 16]);

describe('days of a run', () => {
  test('the last is its first day and its count less one', () => {
    expect(lastDayOf(run)).toBe(104);
  });

  test('a day outside counts as its nearest', () => {
    expect([99, 100, 102, 104, 200].map((day) => at(series, run, day))).toEqual([1, 1, 4, 16, 16]);
  });

  test('sums and means take both ends and are cut to the run', () => {
    expect(sumDays(series, run, 101, 103)).toBe(14);
    expect(sumDays(series, run, 102, 102)).toBe(4);
    expect(sumDays(series, run, 90, 101)).toBe(3);
    expect(sumDays(series, run, 103, 190)).toBe(24);
    expect(sumDays(series, run, 103, 102)).toBe(0);
    // what a series holds beyond the run is none of it
    expect(sumDays([...series, 99, 99], run, 103, 190)).toBe(24);
    expect(meanDays(series, run, 101, 103)).toBeCloseTo(14 / 3, 12);
    expect(meanDays(series, run, 90, 101)).toBe(1.5);
    expect(meanDays(series, run, 104, 190)).toBe(16);
    expect(meanDays(series, run, 105, 190)).toBeNull();
    expect(meanDays(series, run, 90, 99)).toBeNull();
    expect(meanDays(series, run, 103, 102)).toBeNull();
  });
});

test('what rotting owes the soil is paid back and never in advance', () => {
  const amounts = (...grams: readonly number[]): Float64Array => {
    const long = all(0);
    long.set(grams);
    return long;
  };
  const result = makeResult({
    flows: {
      [dugTakes]: amounts(1, 0, 2, 0, 0, 3),
      [dugGives]: amounts(0, 0.4, 0, 5, 1, 0.5),
    },
  });
  const owed = nitrogenOwed(result);
  [1, 0.6, 2.6, 0, 0, 2.5].forEach((grams, day) => expect(owed[day]).toBeCloseTo(grams, 12));
});

test('in reach is the top and what the roots reach of the lower layer', () => {
  const result = makeResult({
    pools: { mineralTop: all(3), mineralLower: all(2) },
    rootReach: all(0.25),
  });
  expect(mineralInReach(result, firstDay)).toBe(3.5);
});

test('nitrate by the bed’s own bulk density: 7.8 g/m2 in 30 cm is 20 mg/kg at 1.3, 4.8 at 0.8', () => {
  // the design's own worked pair
  const on = (grams: number, bulkDensityKgPerL: number): number =>
    nitrateMgPerKg(
      makeBed({ soil: { ...makeBed().soil, bulkDensityKgPerL } }),
      makeResult({ pools: { mineralTop: all(grams) } }),
      firstDay,
    );
  expect(on(7.8, 1.3)).toBeCloseTo(20, 9);
  expect(on(4.8, 0.8)).toBeCloseTo(20, 9);
});

describe('the season that holds a day', () => {
  const bed = makeBed({ seasonStarts: [firstDay + 200, firstDay + 100] });
  test('begins with the latest start up to it, or with the run', () => {
    const begins = (day: number): number => seasonFirstDay(bed, firstDay + day) - firstDay;
    expect([0, 99, 100, 150, 199, 200, 300].map(begins)).toEqual([0, 0, 100, 100, 100, 200, 200]);
  });
  test('ends on the eve of the next start, or with the run', () => {
    const ends = (day: number): number => seasonLastDay(bed, firstDay + day) - firstDay;
    expect([0, 98, 99, 100, 199, 200].map(ends)).toEqual([
      99,
      99,
      99,
      199,
      199,
      lastDay - firstDay,
    ]);
    const late = makeBed({ seasonStarts: [lastDay] });
    expect(seasonLastDay(late, firstDay)).toBe(lastDay - 1);
    expect(seasonLastDay(late, lastDay)).toBe(lastDay);
  });
});

test('released, tied up and luxury are the sums of the flows that are named for them', () => {
  const into = (...ways: readonly Parameters<typeof flowIndex>[]) =>
    ways.map((way) => flowIndex(...way));
  const named = {
    released: into(
      ['soilOrganic', 'mineralTop', 'released by the soil'],
      ['youngHumus', 'mineralTop', 'released by last year’s humus'],
      ['dugMicrobes', 'mineralTop', 'released'],
      ['slow', 'mineralTop', 'released from compost'],
      ['coverFree', 'mineralTop', 'washed in'],
      ['coverFree', 'mineralTop', 'cover dug in'],
    ),
    tiedUp: into(
      ['mineralTop', 'dugMicrobes', 'held back'],
      ['mineralTop', 'coverMicrobes', 'held back from the soil'],
    ),
    luxury: into(['mineralTop', 'crop', 'luxury'], ['mineralLower', 'crop', 'luxury']),
  };
  for (const key of ['released', 'tiedUp', 'luxury'] as const) {
    expect([...watchedFlows[key]].toSorted()).toEqual(named[key].toSorted());
    const flows = Object.fromEntries(named[key].map((flow, place) => [flow, all(place + 1)]));
    const many = named[key].length;
    expect(watchedOf(makeResult({ flows }))[key][7]).toBe((many * (many + 1)) / 2);
  }
  const result = makeResult({ flows: { [dugTakes]: all(2) } });
  expect([...flowsByDay(result, []).slice(0, 2)]).toEqual([0, 0]);
  expect(flowsByDay(result, [dugTakes])).toHaveLength(result.days);
});
