import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blend, type BlendPart } from '../../../app/core/cover/blend';
import { mixCarbonToNitrogen, mixMoisture } from '../../../app/core/cover/mix';

const runs = { numRuns: 1000, seed: 20_130_615 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const part = fc.record({
  moistureFraction: real(0.02, 0.95),
  carbonFraction: real(0.18, 0.6),
  nitrogenFraction: real(0.0005, 0.08),
});
const given = fc.record({ kilograms: real(0.01, 100), part });
const value = <Value>(
  result: { ok: true; value: Value } | { ok: false; error: unknown },
): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
/** The mixture as it would be weighed out, water poured in. */
const weighed = (parts: readonly BlendPart[], kilograms: readonly number[], water: number) => [
  ...parts.map((one, index) => ({ ...one, freshKilograms: kilograms[index] ?? 0 })),
  { freshKilograms: water, moistureFraction: 1, carbonFraction: 0, nitrogenFraction: 0 },
];

// composition as in tests/published/RichardTrautmann-mixing, both-goals.csv
const grass = { moistureFraction: 0.82, carbonFraction: 0.442, nitrogenFraction: 0.034 };
const leaves = { moistureFraction: 0.38, carbonFraction: 0.456, nitrogenFraction: 0.0094 };

describe('a mixture put together', () => {
  test('meets the printed goals of the mixing table where they can be met', () => {
    const asked = [
      { ...grass, freshKilograms: 10 },
      { ...leaves, freshKilograms: null },
    ];
    const wet = value(blend(asked, { ratio: 25, moisture: 0.6 }));
    expect(wet.kilograms[1]).toBeCloseTo(5.3598, 4);
    expect(wet.unmet).toEqual([
      { kind: 'too-wet', waterKilograms: expect.closeTo(2.5521, 4) as number },
    ]);
    expect(wet.waterKilograms).toBe(0);
    const dry = value(blend(asked, { ratio: 35, moisture: 0.6 }));
    expect(dry.kilograms[1]).toBeCloseTo(17.0993, 4);
    expect(dry.waterKilograms).toBeCloseTo(3.9046, 4);
    expect(dry.unmet).toEqual([]);
  });

  test('what it says of itself is what the weighed-out mixture is', () => {
    fc.assert(
      fc.property(
        fc.array(given, { minLength: 1, maxLength: 4 }),
        fc.array(part, { maxLength: 2 }),
        real(5, 80),
        real(0.3, 0.8),
        (there, sought, ratio, moisture) => {
          const parts: BlendPart[] = [
            ...there.map((one) => ({ ...one.part, freshKilograms: one.kilograms })),
            ...sought.map((one) => ({ ...one, freshKilograms: null })),
          ];
          const mixture = value(blend(parts, { ratio, moisture }));
          expect(mixture.kilograms.every((kilograms) => kilograms >= 0)).toBe(true);
          expect(mixture.waterKilograms).toBeGreaterThanOrEqual(0);
          there.forEach((one, index) => expect(mixture.kilograms[index]).toBe(one.kilograms));
          const lots = weighed(parts, mixture.kilograms, mixture.waterKilograms);
          expect(value(mixCarbonToNitrogen(lots)) / mixture.ratio).toBeCloseTo(1, 9);
          expect(value(mixMoisture(lots))).toBeCloseTo(mixture.moisture, 9);
          const isRatioMissed = mixture.unmet.some(({ kind }) => kind !== 'too-wet');
          expect(Math.abs(mixture.ratio / ratio - 1) > 1e-5).toBe(isRatioMissed);
          const isTooWet = mixture.unmet.some(({ kind }) => kind === 'too-wet');
          if (isTooWet) expect(mixture.moisture).toBeGreaterThan(moisture);
          else expect(mixture.moisture).toBeCloseTo(moisture, 5);
        },
      ),
      runs,
    );
  });

  test('a ratio is missed only where no amount of the sought part reaches it', () => {
    fc.assert(
      fc.property(given, part, real(5, 80), (there, sought, ratio) => {
        const parts = [
          { ...there.part, freshKilograms: there.kilograms },
          { ...sought, freshKilograms: null },
        ];
        const { unmet } = value(blend(parts, { ratio, moisture: null }));
        const own = there.part.carbonFraction / there.part.nitrogenFraction;
        const other = sought.carbonFraction / sought.nitrogenFraction;
        const isBetween = (own - ratio) * (other - ratio) < 0;
        expect(unmet.length === 0).toBe(isBetween);
      }),
      runs,
    );
  });

  test('tells which part fails, and how', () => {
    const with10 = { ...grass, freshKilograms: 10 };
    const seek = (ratio: number) =>
      value(blend([with10, { ...leaves, freshKilograms: null }], { ratio, moisture: null }));
    expect(seek(60).unmet).toEqual([
      { kind: 'part-falls-short', part: 1, ratio: expect.closeTo(48.51, 2) as number },
    ]);
    expect(seek(10).unmet).toEqual([{ kind: 'part-leads-away', part: 1 }]);
    const both = [with10, { ...leaves, freshKilograms: 1 }];
    expect(value(blend(both, { ratio: 30, moisture: null })).unmet).toEqual([
      { kind: 'ratio-as-given' },
    ]);
  });

  test('two amounts need two wishes, and something must be there', () => {
    const nothing = { ...leaves, freshKilograms: null };
    const parts = [{ ...grass, freshKilograms: 10 }, nothing, nothing];
    expect(blend(parts, { ratio: 30, moisture: null })).toEqual({
      ok: false,
      error: { kind: 'too-many-unknown', may: 1 },
    });
    expect(blend([nothing], { ratio: 30, moisture: 0.6 })).toEqual({
      ok: false,
      error: { kind: 'empty-mixture' },
    });
  });
});

/** Carbon to nitrogen and water of what is weighed out, by hand: sums first, divided last. */
const byHand = (lots: readonly (readonly [number, Omit<BlendPart, 'freshKilograms'>])[]) => {
  const sum = (of: (kilograms: number, one: Omit<BlendPart, 'freshKilograms'>) => number) =>
    lots.reduce((all, [kilograms, one]) => all + of(kilograms, one), 0);
  const dry = (kilograms: number, one: Omit<BlendPart, 'freshKilograms'>) =>
    kilograms * (1 - one.moistureFraction);
  return {
    ratio:
      sum((kilograms, one) => dry(kilograms, one) * one.carbonFraction) /
      sum((kilograms, one) => dry(kilograms, one) * one.nitrogenFraction),
    moisture:
      sum((kilograms, one) => kilograms * one.moistureFraction) / sum((kilograms) => kilograms),
  };
};
const sought = (one: Omit<BlendPart, 'freshKilograms'>): BlendPart => ({
  ...one,
  freshKilograms: null,
});
// nothing measured: a brown that is drier than the leaves and a green that is richer than the grass
const chips = { moistureFraction: 0.2, carbonFraction: 0.5, nitrogenFraction: 0.002 };
const greens = { moistureFraction: 0.7, carbonFraction: 0.4, nitrogenFraction: 0.05 };

describe('amounts found for the wished water', () => {
  test('a drier part takes up what is too much: 2.2 kg by 0.22 a kilogram', () => {
    const mixture = value(
      blend([{ ...grass, freshKilograms: 10 }, sought(leaves)], { ratio: null, moisture: 0.6 }),
    );
    expect(mixture.kilograms[1]).toBeCloseTo(10, 10);
    expect(mixture.waterKilograms).toBeCloseTo(0, 10);
    expect(mixture.moisture).toBeCloseTo(0.6, 12);
    expect(mixture.unmet).toEqual([]);
  });

  test('a part as dry as what is there helps nothing: none of it, 2.2 kg of water by 0.4', () => {
    const there = { ...leaves, freshKilograms: 10 };
    for (const moistureFraction of [0.38, 0.6]) {
      const mixture = value(
        blend([there, sought({ ...leaves, moistureFraction })], { ratio: null, moisture: 0.6 }),
      );
      expect(mixture.kilograms[1]).toBe(0);
      expect(mixture.waterKilograms).toBeCloseTo(5.5, 10);
      expect(mixture.moisture).toBeCloseTo(0.6, 12);
    }
  });

  test('no water is poured in where none is wished', () => {
    const mixture = value(
      blend([{ ...grass, freshKilograms: 10 }, sought(leaves)], { ratio: 25, moisture: null }),
    );
    expect(mixture.waterKilograms).toBe(0);
    expect(mixture.unmet).toEqual([]);
    expect(mixture.ratio).toBeCloseTo(25, 9);
  });
});

describe('two amounts for two wishes', () => {
  test('what was weighed out is found again from its ratio and its water alone', () => {
    const amount = real(0.1, 20);
    fc.assert(
      fc.property(amount, amount, amount, (there, first, second) => {
        const wish = byHand([
          [there, grass],
          [first, leaves],
          [second, chips],
        ]);
        const parts = [{ ...grass, freshKilograms: there }, sought(leaves), sought(chips)];
        const mixture = value(blend(parts, wish));
        expect(mixture.kilograms[1]).toBeCloseTo(first, 6);
        expect(mixture.kilograms[2]).toBeCloseTo(second, 6);
        expect(mixture.waterKilograms).toBeCloseTo(0, 6);
        expect(mixture.unmet).toEqual([]);
      }),
      runs,
    );
  });

  test('where they cannot, one part meets the ratio and water is poured in', () => {
    // more nitrogen would lead away from 30, so leaves do it alone: 30 by one sought amount
    const wish = { ratio: 30, moisture: 0.75 };
    const there = { ...grass, freshKilograms: 10 };
    const alone = value(blend([there, sought(leaves)], wish));
    expect(alone.unmet).toEqual([]);
    expect(alone.waterKilograms).toBeGreaterThan(0);
    const last = value(blend([there, sought(greens), sought(leaves)], wish));
    expect(last).toEqual({ ...alone, kilograms: [10, 0, alone.kilograms[1]] });
    const first = value(blend([there, sought(leaves), sought(greens)], wish));
    expect(first).toEqual({ ...alone, kilograms: [10, alone.kilograms[1], 0] });
  });

  test('where neither does, the first named is told, and nothing of it is taken', () => {
    const there = { ...grass, freshKilograms: 10 };
    const mixture = value(
      blend([there, sought(greens), sought({ ...greens, moistureFraction: 0.6 })], {
        ratio: 40,
        moisture: 0.5,
      }),
    );
    expect(mixture.kilograms).toEqual([10, 0, 0]);
    expect(mixture.unmet).toEqual([
      { kind: 'part-leads-away', part: 1 },
      // 10 kg with 8.2 of water, 1.8 dry: at half water 3.6 kg, 6.4 too much by 0.5 a kilogram
      { kind: 'too-wet', waterKilograms: expect.closeTo(6.4, 10) as number },
    ]);
  });
});

describe('what is met already', () => {
  const twentyToOne = { moistureFraction: 0.5, carbonFraction: 0.4, nitrogenFraction: 0.02 };
  const there = { ...twentyToOne, freshKilograms: 10 };

  test('nothing more of anything, nothing missed', () => {
    const wish = { ratio: 20, moisture: 0.5 };
    for (const more of [leaves, greens])
      expect(value(blend([there, sought(more)], wish))).toEqual({
        kilograms: [10, 0],
        waterKilograms: 0,
        ratio: 20,
        moisture: 0.5,
        unmet: [],
      });
    expect(value(blend([there], wish)).unmet).toEqual([]);
    expect(
      value(blend([there, { ...grass, freshKilograms: 3 }], { ratio: null, moisture: null })).unmet,
    ).toEqual([]);
  });

  test('a part that has the wished ratio itself brings nothing to it, however much of it', () => {
    for (const [other, far] of [
      [grass, 'richer'],
      [leaves, 'poorer'],
    ] as const) {
      const parts = [{ ...other, freshKilograms: 10 }, sought(twentyToOne)];
      const mixture = value(blend(parts, { ratio: 20, moisture: null }));
      expect(mixture.kilograms, far).toEqual([10, 0]);
      expect(mixture.unmet, far).toEqual([{ kind: 'part-falls-short', part: 1, ratio: 20 }]);
    }
  });

  test('a ratio within what can be weighed is met, a hundred thousandth beside it is not', () => {
    const unmet = (ratio: number) => value(blend([there], { ratio, moisture: null })).unmet;
    expect(unmet(20 * (1 + 1e-7))).toEqual([]);
    expect(unmet(20 * (1 - 1e-7))).toEqual([]);
    expect(unmet(20 * (1 + 1e-5))).toEqual([{ kind: 'ratio-as-given' }]);
    expect(unmet(20 * (1 - 1e-5))).toEqual([{ kind: 'ratio-as-given' }]);
  });

  test('so with water: a ten-millionth of the mass is none too much', () => {
    const unmet = (moisture: number) => value(blend([there], { ratio: null, moisture })).unmet;
    expect(unmet(0.5 - 1e-8)).toEqual([]);
    // 10 kg x 1e-5 by half a kilogram of dry matter
    expect(unmet(0.5 - 1e-5)).toEqual([
      { kind: 'too-wet', waterKilograms: expect.closeTo(2e-4, 8) as number },
    ]);
  });

  test('amounts wanted without any wish, or three for two, are too many', () => {
    const few = (wish: { ratio: number | null; moisture: number | null }, count: number) =>
      blend([there, ...Array.from({ length: count }, () => sought(leaves))], wish);
    expect(few({ ratio: null, moisture: null }, 1)).toEqual({
      ok: false,
      error: { kind: 'too-many-unknown', may: 0 },
    });
    expect(few({ ratio: 30, moisture: 0.6 }, 3)).toEqual({
      ok: false,
      error: { kind: 'too-many-unknown', may: 2 },
    });
  });
});
