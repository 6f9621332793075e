import { describe, expect, test } from 'vitest';
import { dayFromParts } from '../../../app/core/days';
import { makeDraws } from '../../../app/core/season/draws/columns';
import { drawnSeason } from '../../../app/core/season/draws/drawnSeason';
import { drawnWeather } from '../../../app/core/season/draws/drawnWeather';
import { runDraws, type DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import { flowIndex, type FlowIndex } from '../../../app/core/season/flows';
import type { BedSeason, GrowthSeason, PlantingInput } from '../../../app/core/season/input';
import type { SeasonResult } from '../../../app/core/season/result';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { runSeason } from '../../../app/core/season/season';
import { newWatch, watchSeason } from '../../../app/core/season/watchSeason';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { limits } from '../../../app/tables/thresholds';
import {
  bareBed,
  beanCrop,
  clippings,
  fruitingCrop,
  newYorkNormals,
  normalDegreeDays,
  planted,
} from './handMadeBed';

/* Of a run of three seasons, what is told of a bed's draws is of the one that holds today. */

const day = (year: number, month: number, date: number): number => dayFromParts(year, month, date);
const years = [2011, 2012, 2013] as const;
const firstMorning = day(2013, 1, 1);

/** Stands from the autumn before the first season, and grows again each spring. */
function stalks(): PlantingInput {
  const crop = {
    ...fruitingCrop,
    id: 'stalks',
    excessClass: 'perennial' as const,
    need: 8,
    baseCelsius: 5,
    flowerDays: null,
    frostTender: false,
  };
  const seasons = years.map((year): GrowthSeason => {
    const startDay = day(year, 4, 1);
    return {
      seasonDay: day(year, 1, 1),
      isRegrowth: true,
      startDay,
      firstHarvestDay: startDay + crop.firstHarvestDays,
      usualEndDay: startDay + crop.usualDays,
      normalDegreeDays: normalDegreeDays(newYorkNormals, startDay, crop.usualDays, 5),
    };
  });
  const { seasonDay: _day, isRegrowth: _is, ...clock } = seasons.at(-1)!;
  return {
    ...planted(crop, day(2010, 11, 20), { id: 'stalks', share: 0.25, topsFate: 'left' }),
    ...clock,
    startDay: firstMorning,
    standsSince: day(2010, 11, 20),
    seasons,
    sown: false,
    clearingDay: null,
    cleared: false,
  };
}

/** Fixes at any warmth, so that it does so on both sides of the turn as well. */
const winterBean = { ...beanCrop, id: 'winter bean', baseCelsius: -8, frostTender: false };
const bed: BedSeason = bareBed({
  firstDay: day(2011, 1, 1),
  lastDay: day(2013, 12, 31),
  today: day(2013, 6, 20),
  seasonStarts: [day(2012, 1, 1), firstMorning],
  layers: years.map((year) => clippings(day(year, 6, 1), 15, { id: `June ${String(year)}` })),
  plantings: [
    stalks(),
    ...years.map((year) =>
      planted(fruitingCrop, day(year, 5, 15), { id: `fruit of ${String(year)}`, share: 0.25 }),
    ),
    planted(beanCrop, day(2012, 5, 10), {
      id: 'bean of 2012',
      share: 0.25,
      clearingDay: day(2012, 8, 20),
    }),
    // sown in one season, cleared in the next
    planted(winterBean, day(2012, 11, 1), {
      id: 'wintered',
      share: 0.25,
      clearingDay: day(2013, 5, 1),
    }),
  ].sort((one, other) => one.startDay - other.startDay),
});
const from = firstMorning - bed.firstDay;

const fixedBy = [flowIndex('air', 'crop', 'fixed')];
const takenBy = [
  ...fixedBy,
  flowIndex('mineralTop', 'crop', 'taken up'),
  flowIndex('mineralLower', 'crop', 'taken up'),
];
const washedOut = [flowIndex('mineralLower', 'leached', 'washed out')];
const sumFrom = (
  { flows }: SeasonResult,
  which: readonly FlowIndex[],
  first: number,
  end = Infinity,
): number =>
  which.reduce(
    (sum, flow) => flows[flow]!.slice(first, end).reduce((all, grams) => all + grams, sum),
    0,
  );
const needFrom = ({ plantings }: SeasonResult, first: number): number =>
  plantings.reduce(
    (sum, { dailyNeed }) => dailyNeed.subarray(first).reduce((all, grams) => all + grams, sum),
    0,
  );

describe('a lean run of three seasons', () => {
  const whole = runSeason(bed);
  const lean = newWatch(bed);
  watchSeason(bed, runPlan(bed, lowerDepthFor(bed)), lean);
  const all = (what: 'need' | 'met' | 'fixed'): number =>
    lean.plantings.reduce((sum, { thisSeason }) => sum + thisSeason[what], 0);

  test('something happens before the first morning, on it and after it', () => {
    for (const flows of [fixedBy, takenBy, washedOut])
      for (const [first, end] of [
        [0, from],
        [from, bed.lastDay],
      ] as const)
        expect(sumFrom(whole, flows, first, end)).toBeGreaterThan(0.3);
    const wintered = whole.plantings.find(({ id }) => id === 'wintered')!;
    for (const index of [from - 1, from, from + 1])
      expect(wintered.dailyFixed[index]).toBeGreaterThan(0);
  });

  test('counts what is washed out, wanted, taken and fixed from that morning on', () => {
    expect(lean.leached).toBe(sumFrom(whole, washedOut, from));
    expect(all('need')).toBeCloseTo(needFrom(whole, from), 10);
    expect(all('met')).toBeCloseTo(sumFrom(whole, takenBy, from), 10);
    expect(all('fixed')).toBeCloseTo(sumFrom(whole, fixedBy, from), 10);
  });

  test('planting by planting: none of those that are gone, all of those of this season', () => {
    for (const [at, { id, dailyNeed, dailyFixed }] of whole.plantings.entries()) {
      const own = lean.plantings[at]!.thisSeason;
      const sum = (series: Float64Array): number =>
        series.subarray(from).reduce((grams, one) => grams + one, 0);
      expect(own.need, id).toBeCloseTo(sum(dailyNeed), 10);
      expect(own.fixed, id).toBeCloseTo(sum(dailyFixed), 10);
      if (/2011|2012/.test(id)) expect([own.need, own.met, own.fixed]).toEqual([0, 0, 0]);
      else expect(own.need, id).toBeGreaterThan(0.5);
    }
  });

  test('is told alike when it is run again', () => {
    const before = structuredClone(lean.plantings.map(({ thisSeason }) => thisSeason));
    const { leached } = lean;
    watchSeason(bed, runPlan(bed, lowerDepthFor(bed)), lean);
    expect(lean.plantings.map(({ thisSeason }) => thisSeason)).toEqual(before);
    expect(lean.leached).toBe(leached);
  });
});

test('draws say so too, and where today is in an earlier season, from that one on', () => {
  const count = 3;
  for (const [today, first] of [
    [bed.today, from],
    [day(2012, 7, 1), day(2012, 1, 1) - bed.firstDay],
    [day(2011, 7, 1), 0],
  ] as const) {
    const question: DrawsQuestion = {
      input: { ...bed, today },
      spread: {
        coefficients: [
          {
            name: 'soil',
            key: 'soilReleaseRate',
            shape: 'amount',
            low: 2e-5,
            typical: 6e-5,
            high: 2e-4,
          },
        ],
        layers: {},
        needs: {},
        organicMatter: null,
      },
      weather: { kind: 'generated', spread: typicalWeatherSpread(40.8) },
      tests: [],
      seed: 2,
      count,
    };
    const draws = makeDraws(question.seed, count);
    const leached = Array.from({ length: count }, (_, draw) => {
      const sky = drawnWeather(question.input, question.weather, question.seed, draw);
      return sumFrom(
        runSeason(drawnSeason(question.input, question.spread, sky, draws, draw)),
        washedOut,
        first,
      );
    }).toSorted((one, other) => one - other);
    const answer = runDraws(question, limits)!;
    expect([answer.leached.low, answer.leached.middle, answer.leached.high]).toEqual(leached);
    expect(answer.nitrateDays[0]).toBe(bed.firstDay);
    expect(answer.nitrateDays.at(-1)).toBe(bed.lastDay);
  }
});
