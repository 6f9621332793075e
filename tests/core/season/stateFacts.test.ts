import { describe, expect, test } from 'vitest';
import type { BedEvent, BedSeason, LayerInput } from '../../../app/core/season/input';
import { isRich } from '../../../app/core/season/nitrogenState';
import type { LayerResult } from '../../../app/core/season/result';
import { bedVerdict, laidThisSeason } from '../../../app/core/season/state';
import type { BedVerdict, NitrogenState } from '../../../app/core/season/verdict';
import { gramsPerM2FromMgPerKg, mgPerKgFromGramsPerM2 } from '../../../app/core/units';
import { limits } from '../../../app/tables/thresholds';
import {
  between,
  days,
  firstDay,
  lastDay,
  legumeInput,
  makeBed,
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  soilRelease,
  stepping,
  today,
} from '../madeBed';
import { all, clearing } from './cautionRuns';

/* What a bed's verdict rests on, at the edges of its rules (threshold table); beds made by hand. */

interface Stand {
  readonly id: string;
  readonly crop?: Parameters<typeof makePlanting>[1];
  readonly share?: number;
  readonly need: number;
  readonly uptake?: number;
  readonly fixed?: number;
}

interface Made {
  readonly stands: readonly Stand[];
  readonly release?: number;
  readonly mineralTop?: Float64Array;
  readonly dryness?: number;
  readonly today?: number;
  readonly previous?: NitrogenState;
  readonly bed?: Partial<BedSeason>;
}

function verdictOf(made: Made): BedVerdict {
  const day = made.today ?? today;
  const plantings = made.stands.map(({ id, crop = {}, share }) =>
    makePlanting({ id, share: share ?? 1 / made.stands.length }, crop),
  );
  const input = makeBed({ plantings, today: day, ...made.bed });
  const result = makeResult({
    plantings: plantings.map((planting, at) => {
      const { need, uptake = need, fixed = 0 } = made.stands[at]!;
      return makePlantingResult(planting, { need, uptake, fixed });
    }),
    pools: { mineralTop: made.mineralTop ?? all(0) },
    flows: {
      [soilRelease]: between((made.release ?? 0) / (clearing - day), day + 1, clearing),
    },
    dryness: all(made.dryness ?? 0),
  });
  return bedVerdict(input, result, day, limits, made.previous ?? null);
}

const storage = (need: number, uptake = need): Stand => ({ id: 'storage', need, uptake });
const legume = (need: number, fixed = 0): Stand => ({
  id: 'beans',
  crop: { excessClass: 'legume', legume: legumeInput },
  need,
  uptake: 0,
  fixed,
});
const fruit = (id: string, need: number, flowerDays: number | null = 40): Stand => ({
  id,
  crop: { excessClass: 'fruit', flowerDays },
  need,
});

describe('an empty bed', () => {
  test('has no ratio, no room, no class; it is neither dry nor wanting', () => {
    const empty = bedVerdict(
      makeBed({ layers: [makeLayer({ nitrogen: 12 })] }),
      makeResult({ pools: { mineralTop: all(3.9), mineralLower: all(2) }, rootReach: all(0.5) }),
      today,
      limits,
    );
    expect(empty).toEqual({
      state: 'nothing planted',
      coverState: 'bare',
      ratio: null,
      need: 0,
      inCrop: 0,
      inReach: 4.9,
      expectedRelease: 0,
      expectedTieUp: 0,
      // 3.9 g/m2 in 0-30 cm at 1.3 kg/L: 390 kg of soil
      nitrateMgPerKg: expect.closeTo(10, 9) as number,
      turnsOn: null,
      forecastMet: 1,
      openShare: 0,
      dryFirst: false,
      wasShortOn: null,
      room: null,
      excessClass: null,
      overFedLine: null,
      wantsMoreLater: false,
      lackIsPast: null,
      strongly: false,
      flowerNitrate: null,
      laidThisSeason: 12,
    });
  });

  test('is what a planting that wants nothing leaves it', () => {
    expect(verdictOf({ stands: [storage(0)] }).state).toBe('nothing planted');
  });
});

test('the first and the last day of a run can be asked about, those beside them not', () => {
  const on = (day: number): BedVerdict => bedVerdict(makeBed(), makeResult(), day, limits);
  expect(on(firstDay).state).toBe('nothing planted');
  expect(on(lastDay).state).toBe('nothing planted');
  for (const day of [firstDay - 1, lastDay + 1]) expect(() => on(day)).toThrow(`Day ${day}`);
});

describe('cover, on its lines', () => {
  test.each([
    [0.3, 5, 'thin'],
    [0.7, 5, 'good'],
    [0.7, 100, 'good'],
  ] as const)('%d of the ground hidden, %d mm: %s', (fraction, depth, state) => {
    const result = makeResult({ coverFraction: all(fraction), coverDepth: all(depth) });
    expect(bedVerdict(makeBed(), result, today, limits).coverState).toBe(state);
  });
});

describe('over-fed is past a line, not on it', () => {
  test('ratio and nitrate', () => {
    expect(isRich({ ratio: 1.3, flowerNitrate: null }, 1.3, 20)).toBe(false);
    expect(isRich({ ratio: 1.31, flowerNitrate: null }, 1.3, 20)).toBe(true);
    expect(isRich({ ratio: 1.31, flowerNitrate: 20 }, 1.3, 20)).toBe(false);
    expect(isRich({ ratio: 1.31, flowerNitrate: 20.1 }, 1.3, 20)).toBe(true);
  });

  test('a fruit stays over-fed above 17 mg/kg round its flower, and comes to it above 20', () => {
    const state = (mgPerKg: number, previous: NitrogenState): NitrogenState => {
      const high = gramsPerM2FromMgPerKg(mgPerKg, 1.3, 30);
      const later = between(high, today + 5, today + 5);
      return verdictOf({
        stands: [fruit('fruit', 0.1)],
        release: 1.25 * 10.1 - 3.2,
        mineralTop: later,
        previous,
      }).state;
    };
    expect(state(18, 'over-fed')).toBe('over-fed');
    expect(state(16.5, 'over-fed')).toBe('enough to the end');
    expect(state(18, 'enough to the end')).toBe('enough to the end');
  });

  test('strongly is said of an over-fed bed alone', () => {
    // twice what it needs, but the forecast does not bring it to the crop in time
    const starved = verdictOf({ stands: [storage(0.1, 0.05)], release: 20 });
    expect(starved.ratio).toBeGreaterThan(1.7);
    expect(starved.state).not.toBe('over-fed');
    expect(starved.strongly).toBe(false);
    expect(verdictOf({ stands: [storage(0.1)], release: 20 }).strongly).toBe(true);
  });
});

describe('several crops on a bed', () => {
  const high = gramsPerM2FromMgPerKg(26, 1.3, 30);
  const start = makePlanting().startDay;

  test('nitrate round flowering is that of the fruit with the largest need', () => {
    // flowers on day 40 and day 70: windows of 26-82 and 56-112 days from the start
    const early = fruit('early', 0.06, 40);
    const late = fruit('late', 0.04, 70);
    const on = (stands: readonly Stand[], day: number) =>
      verdictOf({ stands, mineralTop: between(high, start + day, start + day) }).flowerNitrate;
    expect(on([early, late], 30)).toBeCloseTo(26, 9);
    expect(on([late, early], 30)).toBeCloseTo(26, 9);
    expect(on([early, late], 100)).toBe(0);
    expect(on([{ ...early, need: 0.03 }, late], 100)).toBeCloseTo(26, 9);
    expect(on([late, { ...early, need: 0.03 }], 100)).toBeCloseTo(26, 9);
  });

  test('where flowers do not matter, its first pick stands for them', () => {
    // first pick on day 60: 46 to 102 days from the start
    const on = (day: number) =>
      verdictOf({
        stands: [fruit('berry', 0.1, null)],
        mineralTop: between(high, start + day, start + day),
      }).flowerNitrate;
    expect(on(46)).toBeCloseTo(26, 9);
    expect(on(102)).toBeCloseTo(26, 9);
    expect(on(45)).toBe(0);
    expect(on(103)).toBe(0);
  });

  test('a few tomatoes among carrots: the bed is no fruit bed', () => {
    const mixed = verdictOf({ stands: [storage(0.06), fruit('tomato', 0.04)] });
    expect(mixed.excessClass).toBe('storage');
    expect(mixed.flowerNitrate).toBeNull();
  });

  test('legumes and cover crops under half of the need leave the bed to the largest of the others', () => {
    // 0.4 of beans, 0.3 of fruit, 0.25 of carrots
    const stands = [legume(0.4), fruit('fruit', 0.3), storage(0.25)];
    const verdict = verdictOf({
      stands,
      mineralTop: between(high, start + 50, start + 50),
    });
    expect(verdict.excessClass).toBe('fruit');
    expect(verdict.room).not.toBeNull();
    expect(verdict.flowerNitrate).toBeCloseTo(26, 9);
    // beans that flower much later would not have seen it
    const lateBeans = { ...legume(0.4), crop: { ...legume(0.4).crop, flowerDays: 80 } };
    expect(
      verdictOf({
        stands: [lateBeans, fruit('fruit', 0.3), storage(0.25)],
        mineralTop: between(high, start + 50, start + 50),
      }).flowerNitrate,
    ).toBeCloseTo(26, 9);
  });

  test('from half of the need on they make it their own', () => {
    const half = verdictOf({ stands: [legume(0.1), storage(0.1)] });
    expect(half.room).toBeNull();
    expect(half.overFedLine).toBeNull();
    expect(verdictOf({ stands: [legume(0.099), storage(0.1)] }).room).not.toBeNull();
  });

  test('where no class has a line, the largest need gives its name', () => {
    const clover: Stand = { id: 'clover', crop: { excessClass: 'cover' }, need: 0.05 };
    const names = [
      [legume(0.06), storage(0.04)],
      [storage(0.04), legume(0.06)],
      [clover, legume(0.06)],
    ].map((stands) => verdictOf({ stands }).excessClass);
    expect(names).toEqual(['legume', 'legume', 'legume']);
    expect(verdictOf({ stands: [legume(0.04), clover] }).excessClass).toBe('cover');
  });
});

describe('enough for now', () => {
  const grams = 7;
  const line = mgPerKgFromGramsPerM2(grams, 1.3, 30);
  const hungry: Stand = { id: 'corn', crop: { enoughNitrateLow: line }, need: 0.2 };
  const on = (mineralTop: Float64Array): BedVerdict => verdictOf({ stands: [hungry], mineralTop });

  test('holds from its line on, and while the nitrate stays there', () => {
    const still = on(all(grams));
    expect(still.state).toBe('enough for now');
    expect(still.turnsOn).toBeNull();
    expect(on(all(grams - 0.01)).state).not.toBe('enough for now');
  });

  test('ends on the first day after today that is below, be it the last of the run', () => {
    const dips = (day: number): Float64Array =>
      Float64Array.from({ length: days }, (_, index) => (firstDay + index === day ? 1 : grams));
    expect(on(dips(today + 1)).turnsOn).toBe(today + 1);
    expect(on(dips(lastDay)).turnsOn).toBe(lastDay);
    // what was is over
    expect(on(dips(today - 1)).turnsOn).toBeNull();
  });

  test('not of a bed with more than enough that does not come in time', () => {
    const late = verdictOf({
      stands: [storage(0.1, 0.05)],
      mineralTop: all(gramsPerM2FromMgPerKg(25, 1.3, 30)),
      release: 5,
    });
    expect(late.ratio).toBeGreaterThan(1.1);
    expect(late.state).toBe('about right');
  });
});

describe('about right, and yet more will be wanted later', () => {
  const more = (made: Partial<Made>): BedVerdict =>
    verdictOf({ stands: [storage(0.1, 0.084)], mineralTop: all(4), release: 3, ...made });

  test('the forecast leaves a good part unmet', () => {
    const verdict = more({});
    expect(verdict.state).toBe('about right');
    expect(verdict.forecastMet).toBeCloseTo(0.84, 9);
    expect(verdict.wantsMoreLater).toBe(true);
  });

  test('not where it meets 85 %, where little is open, or where the bed is short already', () => {
    const met = more({ stands: [storage(0.1, 0.086)] });
    expect(met.state).toBe('about right');
    expect(met.wantsMoreLater).toBe(false);
    // 16 and 15 of 101 days are open: 0.158 and 0.149 of the need
    expect(more({ today: clearing - 16, release: 0 }).wantsMoreLater).toBe(true);
    const late = more({ today: clearing - 15, release: 0 });
    expect(late.state).toBe('about right');
    expect(late.openShare).toBeGreaterThan(limits.numbers['little open']);
    expect(late.wantsMoreLater).toBe(false);
    // what it lacks is told of as past: of the one because it gets the rest
    expect([met.ratio! < 0.9, met.lackIsPast]).toEqual([false, null]);
    const lean = more({ stands: [storage(0.1, 0.086)], mineralTop: all(3), release: 2 });
    expect([lean.state, lean.ratio! < 0.9]).toEqual(['about right', true]);
    expect(lean.lackIsPast).toBe('gets the rest');
    const past = more({ today: clearing - 12, mineralTop: all(1), release: 0 });
    expect([past.state, past.ratio! < 0.9]).toEqual(['about right', true]);
    expect(past.lackIsPast).toBe('wants little');
    expect(more({}).lackIsPast).toBeNull();
    const short = more({ stands: [storage(0.1, 0.03)], mineralTop: all(1), release: 0 });
    expect(short.state).toBe('short');
    expect(short.wantsMoreLater).toBe(false);
    expect(short.lackIsPast).toBeNull();
  });
});

test('dry is past what is readily there, not all of it', () => {
  expect(verdictOf({ stands: [storage(0.1)], dryness: 1 }).dryFirst).toBe(false);
  expect(verdictOf({ stands: [storage(0.1)], dryness: 1.001 }).dryFirst).toBe(true);
});

test('a bed that is short now is not told that it was', () => {
  const short = verdictOf({ stands: [storage(0.1, 0.03)], mineralTop: all(1) });
  expect(short.state).toBe('short');
  expect(short.wasShortOn).toBeNull();
});

describe('what was laid this season', () => {
  const layer = (changes: Partial<LayerInput>): LayerInput =>
    makeLayer({ nitrogen: 10, ...changes });
  const laid = (
    layers: readonly LayerInput[],
    events: readonly BedEvent[] = [],
    lying: readonly LayerResult[] = [],
    seasonStarts: readonly number[] = [],
  ): number =>
    laidThisSeason(makeBed({ layers, events, seasonStarts }), makeResult({ layers: lying }), today);

  test('from the season’s first day to today, both counted', () => {
    const start = today - 40;
    expect(laid([layer({ day: start })], [], [], [start])).toBe(10);
    expect(laid([layer({ day: start - 1 })], [], [], [start])).toBe(0);
    expect(laid([layer({ day: today })])).toBe(10);
    expect(laid([layer({ day: today + 1 })])).toBe(0);
  });

  test('compost by what a season frees of it, all of it at most', () => {
    const heap = (mineralShare: number, slowShare: number) =>
      laid([layer({ materialClass: 'slow', isGreens: false, mineralShare, slowShare })]);
    expect(heap(0.1, 0.3)).toBeCloseTo(4, 12);
    expect(heap(0.6, 0.7)).toBe(10);
    expect(laid([layer({ materialClass: 'inert', isGreens: false })])).toBe(0);
  });

  describe('less what was raked off', () => {
    const one = layer({ id: 'one', day: today - 20 });
    const other = layer({ id: 'other', day: today - 20, nitrogen: 4 });
    const series = (id: string, left: Float64Array): LayerResult => ({ id, left, depth: left });
    const lying = [series('one', all(0.5)), series('other', stepping(0.9, today - 6, 0.3))];
    const rake = (day: number, share = 1): BedEvent => ({ kind: 'rake off', day, share });

    test('each layer by what lay of it the evening before', () => {
      // 6 days ago 0.9 of the other lay in the evening; it was raked the day after
      expect(laid([one, other], [rake(today - 5, 0.5)], lying)).toBeCloseTo(
        10 * (1 - 0.25) + 4 * (1 - 0.45),
        9,
      );
    });

    test('after it was laid and by today; digging in takes nothing off', () => {
      const full = [series('one', all(1))];
      expect(laid([one], [rake(one.day)], full)).toBe(10);
      expect(laid([one], [rake(one.day - 3)], full)).toBe(10);
      expect(laid([one], [rake(one.day + 1)], full)).toBe(0);
      expect(laid([one], [rake(today)], full)).toBe(0);
      expect(laid([one], [rake(today + 1)], full)).toBe(10);
      expect(laid([one], [{ kind: 'dig cover in', day: today - 5, share: 1 }], full)).toBe(10);
      expect(laid([one], [{ kind: 'water', day: today - 5, depth: 20 }], full)).toBe(10);
    });

    test('two rakings take twice; what never lay there (dug in) stays', () => {
      const events = [rake(today - 9, 0.5), rake(today - 5, 0.5)];
      expect(laid([one], events, [series('one', stepping(0.8, today - 8, 0.4))])).toBeCloseTo(
        10 * (1 - 0.4 - 0.2),
        9,
      );
      expect(laid([{ ...one, placement: 'dug' }], events, [])).toBe(10);
    });
  });
});
