import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { wantedShare } from '../../../app/core/crop/need';
import { plantingAccounts } from '../../../app/core/season/plantingAccount';
import { runSeason } from '../../../app/core/season/season';
import { bedVerdict } from '../../../app/core/season/state';
import type { CropInput, PlantingInput } from '../../../app/core/season/input';
import { limits } from '../../../app/tables/thresholds';
import { bareBed, beanCrop, fruitingCrop, planted } from './handMadeBed';

/*
 * Model 7: total need is counted to the planned clearing. A run ends with its season, and what is
 * set in autumn wants next to nothing by then: held to that alone, any bed would be over-fed.
 */

const set = dayOf('2013-10-10');
const yearsEnd = dayOf('2013-12-31');
const bulb: CropInput = {
  ...fruitingCrop,
  id: 'bulb',
  excessClass: 'storage',
  baseCelsius: 2,
  usualDays: 240,
  flowerDays: null,
};
const bulbs = (over: Partial<PlantingInput> = {}): PlantingInput =>
  planted(bulb, set, { cleared: false, clearingDay: set + 240, ...over });

function judged(planting: PlantingInput, today = dayOf('2013-11-01')) {
  const input = bareBed({ today, plantings: [planting] });
  const result = runSeason(input);
  return {
    verdict: bedVerdict(input, result, today, limits),
    account: plantingAccounts(input, result, today)[0]!,
    demand: result.plantings[0]!.demand,
  };
}

describe('what is set in autumn and cleared next summer', () => {
  test('is held to its whole need, and is not over-fed by a bed that nobody fed', () => {
    const { verdict, account, demand } = judged(bulbs());
    expect(demand).toBeLessThan(0.25 * bulb.need);
    expect(account.need).toBeCloseTo(bulb.need, 9);
    expect(verdict.need).toBeCloseTo(bulb.need, 9);
    const onHand =
      verdict.inCrop + verdict.inReach + verdict.expectedRelease - verdict.expectedTieUp;
    expect(verdict.ratio).toBeCloseTo(onHand / bulb.need, 9);
    expect(verdict.state).not.toBe('over-fed');
    expect(verdict.strongly).toBe(false);
    // by what it wants before the year is out it would be
    expect(onHand / demand).toBeGreaterThan(limits.lines['over-fed storage'].stop);
  });

  test('leaves no more room for greens than this season has', () => {
    const { verdict, account } = judged(bulbs());
    expect(account.needOfRun).toBeLessThan(account.need / 2);
    expect(verdict.room).toBe(0);
  });

  test('no day of clearing makes a jump, be it before or after the year’s end', () => {
    const needs = [-2, -1, 0, 1, 2, 3].map(
      (more) => judged(bulbs({ clearingDay: yearsEnd + more })).account.need,
    );
    for (let at = 1; at < needs.length; at++)
      expect(Math.abs(needs[at]! - needs[at - 1]!)).toBeLessThan(0.02 * bulb.need);
  });

  test('cleared early it wants what its curve has by then', () => {
    const half = judged(bulbs({ clearingDay: set + 150 })).account;
    expect(half.need).toBeCloseTo(bulb.need * wantedShare(bulb, 150 / 240), 9);
    expect(half.need).toBeLessThan(bulb.need);
  });

  test('on half a bed it is half of it', () => {
    expect(judged(bulbs({ share: 0.5 })).account.need).toBeCloseTo(bulb.need / 2, 9);
  });

  test('of a legume the soil’s usual share of what comes later', () => {
    const bean = (usual: number) => {
      const crop = { ...bulb, legume: { ...beanCrop.legume!, usualShareFixed: usual } };
      const { account } = judged(planted(crop, set, { cleared: false, clearingDay: set + 240 }));
      return account.need - account.needOfRun;
    };
    expect(bean(0.4)).toBeCloseTo(0.6 * bean(0), 9);
    expect(bean(0)).toBeGreaterThan(0.5 * bulb.need);
  });

  test('what ends within the run is held to what the run has', () => {
    const { account, demand } = judged(bulbs({ clearingDay: dayOf('2013-12-01') }));
    expect(account.need).toBe(demand);
    expect(account.needOfRun).toBe(demand);
  });
});
