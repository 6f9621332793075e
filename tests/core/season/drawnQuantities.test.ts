import { describe, expect, test } from 'vitest';
import { bandOf, bandReader, effectiveCount } from '../../../app/core/season/draws/bands';
import { makeDraws } from '../../../app/core/season/draws/columns';
import { stratifiedShares } from '../../../app/core/season/draws/hypercube';
import { mattersMost } from '../../../app/core/season/draws/mattersMost';
import { normalQuantile } from '../../../app/core/season/draws/normalQuantile';
import { valueAt, type Drawn, type SeasonSpread } from '../../../app/core/season/draws/spread';

describe('quantiles of the standard normal to the ten digits of large tables', () => {
  // Tables of the normal distribution print these; each of the three pieces is met on both sides.
  test.each([
    [0.5, 0],
    [0.6, 0.2533471031],
    [0.75, 0.6744897502],
    [0.9, 1.281551566],
    [0.95, 1.644853627],
    [0.97, 1.880793608],
    [0.975, 1.959963985],
    [0.98, 2.053748911],
    [0.99, 2.326347874],
    [0.999, 3.090232306],
    [0.9999, 3.719016485],
    [0.999999, 4.753424309],
  ])('%d', (share, printed) => {
    expect(normalQuantile(share)).toBeCloseTo(printed, 7);
    expect(normalQuantile(1 - share)).toBeCloseTo(-printed, 7);
  });
});

describe('between the three points of a row', () => {
  // A normal number of 0.5 standard deviations is 0.5/1.644854 of the way from the median to an end.
  const half = 0.6914624613;
  const part = 0.5 / 1.6448536269514722;

  test('amounts go by their logarithms, each side on its own', () => {
    const row = { low: 1, typical: 2, high: 16, shape: 'amount' } as const;
    expect(valueAt(row, half)).toBeCloseTo(2 * 8 ** part, 6);
    expect(valueAt(row, 1 - half)).toBeCloseTo(2 / 2 ** part, 6);
    expect(valueAt(row, 0.95)).toBeCloseTo(16, 6);
  });

  test('shares go by their odds', () => {
    // odds 1/4, 1 and 9
    const row = { low: 0.2, typical: 0.5, high: 0.9, shape: 'share' } as const;
    const share = (odds: number): number => odds / (1 + odds);
    expect(valueAt(row, half)).toBeCloseTo(share(9 ** part), 6);
    expect(valueAt(row, 1 - half)).toBeCloseTo(share(4 ** -part), 6);
  });

  test('a low end of nothing goes down in a straight line, and up like any other', () => {
    for (const shape of ['amount', 'share'] as const) {
      const row = { low: 0, typical: 0.3, high: 0.6, shape };
      expect(valueAt(row, 1 - half)).toBeCloseTo(0.3 * (1 - part), 6);
      expect(valueAt(row, half)).toBeCloseTo(0.3 * 2 ** part, 6);
      expect(valueAt(row, 0.05)).toBeCloseTo(0, 6);
      expect(valueAt(row, 0.001)).toBe(0);
    }
  });

  test('a share whose high end is all of it cannot go by odds', () => {
    const row = { low: 0.25, typical: 0.5, high: 1, shape: 'share' } as const;
    expect(valueAt(row, half)).toBeCloseTo(0.5 * 2 ** part, 6);
  });

  test('without a range, upside down, or with nothing typical there is nothing to draw', () => {
    const of = (low: number, typical: number, high: number) =>
      valueAt({ low, typical, high, shape: 'amount' }, 0.9);
    expect(of(2, 2, 2)).toBe(2);
    expect(of(5, 2, 1)).toBe(2);
    expect(of(-1, 0, 1)).toBe(0);
  });
});

describe('the hypercube', () => {
  const names = Array.from({ length: 200 }, (_, at) => `quantity ${at}`);
  const count = 50;
  const columns = () => names.map((name) => stratifiedShares(name, 11, count));

  test('within its stratum a share lies anywhere', () => {
    const places = columns().flatMap((column) => [...column].map((share) => (share * count) % 1));
    const below = (line: number) => places.filter((one) => one < line).length / places.length;
    // 10 000 places: a share of a quarter is known to less than 0.02 at four standard errors
    for (const line of [0.25, 0.5, 0.75]) expect(Math.abs(below(line) - line)).toBeLessThan(0.02);
    expect(Math.min(...places)).toBeGreaterThan(0);
  });

  test('and keeps a millionth of it from either end, where a quantile has none', () => {
    // two seeds whose only number lies nearer to an end than that, found by trying
    expect(stratifiedShares('a', 1_647_243, 1)[0]).toBe(1 - 1e-6);
    expect(stratifiedShares('a', 2_470_504, 1)[0]).toBe(1e-6);
  });

  test('every draw gets every stratum as often as any other', () => {
    // mean of 200 strata of 0-49: standard error 14.4/sqrt(200) = 1.02
    const all = columns();
    for (let draw = 0; draw < count; draw++) {
      const strata = all.map((column) => Math.floor(column[draw]! * count));
      const mean = strata.reduce((sum, one) => sum + one, 0) / strata.length;
      expect(Math.abs(mean - 24.5)).toBeLessThan(4.5);
      expect(new Set(strata).size).toBeGreaterThan(40);
    }
  });

  test('no draw stays where it stood in order', () => {
    const fixed = columns().flatMap((column) =>
      [...column].filter((share, draw) => Math.floor(share * count) === draw),
    );
    // one in fifty by chance: 200 of 10 000, give or take four times 14
    expect(fixed.length).toBeGreaterThan(140);
    expect(fixed.length).toBeLessThan(260);
  });

  test('names of the same letters in another order are other names', () => {
    expect([...stratifiedShares('ab', 1, 20)]).not.toEqual([...stratifiedShares('ba', 1, 20)]);
    expect([...stratifiedShares('', 1, 20)]).not.toEqual([...stratifiedShares('', 2, 20)]);
  });
});

const drawn = (name: string, over: Partial<Drawn> = {}): Drawn => ({
  name,
  shape: 'amount',
  low: 0.5,
  typical: 1,
  high: 2,
  ...over,
});

describe('columns', () => {
  test('one name is one draw, read by whichever points are asked', () => {
    const draws = makeDraws(4, 30);
    const wide = draws.column(drawn('mass'));
    const narrow = draws.column(drawn('mass', { low: 0.9, high: 1.1 }));
    const order = (values: Float64Array) =>
      [...values.keys()].sort((one, other) => values[one]! - values[other]!);
    expect(order(wide)).toEqual(order(narrow));
    expect(wide).not.toEqual(narrow);
    expect(draws.column(drawn('mass'))).toBe(wide);
    expect(Math.min(...narrow)).toBeGreaterThan(0.8);
    expect(draws.value(drawn('mass'), 7)).toBe(wide[7]);
    expect(draws.column(drawn('need'))).not.toEqual(wide);
    expect([draws.seed, draws.count]).toEqual([4, 30]);
  });

  test('each point and the shape tells one reading from another', () => {
    const draws = makeDraws(4, 30);
    const readings = [
      drawn('x', { low: 0.2, typical: 0.4, high: 0.8 }),
      drawn('x', { low: 0.1, typical: 0.4, high: 0.8 }),
      drawn('x', { low: 0.2, typical: 0.5, high: 0.8 }),
      drawn('x', { low: 0.2, typical: 0.4, high: 0.9 }),
      drawn('x', { low: 0.2, typical: 0.4, high: 0.8, shape: 'share' }),
    ].map((one) => [...draws.column(one)].join(' '));
    expect(new Set(readings).size).toBe(5);
  });

  test('ranks are the places from the lowest on', () => {
    const draws = makeDraws(9, 25);
    const values = draws.column(drawn('mass'));
    const ranks = draws.ranks('mass');
    for (const [at, rank] of ranks.entries())
      expect(values.filter((value) => value < values[at]!)).toHaveLength(rank);
  });
});

describe('bands', () => {
  test('of eleven alike: the second, the sixth, the tenth; a reader serves many series', () => {
    const weights = new Float64Array(11).fill(3);
    const read = bandReader(weights);
    const up = Float64Array.from({ length: 11 }, (_, at) => at);
    expect(read(up)).toEqual({ low: 1, middle: 5, high: 9 });
    expect(read(up.map((value) => 100 - value))).toEqual({ low: 91, middle: 95, high: 99 });
    expect(read(up)).toEqual({ low: 1, middle: 5, high: 9 });
    expect(bandOf(new Float64Array(11).fill(7), weights)).toEqual({ low: 7, middle: 7, high: 7 });
  });

  test('what weighs nothing does not count, be it ever so far out', () => {
    const values = Float64Array.from([1, 1e9, 2, -1e9, 3]);
    expect(bandOf(values, Float64Array.from([1, 0, 1, 0, 1]))).toEqual({
      low: 1,
      middle: 2,
      high: 3,
    });
    // half of the weight lies on the greatest
    expect(bandOf(values, Float64Array.from([1, 0, 1, 0, 2]))).toEqual({
      low: 1,
      middle: 2,
      high: 3,
    });
    expect(bandOf(values, Float64Array.from([1, 0, 1, 0, 2.1])).middle).toBe(3);
  });

  test('what weights are worth', () => {
    // (1 + 2 + 3)^2/(1 + 4 + 9)
    expect(effectiveCount(Float64Array.from([1, 2, 3]))).toBeCloseTo(36 / 14, 12);
    expect(effectiveCount(new Float64Array(4))).toBe(0);
  });
});

describe('what matters most', () => {
  const spread = (over: Partial<SeasonSpread> = {}): SeasonSpread => ({
    coefficients: [
      { ...drawn('release'), key: 'soilReleaseRate' },
      { ...drawn('fixed row', { low: 1, high: 1 }), key: 'arrearsDays' },
      { ...drawn('nothing', { low: -1, typical: 0 }), key: 'luxuryShare' },
    ],
    layers: { one: { mass: drawn('mass'), nitrogen: drawn('content') } },
    needs: { corn: drawn('need'), beans: drawn('need') },
    organicMatter: null,
    ...over,
  });
  const draws = makeDraws(3, 40);
  const even = new Float64Array(40).fill(1);
  const column = (name: string) => draws.column(drawn(name));

  test('an outcome that is a quantity goes with it wholly, up or down', () => {
    const [first] = mattersMost(spread(), [draws], column('mass'), even);
    expect(first!.name).toBe('mass');
    expect(first!.correlation).toBeCloseTo(1, 12);
    const falling = column('content').map((value) => 1 / value);
    const [second] = mattersMost(spread(), [draws], falling, even);
    expect(second!.name).toBe('content');
    expect(second!.correlation).toBeCloseTo(-1, 12);
  });

  test('three are named, strongest first, by size and not by sign', () => {
    const [mass, need, release] = [column('mass'), column('need'), column('release')];
    const outcome = mass.map(
      (value, at) => -8 * Math.log(value) + 4 * Math.log(need[at]!) + 2 * Math.log(release[at]!),
    );
    const found = mattersMost(spread(), [draws], outcome, even);
    expect(found.map(({ name }) => name)).toEqual(['mass', 'need', 'release']);
    expect(found[0]!.correlation).toBeLessThan(-0.5);
    expect(found[1]!.correlation).toBeGreaterThan(0);
  });

  test('what is not drawn is not named, what shares a name is named once', () => {
    const outcome = Float64Array.from({ length: 40 }, (_, at) => at);
    const names = mattersMost(spread({ layers: {} }), [draws], outcome, even).map(
      ({ name }) => name,
    );
    expect(names.toSorted()).toEqual(['need', 'release']);
    const matter = spread({ organicMatter: drawn('organic matter'), layers: {}, needs: {} });
    expect(
      mattersMost(matter, [draws], column('organic matter'), even).map(({ name }) => name),
    ).toEqual(['organic matter', 'release']);
  });

  test('Spearman’s correlation reckoned by hand', () => {
    const few = makeDraws(1, 4);
    const ranks = [...few.ranks('mass')];
    // ranks 0-3 against outcomes of ranks 0, 2, 1, 3 in that order: 1 - 6 x 2/(4 x 15) = 0.8
    const outcome = Float64Array.from(ranks, (rank) => [10, 70, 20, 900][rank]!);
    const only = spread({
      coefficients: [],
      needs: {},
      layers: { one: { mass: drawn('mass'), nitrogen: drawn('fixed', { low: 1, high: 1 }) } },
    });
    const found = mattersMost(only, [few], outcome, new Float64Array(4).fill(2));
    expect(found).toHaveLength(1);
    expect(found[0]!.correlation).toBeCloseTo(0.8, 12);
    // without the first by rank: 1, 2, 3 against 2, 1, 3 is 0.5 by Pearson
    const weights = Float64Array.from(ranks, (rank) => (rank === 0 ? 0 : 1));
    expect(mattersMost(only, [few], outcome, weights)[0]!.correlation).toBeCloseTo(0.5, 12);
  });

  test('equal outcomes share their rank', () => {
    const few = makeDraws(1, 4);
    const ranks = [...few.ranks('mass')];
    // ranks 0, 1, 2, 3 against 0, 1.5, 1.5, 3: 4.5/sqrt(5 x 4.5)
    const outcome = Float64Array.from(ranks, (rank) => [1, 5, 5, 9][rank]!);
    const only = spread({ coefficients: [], needs: {} });
    const mass = mattersMost(only, [few], outcome, new Float64Array(4).fill(1)).find(
      ({ name }) => name === 'mass',
    );
    expect(mass!.correlation).toBeCloseTo(4.5 / Math.sqrt(5 * 4.5), 12);
  });

  test('alike in all draws: nothing is named; one draw that counts: nothing goes with anything', () => {
    expect(mattersMost(spread(), [draws], new Float64Array(40).fill(2), even)).toEqual([]);
    const one = even.map((_, at) => (at === 5 ? 1 : 0));
    for (const { correlation } of mattersMost(spread(), [draws], column('mass'), one))
      expect(correlation).toBe(0);
  });

  test('several hypercubes are read one after the other', () => {
    const blocks = [draws, makeDraws(8, 40)];
    const outcome = new Float64Array(80);
    blocks.forEach((block, at) => outcome.set(block.column(drawn('need')), 40 * at));
    const [first] = mattersMost(spread(), blocks, outcome, new Float64Array(80).fill(1));
    expect(first!.name).toBe('need');
    expect(first!.correlation).toBeGreaterThan(0.999);
  });
});
