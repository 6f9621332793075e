import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { depthMillimetres, dryShare, likelyLot, lotOf } from '../../../app/core/lawn/clippings';
import type { LotInput } from '../../../app/core/lawn/lotInput';
import type { Quantity } from '../../../app/core/lawn/quantity';
import { halfUnitsOff } from '../../published/readCases';
import { damp, exact, ordinary, soaked, spread, weighedBag } from './lots';

const runs = { numRuns: 1000, seed: 20_130_615 };
const near = (value: number, wanted: number, share = 1e-9): void =>
  expect(Math.abs(value / wanted - 1)).toBeLessThan(share);
const bag: Quantity = { kind: 'containers', count: 1, containerId: 'bag' };

describe('what a mowing holds, at likely values', () => {
  test('sample garden: a 45 L bag weighed 11.3 kg, dry, 20 % of it dry matter, 3.4 % N', () => {
    const lot = likelyLot({ ...ordinary, weighed: weighedBag });
    near(lot.dryKilograms, 2.26);
    near(lot.freshKilograms, 11.3);
    expect(Math.round(lot.nitrogenGrams)).toBe(77);
    near(lot.litres, 45);
  });

  test('cautions: the same bag soaked weighs 15 kg, and holds as much dry matter', () => {
    const lot = likelyLot({ ...ordinary, weighed: weighedBag, outsideWater: soaked });
    near(lot.dryKilograms, 2.26);
    expect(lot.freshKilograms.toFixed(0)).toBe('15');
  });

  test('a bag that was weighed soaked gives the dry matter it would have had', () => {
    const wet = { litres: 45, kilograms: 11.3 + 1.67 * 2.26, outsideWater: soaked };
    near(likelyLot({ ...ordinary, weighed: wet }).dryKilograms, 2.26);
  });

  // derived, from the density and contents given: 28 L at 250 kg/m3, 80 % water, 3.2 % N: 7 kg, 1.4 kg dry, 45 g N
  test('worked scale: 28 L of ordinary clippings', () => {
    const stuff = { ...ordinary.stuff, nitrogenPercent: spread(2, 3.2, 5) };
    const lot = likelyLot({ ...ordinary, stuff, quantity: { kind: 'volume', litres: 28 } });
    near(lot.freshKilograms, 7);
    near(lot.dryKilograms, 1.4);
    expect(lot.nitrogenGrams.toFixed(0)).toBe('45');
    near(lot.carbonGrams, 1400 * 0.44);
  });

  // derived (82 % water, 3.4 % N, 250 kg/m3): columns are kg fresh, kg dry, g N, each per m2
  test.each([
    [6.35, '1.6', '0.29', '9.7'],
    [12.7, '3.2', '0.57', '19'],
    [25.4, '6.4', '1.14', '39'],
    [50.8, '12.7', '2.29', '78'],
  ])('a layer of %d mm on a square metre', (millimetres, fresh, dry, nitrogen) => {
    const stuff = { ...ordinary.stuff, moisturePercent: spread(75, 82, 88) };
    const lot = likelyLot({
      ...ordinary,
      stuff,
      moistureNowPercent: stuff.moisturePercent,
      quantity: { kind: 'depth', millimetres },
      areaM2: 1,
    });
    for (const [value, printed] of [
      [lot.freshKilograms, fresh],
      [lot.dryKilograms, dry],
      [lot.nitrogenGrams, nitrogen],
    ] as const)
      expect(halfUnitsOff(value, printed)).toBeLessThanOrEqual(1);
    near(depthMillimetres(lot.litres, 1), millimetres);
  });

  // DEVELOPERS, The model in short 1, and the row of the lawn table: 8 g dry matter per m2 and cm until a bag is weighed
  test('220 m2 with 2 cm off', () => {
    const quantity: Quantity = { kind: 'mown', areaM2: 220, heightMillimetres: 20 };
    near(likelyLot({ ...ordinary, quantity }).dryKilograms, (220 * 2 * 8) / 1000);
  });

  test('weight typed: what is soaked holds less dry matter, what is limp more', () => {
    const quantity: Quantity = { kind: 'mass', kilograms: 10 };
    const dryOf = (change: Partial<LotInput>): number =>
      likelyLot({ ...ordinary, quantity, ...change }).dryKilograms;
    near(dryOf({}), 2);
    // 5 kg per kg dry, and 1.67 kg of water on it
    near(dryOf({ outsideWater: soaked }), 10 / 6.67);
    near(dryOf({ moistureNowPercent: spread(45, 60, 72) }), 4);
    near(dryOf({ moistureNowPercent: spread(10, 15, 30) }), 8.5);
  });

  test('a litre holds less weight limp or crisp, and the same dry matter', () => {
    const quantity: Quantity = { kind: 'volume', litres: 10 };
    const fresh = likelyLot({ ...ordinary, quantity });
    const limp = likelyLot({ ...ordinary, quantity, moistureNowPercent: spread(45, 60, 72) });
    const crisp = likelyLot({ ...ordinary, quantity, moistureNowPercent: spread(10, 15, 30) });
    expect(limp.freshKilograms).toBeLessThan(fresh.freshKilograms);
    expect(crisp.freshKilograms).toBeLessThan(limp.freshKilograms);
    near(limp.dryKilograms, fresh.dryKilograms);
    near(crisp.nitrogenGrams, fresh.nitrogenGrams);
  });

  test('dry share', () => {
    near(dryShare(0.8, 0), 0.2);
    // 80 % water and as much again as the dry matter outside: 1 in 6
    near(dryShare(0.8, 1), 1 / 6);
  });
});

describe('ranges', () => {
  test('a weight typed plainly is certain, its dry matter is not', () => {
    const lot = lotOf({ ...ordinary, quantity: { kind: 'mass', kilograms: 6 } });
    expect(lot.freshKilograms).toEqual({ low: 6, typical: 6, high: 6 });
    expect(lot.dryKilograms.low).toBeLessThan(lot.dryKilograms.typical);
    expect(lot.dryKilograms.high).toBeGreaterThan(lot.dryKilograms.typical);
  });

  test('a weighed bag is surer than the table, "about" and "not sure" are less sure', () => {
    const width = (change: Partial<LotInput>): number => {
      const { low, high } = lotOf({ ...ordinary, ...change }).dryKilograms;
      return high / low;
    };
    expect(width({ weighed: weighedBag })).toBeLessThan(width({}));
    expect(width({ certainty: spread(0.8, 1, 1.25) })).toBeGreaterThan(width({}));
    expect(width({ certainty: spread(0.6, 1, 1.65) })).toBeGreaterThan(
      width({ certainty: spread(0.8, 1, 1.25) }),
    );
    // depth: the density of what lies there is less sure than that of a bag
    const deep: Partial<LotInput> = { quantity: { kind: 'depth', millimetres: 6 } };
    expect(width(deep)).toBeGreaterThan(width({}));
  });

  test('one row alone: 10 and 90 per cent points of its log-normal', () => {
    const stuff = {
      ...ordinary.stuff,
      moisturePercent: exact(80),
      nitrogenPercent: exact(3.4),
    };
    const lot = lotOf({ ...ordinary, stuff, moistureNowPercent: exact(80) });
    // z of 10 % is 1.2816 of the 1.6449 at 5 %: 250 (150/250)^0.779 = 168 and 250 (400/250)^0.779 = 361
    near(lot.freshKilograms.low, 45 * 0.25 * 0.6 ** 0.7791, 0.08);
    near(lot.freshKilograms.high, 45 * 0.25 * 1.6 ** 0.7791, 0.08);
  });

  test('never the sum of ends: all low together is rarer than one in ten', () => {
    const { low, high } = lotOf(ordinary).nitrogenGrams;
    // 45 L x 0.15 kg/L x 12 % x 2 % and 45 L x 0.40 kg/L x 30 % x 6 %
    expect(low).toBeGreaterThan(45 * 0.15 * 0.12 * 20);
    expect(high).toBeLessThan(45 * 0.4 * 0.3 * 60);
  });

  test('the same entry always shows the same range', () => {
    expect(lotOf(ordinary)).toEqual(lotOf({ ...ordinary }));
  });

  const row = (low: number, high: number) =>
    fc
      .tuple(
        fc.double({ min: low, max: high, noNaN: true }),
        fc.double({ min: low, max: high, noNaN: true }),
        fc.double({ min: low, max: high, noNaN: true }),
      )
      .map((three) => {
        const [a = 0, b = 0, c = 0] = [...three].sort((one, other) => one - other);
        return spread(a, b, c);
      });
  const size = fc.double({ min: 1, max: 90, noNaN: true });
  const quantities = fc.oneof<fc.Arbitrary<Quantity>[]>(
    fc.constant(bag),
    size.map((litres) => ({ kind: 'volume', litres })),
    size.map((kilograms) => ({ kind: 'mass', kilograms })),
    size.map((millimetres) => ({ kind: 'depth', millimetres })),
    size.map((areaM2) => ({ kind: 'mown', areaM2, heightMillimetres: 20 })),
  );
  const lots: fc.Arbitrary<LotInput> = fc
    .record({
      quantity: quantities,
      nitrogenPercent: row(0.3, 7),
      moisturePercent: row(5, 93),
      densityKgPerM3: row(30, 900),
      outsideWater: fc.oneof(fc.constant(exact(0)), row(0, 4)),
      certainty: fc.oneof(fc.constant(exact(1)), fc.constant(spread(0.6, 1, 1.65))),
      weighed: fc.boolean(),
    })
    .map(({ nitrogenPercent, moisturePercent, densityKgPerM3, weighed, ...rest }) => ({
      ...ordinary,
      ...rest,
      stuff: { nitrogenPercent, moisturePercent, densityKgPerM3, carbonFraction: 0.44 },
      moistureNowPercent: moisturePercent,
      weighed: weighed ? weighedBag : null,
    }));

  test('low, likely and high stand in order; nothing is below nought or heavier than its water', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(lots, (input) => {
        seen.add(`${input.quantity.kind} ${input.weighed ? 'weighed' : 'table'}`);
        const lot = lotOf(input);
        for (const range of [
          lot.freshKilograms,
          lot.dryKilograms,
          lot.nitrogenGrams,
          lot.carbonGrams,
          lot.litres,
        ]) {
          expect(range.low).toBeGreaterThan(0);
          expect(range.low).toBeLessThanOrEqual(range.typical);
          expect(range.typical).toBeLessThanOrEqual(range.high);
        }
        expect(lot.dryKilograms.typical).toBeLessThan(lot.freshKilograms.typical);
        expect(lot.nitrogenGrams.typical).toBeLessThan(lot.dryKilograms.typical * 1000);
        near(lot.dryKilograms.typical, likelyLot(input).dryKilograms);
      }),
      runs,
    );
    // every kind of quantity, with a weighed bag and without
    expect(seen.size).toBe(10);
  });

  test('dry matter and nitrogen of a volume are the same however wet', () => {
    fc.assert(
      fc.property(lots, fc.constantFrom(exact(0), damp, soaked), (input, outsideWater) => {
        if (input.quantity.kind === 'mass') return;
        const dryLot = likelyLot({ ...input, outsideWater: exact(0) });
        const wetLot = likelyLot({ ...input, outsideWater });
        near(wetLot.dryKilograms, dryLot.dryKilograms);
        near(wetLot.nitrogenGrams, dryLot.nitrogenGrams);
        near(wetLot.litres, dryLot.litres);
        expect(wetLot.freshKilograms).toBeGreaterThanOrEqual(dryLot.freshKilograms * (1 - 1e-12));
      }),
      runs,
    );
  });

  test('twice the quantity holds twice as much', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 100, noNaN: true }), (litres) => {
        const one = likelyLot({ ...ordinary, quantity: { kind: 'volume', litres } });
        const two = likelyLot({ ...ordinary, quantity: { kind: 'volume', litres: 2 * litres } });
        near(two.nitrogenGrams, 2 * one.nitrogenGrams);
      }),
      runs,
    );
  });

  test('a count without its container, a depth without its area, are our mistake', () => {
    expect(() => likelyLot({ ...ordinary, containerLitres: null })).toThrow(/container/);
    const quantity: Quantity = { kind: 'depth', millimetres: 6 };
    expect(() => likelyLot({ ...ordinary, quantity, areaM2: null })).toThrow(/area/);
  });
});

describe('why', () => {
  const names = (input: LotInput): string[] =>
    lotOf(input).why.ingredients.map((ingredient) => ingredient.name);
  test.each([
    ['a bag', {}, 'volume', ['count', 'container litres', 'density', 'water']],
    [
      'a weighed bag',
      { weighed: weighedBag },
      'weighed container',
      ['count', 'weighed kilograms', 'weighed litres', 'fullness'],
    ],
    [
      'a weight',
      { quantity: { kind: 'mass', kilograms: 6 } },
      'weight',
      ['kilograms', 'water now'],
    ],
    [
      'an area mown',
      { quantity: { kind: 'mown', areaM2: 220, heightMillimetres: 20 } },
      'mown',
      ['area', 'height', 'dry mass per cm'],
    ],
    [
      'a depth',
      { quantity: { kind: 'depth', millimetres: 6 } },
      'depth',
      ['depth', 'area', 'density', 'depth factor'],
    ],
  ] as const)('%s', (_name, change, route, wanted) => {
    const input: LotInput = { ...ordinary, ...change };
    expect(lotOf(input).why.route).toBe(route);
    expect(names(input)).toEqual(expect.arrayContaining([...wanted, 'nitrogen', 'carbon']));
  });

  test('every row carries its source, place and standing; doubt and water only where there is some', () => {
    for (const ingredient of lotOf(ordinary).why.ingredients)
      if (ingredient.from === 'row')
        expect(ingredient.row).toMatchObject({ source: 'Test2000', standing: 'assumed' });
    expect(names(ordinary)).not.toContain('certainty');
    expect(names(ordinary)).not.toContain('outside water');
    expect(names({ ...ordinary, outsideWater: soaked })).toContain('outside water');
    expect(names({ ...ordinary, certainty: spread(0.8, 1, 1.25) })).toContain('certainty');
  });
});
