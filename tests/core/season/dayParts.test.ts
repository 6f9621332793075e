import { describe, expect, test } from 'vitest';
import {
  type BedState,
  lowerDepthFor,
  poolIndex,
  startingState,
} from '../../../app/core/season/bedState';
import { type DayReport, stepDay } from '../../../app/core/season/day';
import { flowIndex, flowKinds, type Place, type Pool } from '../../../app/core/season/flows';
import type { BedSeason, SeasonWeather } from '../../../app/core/season/input';
import { leachedShare } from '../../../app/core/soil/leaching';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { runSeason } from '../../../app/core/season/season';
import {
  bareBed,
  beanCrop,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  moved,
  planted,
  steadyWeather,
  straw,
} from './handMadeBed';

interface Stepped {
  readonly state: BedState;
  readonly flows: Float64Array;
  readonly report: DayReport;
  readonly flow: (from: Place, to: Place, why: string) => number;
}

/** The first day of a bed, after a change to its morning. */
function firstDayOf(bed: BedSeason, morning: (state: BedState) => void = () => {}): Stepped {
  const lowerDepth = lowerDepthFor(bed);
  const state = startingState(bed, lowerDepth);
  morning(state);
  const flows = new Float64Array(flowKinds.length);
  const report = stepDay(bed, state, flows, 0, lowerDepth);
  return { state, flows, report, flow: (from, to, why) => flows[flowIndex(from, to, why)]! };
}

const warm = (rain = 0, days = 365): SeasonWeather => {
  const weather = steadyWeather(days, 14, 26);
  weather.rainMillimetres.fill(rain);
  return weather;
};
const set = (state: BedState, pool: Pool, grams: number): void =>
  void (state.nitrogen[poolIndex[pool]] = grams);

describe('order of the day', () => {
  test('the lower layer loses first: nothing that came down today leaves today', () => {
    const { flow } = firstDayOf(bareBed({ weather: warm(60) }), (state) => {
      set(state, 'mineralLower', 0);
      set(state, 'mineralTop', 10);
    });
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBeGreaterThan(3);
    expect(flow('mineralLower', 'leached', 'washed out')).toBe(0);
  });

  test('what rain, soil and clippings bring today is not washed down today', () => {
    const bed = bareBed({ weather: warm(60), layers: [clippings(firstOf2013, 10)] });
    const { flow } = firstDayOf(bed, (state) => set(state, 'mineralTop', 0));
    expect(flow('rain', 'mineralTop', 'rain')).toBeGreaterThan(0);
    expect(flow('soilOrganic', 'mineralTop', 'released by the soil')).toBeGreaterThan(0);
    expect(flow('coverFree', 'mineralTop', 'washed in')).toBeGreaterThan(0);
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBe(0);
  });

  test('but what a gardener digs in this morning is', () => {
    const layer = compost(firstOf2013, 20, { placement: 'dug', mineralShare: 0.5 });
    const { flow } = firstDayOf(bareBed({ weather: warm(60), layers: [layer] }), (state) =>
      set(state, 'mineralTop', 0),
    );
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBeGreaterThan(
      0.4 * layer.nitrogen * 0.5,
    );
  });

  test('wet soil takes its share first, the rest goes down with the drainage', () => {
    const { flow, report, state } = firstDayOf(bareBed({ weather: warm(60) }), (one) =>
      set(one, 'mineralTop', 10),
    );
    const lost = flow('mineralTop', 'denitrified', 'wet soil');
    expect(lost).toBeCloseTo(10 * 0.02 * temperatureFactor(state.soilCelsius), 12);
    const down = (10 - lost) * leachedShare(report.drainageTop, 0.25 * 300);
    expect(flow('mineralTop', 'mineralLower', 'washed down')).toBeCloseTo(down, 12);
  });

  test('under half a millimetre of drainage no nitrogen goes to the air', () => {
    const { flow, report } = firstDayOf(bareBed({ weather: warm(0.8) }));
    expect(report.drainageTop).toBeGreaterThan(0);
    expect(report.drainageTop).toBeLessThan(0.5);
    expect(flow('mineralTop', 'denitrified', 'wet soil')).toBe(0);
  });

  test('rain brings a year’s gram in the measure of a normal year’s rain', () => {
    const bed = bareBed({ weather: warm(10) });
    const normal = bed.normals.rainMillimetres.reduce((a, b) => a + b, 0);
    expect(firstDayOf(bed).flow('rain', 'mineralTop', 'rain')).toBeCloseTo(10 / normal, 12);
  });

  test('raking and digging meet the old cover, what is laid the same day lies on top of it', () => {
    const day = firstOf2013 + 40;
    const bed = bareBed({
      weather: warm(3),
      layers: [clippings(firstOf2013, 10), clippings(day, 10, { id: 'new' })],
      events: [{ kind: 'dig cover in', day, share: 1 }],
    });
    const result = runSeason(bed);
    const [old, fresh] = result.layers;
    expect(old!.left[39]).toBeGreaterThan(0.1);
    expect(old!.left[40]).toBe(0);
    expect(fresh!.left[40]).toBeGreaterThan(0.9);
  });
});

describe('cover', () => {
  test('free nitrogen washes in by 0.02 and the throughfall over itself plus 2 mm a kg', () => {
    const bed = bareBed({ weather: warm(0), layers: [straw(firstOf2013, 50)] });
    const dry = firstDayOf(bed, (state) => set(state, 'coverFree', 1));
    const free = 1 - dry.flow('coverFree', 'coverMicrobes', 'held back');
    expect(dry.flow('coverFree', 'mineralTop', 'washed in')).toBeCloseTo(0.02 * free, 9);
    const wet = firstDayOf({ ...bed, weather: warm(20) }, (state) => set(state, 'coverFree', 1));
    const through = wet.report.throughfall;
    expect(through).toBeLessThan(20);
    const left = 1 - wet.flow('coverFree', 'coverMicrobes', 'held back');
    expect(wet.flow('coverFree', 'mineralTop', 'washed in')).toBeCloseTo(
      left * (0.02 + through / (through + 2 * 2)),
      9,
    );
  });

  test('ammonia is met from at most half of what is free', () => {
    const { flow, state } = firstDayOf(bareBed({ weather: warm(5) }), (one) => {
      set(one, 'coverFree', 0.1);
      one.ammonia.ripe = 100;
    });
    expect(flow('coverFree', 'ammonia', 'to the air')).toBeCloseTo(0.05, 12);
    expect(state.ammonia.ripe).toBeCloseTo(84, 12);
  });

  test('browns on top hold a fifth of what is free, then a thousandth of the soil’s', () => {
    const bed = bareBed({ weather: warm(5), layers: [straw(firstOf2013, 400)] });
    const { flow } = firstDayOf(bed, (state) => {
      set(state, 'coverFree', 1);
      set(state, 'mineralTop', 10);
    });
    // 400 mm of straw wants far more than there is: it gets both shares and no more.
    expect(flow('coverFree', 'coverMicrobes', 'held back')).toBeCloseTo(0.2, 9);
    const down = flow('mineralTop', 'mineralLower', 'washed down');
    const soil = 10 - down - flow('mineralTop', 'denitrified', 'wet soil');
    const added =
      flow('soilOrganic', 'mineralTop', 'released by the soil') +
      flow('rain', 'mineralTop', 'rain');
    expect(flow('mineralTop', 'coverMicrobes', 'held back from the soil')).toBeCloseTo(
      0.001 * (soil + added),
      9,
    );
  });

  test('greens free first what browns beside them then hold', () => {
    const day = firstOf2013;
    const bed = bareBed({ weather: warm(5), layers: [clippings(day, 20), straw(day, 100)] });
    const { flow } = firstDayOf(bed, (state) => set(state, 'coverFree', 0));
    const freed = flow('coverMicrobes', 'coverFree', 'released');
    expect(freed).toBeGreaterThan(0);
    expect(flow('coverFree', 'coverMicrobes', 'held back')).toBeCloseTo(0.2 * freed, 9);
  });

  test('dug in on poor soil browns take every gram of the top 30 cm, sharing by what they want', () => {
    const day = firstOf2013;
    const bed = bareBed({
      weather: warm(0),
      layers: [
        straw(day, 200, { placement: 'dug' }),
        straw(day, 100, { placement: 'dug', id: 'other', nitrogen: 8 }),
      ],
    });
    const { state, flow } = firstDayOf(bed, (one) => set(one, 'mineralTop', 0.2));
    expect(state.nitrogen[poolIndex.mineralTop]).toBeCloseTo(0, 12);
    const released = flow('soilOrganic', 'mineralTop', 'released by the soil');
    expect(flow('mineralTop', 'dugMicrobes', 'held back')).toBeCloseTo(0.2 + released, 9);
  });

  test('hoed in decays at six tenths of dug in, in the same soil', () => {
    const gone = (placement: 'dug' | 'hoed'): number => {
      const layer = clippings(firstOf2013, 10, { placement });
      const { state } = firstDayOf(bareBed({ weather: warm(), layers: [layer] }));
      return Math.log(layer.carbon / state.classes[0]!.residue);
    };
    expect(gone('hoed') / gone('dug')).toBeCloseTo(0.6, 9);
  });

  test('on top clippings decay at 0.3 of their speed in air and wet, straw at half of that', () => {
    const gone = (layer: ReturnType<typeof clippings>): number => {
      const bed = bareBed({ weather: warm(30), layers: [layer] });
      const { state, report } = firstDayOf(bed);
      const [item] = state.classes;
      const wet = 0.15 + 0.85 * report.coverFill;
      const days = Math.log(layer.carbon / item!.residue) / item!.parameters.decay;
      return days / wet / temperatureFactor(20);
    };
    expect(gone(clippings(firstOf2013, 10))).toBeCloseTo(0.3, 9);
    // Straw starves on top; with greens' nitrogen at hand it would go at half the speed of clippings.
    expect(gone(straw(firstOf2013, 1, { nitrogen: 1 }))).toBeCloseTo(0.15, 9);
  });

  test('rake and dig', () => {
    const day = firstOf2013 + 60;
    const layers = [
      clippings(firstOf2013, 20),
      straw(firstOf2013 + 5, 30),
      compost(firstOf2013 + 9, 5),
    ];
    const eve = runSeason(bareBed({ weather: warm(3), layers, lastDay: day - 1 }));
    const held = (pool: Pool): number => eve.pools[pool].at(-1)!;
    const raked = runSeason(
      bareBed({ weather: warm(3), layers, events: [{ kind: 'rake off', day, share: 0.5 }] }),
    );
    expect(moved(raked, 'coverResidue', 'removed')).toBeCloseTo(held('coverResidue') / 2, 9);
    expect(moved(raked, 'coverMicrobes', 'removed')).toBeCloseTo(0.06 * held('coverMicrobes'), 9);
    expect(moved(raked, 'coverHumus', 'removed')).toBeCloseTo(0.06 * held('coverHumus'), 9);
    expect(moved(raked, 'coverFree', 'removed')).toBeCloseTo(held('coverFree') / 2, 9);
    expect(moved(raked, 'slow', 'removed')).toBeCloseTo(held('slow') / 2, 9);

    const dug = runSeason(
      bareBed({ weather: warm(3), layers, events: [{ kind: 'dig cover in', day, share: 1 }] }),
    );
    for (const [pool, to] of [
      ['coverResidue', 'dugResidue'],
      ['coverMicrobes', 'dugMicrobes'],
      ['coverHumus', 'dugHumus'],
      ['coverFree', 'mineralTop'],
    ] as const) {
      expect(held(pool)).toBeGreaterThan(0);
      expect(moved(dug, pool, to, 'cover dug in')).toBeCloseTo(held(pool), 9);
      expect(dug.pools[pool].at(-1)).toBeCloseTo(0, 12);
    }
    for (const whole of [
      dug,
      runSeason(
        bareBed({ weather: warm(3), layers, events: [{ kind: 'rake off', day, share: 1 }] }),
      ),
    ]) {
      const evening = day - firstOf2013;
      expect(whole.coverDryKg[evening - 1]).toBeGreaterThan(0.5);
      expect(whole.coverDryKg[evening]).toBe(0);
      for (const layer of whole.layers) expect(layer.left[evening]).toBe(0);
    }
  });

  test('raking takes the promises of ammonia with it', () => {
    const day = firstOf2013 + 3;
    const layers = [clippings(firstOf2013, 25)];
    const lost = (share: number): number =>
      moved(
        runSeason(
          bareBed({
            weather: warm(3),
            layers,
            events: share > 0 ? [{ kind: 'rake off', day, share }] : [],
          }),
        ),
        'coverFree',
        'ammonia',
      );
    expect(lost(0)).toBeGreaterThan(1);
    expect(lost(1)).toBeLessThan(0.35 * lost(0));
  });
});

describe('compost', () => {
  const layer = compost(firstOf2013, 10);
  const { nitrogen } = layer;

  test('on top: ready to the cover, the rest waits; at the season’s end what is spent becomes soil', () => {
    const bed = bareBed({ weather: warm(0), layers: [layer], seasonStarts: [firstOf2013 + 200] });
    const result = runSeason(bed);
    expect(moved(result, 'applied', 'coverFree')).toBeCloseTo(0.03 * nitrogen, 9);
    expect(moved(result, 'applied', 'slow')).toBeCloseTo(0.97 * nitrogen, 9);
    expect(moved(result, 'slow', 'soilOrganic')).toBeCloseTo(0.82 * nitrogen, 9);
    expect(
      result.flows[flowIndex('slow', 'soilOrganic', 'compost becomes soil')]![200],
    ).toBeGreaterThan(0);
  });

  test('dug in: ready to the soil, the rest to soil organic nitrogen, 2 % of the slow part a normalised day', () => {
    const bed = bareBed({ weather: warm(0), layers: [{ ...layer, placement: 'dug' }] });
    const { flow, report } = firstDayOf(bed);
    expect(flow('applied', 'mineralTop', 'ready when dug in')).toBeCloseTo(0.03 * nitrogen, 9);
    expect(flow('applied', 'soilOrganic', 'slow material dug in')).toBeCloseTo(0.82 * nitrogen, 9);
    expect(flow('slow', 'mineralTop', 'released from compost')).toBeCloseTo(
      0.15 * nitrogen * (1 - Math.exp(-0.02 * report.soilNormalisedDay)),
      9,
    );
  });
});

describe('season’s end', () => {
  test('humus becomes last year’s humus, on the first morning of the new season, and is released slowly', () => {
    const turn = firstOf2013 + 180;
    const bed = bareBed({
      weather: warm(2),
      layers: [clippings(firstOf2013, 20), straw(firstOf2013, 10, { placement: 'dug' })],
      seasonStarts: [turn],
    });
    const result = runSeason(bed);
    const eve = turn - firstOf2013 - 1;
    const cover = result.flows[flowIndex('coverHumus', 'youngHumus', 'season end')]!;
    const dug = result.flows[flowIndex('dugHumus', 'youngHumus', 'season end')]!;
    expect(cover[eve + 1]).toBeCloseTo(result.pools.coverHumus[eve]!, 9);
    expect(dug[eve + 1]).toBeCloseTo(result.pools.dugHumus[eve]!, 9);
    expect(cover[eve]! + cover[eve + 2]!).toBe(0);
    const released =
      result.flows[flowIndex('youngHumus', 'mineralTop', 'released by last year’s humus')]!;
    expect(released[eve]).toBe(0);
    expect(released[eve + 1]).toBeCloseTo(
      0.0003 * (cover[eve + 1]! + dug[eve + 1]!) * result.soilNormalisedDay[eve + 1]!,
      9,
    );
  });
});

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
      stepDay(bed, state, flows, day, lowerDepth);
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
