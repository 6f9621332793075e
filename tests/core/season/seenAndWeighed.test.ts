import { describe, expect, test } from 'vitest';
import { bedSeen } from '../../../app/core/season/draws/bedSeen';
import { drawWeigher } from '../../../app/core/season/draws/drawWeight';
import type { DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import {
  countedSigns,
  signLikelihood,
  type BedSeen,
  type Look,
  type SignCoefficients,
} from '../../../app/core/season/draws/signs';
import type { BedSeason } from '../../../app/core/season/input';
import { newWatch, type SeasonWatch } from '../../../app/core/season/watchSeason';
import { gramsPerM2FromMgPerKg } from '../../../app/core/units';
import { firstDay, legumeInput, makeBed, makePlanting, today } from '../madeBed';

/* Signs with round numbers, so that every likelihood can be reckoned beside its test. */

const c: SignCoefficients = {
  timesLikelier: {
    nodules: 3,
    leaves: 3,
    smellsSour: 3,
    moistFingerDeep: 3,
    slugsUnderBoard: 3,
    soilSeen: 3,
  },
  daysApart: 14,
  daysShown: 10,
  leastNeed: 0.05,
  paleLeaves: { from: 0.5, to: 0.9 },
  busyNodules: { from: 0.2, to: 0.8 },
  moist: { from: 0.3, to: 0.7 },
  hidden: { from: 0.2, to: 0.8 },
  sourMat: { from: 0.5, to: 1.5 },
  lushLeaves: { from: 4, to: 10 },
};
const bed: BedSeen = {
  needMet: 0.6,
  fixing: 0.35,
  nitrateTop: 5.5,
  availableWater: 0.4,
  hidden: 0.35,
  coverFill: 0.8,
  lyingDry: 0.75,
};
// pale 0.75, lush 0.25, busy 0.25, moist 0.25, hidden 0.25, sour 0.8 x 0.25, damp 0.35 x 0.25

describe('an answer fits a bed by so much, and is 1 + 2 x that as likely', () => {
  test.each([
    ['leaves', { leaves: 'yellow' }, 0.75],
    ['leaves', { leaves: 'dark and lush' }, 0.25],
    ['leaves', { leaves: 'normal' }, 0.25 * 0.75],
    ['nodules', { nodules: 'pink' }, 0.25],
    ['moistFingerDeep', { moistFingerDeep: true }, 0.25],
    ['moistFingerDeep', { moistFingerDeep: false }, 0.75],
    ['soilSeen', { soilSeen: 'none' }, 0.25],
    ['soilSeen', { soilSeen: 'all' }, 0.75],
    ['soilSeen', { soilSeen: 'some' }, 0.5],
    ['smellsSour', { smellsSour: true }, 0.2],
    ['smellsSour', { smellsSour: false }, 0.8],
    ['slugsUnderBoard', { slugsUnderBoard: true }, 0.0875],
    ['slugsUnderBoard', { slugsUnderBoard: false }, 0.9125],
  ] as const)('%s %o: %d', (kind, answer, fit) => {
    const look: Look = { day: 1, ...answer };
    expect(signLikelihood(look, kind, bed, c)).toBeCloseTo(1 + 2 * fit, 12);
  });

  test('past its slope a sign fits wholly or not at all', () => {
    const of = (needMet: number) =>
      signLikelihood({ day: 1, leaves: 'yellow' }, 'leaves', { ...bed, needMet }, c);
    expect([0.1, 0.5, 0.9, 1].map(of)).toEqual([3, 3, 1, 1]);
  });

  test('white or no nodules, and a bed that cannot say, change nothing', () => {
    for (const nodules of ['white', 'none'] as const)
      expect(signLikelihood({ day: 1, nodules }, 'nodules', bed, c)).toBe(1);
    expect(
      signLikelihood({ day: 1, nodules: 'pink' }, 'nodules', { ...bed, fixing: null }, c),
    ).toBe(1);
    expect(
      signLikelihood({ day: 1, leaves: 'normal' }, 'leaves', { ...bed, needMet: null }, c),
    ).toBe(1);
    expect(signLikelihood({ day: 1 }, 'soilSeen', bed, c)).toBe(1);
  });
});

describe('signs that count', () => {
  const kept = (...looks: readonly Look[]) =>
    countedSigns(looks, 100, 200, c).map(({ look, kind }) => `${kind} ${look.day}`);

  test('from the run’s first day to today', () => {
    const on = (day: number) => kept({ day, leaves: 'normal' });
    expect(on(99)).toEqual([]);
    expect(on(100)).toEqual(['leaves 100']);
    expect(on(200)).toEqual(['leaves 200']);
    expect(on(201)).toEqual([]);
  });

  test('a fortnight apart both, a day less only the later; each kind by itself', () => {
    const leaves = (day: number): Look => ({ day, leaves: 'normal' });
    expect(kept(leaves(150), leaves(136))).toEqual(['leaves 150', 'leaves 136']);
    expect(kept(leaves(137), leaves(150))).toEqual(['leaves 150']);
    // 137 does not count, so 123 is far enough from 150
    expect(kept(leaves(150), leaves(137), leaves(136))).toEqual(['leaves 150', 'leaves 136']);
    expect(kept({ day: 140, soilSeen: 'all' }, leaves(150))).toEqual([
      'leaves 150',
      'soilSeen 140',
    ]);
  });

  test('the list it is given stays as it was', () => {
    const looks: Look[] = [
      { day: 120, leaves: 'normal' },
      { day: 180, leaves: 'normal' },
    ];
    countedSigns(looks, 100, 200, c);
    expect(looks.map(({ day }) => day)).toEqual([120, 180]);
  });
});

const legume = { excessClass: 'legume', legume: legumeInput } as const;
function watched(input: BedSeason, look: number): SeasonWatch {
  const watch = newWatch(input, [look]);
  watch.pools.mineralTop.fill(5.5);
  Object.assign(watch.looks[0]!, {
    availableWater: 0.4,
    hidden: 0.35,
    coverFill: 0.8,
    lyingDry: 0.75,
  });
  return watch;
}

describe('what could be seen on a day', () => {
  const corn = makePlanting({ id: 'corn', share: 0.5 });
  const beans = makePlanting({ id: 'beans', share: 0.5 }, legume);
  const input = makeBed({ plantings: [corn, beans] });
  const look = today - firstDay;
  const fill = (watch: SeasonWatch, at: number, need: number, uptake: number, fixed = 0): void => {
    const plant = watch.plantings[at]!;
    plant.dailyNeed.fill(need);
    plant.dailyUptake.fill(uptake);
    plant.dailyFixed.fill(fixed);
  };

  test('need met of all plantings, fixing of legumes against their usual share, over ten days', () => {
    const watch = watched(input, look);
    fill(watch, 0, 0.1, 0.05);
    fill(watch, 1, 0.2, 0.04, 0.06);
    // before the ten days and after them nothing counts
    for (const day of [look - 10, look + 1])
      for (const plant of watch.plantings) plant.dailyNeed[day] = 99;
    const seen = bedSeen(input, watch, today, c);
    expect(seen.needMet).toBeCloseTo((0.05 + 0.04 + 0.06) / 0.3, 9);
    // usual share of the made legume: 0.42
    expect(seen.fixing).toBeCloseTo(0.06 / (0.42 * 0.2), 9);
    expect(seen).toMatchObject({
      nitrateTop: 5.5,
      availableWater: 0.4,
      hidden: 0.35,
      coverFill: 0.8,
      lyingDry: 0.75,
    });
  });

  test('luxury makes up for want, but not for more than all of it', () => {
    const watch = watched(input, look);
    fill(watch, 0, 0.1, 0.3);
    expect(bedSeen(input, watch, today, c).needMet).toBe(1);
  });

  test('nothing to see where next to nothing is wanted', () => {
    const watch = watched(input, look);
    fill(watch, 0, 0.0049, 0.001);
    expect(bedSeen(input, watch, today, c)).toMatchObject({ needMet: null, fixing: null });
    fill(watch, 0, 0.0051, 0.001);
    expect(bedSeen(input, watch, today, c).needMet).toBeCloseTo(0.001 / 0.0051, 9);
    // 0.42 x 0.0119 x 10 = 0.04998
    fill(watch, 1, 0.0119, 0, 0.005);
    expect(bedSeen(input, watch, today, c).fixing).toBeNull();
    fill(watch, 1, 0.012, 0, 0.005);
    expect(bedSeen(input, watch, today, c).fixing).toBeCloseTo(0.005 / (0.42 * 0.012), 9);
  });

  test('a legume without working nodules is not asked for its fixing', () => {
    const none = makeBed({ plantings: [corn, { ...beans, nodulesSeen: false }] });
    const watch = watched(none, look);
    fill(watch, 1, 0.2, 0.1, 0.05);
    expect(bedSeen(none, watch, today, c).fixing).toBeNull();
  });

  test('early in the run the days there are count; a day nobody kept is refused', () => {
    const early = watched(input, 3);
    fill(early, 0, 0.1, 0.05);
    expect(bedSeen(input, early, firstDay + 3, c).needMet).toBeCloseTo(0.5, 9);
    expect(() => bedSeen(input, early, firstDay + 4, c)).toThrow(`day ${firstDay + 4}`);
  });
});

describe('what a draw weighs', () => {
  const input = makeBed({ plantings: [makePlanting()] });
  const question = (over: Partial<DrawsQuestion> = {}): DrawsQuestion => ({
    input,
    spread: { coefficients: [], layers: {}, needs: {}, organicMatter: null },
    weather: { kind: 'years', seasons: [] },
    tests: [],
    seed: 1,
    count: 1,
    ...over,
  });
  /** Every day's nitrate in mg/kg at the bed's 1.3 kg/L. */
  const holding = (mgPerKg: number, look = today - firstDay): SeasonWatch => {
    const watch = watched(input, look);
    watch.pools.mineralTop.fill(gramsPerM2FromMgPerKg(mgPerKg, 1.3, 30));
    return watch;
  };
  const weight = (mgPerKg: number, tests: DrawsQuestion['tests']): number =>
    drawWeigher(question({ tests })).weight(input, holding(mgPerKg));
  const tested = (day: number, mgPerKg: number, spread = 0.2) => ({ day, mgPerKg, spread });

  test('without a test all weigh one', () => expect(weight(12, [])).toBe(1));

  test('by how many of the test’s own deviations it is off', () => {
    // 20 mg/kg give or take 4
    expect(weight(20, [tested(today, 20)])).toBeCloseTo(1, 12);
    expect(weight(24, [tested(today, 20)])).toBeCloseTo(Math.exp(-0.5), 9);
    expect(weight(12, [tested(today, 20)])).toBeCloseTo(Math.exp(-2), 9);
  });

  test('a reading is off by 1.5 mg/kg at least', () => {
    expect(weight(3, [tested(today, 0)])).toBeCloseTo(Math.exp(-2), 9);
    expect(weight(6.5, [tested(today, 5, 0.1)])).toBeCloseTo(Math.exp(-0.5), 9);
  });

  test('several tests multiply; those before the run and after today do not count', () => {
    const two = [tested(today, 20), tested(firstDay, 20)];
    expect(weight(24, two)).toBeCloseTo(Math.exp(-1), 9);
    expect(weight(24, [tested(today + 1, 20), tested(firstDay - 1, 20)])).toBe(1);
  });

  test('each test asks its own day', () => {
    const watch = holding(24);
    watch.pools.mineralTop[today - firstDay - 3] = gramsPerM2FromMgPerKg(20, 1.3, 30);
    const { weight: of } = drawWeigher(question({ tests: [tested(today - 3, 20)] }));
    expect(of(input, watch)).toBeCloseTo(1, 12);
  });

  test('signs multiply as well, each looked for once', () => {
    const looks: Look[] = [
      { day: today, soilSeen: 'none', moistFingerDeep: true },
      { day: today - 30, soilSeen: 'all' },
      { day: today + 3, soilSeen: 'all' },
    ];
    const weigher = drawWeigher(
      question({ signs: { looks, coefficients: c }, tests: [tested(today, 20)] }),
    );
    const index = today - firstDay;
    expect(weigher.lookDays.toSorted()).toEqual([index - 30, index]);
    const watch = newWatch(input, weigher.lookDays);
    watch.pools.mineralTop.fill(gramsPerM2FromMgPerKg(24, 1.3, 30));
    for (const look of watch.looks) Object.assign(look, { availableWater: 0.4, hidden: 0.35 });
    // moist 0.25: 1.5; hidden 0.25: none 1.5, all 2.5; and the test
    expect(weigher.weight(input, watch)).toBeCloseTo(1.5 * 1.5 * 2.5 * Math.exp(-0.5), 9);
  });

  test('what was kept of a look is that of its evening, the earliest first', () => {
    expect(newWatch(input, [9, 2, 5]).looks.map(({ index }) => index)).toEqual([2, 5, 9]);
  });
});
