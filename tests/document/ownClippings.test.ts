import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { mowingMass } from '../../app/document/accounts';
import { bedQuestion } from '../../app/document/bedQuestion';
import { lawnOutlook } from '../../app/document/lawnOutlook';
import { clippingsOf } from '../../app/document/materialValues';
import { mowingHolds } from '../../app/document/mowingHolds';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden, OwnMaterial } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import { lawnMaterials } from '../../app/tables/lawns';
import { materialOf } from '../../app/tables/materials';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(parsed.error.kind);
  return parsed.value;
};
const today = dayOf('2013-06-15');
const before = sample();
const lawn = before.lawns[0]!;
const mowing = before.mowings.find(
  ({ id, lawnId }) =>
    lawnId === lawn.id &&
    before.applications.some(({ from }) => from.source === 'mowing' && from.mowingId === id),
)!;
const usual = clippingsOf(before, mowing);
const nitrogenPercent = 2 * usual.nitrogen * 100;
const own: OwnMaterial = {
  id: 'own-1',
  name: 'My clippings',
  basedOn: usual.row.id,
  nitrogenPercent,
};

const counted = (numbers: Partial<OwnMaterial> = {}, ownClippings = [own.id]): Garden => ({
  ...before,
  materials: [{ ...own, ...numbers }],
  lawns: before.lawns.map((one) => (one.id === lawn.id ? { ...one, ownClippings } : one)),
});

describe('clippings counted by a row of one’s own', () => {
  test('hold what was measured; what was not is the table’s', () => {
    const values = clippingsOf(counted(), mowing);
    expect(values).toMatchObject({ id: 'own-1', name: 'My clippings', moisture: usual.moisture });
    expect(values.nitrogen).toBeCloseTo(2 * usual.nitrogen, 12);
    expect(values.row.id).toBe(usual.row.id);
    expect(values.row.nitrogenPercent.standing).toBe('measured');
    expect(values.row.moisturePercent).toBe(usual.row.moisturePercent);
  });

  test('in the books of the mowing, in its figures and their ranges', () => {
    const grams = (garden: Garden): number => mowingMass(garden, mowing).nitrogenGrams;
    expect(grams(counted()) / grams(before)).toBeCloseTo(2, 9);
    const holds = mowingHolds(counted(), mowing).nitrogenGrams;
    const held = mowingHolds(before, mowing).nitrogenGrams;
    expect(holds.typical / held.typical).toBeCloseTo(2, 1);
    expect(holds.high / holds.low).toBeLessThan(held.high / held.low);
    expect(
      mowingHolds(counted(), mowing).ingredients.find(({ name }) => name === 'nitrogen'),
    ).toMatchObject({ row: { typical: expect.closeTo(nitrogenPercent, 9) as number } });
  });

  test('in what the lawn should give next and in what was carried off it', () => {
    const [was, is] = [before, counted()].map((garden) =>
      lawnOutlook(garden, lawn.id, today + 7, today),
    );
    expect(is!.kind).toBe(was!.kind);
    const factor = lawnMaterials[was!.kind] === own.basedOn ? 2 : 1;
    expect(is!.nitrogenGrams.typical / was!.nitrogenGrams.typical).toBeCloseTo(factor, 6);
    expect(is!.taken.nitrogen.typical).toBeGreaterThan(1.2 * was!.taken.nitrogen.typical);
    expect(is!.dryKilograms.typical).toBeCloseTo(was!.dryKilograms.typical, 9);
  });

  test('in the layers of a bed, also of a garden that was reckoned before', () => {
    const bedId = before.applications.find(
      ({ from }) => from.source === 'mowing' && from.mowingId === mowing.id,
    )!.bedId;
    const nitrogen = (garden: Garden): number =>
      bedQuestion(garden, bedId, today).input.layers.reduce((sum, one) => sum + one.nitrogen, 0);
    const first = nitrogen(before);
    expect(nitrogen(counted())).toBeGreaterThan(1.1 * first);
    expect(nitrogen(counted({ nitrogenPercent: usual.nitrogen * 100 }))).toBeCloseTo(first, 9);
    expect(nitrogen(before)).toBe(first);
  });

  test('only where they count as what the row rests on, and only of that lawn', () => {
    const other = { ...mowing, kind: 'first rough cut' as const };
    expect(clippingsOf(counted(), other).id).toBe(lawnMaterials['first rough cut']);
    const elsewhere = before.lawns.find(({ id }) => id !== lawn.id)!;
    const there = { ...mowing, lawnId: elsewhere.id, kind: 'ordinary' as const };
    expect(clippingsOf(counted(), there).id).toBe(lawnMaterials.ordinary);
    expect(clippingsOf(counted({ basedOn: 'straw-wheat' }), mowing).id).toBe(usual.id);
  });

  test('are kept in the file, and refused where there is no such row', () => {
    const garden = counted();
    const again = parseGarden(serializeGarden(garden));
    expect(again.ok && again.value).toEqual(garden);
    expect(parseGarden(serializeGarden(counted({}, ['own-9']))).ok).toBe(false);
    expect(materialOf(own.basedOn)).toBeDefined();
  });
});
