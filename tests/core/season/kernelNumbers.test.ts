import { describe, expect, test } from 'vitest';
import { classFor } from '../../../app/core/cover/residueClass';
import { startingState } from '../../../app/core/season/startingState';
import { poolIndex } from '../../../app/core/season/ways';
import { stepDay } from '../../../app/core/season/day';
import { flowIndex, flowKinds } from '../../../app/core/season/flows';
import type { BedSeason, LayerInput, PlantingInput } from '../../../app/core/season/input';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { imbalance, openAccount, runSeason } from '../../../app/core/season/season';
import { newWatch } from '../../../app/core/season/watchSeason';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { firstDayOf, warm } from './firstDay';
import {
  bareBed,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  moved,
  planted,
  straw,
} from './handMadeBed';

/* Numbers of single days and runs that can be reckoned from the model's equations beside the test. */

const c = typicalCoefficients();

describe('a class whose residue was all raked off', () => {
  // model 3, green, C:N 440/34: CNb (15.4 - 76/CN) x 1.2, h (1 - 0.73 CN/(10.2 + CN)) x 1.2, 0.0110 a day
  const cn = 440 / 34;
  const microbeCn = (15.4 - 76 / cn) * 1.2;
  const humusShare = (1 - (0.73 * cn) / (10.2 + cn)) * 1.2;

  test('leaves microbes that turn over: a share to humus, the rest free', () => {
    const raked = 40;
    const result = runSeason(
      bareBed({
        weather: warm(3),
        layers: [clippings(firstOf2013, 20)],
        events: [{ kind: 'rake off', day: firstOf2013 + raked, share: 1 }],
      }),
    );
    const { coverMicrobes, coverHumus, coverResidue } = result.pools;
    expect(humusShare).toBeLessThan(9 / microbeCn);
    for (const day of [raked, raked + 1, raked + 60]) {
      expect(coverResidue[day]).toBeCloseTo(0, 12);
      const [before, after] = [coverMicrobes[day]!, coverMicrobes[day + 1]!];
      expect(after / before).toBeCloseTo(Math.exp(-0.011 * result.soilNormalisedDay[day + 1]!), 9);
      const humified = (humusShare * (before - after) * microbeCn) / 9.5;
      expect(coverHumus[day + 1]! - coverHumus[day]!).toBeCloseTo(humified, 9);
      const freed = result.flows[flowIndex('coverMicrobes', 'coverFree', 'released')]![day + 1]!;
      expect(freed).toBeCloseTo(before - after - humified, 9);
    }
    expect(coverMicrobes[raked]).toBeGreaterThan(0.1);
    expect(result.residual).toBeLessThan(1e-9);
  });
});

describe('what is left of a class when its residue is gone', () => {
  test('turns over the same with hardly any humus to begin with', () => {
    let lost = Number.NaN;
    let share = Number.NaN;
    const { flow } = firstDayOf(bareBed({ weather: warm(3) }), (state) => {
      const item = classFor(state.classes, 'laid', 'mature', 80, c);
      Object.assign(item, { microbes: 40, humus: 1e-4 });
      const { microbeCarbonToNitrogen, humusCarbonToNitrogen, humusShare } = item.parameters;
      state.nitrogen[poolIndex.coverMicrobes] = 40 / microbeCarbonToNitrogen;
      state.nitrogen[poolIndex.coverHumus] = 1e-4 / humusCarbonToNitrogen;
      share = humusShare;
      lost = item.parameters.turnover;
    });
    const { report } = firstDayOf(bareBed({ weather: warm(3) }));
    // model 3, mature: lambda 0.0076, humus at C:N 9.5
    expect(lost).toBe(0.0076);
    const turned = 40 * (1 - Math.exp(-lost * report.soilNormalisedDay));
    expect(flow('coverMicrobes', 'coverHumus', 'humified')).toBeCloseTo((share * turned) / 9.5, 9);
  });

  test('and all of it dug in, a frozen day finds nothing on top', () => {
    const frozen = warm(2);
    frozen.minimumCelsius.fill(-12);
    frozen.maximumCelsius.fill(-4);
    const result = runSeason(
      bareBed({
        weather: frozen,
        layers: [clippings(firstOf2013, 12)],
        events: [{ kind: 'dig cover in', day: firstOf2013 + 1, share: 1 }],
      }),
    );
    expect(result.coverFill[40]).toBe(0);
    expect(result.coverDryKg[40]).toBe(0);
    expect(Number.isFinite(result.drainageTop[40])).toBe(true);
    expect(result.residual).toBeLessThan(1e-9);
  });
});

describe('what lies of a class', () => {
  test('is the dry matter of its layers, day by day', () => {
    const bed = bareBed({
      weather: warm(5),
      layers: [clippings(firstOf2013, 12), straw(firstOf2013, 30)],
    });
    const state = startingState(bed, lowerDepthFor(bed));
    const flows = new Float64Array(flowKinds.length);
    for (let day = 0; day < 40; day++) stepDay(bed, state, flows, day);
    expect(state.classes).toHaveLength(2);
    for (const item of state.classes) {
      const layer = state.layers.find((one) => one.item === item)!;
      expect(layer.left).toBeLessThan(0.98);
      expect(item.lyingDry).toBeCloseTo(layer.left * layer.dryKgPerM2, 12);
    }
  });

  test('on a wet first day it is as deep as it was laid, of what is left', () => {
    const layer = clippings(firstOf2013, 10);
    const { layers } = runSeason(bareBed({ weather: warm(5), layers: [layer] }));
    expect(layer.dryKgPerM2).toBeCloseTo(0.5, 12);
    expect(layers[0]!.depth[0]).toBeCloseTo(10 * layers[0]!.left[0]!, 9);
  });

  test('tops left by a crop count among it', () => {
    const crop = planted(fruitingCrop, firstOf2013, { topsFate: 'left', clearingDay: firstOf2013 });
    const bed = bareBed({ weather: warm(3), plantings: [{ ...crop, normalDegreeDays: 10 }] });
    const { state } = firstDayOf(bed);
    const tops = state.classes.find(({ placement }) => placement === 'laid')!;
    expect(tops.lyingDry).toBeGreaterThan(0);
    expect(tops.lyingDry).toBeCloseTo(state.layers[0]!.dryKgPerM2, 12);
  });
});

describe('compost and meals in equal parts', () => {
  const meal = (over: Partial<LayerInput>): LayerInput =>
    compost(firstOf2013, 5, { materialId: 'meal', slowKind: 'meal', ...over });
  const freed = (...layers: readonly LayerInput[]) => {
    const { flow, report } = firstDayOf(bareBed({ weather: warm(5), layers }));
    return {
      top: flow('slow', 'coverFree', 'released from compost'),
      below: flow('slow', 'mineralTop', 'released from compost'),
      days: report.soilNormalisedDay,
    };
  };
  const active = 0.15 * compost(firstOf2013, 5).nitrogen;

  test('on top and dug in both release', () => {
    for (const of of [compost(firstOf2013, 5), meal({})]) {
      const { top, below } = freed(of, { ...of, id: 'dug', placement: 'dug' });
      expect(top).toBeGreaterThan(0);
      expect(below).toBeGreaterThan(top);
    }
    const { top, below } = freed(meal({}), compost(firstOf2013, 5, { placement: 'dug' }));
    expect(Math.min(top, below)).toBeGreaterThan(0);
  });

  test('each at the rate of its row for a normalised day', () => {
    const dug = { placement: 'dug' } as const;
    const one = freed(compost(firstOf2013, 5, dug));
    expect(one.below).toBeCloseTo(active * (1 - Math.exp(-c.slowRate * one.days)), 9);
    const other = freed(meal(dug));
    expect(other.below).toBeCloseTo(active * (1 - Math.exp(-c.mealRate * other.days)), 9);
    expect(other.below).toBeGreaterThan(one.below);
  });

  test('a rake takes its share of meals as well', () => {
    const day = firstOf2013 + 1;
    const bed = (events: BedSeason['events']) =>
      runSeason(bareBed({ weather: warm(3), layers: [meal({})], events }));
    const eve = bed([]).pools.slow[0]!;
    const raked = bed([{ kind: 'rake off', day, share: 0.25 }]);
    expect(moved(raked, 'slow', 'removed')).toBeCloseTo(0.25 * eve, 9);
    expect(raked.residual).toBeLessThan(1e-9);
  });
});

describe('the run', () => {
  const grows = planted(fruitingCrop, firstOf2013 + 20, {
    clearingDay: null,
    normalDegreeDays: 1000,
  });

  test('is the same day by day however long it goes on, to its last day', () => {
    const of = (lastDay: number) =>
      runSeason(bareBed({ weather: warm(3), plantings: [grows], lastDay }));
    const [short, long] = [of(firstOf2013 + 80), of(firstOf2013 + 200)];
    expect(short.days).toBe(81);
    for (const key of ['dailyNeed', 'dailyUptake'] as const)
      expect(short.plantings[0]![key]).toEqual(long.plantings[0]![key].slice(0, 81));
    expect(short.plantings[0]!.dailyNeed[80]).toBeGreaterThan(0);
  });

  test('its residual is the largest imbalance of any day', () => {
    const bed = bareBed({
      weather: warm(3),
      plantings: [grows],
      layers: [clippings(firstOf2013, 20)],
    });
    const state = startingState(bed, lowerDepthFor(bed));
    const account = openAccount(state);
    const flows = new Float64Array(flowKinds.length);
    let largest = 0;
    for (let day = 0; day < 365; day++) {
      flows.fill(0);
      stepDay(bed, state, flows, day);
      largest = Math.max(largest, imbalance(account, state, flows));
    }
    // rounding of 365 days of some 400 g: not nought, and far under a nanogram
    expect(largest).toBeGreaterThan(0);
    expect(runSeason(bed).residual).toBe(largest);
  });

  test('carbon that slips from the cover into the soil shows, though no gram is lost', () => {
    const bed = bareBed();
    const state = startingState(bed, 300);
    const on = classFor(state.classes, 'laid', 'green', 13, c);
    const below = classFor(state.classes, 'dug', 'green', 13, c);
    on.residue = 26;
    state.nitrogen[poolIndex.coverResidue] = 2;
    const account = openAccount(state);
    const flows = new Float64Array(flowKinds.length);
    expect(imbalance(account, state, flows)).toBeLessThan(1e-12);
    on.residue -= 13;
    below.residue += 13;
    expect(imbalance(account, state, flows)).toBeCloseTo(1, 12);
  });

  test('a day’s air is the mean of its ends', () => {
    const { airMean, airMinimum, airMaximum } = runSeason(bareBed({ weather: warm() }));
    expect([airMinimum[7], airMean[7], airMaximum[7]]).toEqual([14, 20, 26]);
  });
});

describe('plants that stay for years', () => {
  const season: NonNullable<PlantingInput['seasons']>[number] = {
    ...planted(fruitingCrop, firstOf2013 + 20),
    seasonDay: firstOf2013,
    startDay: firstOf2013 + 20,
    firstHarvestDay: firstOf2013 + 100,
    usualEndDay: firstOf2013 + 149,
    normalDegreeDays: 600,
    isRegrowth: false,
  };
  const picks = (clearingDay: number): Float64Array => {
    const one = planted(fruitingCrop, firstOf2013 + 20, {
      ...season,
      clearingDay,
      seasons: [season],
    });
    return runSeason(bareBed({ weather: warm(3), plantings: [one] })).flows[
      flowIndex('crop', 'harvested', 'picked')
    ]!;
  };

  test('are picked to their season’s end, or to their clearing if that comes first', () => {
    const last = (clearing: number): number =>
      picks(firstOf2013 + clearing).findLastIndex((grams) => grams > 0);
    expect(last(200)).toBe(149);
    expect(last(120)).toBe(120);
  });
});

test('what is planted on a new season’s first day does not deepen the season before', () => {
  const deep = { ...fruitingCrop, fullRootDepth: 1200 };
  const turn = firstOf2013 + 365;
  const bed = bareBed({
    lastDay: firstOf2013 + 729,
    seasonStarts: [turn],
    plantings: [planted(deep, turn)],
  });
  expect(lowerDepthFor(bed)).toBe(300);
  expect(lowerDepthFor(bed, turn)).toBe(900);
});

describe('what a run looks at on a day', () => {
  const bed = bareBed({
    lastDay: firstOf2013 + 9,
    plantings: [
      planted(fruitingCrop, firstOf2013 - 5, { id: 'before', clearingDay: firstOf2013 + 1 }),
      planted(fruitingCrop, firstOf2013 + 4, { id: 'within', clearingDay: firstOf2013 + 6 }),
      planted(fruitingCrop, firstOf2013 + 8, { id: 'open', clearingDay: null }),
    ],
    events: [{ kind: 'water', day: firstOf2013 + 2, depth: 5 }],
  });

  test('the plantings that may stand, from the first to the day after the last of them', () => {
    const { plantsFrom, plantsTo } = runPlan(bed, 300);
    // none: from past the last of three to before the first
    expect([...plantsFrom]).toEqual([0, 0, 0, 3, 1, 1, 1, 1, 2, 2]);
    expect([...plantsTo]).toEqual([1, 1, 1, 0, 2, 2, 2, 2, 3, 3]);
  });

  test('entries on the days they are of, and no day past the run', () => {
    expect([...runPlan(bed, 300).isBusy]).toEqual([0, 0, 1, 0, 0, 0, 0, 0, 0, 0]);
  });

  test('what a draw keeps of a planting: from its first day to its last in the run', () => {
    expect(newWatch(bed).plantings.map(({ first, last }) => [first, last])).toEqual([
      [-5, 1],
      [4, 6],
      [8, 9],
    ]);
  });
});
