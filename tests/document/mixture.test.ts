import { describe, expect, test } from 'vitest';
import { mixtureOf, type MixturePart } from '../../app/document/mixture';
import { materialOf } from '../../app/tables/materials';
import { exampleGarden } from './exampleGarden';

const kilograms = (count: number): MixturePart['amount'] => ({
  text: `${String(count)} kg`,
  quantity: { kind: 'mass', kilograms: count },
  certainty: 'plain',
});
const grass: MixturePart = {
  materialId: 'grass-fresh-generic',
  wetness: 'dry',
  amount: kilograms(10),
};
const leaves: MixturePart = { materialId: 'leaves-maple', wetness: 'dry', amount: null };
const mixed = (parts: readonly MixturePart[], ratio: number | null, moisture: number | null) => {
  const result = mixtureOf(exampleGarden(), parts, { ratio, moisture });
  if (!result.ok) throw new Error(result.error.kind);
  return result.value;
};

describe('a mixture of materials of the tables', () => {
  test('is the sum of what its parts hold, divided last', () => {
    const { parts, blend } = mixed([grass, leaves], 30, null);
    const row = materialOf('grass-fresh-generic');
    const dry = 10 * (1 - (row?.moisturePercent.typical ?? NaN) / 100);
    expect(parts[0]?.dryKilograms).toBeCloseTo(dry, 9);
    expect(parts[0]?.nitrogenKilograms).toBeCloseTo(
      (dry * (row?.nitrogenPercent.typical ?? NaN)) / 100,
      9,
    );
    const sum = (of: 'carbonKilograms' | 'nitrogenKilograms') =>
      parts.reduce((total, part) => total + part[of], 0);
    expect(sum('carbonKilograms') / sum('nitrogenKilograms')).toBeCloseTo(30, 9);
    expect(blend.unmet).toEqual([]);
  });

  test('of soaked grass is wetter, and what is dry in it stays', () => {
    const damp = mixed([{ ...grass, amount: kilograms(10) }, leaves], 30, 0.5);
    const soaked = mixed([{ ...grass, wetness: 'soaked', amount: kilograms(10) }, leaves], 30, 0.5);
    const ofGrass = (mixture: typeof damp) => mixture.parts[0]?.dryKilograms ?? NaN;
    expect(ofGrass(soaked)).toBeLessThan(ofGrass(damp));
    expect(soaked.blend.unmet.some(({ kind }) => kind === 'too-wet')).toBe(true);
  });

  test('tells how far its ratio may be off, wider than nothing and around the likely one', () => {
    const { ratioRange, blend } = mixed([grass, leaves], 30, null);
    expect(ratioRange.low).toBeLessThan(blend.ratio);
    expect(ratioRange.high).toBeGreaterThan(blend.ratio);
    expect(mixed([grass, leaves], 30, null).ratioRange).toEqual(ratioRange);
  });

  test('a measured water narrows how far it may be off', () => {
    const garden = exampleGarden();
    const own = { id: 'own', name: 'My leaves', basedOn: 'leaves-maple' };
    const width = (moisturePercent: number | undefined): number => {
      const materials = [{ ...own, ...(moisturePercent === undefined ? {} : { moisturePercent }) }];
      const parts = [grass, { ...leaves, materialId: 'own', amount: kilograms(10) }];
      const made = mixtureOf({ ...garden, materials }, parts, { ratio: null, moisture: null });
      if (!made.ok) throw new Error(made.error.kind);
      return made.value.ratioRange.high / made.value.ratioRange.low;
    };
    const { typical, low, high } = materialOf('leaves-maple')!.moisturePercent;
    expect(high - low).toBeGreaterThan(0.3 * typical);
    expect(width(typical + 0.1)).toBeLessThan(width(undefined));
  });
});
