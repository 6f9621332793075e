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
