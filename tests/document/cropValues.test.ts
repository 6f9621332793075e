import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runSeason } from '../../app/core/season/season';
import { bedQuestion } from '../../app/document/bedQuestion';
import { cropById } from '../../app/document/cropValues';
import { parseGarden } from '../../app/document/parse';
import type { Garden } from '../../app/document/schema';
import { sampleText } from '../../app/document/sampleGarden';
import { seasonSpread } from '../../app/document/seasonSpread';
import { serializeGarden } from '../../app/document/serialize';
import { cropOf } from '../../app/tables/crops';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(parsed.error.kind);
  return parsed.value;
};
const withOwn = (numbers: Partial<NonNullable<Garden['crops']>[number]>): Garden => {
  const garden = sample();
  return {
    ...garden,
    crops: [{ id: 'own-crop-1', name: 'Fathom sweet potato', basedOn: 'sweet_potato', ...numbers }],
    plantings: garden.plantings.map((planting) =>
      planting.cropId === 'sweet_potato' ? { ...planting, cropId: 'own-crop-1' } : planting,
    ),
  };
};
const bedId = sample().plantings.find(({ cropId }) => cropId === 'sweet_potato')?.bedId ?? '';
const demandOf = (garden: Garden): number =>
  runSeason(bedQuestion(garden, bedId, dayOf('2013-06-15')).input).plantings.reduce(
    (sum, one) => sum + one.demand,
    0,
  );

describe('a crop of one’s own', () => {
  test('with no numbers of its own is the row it rests on, by another name', () => {
    const garden = withOwn({});
    const row = cropOf('sweet_potato');
    const { id, tableId, name, ...rest } = cropById(garden, 'own-crop-1') ?? {};
    expect({ id, tableId, name }).toEqual({
      id: 'own-crop-1',
      tableId: 'sweet_potato',
      name: 'Fathom sweet potato',
    });
    expect({ ...rest, id: row?.id, name: row?.name }).toEqual(row);
    expect(demandOf(garden)).toBe(demandOf(sample()));
  });

  test('that takes up twice as much asks for twice as much', () => {
    const uptake = cropOf('sweet_potato')?.uptake.typical ?? NaN;
    const garden = withOwn({ uptakeGramsPerM2: 2 * uptake });
    expect(demandOf(garden) / demandOf(sample())).toBeCloseTo(2, 6);
  });

  test('is drawn with the narrow range of a measurement, under its own name', () => {
    const row = cropOf('sweet_potato')?.uptake;
    const width = (garden: Garden): number => {
      const need = Object.values(seasonSpread(garden, bedId).needs)[0];
      return (need?.high ?? NaN) / (need?.low ?? NaN);
    };
    expect(row && row.high / row.low).toBeGreaterThan(1.3);
    expect(width(withOwn({ uptakeGramsPerM2: row?.typical ?? 0 }))).toBe(width(sample()));
    expect(width(withOwn({ uptakeGramsPerM2: 1.5 * (row?.typical ?? 0) }))).toBeLessThan(
      width(sample()),
    );
  });

  test('is kept in the file, and refused where it rests on nothing', () => {
    const garden = withOwn({ usualDays: 100 });
    const again = parseGarden(serializeGarden(garden));
    expect(again.ok && again.value).toEqual(garden);
    const broken = { ...garden, crops: [{ id: 'own-crop-1', name: 'X', basedOn: 'no-such' }] };
    expect(parseGarden(serializeGarden(broken)).ok).toBe(false);
    const gone = { ...garden, crops: [] };
    expect(parseGarden(serializeGarden(gone)).ok).toBe(false);
  });

  test('is never picked after it is gone', () => {
    const early = cropById(withOwn({ usualDays: 30 }), 'own-crop-1');
    expect(early?.firstHarvestDays.typical).toBeLessThanOrEqual(30);
  });

  test('has each of its own numbers, and no other', () => {
    const numbers = {
      uptakeGramsPerM2: 11,
      goodYieldKilogramsPerM2: 2.3,
      firstHarvestDays: 77,
      usualDays: 140,
      rootDepthCentimetres: 66,
    };
    const crop = cropById(withOwn(numbers), 'own-crop-1')!;
    const { uptake, goodYield, firstHarvestDays, usualDays, rootDepthCentimetres } = crop;
    const own = [uptake, goodYield, firstHarvestDays, usualDays, rootDepthCentimetres];
    expect(own.map(({ typical }) => typical)).toEqual(Object.values(numbers));
    expect(new Set(own.map(({ standing }) => standing))).toEqual(new Set(['measured']));
    expect(crop.baseCelsius).toBe(cropOf('sweet_potato')?.baseCelsius);
  });

  test('calls nothing measured that nobody typed', () => {
    const standing = (numbers: Parameters<typeof withOwn>[0]) =>
      cropById(withOwn(numbers), 'own-crop-1')?.firstHarvestDays.standing;
    const row = cropOf('sweet_potato');
    expect(standing({})).toBe(row?.firstHarvestDays.standing);
    expect(standing({ usualDays: 30 })).toBe(row?.firstHarvestDays.standing);
    expect(standing({ firstHarvestDays: 71 })).toBe('measured');
  });
});
