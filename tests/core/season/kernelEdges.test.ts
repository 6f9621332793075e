import { describe, expect, test } from 'vitest';
import { runSeason } from '../../../app/core/season/season';
import { runPlan, lowerDepthFor } from '../../../app/core/season/runPlan';
import { newWatch, watchSeason } from '../../../app/core/season/watchSeason';
import { watchedOf } from '../../../app/core/season/watchedSeason';
import { warm } from './firstDay';
import {
  bareBed,
  beanCrop,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  moved,
  planted,
  straw,
} from './handMadeBed';

/* What the laws over random beds hold for any bed, on single beds of which every number is known. */

const later = firstOf2013 + 120;
const sum = (values: Iterable<number>): number => {
  let all = 0;
  for (const value of values) all += value;
  return all;
};

describe('a cover that was there for months', () => {
  const layers = [clippings(firstOf2013, 20), straw(firstOf2013, 20), compost(firstOf2013, 5)];
  const eve = () => runSeason(bareBed({ weather: warm(3), layers, lastDay: later - 1 }));
  const held = (pool: 'coverHumus' | 'coverMicrobes' | 'coverResidue'): number =>
    eve().pools[pool].at(-1)!;

  test.each([0.3, 1])(
    'dug in by %d: both books agree, and what was humus is humus below',
    (share) => {
      const events = [{ kind: 'dig cover in', day: later, share } as const];
      const result = runSeason(bareBed({ weather: warm(3), layers, events }));
      expect(result.residual).toBeLessThan(1e-9);
      expect(held('coverHumus')).toBeGreaterThan(0.1);
      const at = later - firstOf2013;
      // a day’s turnover adds to it and takes nothing
      expect(result.pools.dugHumus[at - 1]).toBe(0);
      expect(result.pools.dugHumus[at]).toBeGreaterThanOrEqual(share * held('coverHumus'));
      expect(result.pools.dugHumus[at]).toBeLessThan(1.1 * share * held('coverHumus'));
      expect(result.pools.coverHumus[at]).toBeGreaterThanOrEqual(
        (1 - share) * held('coverHumus') - 1e-12,
      );
      expect(moved(result, 'slow', 'soilOrganic')).toBeGreaterThan(0);
    },
  );

  test('raking takes from what lies and leaves what was dug in', () => {
    const dug = straw(firstOf2013, 20, { id: 'dug', placement: 'dug' });
    const events = [{ kind: 'rake off', day: later, share: 1 } as const];
    const result = runSeason(bareBed({ weather: warm(3), layers: [...layers, dug], events }));
    expect(result.residual).toBeLessThan(1e-9);
    const alone = runSeason(bareBed({ weather: warm(3), layers: [dug] }));
    const at = later - firstOf2013;
    expect(result.pools.dugResidue[at]).toBeGreaterThan(0.5 * alone.pools.dugResidue[at]!);
    expect(moved(result, 'coverResidue', 'removed')).toBeCloseTo(
      runSeason(
        bareBed({ weather: warm(3), layers: [...layers, dug], lastDay: later - 1 }),
      ).pools.coverResidue.at(-1)!,
      9,
    );
  });
});

describe('a planting that never stood', () => {
  test('has met nothing of nothing', () => {
    const never = planted(fruitingCrop, firstOf2013 + 500);
    const [one] = runSeason(bareBed({ weather: warm(3), plantings: [never] })).plantings;
    expect(one).toMatchObject({ demand: 0, demandMet: 0, uptake: 0, clearingDay: null });
  });
});

describe('what a draw keeps of a run is what the whole run says', () => {
  const bed = bareBed({
    today: firstOf2013 + 150,
    weather: warm(3),
    layers: [clippings(firstOf2013 + 90, 15), straw(firstOf2013 + 100, 20, { placement: 'dug' })],
    plantings: [
      planted(fruitingCrop, firstOf2013 + 100, { share: 0.6, normalDegreeDays: 1200 }),
      planted(beanCrop, firstOf2013 + 110, {
        share: 0.4,
        normalDegreeDays: 900,
        clearingDay: null,
      }),
    ],
  });
  const both = () => {
    const watch = newWatch(bed);
    watchSeason(bed, runPlan(bed, lowerDepthFor(bed)), watch);
    return { watch, whole: runSeason(bed) };
  };
  const now = bed.today - bed.firstDay;

  test('nitrate of the top on every day, of the lower layer and the roots tonight', () => {
    const { watch, whole } = both();
    expect(watch.pools.mineralTop).toEqual(whole.pools.mineralTop);
    expect(watch.pools.mineralLower[now]).toBe(whole.pools.mineralLower[now]);
    expect(watch.rootReach[now]).toBe(whole.rootReach[now]);
    expect(watch.pools.mineralLower[now + 1]).toBeNaN();
    expect(watch.rootReach[now - 1]).toBeNaN();
  });

  test('what is released, tied up and taken in luxury after today, and no number before', () => {
    const { watch, whole } = both();
    const kept = watchedOf(whole);
    for (const key of ['released', 'tiedUp', 'luxury'] as const) {
      expect(watch[key].subarray(now + 1)).toEqual(kept[key].subarray(now + 1));
      expect(watch[key].subarray(0, now + 1).every(Number.isNaN)).toBe(true);
    }
    expect(sum(kept.released.subarray(now + 1))).toBeGreaterThan(1);
    expect(sum(kept.tiedUp)).toBeGreaterThan(0.01);
    expect(watch.leached).toBeCloseTo(moved(whole, 'mineralLower', 'leached'), 12);
    expect(watch.leached).toBeGreaterThan(0);
  });

  test('plants day by day and over the run', () => {
    const { watch, whole } = both();
    for (const [at, plant] of watch.plantings.entries()) {
      const own = whole.plantings[at]!;
      expect(plant.id).toBe(own.id);
      for (const key of ['dailyNeed', 'dailyUptake', 'dailyFixed'] as const)
        expect(plant[key]).toEqual(own[key]);
      for (const key of ['demand', 'demandMet', 'fixed'] as const)
        expect(plant[key]).toBe(own[key]);
    }
    expect(whole.plantings[1]!.fixed).toBeGreaterThan(0.1);
  });

  test('of days on which somebody looked: water of the evening, cover of the day', () => {
    const days = [now, now - 50, now - 20];
    const watch = newWatch(bed, days);
    watchSeason(bed, runPlan(bed, lowerDepthFor(bed)), watch);
    const whole = runSeason(bed);
    expect(watch.looks.map(({ index }) => index)).toEqual([now - 50, now - 20, now]);
    for (const look of watch.looks) {
      expect(look.availableWater).toBe(whole.availableWaterTop[look.index]);
      // as it lay in the morning, which the day's water and decay went by
      expect(look.lyingDry).toBeCloseTo(whole.coverDryKg[look.index - 1]!, 12);
      expect(look.coverFill).toBe(whole.coverFill[look.index]);
      // what hid the ground that day, before some of it rotted
      expect(look.hidden).toBeCloseTo(whole.coverFraction[look.index]!, 1);
    }
    expect(watch.looks[2]!.lyingDry).toBeGreaterThan(0.1);
  });

  test('a second run over the same watch leaves nothing of the first', () => {
    const watch = newWatch(bed);
    const plan = runPlan(bed, lowerDepthFor(bed));
    const flows = new Float64Array(200).fill(5);
    watchSeason(bed, plan, watch, flows);
    const once = structuredClone({ ...watch, steps: 0 });
    watchSeason(bed, plan, watch, flows);
    expect(structuredClone({ ...watch, steps: 0 })).toEqual(once);
    expect(watch.steps).toBe(2 * watch.days);
    expect(watch.days).toBe(365);
  });
});
