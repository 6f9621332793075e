import { describe, expect, test } from 'vitest';
import { makeDraws } from '../../../app/core/season/draws/columns';
import { drawsOutcome } from '../../../app/core/season/draws/drawsOutcome';
import { isOverFed, overFeedingWindow, windowOf } from '../../../app/core/season/draws/overFeeding';
import type { SeasonSpread } from '../../../app/core/season/draws/spread';
import type {
  BedSeason,
  CropInput,
  ExcessClass,
  PlantingInput,
} from '../../../app/core/season/input';
import { judgeNitrogen } from '../../../app/core/season/nitrogenState';
import { newWatch, type SeasonWatch } from '../../../app/core/season/watchSeason';
import { gramsPerM2FromMgPerKg } from '../../../app/core/units';
import { limits } from '../../../app/tables/thresholds';
import { firstDay, lastDay, legumeInput, makeBed, makePlanting, today } from '../madeBed';

/* Draws kept by hand: every number of theirs is known, so the answer can be reckoned beside the test. */

const spread: SeasonSpread = {
  coefficients: [{ name: 'rate', key: 'slowRate', shape: 'amount', low: 0.5, typical: 1, high: 2 }],
  layers: {},
  needs: {},
  organicMatter: null,
};
const planting = (
  crop: Partial<CropInput> = {},
  changes: Partial<PlantingInput> = {},
): PlantingInput => makePlanting(changes, crop);
const grams = (mgPerKg: number): number => gramsPerM2FromMgPerKg(mgPerKg, 1.3, 30);

interface Kept {
  /** taken of a need of 0.1 a day, on every day of the planting */
  readonly uptake?: number;
  readonly fixed?: number;
  /** all that is released after today [g/m2] */
  readonly release?: number;
  readonly nitrate?: number;
  readonly leached?: number;
}

/** A run of a bed as a draw would keep it. */
function watchOf(input: BedSeason, made: Kept): SeasonWatch {
  const watch = newWatch(input);
  const now = input.today - input.firstDay;
  watch.pools.mineralTop.fill(grams(made.nitrate ?? 0));
  watch.pools.mineralLower.fill(0);
  watch.rootReach.fill(0);
  for (const key of ['released', 'tiedUp', 'luxury'] as const) watch[key].fill(0);
  watch.released[now + 1] = made.release ?? 0;
  watch.leached = made.leached ?? 0;
  for (const [at, own] of watch.plantings.entries()) {
    const { startDay, clearingDay } = input.plantings[at]!;
    for (let day = startDay; day <= clearingDay!; day++) {
      own.dailyNeed[day - firstDay] = 0.1;
      own.dailyUptake[day - firstDay] = made.uptake ?? 0.1;
      own.dailyFixed[day - firstDay] = made.fixed ?? 0;
    }
    const days = clearingDay! - startDay + 1;
    own.demand = 0.1 * days;
    own.fixed = (made.fixed ?? 0) * days;
    own.demandMet = ((made.uptake ?? 0.1) + (made.fixed ?? 0)) / 0.1;
    const met = own.demand * own.demandMet;
    Object.assign(own.thisSeason, { need: own.demand, met, fixed: own.fixed });
  }
  return watch;
}

function answerOf(input: BedSeason, draws: readonly (Kept & { readonly weight?: number })[]) {
  const outcome = drawsOutcome(input, limits);
  outcome.grow(draws.length);
  draws.forEach((draw, at) => outcome.keep(at, input, watchOf(input, draw), draw.weight ?? 1));
  return outcome.answer(spread, [makeDraws(1, draws.length)]);
}

/** The made planting wants 10.1 g; 3.2 are in the crop when all is met. */
const releaseFor = (ratio: number): number => ratio * 10.1 - 3.2;

describe('what draws say together', () => {
  const bed = makeBed({ bedId: 'gate', plantings: [planting()] });
  const three = [
    { release: releaseFor(0.9), leached: 1, nitrate: 3 },
    { release: releaseFor(1.2), leached: 2, nitrate: 5 },
    { release: releaseFor(1.4), leached: 4, nitrate: 8, weight: 2 },
  ];
  // nitrate of the top stands in the ratio as well
  const ratioOf = (at: number): number => [0.9, 1.2, 1.4][at]! + grams([3, 5, 8][at]!) / 10.1;

  test('bands by weight, odds as shares of the weight, what they are worth', () => {
    const answer = answerOf(bed, three);
    expect(answer).toMatchObject({ bedId: 'gate', count: 3 });
    expect(answer.effectiveCount).toBeCloseTo(16 / 6, 12);
    expect(answer.leached).toEqual({ low: 1, middle: 2, high: 4 });
    expect(answer.ratio!.low).toBeCloseTo(ratioOf(0), 9);
    expect(answer.ratio!.middle).toBeCloseTo(ratioOf(1), 9);
    expect(answer.ratio!.high).toBeCloseTo(ratioOf(2), 9);
    expect(answer.states).toEqual({
      'over-fed': 0.75,
      'enough to the end': 0,
      'enough for now': 0,
      short: 0,
      'about right': 0.25,
      'nothing planted': 0,
    });
  });

  test('nitrate once a week from the first day and on the last, in mg/kg', () => {
    const { nitrate, nitrateDays } = answerOf(bed, three);
    expect(nitrateDays[0]).toBe(firstDay);
    expect(nitrateDays[1]).toBe(firstDay + 7);
    expect(nitrateDays.slice(0, -1).map((day) => (day - firstDay) % 7)).toEqual(
      Array(Math.ceil((lastDay - firstDay) / 7)).fill(0),
    );
    expect(nitrateDays.at(-1)).toBe(lastDay);
    expect(new Set(nitrateDays).size).toBe(nitrateDays.length);
    for (const band of nitrate) {
      expect(band.low).toBeCloseTo(3, 9);
      expect(band.middle).toBeCloseTo(5, 9);
      expect(band.high).toBeCloseTo(8, 9);
    }
  });

  test('the week of a band is that of its day', () => {
    const watch = watchOf(bed, {});
    watch.pools.mineralTop[21] = grams(12);
    const outcome = drawsOutcome(bed, limits);
    outcome.grow(1);
    outcome.keep(0, bed, watch, 1);
    const { nitrate } = outcome.answer(spread, [makeDraws(1, 1)]);
    expect(nitrate.map(({ middle }) => Math.round(middle)).slice(0, 6)).toEqual([
      0, 0, 0, 12, 0, 0,
    ]);
  });

  test('need met and fixing add up over the plantings, by their need', () => {
    const two = makeBed({
      plantings: [
        planting({}, { id: 'whole', share: 0.5 }),
        planting(
          { excessClass: 'legume', legume: legumeInput },
          { id: 'short', share: 0.5, clearingDay: today + 10, usualEndDay: today + 10 },
        ),
      ],
    });
    const watch = watchOf(two, { uptake: 0.05, fixed: 0.02 });
    // 101 days and 42: what the first met counts for 101
    watch.plantings[0]!.thisSeason.met = 10.1;
    const outcome = drawsOutcome(two, limits);
    outcome.grow(1);
    outcome.keep(0, two, watch, 1);
    const { needMet, fixed } = outcome.answer(spread, [makeDraws(1, 1)]);
    expect(needMet.middle).toBeCloseTo((101 + 42 * 0.7) / 143, 9);
    expect(fixed.middle).toBeCloseTo(0.02 * 143, 9);
  });

  test('where nothing is planted there is no ratio, and nothing is wanting', () => {
    const answer = answerOf(makeBed(), [{ leached: 1 }, { leached: 3 }]);
    expect(answer.ratio).toBeNull();
    expect(answer.needMet).toEqual({ low: 1, middle: 1, high: 1 });
    expect(answer.states['nothing planted']).toBe(1);
    expect(answer.mattersMost.ratio).toEqual([]);
    expect(answer.mattersMost.needMet).toEqual([]);
    expect(answer.mattersMost.leached).toHaveLength(1);
    expect(answer.overFeeding).toBeNull();
  });

  test('what matters is asked of each number by itself', () => {
    const draws = makeDraws(1, 12);
    const column = draws.column(spread.coefficients[0]!);
    const outcome = drawsOutcome(bed, limits);
    outcome.grow(12);
    for (let at = 0; at < 12; at++)
      outcome.keep(
        at,
        bed,
        watchOf(bed, { release: column[at]!, leached: 9 - column[at]!, fixed: 0 }),
        1,
      );
    const { mattersMost } = outcome.answer(spread, [draws]);
    expect(mattersMost.ratio[0]!.correlation).toBeCloseTo(1, 9);
    expect(mattersMost.leached[0]!.correlation).toBeCloseTo(-1, 9);
    expect(mattersMost.fixed).toEqual([]);
    expect(mattersMost.needMet).toEqual([]);
  });

  test('no draw fits a test: all count alike, and are said to be worth nothing', () => {
    const answer = answerOf(
      bed,
      three.map((one) => ({ ...one, weight: 0 })),
    );
    expect(answer.effectiveCount).toBe(0);
    expect(answer.leached.middle).toBe(2);
    expect(answer.states['about right']).toBeCloseTo(1 / 3, 12);
  });

  test('room for more draws leaves those there are', () => {
    const outcome = drawsOutcome(bed, limits);
    outcome.grow(1);
    outcome.keep(0, bed, watchOf(bed, three[0]!), 1);
    expect(outcome.worth()).toBe(1);
    outcome.grow(3);
    outcome.keep(1, bed, watchOf(bed, three[1]!), 1);
    outcome.keep(2, bed, watchOf(bed, three[2]!), 2);
    expect(outcome.worth()).toBeCloseTo(16 / 6, 12);
    expect(outcome.answer(spread, [makeDraws(1, 3)])).toEqual(answerOf(bed, three));
  });
});

describe('when too much does its harm', () => {
  test.each([
    ['fruit', 40, 26, 82],
    ['flower', 40, 26, 82],
    // stored: 101 days from 15 May to 23 August is 100 on; two fifths of them
    ['storage', 40, 40, 100],
    ['tender storage', 40, 40, 100],
  ] as const)(
    '%s: begins on day %i, harm from day %i to day %i',
    (excessClass, begins, first, last) => {
      const one = planting({ excessClass });
      const start = one.startDay;
      expect(overFeedingWindow(one, limits)).toEqual({
        plantingId: 'planting',
        excessClass,
        begins: start + begins,
        first: start + first,
        last: start + last,
      });
    },
  );

  test('without a flower its first pick stands for it; without a clearing the usual end', () => {
    const berry = planting({ excessClass: 'fruit', flowerDays: null });
    expect(overFeedingWindow(berry, limits)!.begins).toBe(berry.startDay + 60);
    const root = planting(
      { excessClass: 'storage' },
      { clearingDay: null, usualEndDay: today + 40 },
    );
    expect(overFeedingWindow(root, limits)!.last).toBe(today + 40);
  });

  test.each(['leaf', 'head', 'perennial', 'cover', 'legume'] as const)('%s: never', (excessClass) =>
    expect(overFeedingWindow(planting({ excessClass }), limits)).toBeNull(),
  );

  const judged = (input: BedSeason, made: Kept = {}) =>
    judgeNitrogen(input, watchOf(input, made), today, limits)!;
  const bedOf = (...ones: readonly PlantingInput[]): BedSeason => makeBed({ plantings: ones });
  const part = (id: string, excessClass: ExcessClass, days: number): PlantingInput =>
    planting(
      { excessClass, legume: excessClass === 'legume' ? legumeInput : null },
      { id, share: 0.3, clearingDay: today + days, usualEndDay: today + days },
    );

  test('on a mixed bed that of the planting with the largest need of the class it is judged by', () => {
    const two = [part('small', 'fruit', 20), part('large', 'fruit', 60)];
    expect(windowOf(judged(bedOf(...two)), limits)!.plantingId).toBe('large');
    expect(windowOf(judged(bedOf(...two.toReversed())), limits)!.plantingId).toBe('large');
    const mixed = [part('roots', 'storage', 60), part('fruit', 'fruit', 30)];
    expect(windowOf(judged(bedOf(...mixed)), limits)!.plantingId).toBe('roots');
    expect(windowOf(judged(bedOf(part('beans', 'legume', 60), mixed[1]!)), limits)).toBeNull();
    expect(windowOf(judged(bedOf(part('salad', 'leaf', 60))), limits)).toBeNull();
    // beans want most, under half of all: the bed is judged by its fruit
    const beans = part('beans', 'legume', 55);
    const three = [beans, part('fruit', 'fruit', 40), part('roots', 'storage', 38)];
    expect(windowOf(judged(bedOf(...three)), limits)!.plantingId).toBe('fruit');
  });

  const isPast = (
    excessClass: ExcessClass,
    made: Kept,
    spoil: (watch: SeasonWatch) => void = () => {},
  ) => {
    const input = bedOf(planting({ excessClass }));
    const watch = watchOf(input, made);
    spoil(watch);
    const verdict = judgeNitrogen(input, watch, today, limits)!;
    return isOverFed(verdict, windowOf(verdict, limits)!, input, watch, limits);
  };

  test('flowers by the ratio alone', () => {
    expect(isPast('flower', { release: releaseFor(1.31) })).toBe(true);
    expect(isPast('flower', { release: releaseFor(1.29) })).toBe(false);
  });

  test('what is stored by its nitrate too, on any day of its window and on no other', () => {
    const start = makePlanting().startDay - firstDay;
    const on = (day: number, mgPerKg = 21) =>
      isPast('storage', { release: releaseFor(1.4) }, (watch) => {
        watch.pools.mineralTop[day] = grams(mgPerKg);
      });
    expect(on(start + 40)).toBe(true);
    expect(on(start + 100)).toBe(true);
    expect(on(start + 39)).toBe(false);
    expect(on(start + 101)).toBe(false);
    expect(on(start + 60, 20)).toBe(false);
    expect(
      isPast('storage', { release: releaseFor(1.25), nitrate: 0 }, (watch) => {
        watch.pools.mineralTop[start + 60] = grams(40);
      }),
    ).toBe(false);
  });

  test('fruit round its first flower', () => {
    const start = makePlanting().startDay - firstDay;
    const on = (day: number) =>
      isPast('fruit', { release: releaseFor(1.4) }, (watch) => {
        watch.pools.mineralTop[day] = grams(21);
      });
    expect([26, 82].map((day) => on(start + day))).toEqual([true, true]);
    expect([25, 83].map((day) => on(start + day))).toEqual([false, false]);
  });

  test('the odds are those of the weight', () => {
    const input = bedOf(planting({ excessClass: 'flower' }));
    const { overFeeding } = answerOf(input, [
      { release: releaseFor(1.4) },
      { release: releaseFor(1.2) },
      { release: releaseFor(1.5), weight: 3 },
    ]);
    expect(overFeeding).toMatchObject({ plantingId: 'planting', excessClass: 'flower' });
    expect(overFeeding!.odds).toBeCloseTo(0.8, 12);
    const none = answerOf(input, [{ release: releaseFor(1) }]);
    expect(none.overFeeding!.odds).toBe(0);
  });
});
