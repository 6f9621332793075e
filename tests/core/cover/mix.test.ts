import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  mixCarbonToNitrogen,
  mixMoisture,
  partnerForMoisture,
  partnerForRatio,
  partnersForBoth,
  type MixtureShare,
} from '../../../app/core/cover/mix';

const runs = { numRuns: 1000, seed: 20_130_615 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const shares: fc.Arbitrary<MixtureShare> = fc.record({
  freshKilograms: real(0.01, 100),
  moistureFraction: real(0.02, 0.95),
  carbonFraction: real(0.18, 0.6),
  nitrogenFraction: real(0.0005, 0.08),
});
const value = (result: { ok: true; value: number } | { ok: false; error: unknown }): number => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

describe('mixtures', () => {
  test('lie between their parts, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(shares, { minLength: 1, maxLength: 6 }), (parts) => {
        const ratio = value(mixCarbonToNitrogen(parts));
        const own = parts.map((part) => part.carbonFraction / part.nitrogenFraction);
        expect(ratio).toBeGreaterThanOrEqual(Math.min(...own) * (1 - 1e-12));
        expect(ratio).toBeLessThanOrEqual(Math.max(...own) * (1 + 1e-12));
        expect(value(mixCarbonToNitrogen([...parts].reverse())) / ratio).toBeCloseTo(1, 10);
        const water = value(mixMoisture(parts));
        expect(water).toBeGreaterThanOrEqual(
          Math.min(...parts.map((part) => part.moistureFraction)) * (1 - 1e-12),
        );
        expect(water).toBeLessThanOrEqual(
          Math.max(...parts.map((part) => part.moistureFraction)) * (1 + 1e-12),
        );
      }),
      runs,
    );
  });

  test('splitting a part changes nothing; more of all changes nothing', () => {
    fc.assert(
      fc.property(shares, shares, real(0.05, 0.95), (one, other, part) => {
        const split = [
          { ...one, freshKilograms: one.freshKilograms * part },
          { ...one, freshKilograms: one.freshKilograms * (1 - part) },
          other,
        ];
        const ratio = value(mixCarbonToNitrogen([one, other]));
        expect(value(mixCarbonToNitrogen(split)) / ratio).toBeCloseTo(1, 9);
        const doubled = [one, other].map((share) => ({
          ...share,
          freshKilograms: share.freshKilograms * 2,
        }));
        expect(value(mixCarbonToNitrogen(doubled)) / ratio).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  test('a partner brings the mixture where it was wanted, or says that none can', () => {
    let reached = 0;
    fc.assert(
      fc.property(shares, shares, real(5, 200), (one, other, wanted) => {
        const partner = partnerForRatio(one, other, wanted);
        const [low = 0, high = 0] = [one, other]
          .map((share) => share.carbonFraction / share.nitrogenFraction)
          .sort((first, second) => first - second);
        if (!partner.ok) {
          expect(partner.error.kind).toBe('out-of-reach');
          expect(wanted > low * 1.000001 && wanted < high * 0.999999).toBe(false);
          return;
        }
        reached++;
        const mixed = [one, { ...other, freshKilograms: partner.value }];
        expect(value(mixCarbonToNitrogen(mixed)) / wanted).toBeCloseTo(1, 8);
      }),
      runs,
    );
    expect(reached).toBeGreaterThan(100);
  });

  test('water likewise, and both goals at once', () => {
    fc.assert(
      fc.property(shares, shares, real(0.1, 0.9), real(5, 200), (one, other, water, ratio) => {
        const partner = partnerForMoisture(one, other, water);
        if (partner.ok)
          expect(
            value(mixMoisture([one, { ...other, freshKilograms: partner.value }])),
          ).toBeCloseTo(water, 8);
        const both = partnersForBoth(one, other, ratio, water);
        if (!both.ok) return;
        const { secondKilograms, waterKilograms } = both.value;
        const mass = one.freshKilograms + secondKilograms + waterKilograms;
        const wet =
          one.freshKilograms * one.moistureFraction +
          secondKilograms * other.moistureFraction +
          waterKilograms;
        expect(Math.abs(wet - water * mass)).toBeLessThan(
          1e-8 * (one.freshKilograms + secondKilograms),
        );
      }),
      runs,
    );
  });
});

describe('what cannot be mixed', () => {
  const grass: MixtureShare = {
    freshKilograms: 10,
    moistureFraction: 0.8,
    carbonFraction: 0.44,
    nitrogenFraction: 0.034,
  };
  test.each([
    ['nothing', [], { kind: 'empty-mixture' }],
    ['no mass', [{ ...grass, freshKilograms: 0 }], { kind: 'empty-mixture' }],
    [
      'mass below nought',
      [grass, { ...grass, freshKilograms: -1 }],
      { kind: 'not-a-mass', share: 1 },
    ],
    ['no number', [{ ...grass, freshKilograms: NaN }], { kind: 'not-a-mass', share: 0 }],
    [
      'percent for a fraction',
      [{ ...grass, nitrogenFraction: 3.4 }],
      { kind: 'not-a-fraction', share: 0 },
    ],
    ['water alone', [{ ...grass, moistureFraction: 1 }], { kind: 'no-nitrogen' }],
    ['no nitrogen', [{ ...grass, nitrogenFraction: 0 }], { kind: 'no-nitrogen' }],
  ])('%s', (_name, parts, error) => {
    expect(mixCarbonToNitrogen(parts)).toEqual({ ok: false, error });
  });

  test('no partner where the goal lies outside both, none needed where it is met', () => {
    const straw = { moistureFraction: 0.1, carbonFraction: 0.45, nitrogenFraction: 0.004 };
    expect(partnerForRatio(grass, straw, 5)).toEqual({
      ok: false,
      error: { kind: 'out-of-reach' },
    });
    expect(partnerForRatio(grass, straw, 0.44 / 0.034)).toMatchObject({ ok: true });
    expect(partnerForMoisture(grass, straw, 0.9)).toEqual({
      ok: false,
      error: { kind: 'out-of-reach' },
    });
    expect(partnerForMoisture(grass, straw, 0.8)).toEqual({ ok: true, value: 0 });
    expect(partnersForBoth(grass, straw, 30, 1)).toMatchObject({ ok: false });
  });
});
