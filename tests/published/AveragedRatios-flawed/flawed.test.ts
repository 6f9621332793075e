import { describe, expect, test } from 'vitest';
import {
  mixCarbonToNitrogen,
  partnerForRatio,
  type MixtureShare,
} from '../../../app/core/cover/mix';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const numbers = (text = ''): number[] => text.split(' ').map(Number);

/** Dry parts of 40 % carbon. */
const share = (ratio: number, freshKilograms: number): MixtureShare => ({
  freshKilograms,
  moistureFraction: 0,
  carbonFraction: 0.4,
  nitrogenFraction: 0.4 / ratio,
});

describe('recipes that average ratios', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('case,ratios,parts,printed_flawed,averaged,true');
    expect(table.rows).toHaveLength(3);
  });

  test.each(table.rows)('%s', (_name, ratios, parts, printed, averaged, real) => {
    const weights = numbers(parts);
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const mean = numbers(ratios).reduce(
      (sum, ratio, index) => sum + (ratio * (weights[index] ?? 0)) / total,
      0,
    );
    expect(halfUnitsOff(mean, averaged ?? '')).toBeLessThanOrEqual(1);
    const mixed = mixCarbonToNitrogen(
      numbers(ratios).map((ratio, index) => share(ratio, weights[index] ?? 0)),
    );
    if (!mixed.ok) throw new Error(mixed.error.kind);
    expect(halfUnitsOff(mixed.value, real ?? '')).toBeLessThanOrEqual(1);
    // not the flawed answer, nor near it
    expect(mixed.value).toBeLessThan(Number(printed) * 0.8);
  });

  test('litter that may really be in a mixture of 30: 0.2041 of its weight', () => {
    const straw = partnerForRatio(share(7.5, 1), share(130, 0), 30);
    if (!straw.ok) throw new Error(straw.error.kind);
    expect(halfUnitsOff(1 / (1 + straw.value), '0.2041')).toBeLessThanOrEqual(1);
  });
});
