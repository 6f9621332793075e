import { describe, expect, test } from 'vitest';
import {
  mixCarbonToNitrogen,
  mixMoisture,
  partnerForMoisture,
  partnerForRatio,
  partnersForBoth,
  type Mixable,
} from '../../../app/core/cover/mix';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const goals = readCases(import.meta.dirname, 'both-goals.csv');
const printed = Object.fromEntries(table.rows) as Record<string, string>;

const clippings: Mixable = {
  moistureFraction: 0.77,
  carbonFraction: 0.45,
  nitrogenFraction: 0.024,
};
const leaves: Mixable = { moistureFraction: 0.35, carbonFraction: 0.5, nitrogenFraction: 0.0075 };
const ten = { ...clippings, freshKilograms: 10 };

const value = (result: { ok: true; value: number } | { ok: false; error: unknown }): number => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const agrees = (found: number, wanted: string | undefined): void =>
  expect(halfUnitsOff(found, wanted ?? 'missing')).toBeLessThanOrEqual(1);

describe('Richard & Trautmann: worked examples of mixing', () => {
  test('the whole tables are here', () => {
    expect(table.header).toBe('case,printed');
    expect(table.rows).toHaveLength(4);
    expect(goals.header).toBe('clippings_kg,ratio,water_fraction,leaves_kg,water_kg');
    expect(goals.rows).toHaveLength(2);
  });

  test('water of one material, by drying: the sample is its water and its dry rest', () => {
    const dryRest = 6.3 - 4;
    const water = { moistureFraction: 1, carbonFraction: 0, nitrogenFraction: 0 };
    const solid = { moistureFraction: 0, carbonFraction: 0.45, nitrogenFraction: 0.024 };
    const moisture = mixMoisture([
      { ...water, freshKilograms: 10 - dryRest },
      { ...solid, freshKilograms: dryRest },
    ]);
    agrees(value(moisture) * 100, printed['moisture-of-one_percent']);
  });

  test('leaves that bring ten kilograms of clippings to 30', () => {
    const kilograms = value(partnerForRatio(ten, leaves, 30));
    agrees(kilograms, printed['leaves-for-ratio_kg']);
    // unrounded, computed apart
    agrees(kilograms, '3.4741');
    agrees(value(mixCarbonToNitrogen([ten, { ...leaves, freshKilograms: kilograms }])), '30.0000');
  });

  test('water of that mixture, and its ratio where the water is right', () => {
    const mixed = [ten, { ...leaves, freshKilograms: 3.5 }];
    agrees(value(mixMoisture(mixed)) * 100, printed['water-at-3.5kg_percent']);
    const wetEnough = value(partnerForMoisture(ten, leaves, 0.6));
    agrees(wetEnough, '6.8');
    agrees(
      value(mixCarbonToNitrogen([ten, { ...leaves, freshKilograms: wetEnough }])),
      printed['ratio-at-60-percent-water'],
    );
  });

  test.each(goals.rows)(
    '%s kg to a ratio of %s at %s water',
    (kilograms, ratio, water, ...wanted) => {
      const grass = { moistureFraction: 0.82, carbonFraction: 0.442, nitrogenFraction: 0.034 };
      const dryLeaves = { moistureFraction: 0.38, carbonFraction: 0.456, nitrogenFraction: 0.0094 };
      const first = { ...grass, freshKilograms: Number(kilograms) };
      const partners = partnersForBoth(first, dryLeaves, Number(ratio), Number(water));
      if (!partners.ok) throw new Error(partners.error.kind);
      agrees(partners.value.secondKilograms, wanted[0]);
      agrees(partners.value.waterKilograms, wanted[1]);
    },
  );
});
