import { describe, expect, test } from 'vitest';
import { dayFromParts } from '../../../app/core/days';
import { startingState } from '../../../app/core/season/startingState';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { stepDay } from '../../../app/core/season/day';
import { flowIndex, flowKinds } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { bareBed, firstOf2013, fruitingCrop, moved, planted, steadyWeather } from './handMadeBed';

const day = (year: number, month: number, date: number): number => dayFromParts(year, month, date);
const shallow = { ...fruitingCrop, id: 'shallow', fullRootDepth: 400 };
const deep = { ...fruitingCrop, id: 'deep', fullRootDepth: 1200 };
const years = (from: number, to: number, over: Partial<BedSeason> = {}): BedSeason => {
  const seasonStarts: number[] = [];
  for (let year = from + 1; year <= to; year++) seasonStarts.push(day(year, 1, 1));
  return bareBed({ firstDay: day(from, 1, 1), lastDay: day(to, 12, 31), seasonStarts, ...over });
};

describe('the lower layer is as deep as the roots of its season', () => {
  const bed = years(2013, 2016, {
    plantings: [
      planted(shallow, day(2013, 5, 1)),
      planted(deep, day(2014, 5, 1)),
      // sown in one season, cleared in the next
      planted(deep, day(2015, 10, 1), { id: 'wintered', clearingDay: day(2016, 3, 1) }),
    ],
  });

  test.each([
    ['nothing that roots below 60 cm: 30 cm', 2013, 300],
    ['roots of 120 cm: 90 cm', 2014, 900],
    ['sown in the autumn of the season', 2015, 900],
    ['cleared in the spring of the season', 2016, 900],
  ])('%s', (_name, year, depth) => {
    expect(lowerDepthFor(bed, day(year, 1, 1))).toBe(depth);
    const { lowerDepth } = runSeason(bed);
    for (const [month, date] of [
      [1, 1],
      [7, 1],
      [12, 31],
    ] as const)
      expect(lowerDepth[day(year, month, date) - bed.firstDay]).toBe(depth);
  });

  test('a planting of the year before or after does not count', () => {
    const before = years(2013, 2015, { plantings: [planted(deep, day(2014, 5, 1))] });
    expect([2013, 2014, 2015].map((year) => lowerDepthFor(before, day(year, 1, 1)))).toEqual([
      300, 900, 300,
    ]);
  });

  test('on a season’s last and first day it does', () => {
    const last = years(2013, 2015, { plantings: [planted(deep, day(2013, 12, 31))] });
    expect(lowerDepthFor(last)).toBe(900);
    const first = years(2013, 2015, {
      plantings: [planted(deep, day(2013, 5, 1), { clearingDay: day(2014, 1, 1) })],
    });
    expect(lowerDepthFor(first, day(2014, 1, 1))).toBe(900);
    expect(lowerDepthFor(first, day(2015, 1, 1))).toBe(300);
  });
});

describe('when its depth changes, nitrogen and water change with it', () => {
  /** Dry cold air: nothing moves but what the turn moves. */
  const still = (over: Partial<BedSeason>): BedSeason =>
    bareBed({ weather: steadyWeather(365, -5, -5), seasonStarts: [firstOf2013 + 1], ...over });
  const turned = (bed: BedSeason) => {
    const state = startingState(bed, lowerDepthFor(bed));
    const flows = new Float64Array(flowKinds.length);
    stepDay(bed, state, flows, 0);
    const before = { nitrogen: state.nitrogen[11]!, water: state.water.lower };
    flows.fill(0);
    stepDay(bed, state, flows, 1);
    return { state, flows, before };
  };
  const deeper = flowIndex('deeperSoil', 'mineralLower', 'roots reach deeper');
  const lessDeep = flowIndex('mineralLower', 'belowRoots', 'roots reach less deep');

  test('30 to 90 cm: three times as much of both, the gain booked as it comes', () => {
    const { state, flows, before } = turned(
      still({ plantings: [planted(deep, firstOf2013 + 100)] }),
    );
    expect(state.lowerDepth).toBe(900);
    expect(state.nitrogen[11]).toBeCloseTo(3 * before.nitrogen, 12);
    expect(flows[deeper]).toBeCloseTo(2 * before.nitrogen, 12);
    expect(flows[lessDeep]).toBe(0);
    expect(state.water.lower).toBeCloseTo(3 * before.water, 9);
  });

  test('90 to 30 cm: a third is left, the rest booked as it goes', () => {
    const { state, flows, before } = turned(
      still({ plantings: [planted(deep, firstOf2013, { clearingDay: firstOf2013 })] }),
    );
    expect(state.lowerDepth).toBe(300);
    expect(state.nitrogen[11]).toBeCloseTo(before.nitrogen / 3, 12);
    expect(flows[lessDeep]).toBeCloseTo((2 / 3) * before.nitrogen, 12);
    expect(flows[deeper]).toBe(0);
    expect(state.water.lower).toBeCloseTo(before.water / 3, 9);
    expect(state.sizes.lowerFull).toBeCloseTo(0.25 * 300, 12);
  });

  test('the same depth: nothing is booked', () => {
    const { flows } = turned(still({}));
    expect(flows[deeper]).toBe(0);
    expect(flows[lessDeep]).toBe(0);
  });

  test('a planting over the turn reaches its own share of the new layer', () => {
    const bed = years(2013, 2014, {
      plantings: [
        planted(shallow, day(2013, 10, 1), { clearingDay: day(2014, 4, 1) }),
        planted(deep, day(2014, 5, 1)),
      ],
    });
    const { rootReach } = runSeason(bed);
    expect(rootReach[day(2013, 12, 31) - bed.firstDay]).toBeCloseTo(1 / 3, 12);
    expect(rootReach[day(2014, 1, 1) - bed.firstDay]).toBeCloseTo(1 / 9, 12);
  });

  test('there and back over ten seasons the books close, and nothing piles up', () => {
    const plantings = [];
    for (let year = 2013; year <= 2022; year++)
      plantings.push(
        planted(year % 2 === 0 ? deep : shallow, day(year, 5, 1), { id: `of ${year}` }),
      );
    const result = runSeason(years(2013, 2022, { plantings }));
    expect(result.residual).toBeLessThan(1e-9);
    expect(moved(result, 'deeperSoil', 'mineralLower')).toBeGreaterThan(0);
    expect(moved(result, 'mineralLower', 'belowRoots')).toBeGreaterThan(0);
    const ends = [2014, 2016, 2018, 2020, 2022].map(
      (year) => result.pools.mineralLower[day(year, 12, 31) - result.firstDay]!,
    );
    expect(Math.max(...ends)).toBeLessThan(1.2 * ends[1]!);
  });
});
