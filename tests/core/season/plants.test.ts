import { describe, expect, test } from 'vitest';
import { startingState } from '../../../app/core/season/startingState';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { poolIndex } from '../../../app/core/season/ways';
import { stepDay } from '../../../app/core/season/day';
import { flowIndex, flowKinds } from '../../../app/core/season/flows';
import type { BedSeason } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { firstDayOf, set, warm } from './firstDay';
import { bareBed, beanCrop, firstOf2013, fruitingCrop, moved, planted } from './handMadeBed';

describe('plants', () => {
  const start = firstOf2013 + 10;
  const moist = { weather: warm(3) };
  const bedWith = (...plantings: BedSeason['plantings']): BedSeason =>
    bareBed({ ...moist, plantings });
  const clearing = start + 90;
  // 20 C every day is ten degree-days over the base of these crops.
  const fruit = planted(fruitingCrop, start, {
    clearingDay: clearing,
    normalDegreeDays: 10 * fruitingCrop.usualDays,
  });
  const beans = planted(beanCrop, start, { normalDegreeDays: 10 * beanCrop.usualDays });

  test.each([
    ['taken away', 'removed', 'cleared away'],
    ['left', 'coverResidue', 'tops left'],
    ['dug in', 'dugResidue', 'tops dug in'],
    ['pulled with roots', 'removed', 'cleared away'],
  ] as const)('tops %s go to %s; roots stay unless they are pulled', (topsFate, to, why) => {
    const result = runSeason(bedWith({ ...fruit, topsFate }));
    const [one] = result.plantings;
    const taken = one!.uptake + one!.fixed;
    const roots = topsFate === 'pulled with roots' ? 0 : 0.15 * taken;
    expect(moved(result, 'crop', 'dugResidue', 'roots left')).toBeCloseTo(roots, 9);
    expect(moved(result, 'crop', to, why)).toBeCloseTo(taken - one!.harvested - roots, 9);
    expect(result.pools.crop.at(-1)).toBeCloseTo(0, 12);
    expect(one!.clearingDay).toBe(clearing);
  });

  test('roots stay as residue of C:N 25', () => {
    const bed = bedWith(fruit);
    const lowerDepth = lowerDepthFor(bed);
    const state = startingState(bed, lowerDepth);
    const flows = new Float64Array(flowKinds.length);
    for (let day = 0; day <= clearing - firstOf2013; day++) {
      flows.fill(0);
      stepDay(bed, state, flows, day);
    }
    const [roots] = state.classes;
    expect(roots!.parameters.carbonToNitrogen).toBe(25);
    expect(roots!.residue / 25).toBeCloseTo(
      flows[flowIndex('crop', 'dugResidue', 'roots left')]!,
      9,
    );
  });

  test('logged picks stand for all picks to today; after it they are spread', () => {
    const today = clearing - 5;
    const log = (day: number, kilogramsPerM2: number) =>
      ({ kind: 'harvest', day, plantingId: 'fruit', kilogramsPerM2 }) as const;
    const events = [log(clearing - 20, 0.5), log(clearing - 10, 0.25)];
    const result = runSeason({ ...bedWith(fruit), today, events });
    const picked = result.flows[flowIndex('crop', 'harvested', 'picked')]!;
    const upToToday = picked.slice(0, today - firstOf2013 + 1).reduce((a, b) => a + b, 0);
    expect(upToToday).toBeCloseTo(0.75 * 1.4, 9);
    expect(picked[clearing - firstOf2013 - 2]).toBeGreaterThan(0);
    const spread = runSeason({ ...bedWith(fruit), today });
    const whole = spread.flows[flowIndex('crop', 'harvested', 'picked')]!;
    expect(whole[fruit.firstHarvestDay - firstOf2013 - 1]).toBe(0);
    expect(whole[fruit.firstHarvestDay - firstOf2013]).toBeGreaterThan(0);
  });

  test('nobody picks more than nine tenths of what is in the plant', () => {
    const event = {
      kind: 'harvest',
      day: clearing - 1,
      plantingId: 'fruit',
      kilogramsPerM2: 99,
    } as const;
    const bed = { ...bedWith({ ...fruit, firstHarvestDay: clearing }), events: [event] };
    const [one] = runSeason(bed).plantings;
    expect(one!.harvested).toBeGreaterThan(0.85 * one!.uptake);
    expect(one!.harvested).toBeLessThanOrEqual(0.9 * one!.uptake + 1e-9);
  });

  test('need to the clearing is need counted day by day, at the planting’s share', () => {
    const half = runSeason(bedWith({ ...fruit, share: 0.5 })).plantings[0]!;
    const whole = runSeason(bedWith(fruit)).plantings[0]!;
    expect(half.demand).toBeCloseTo(whole.demand / 2, 9);
    expect(whole.dailyNeed.reduce((a, b) => a + b, 0)).toBeCloseTo(whole.demand, 9);
    expect(whole.demand).toBeLessThan(fruitingCrop.need);
  });

  test.each([1, 0.5])('%d of a bed of plants reaches that share of its nitrate', (share) => {
    const bed = bedWith({ ...fruit, startDay: firstOf2013, normalDegreeDays: 8, share });
    const { flow, state } = firstDayOf(bed, (one) => set(one, 'mineralTop', 8));
    const taken = flow('mineralTop', 'crop', 'taken up') + flow('mineralTop', 'crop', 'luxury');
    const found = state.nitrogen[poolIndex.mineralTop]! + taken;
    expect(taken).toBeCloseTo(0.1 * share * (found - 0.4), 9);
  });

  test('plantings whose shares add up to two beds reach no more than one', () => {
    const crowd = [1, 2, 3, 4].map((at) => ({
      ...fruit,
      id: `${at}`,
      startDay: firstOf2013,
      normalDegreeDays: 8,
      share: 0.5,
    }));
    const { flow, state } = firstDayOf(bedWith(...crowd), (one) => set(one, 'mineralTop', 8));
    const taken = flow('mineralTop', 'crop', 'taken up') + flow('mineralTop', 'crop', 'luxury');
    const found = state.nitrogen[poolIndex.mineralTop]! + taken;
    expect(taken).toBeCloseTo(0.1 * (found - 0.4), 9);
  });

  test('a planting that left before the first day takes nothing', () => {
    const gone = { ...fruit, startDay: firstOf2013 - 100, clearingDay: firstOf2013 - 1 };
    const result = runSeason(bedWith(gone));
    expect(result.plantings[0]!.demand).toBe(0);
    expect(moved(result, '*', 'crop')).toBe(0);
  });

  test('beans without nodules, and beans before they have any, fix nothing', () => {
    const fixed = (nodulesSeen: boolean | null): number =>
      runSeason(bedWith({ ...beans, nodulesSeen })).plantings[0]!.fixed;
    expect(fixed(null)).toBeGreaterThan(1);
    expect(fixed(true)).toBe(fixed(null));
    expect(fixed(false)).toBe(0);
    const { dailyFixed } = runSeason(bedWith(beans)).plantings[0]!;
    expect(dailyFixed.findIndex((grams) => grams > 0)).toBe(start + 30 - firstOf2013);
  });

  test('the soil cannot give it: fixation rises to the highest share of the day’s need, not to arrears', () => {
    const poor = { ...bareBed().soil, organicMatterPercent: 0.01, startingMineralTop: 0 };
    const bed = { ...bedWith(beans), soil: poor };
    const [one] = runSeason({
      ...bed,
      coefficients: { ...bed.coefficients, startingMineralPer30: 0, rainNitrogenPerYear: 0 },
    }).plantings;
    const day = start + 50 - firstOf2013;
    expect(one!.dailyNeed[day]).toBeGreaterThan(0);
    expect(one!.dailyFixed[day]! / one!.dailyNeed[day]!).toBeCloseTo(0.6, 9);
  });
});
