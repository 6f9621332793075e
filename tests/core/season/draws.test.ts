import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bandOf, effectiveCount } from '../../../app/core/season/draws/bands';
import { drawnSeason, makeDraws } from '../../../app/core/season/draws/drawnSeason';
import { drawnWeather } from '../../../app/core/season/draws/drawnWeather';
import { stratifiedShares } from '../../../app/core/season/draws/hypercube';
import { normalQuantile } from '../../../app/core/season/draws/normalQuantile';
import { runDraws, type DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import { valueAt } from '../../../app/core/season/draws/spread';
import { dayOf, monthOf } from '../../../app/core/days';
import { runSeason } from '../../../app/core/season/season';
import { parseGarden } from '../../../app/document/parse';
import { bedSeason } from '../../../app/document/seasonInput';
import { seasonSpread } from '../../../app/document/seasonSpread';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { limits } from '../../../app/tables/thresholds';

const file = join(import.meta.dirname, '../../../assets/gardens/sample.mowings');
const parsed = parseGarden(readFileSync(file, 'utf8'));
if (!parsed.ok) throw new Error('The sample does not open');
const sample = parsed.value;
const today = dayOf('2013-06-15');
/** Made when a test first asks for it, so that the tests of a file do not run what only one needs. */
const once = <Thing>(make: () => Thing): (() => Thing) => {
  let made: { thing: Thing } | null = null;
  return () => (made ??= { thing: make() }).thing;
};
const question = (bedId: string, count: number, seed = 1): DrawsQuestion => ({
  input: bedSeason(sample, bedId, today),
  spread: seasonSpread(sample, bedId),
  weather: { kind: 'generated', spread: typicalWeatherSpread(40.8) },
  tests: [],
  seed,
  count,
});

describe('quantiles of the standard normal, as statistical tables print them', () => {
  // two-sided 90, 80, 95, 99 % points and the quartile; any table of the normal distribution
  test.each([
    [0.5, 0],
    [0.75, 0.6745],
    [0.9, 1.2816],
    [0.95, 1.6449],
    [0.975, 1.96],
    [0.995, 2.5758],
    [0.01, -2.3263],
    [0.001, -3.0902],
  ])('%s', (share, printed) => expect(normalQuantile(share)).toBeCloseTo(printed, 4));
});

describe('a row is read as 5 %, median and 95 %', () => {
  test('amounts and shares meet their three points', () => {
    for (const shape of ['amount', 'share'] as const) {
      const row = { low: 0.1, typical: 0.3, high: 0.7, shape };
      expect(valueAt(row, 0.05)).toBeCloseTo(0.1, 6);
      expect(valueAt(row, 0.5)).toBeCloseTo(0.3, 6);
      expect(valueAt(row, 0.95)).toBeCloseTo(0.7, 6);
    }
  });
  test('values rise with the share, amounts stay above 0, shares below 1', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        fc.double({ min: 0.31, max: 0.6, noNaN: true }),
        fc.double({ min: 0.61, max: 0.99, noNaN: true }),
        fc.constantFrom('amount' as const, 'share' as const),
        (low, typical, high, shape) => {
          let before = -Infinity;
          for (let share = 0.001; share < 1; share += 0.037) {
            const value = valueAt({ low, typical, high, shape }, share);
            expect(value).toBeGreaterThan(before);
            expect(value).toBeGreaterThan(0);
            if (shape === 'share') expect(value).toBeLessThan(1);
            before = value;
          }
        },
      ),
      { numRuns: 200 },
    );
  });
  test('without a range nothing is drawn; a low end of 0 reaches 0 and no further', () => {
    expect(valueAt({ low: 2, typical: 2, high: 2, shape: 'amount' }, 0.9)).toBe(2);
    expect(valueAt({ low: 0, typical: 1, high: 3, shape: 'amount' }, 1e-5)).toBe(0);
  });
});

describe('the hypercube', () => {
  test('has one share in each stratum and depends on name, seed and count alone', () => {
    for (const count of [1, 7, 100]) {
      const shares = stratifiedShares('mass of a mowing', 3, count);
      const strata = [...shares].map((share) => Math.floor(share * count)).sort((a, b) => a - b);
      expect(strata).toEqual(Array.from({ length: count }, (_, index) => index));
      expect([...stratifiedShares('mass of a mowing', 3, count)]).toEqual([...shares]);
    }
    expect([...stratifiedShares('a', 1, 50)]).not.toEqual([...stratifiedShares('b', 1, 50)]);
    expect([...stratifiedShares('a', 1, 50)]).not.toEqual([...stratifiedShares('a', 2, 50)]);
  });
});

describe('imagined weather of draws', () => {
  const skies = once(() => {
    const { input, weather } = question('bed-gate', 1);
    return {
      input,
      many: Array.from({ length: 200 }, (_, draw) => drawnWeather(input, weather, 1, draw)),
    };
  });
  test('leaves what was measured alone', () => {
    const { input, many } = skies();
    for (const one of many.slice(0, 5))
      for (let index = 0; index <= today - input.firstDay; index++)
        expect(one.rainMillimetres[index]).toBe(input.weather.rainMillimetres[index]);
  });
  test('in the mean over many draws brings the normals, but no single draw has to', () => {
    const { input, many } = skies();
    for (const month of [7, 8, 9]) {
      const days = Array.from(input.weather.kind.keys()).filter(
        (index) => monthOf(input.firstDay + index) === month,
      );
      const totals = many.map((one) =>
        days.reduce((sum, index) => sum + one.rainMillimetres[index]!, 0),
      );
      const mean = totals.reduce((sum, total) => sum + total, 0) / totals.length;
      const normal = input.normals.rainMillimetres[month - 1]!;
      expect(Math.abs(mean / normal - 1)).toBeLessThan(0.15);
      expect(Math.max(...totals) / Math.min(...totals)).toBeGreaterThan(2);
      const warm = many.map(
        (one) => days.reduce((sum, index) => sum + one.maximumCelsius[index]!, 0) / days.length,
      );
      const warmest = warm.reduce((sum, value) => sum + value, 0) / warm.length;
      expect(Math.abs(warmest - input.normals.maximumCelsius[month - 1]!)).toBeLessThan(1);
    }
  });
});

describe('draws of a bed', () => {
  const border = once(() => {
    const asked = question('bed-border', 60);
    return { asked, answer: runDraws(asked, limits)! };
  });

  test('are a pure function of the seed', () => {
    const { answer } = border();
    expect(runDraws(question('bed-border', 60), limits)).toEqual(answer);
    expect(runDraws(question('bed-border', 60, 2), limits)!.ratio).not.toEqual(answer.ratio);
  });
  test('every draw balances', () => {
    const { asked } = border();
    const draws = makeDraws(1, 12);
    for (let draw = 0; draw < 12; draw++) {
      const season = drawnSeason(
        asked.input,
        asked.spread,
        drawnWeather(asked.input, asked.weather, 1, draw),
        draws,
        draw,
      );
      expect(runSeason(season).residual).toBeLessThan(1e-9);
    }
  });
  test('with nothing uncertain and the typical weather are the typical run', () => {
    const { asked } = border();
    const sure = runDraws(
      {
        ...asked,
        spread: { coefficients: [], layers: {}, needs: {}, organicMatter: null },
        weather: { kind: 'years', seasons: [asked.input.weather] },
        count: 3,
      },
      limits,
    )!;
    const typical = runSeason(asked.input);
    expect(sure.fixed.low).toBeCloseTo(
      typical.plantings.reduce((sum, planting) => sum + planting.fixed, 0),
      12,
    );
    expect(sure.ratio!.low).toBe(sure.ratio!.high);
  });
  test('bands are ordered, odds add up, three quantities are named', () => {
    const { answer } = border();
    expect(answer.ratio!.low).toBeLessThan(answer.ratio!.middle);
    expect(answer.ratio!.middle).toBeLessThan(answer.ratio!.high);
    for (const band of answer.nitrate) {
      expect(band.low).toBeLessThanOrEqual(band.middle);
      expect(band.middle).toBeLessThanOrEqual(band.high);
    }
    expect(Object.values(answer.states).reduce((sum, odds) => sum + odds, 0)).toBeCloseTo(1, 12);
    for (const name of ['ratio', 'needMet', 'leached'] as const)
      expect(answer.mattersMost[name]).toHaveLength(3);
    // no legume grows there: nothing is fixed in any draw, and nothing moves it
    expect(answer.mattersMost.fixed).toHaveLength(0);
    const correlations = answer.mattersMost.ratio.map(({ correlation }) => Math.abs(correlation));
    expect(correlations).toEqual(correlations.toSorted((one, other) => other - one));
    expect(answer.effectiveCount).toBeCloseTo(60, 9);
  });
  test('a nitrate test draws the bands to it and says what the draws are then worth', () => {
    const { asked, answer } = border();
    const day = dayOf('2013-05-28');
    const at = answer.nitrateDays.findIndex((one) => one >= day);
    const high = answer.nitrate[at]!.high * 1.2;
    const tested = runDraws(
      { ...asked, tests: [{ day: answer.nitrateDays[at]!, mgPerKg: high, spread: 0.2 }] },
      limits,
    )!;
    expect(tested.nitrate[at]!.middle).toBeGreaterThan(answer.nitrate[at]!.middle);
    expect(tested.effectiveCount).toBeLessThan(59);
    const absurd = runDraws(
      { ...asked, count: 5, tests: [{ day, mgPerKg: 1e6, spread: 1e-6 }] },
      limits,
    )!;
    expect(absurd.effectiveCount).toBe(0);
    expect(Number.isFinite(absurd.ratio!.middle)).toBe(true);
  });
  test('can be stopped', () => {
    const { asked } = border();
    let asks = 0;
    expect(runDraws(asked, limits, () => ++asks > 3)).toBeNull();
    expect(asks).toBe(4);
  });
});

test('weighted bands and what weights are worth', () => {
  const values = Float64Array.from([5, 1, 3, 2, 4]);
  expect(bandOf(values, new Float64Array(5).fill(1))).toEqual({ low: 1, middle: 3, high: 5 });
  expect(bandOf(values, Float64Array.from([0, 1, 0, 0, 0]))).toEqual({
    low: 1,
    middle: 1,
    high: 1,
  });
  expect(effectiveCount(new Float64Array(8).fill(2))).toBe(8);
  expect(effectiveCount(Float64Array.from([1, 0, 0]))).toBe(1);
});

/** Quantiles by sorting everything, the long way. */
function bySorting(values: Float64Array, weights: Float64Array) {
  const order = [...values.keys()]
    .filter((at) => weights[at]! > 0)
    .sort((one, other) => values[one]! - values[other]!);
  const total = order.reduce((all, at) => all + weights[at]!, 0);
  const at = (share: number): number => {
    let passed = 0;
    for (const draw of order) {
      passed += weights[draw]!;
      if (passed >= share * total) return values[draw]!;
    }
    return values[order.at(-1)!]!;
  };
  return { low: at(0.1), middle: at(0.5), high: at(0.9) };
}

test('bands by selection are bands by sorting, ties and weights and all', () => {
  const draw = fc.record({
    // few different values, so that many are alike; weights that add up without rounding
    value: fc.oneof(fc.integer({ min: 0, max: 5 }), fc.double({ min: -9, max: 9, noNaN: true })),
    weight: fc.constantFrom(0, 0.25, 1, 1, 1, 8),
  });
  fc.assert(
    fc.property(fc.array(draw, { minLength: 1, maxLength: 60 }), (drawn) => {
      const weights = Float64Array.from(drawn, ({ weight }) => weight);
      fc.pre(weights.some((weight) => weight > 0));
      const values = Float64Array.from(drawn, ({ value }) => (value === 0 ? 0 : value));
      const before = values.slice();
      expect(bandOf(values, weights)).toEqual(bySorting(values, weights));
      expect(values).toEqual(before);
    }),
    { numRuns: 2000, seed: 1090 },
  );
  expect(bandOf(new Float64Array(3), new Float64Array(3)).middle).toBeNaN();
});

test('a draw writes each quantity from its own column, and the next draw starts from the typical bed', () => {
  const { input, spread } = question('bed-gate', 1);
  const draws = makeDraws(7, 20);
  const first = drawnSeason(input, spread, input.weather, draws, 4);
  for (const drawn of spread.coefficients)
    expect(first.coefficients[drawn.key]).toBe(draws.value(drawn, 4));
  input.layers.forEach((layer, at) => {
    const own = spread.layers[layer.id]!;
    const mass = draws.value(own.mass, 4);
    const acting = own.acting ? draws.value(own.acting, 4) : 1;
    expect(first.layers[at]!.carbon).toBeCloseTo(layer.carbon * mass * acting, 9);
    expect(first.layers[at]!.dryKgPerM2).toBe(layer.dryKgPerM2 * mass);
    expect(first.layers[at]!.nitrogen / layer.nitrogen).toBeCloseTo(
      (mass * draws.value(own.nitrogen, 4)) / own.nitrogen.typical,
      12,
    );
  });
  input.plantings.forEach(({ id, crop }, at) => {
    const factor = draws.value(spread.needs[id]!, 4);
    expect(first.plantings[at]!.crop.need).toBe(crop.need * factor);
    expect(first.plantings[at]!.crop.harvestNitrogen).toBe(crop.harvestNitrogen * factor);
  });
  expect(first.soil.organicMatterPercent).toBe(
    input.soil.organicMatterPercent * draws.value(spread.organicMatter!, 4),
  );
  expect(drawnSeason(input, spread, input.weather, draws, 9)).not.toEqual(first);
  expect(drawnSeason(input, spread, input.weather, draws, 4)).toEqual(first);
});

test('what a material acts like is drawn once for all its layers, and compost draws its shares', () => {
  const { input, spread } = question('bed-gate', 1);
  const draws = makeDraws(7, 20);
  const grass = input.layers.filter(({ materialClass }) => materialClass === 'green');
  expect(grass.length).toBeGreaterThan(1);
  const acting = (draw: number): number[] => {
    const drawn = drawnSeason(input, spread, input.weather, draws, draw).layers;
    return grass.map((layer) => {
      const to = drawn.find(({ id }) => id === layer.id)!;
      return to.carbon / to.dryKgPerM2 / (layer.carbon / layer.dryKgPerM2);
    });
  };
  for (const draw of [0, 7, 19])
    for (const factor of acting(draw)) expect(factor).toBeCloseTo(acting(draw)[0]!, 9);
  const all = Array.from({ length: 20 }, (_none, draw) => acting(draw)[0]!);
  expect(Math.min(...all)).toBeLessThan(1 / 1.3);
  expect(Math.max(...all)).toBeGreaterThan(1.3);

  const heap = {
    ...grass[0]!,
    materialClass: 'slow',
    mineralShare: 0.03,
    slowShare: 0.05,
  } as const;
  const of = (name: string, typical: number) =>
    ({ name, shape: 'share', low: typical / 2, typical, high: 2 * typical }) as const;
  const ready = of('ready', 0.03);
  const slow = of('slow', 0.05);
  const { mass, nitrogen } = spread.layers[heap.id]!;
  const [drawn] = drawnSeason(
    { ...input, layers: [heap] },
    { ...spread, layers: { [heap.id]: { mass, nitrogen, ready, slow } } },
    input.weather,
    draws,
    3,
  ).layers;
  expect(drawn!.mineralShare).toBe(draws.value(ready, 3));
  expect(drawn!.slowShare).toBe(draws.value(slow, 3));
  expect(drawn!.carbon / drawn!.dryKgPerM2).toBeCloseTo(heap.carbon / heap.dryKgPerM2, 9);
});

test('ranks of a quantity’s draws are those of its values', () => {
  const draws = makeDraws(2, 50);
  const drawn = { name: 'mass', shape: 'amount', low: 0.4, typical: 1, high: 3 } as const;
  const values = draws.column(drawn);
  const sorted = [...values].sort((one, other) => one - other);
  expect([...draws.ranks('mass')]).toEqual([...values].map((value) => sorted.indexOf(value)));
});
