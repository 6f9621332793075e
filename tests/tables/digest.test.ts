import { describe, expect, test } from 'vitest';
import { climates } from '../../app/tables/climates';
import { cropRows, cropOf } from '../../app/tables/crops';
import { carbonBounds, carbonKindOf, materialOf, materialRows } from '../../app/tables/materials';
import type { CropRow, MaterialRow, Row } from '../../app/tables/shapes';
import { soils, type TextureName } from '../../app/tables/soils';
import digest from './digest.json';

/**
 * The digest holds the project's collected readings, [low, typical, high], every cell of them.
 * Where a row differs on purpose, `differs` names the cell and says why.
 */
type Three = readonly [number, number, number];
const threeOf = ({ low, typical, high }: Row): Three => [low, typical, high];

const differs = (table: string, id: string, cell: string): boolean =>
  digest.differs.some((one) => one.table === table && one.id === id && one.cell === cell);

const expectSame = (row: Row | null | undefined, wanted: unknown, where: string): void => {
  if (differs(...(where.split(' ') as [string, string, string]))) {
    expect(row && threeOf(row), where).not.toEqual(wanted);
  } else if (wanted === null) expect(row, where).toBeNull();
  else expect(row ? threeOf(row) : row, where).toEqual(wanted);
};

describe('rows are the numbers that were read', () => {
  test('crops', () => {
    expect(cropRows.map(({ id }) => id).sort()).toEqual(Object.keys(digest.crops).sort());
    for (const [id, cells] of Object.entries(digest.crops)) {
      for (const [key, wanted] of Object.entries(cells)) {
        expectSame(cropOf(id)?.[key as keyof CropRow] as Row | null, wanted, `crops ${id} ${key}`);
      }
    }
  });

  test('legumes fix what was read, and nothing else fixes', () => {
    for (const crop of cropRows) {
      const wanted = Object.entries(digest.legumes).find(([id]) => id === crop.id)?.[1] ?? null;
      expectSame(
        crop.legume?.usualPercentFixed ?? null,
        wanted,
        `legumes ${crop.id} usualPercentFixed`,
      );
      if (crop.legume) {
        expect(crop.legume.highPercentFixed.typical).toBe(crop.legume.usualPercentFixed.high);
      }
    }
  });

  test('crop coefficients and depletion shares, FAO-56 tables 12 and 22', () => {
    for (const crop of cropRows) {
      const wanted = Object.entries(digest.water).find(([id]) => id === crop.id)?.[1];
      const { start, middle, end } = crop.cropCoefficients;
      const found = [start, middle, end, crop.depletionShare];
      if (wanted) {
        expect(
          found.map(({ typical }) => typical),
          crop.id,
        ).toEqual(wanted);
        expect(found.every(({ standing }) => standing === 'read')).toBe(true);
      } else {
        expect(
          found.map(({ typical }) => typical),
          crop.id,
        ).toEqual([0.5, 1.05, 0.8, 0.45]);
        expect(found.every(({ standing }) => standing === 'assumed')).toBe(true);
      }
    }
  });

  test('materials', () => {
    for (const [id, cells] of Object.entries(digest.materials)) {
      for (const [key, wanted] of Object.entries(cells)) {
        expectSame(
          materialOf(id)?.[key as keyof MaterialRow] as Row,
          wanted,
          `materials ${id} ${key}`,
        );
      }
    }
    const own = materialRows.filter(({ id }) => !Object.hasOwn(digest.materials, id));
    expect(own.map(({ id }) => id).sort()).toEqual(['grass-first-rough-cut', 'grass-seed-headed']);
  });

  test('climates: yearly sums of the monthly values', () => {
    expect(climates).toHaveLength(44);
    for (const climate of climates) {
      const wanted = Object.entries(digest.climates).find(([id]) => id === climate.id)?.[1];
      const sum = (values: readonly number[]): number => values.reduce((one, two) => one + two, 0);
      expect(sum(climate.maximumCelsius), climate.id).toBeCloseTo(wanted?.maximum ?? NaN, 6);
      expect(sum(climate.minimumCelsius), climate.id).toBeCloseTo(wanted?.minimum ?? NaN, 6);
      expect(sum(climate.rainMillimetres), climate.id).toBeCloseTo(wanted?.rain ?? NaN, 6);
    }
  });

  test('soil water, FAO-56 table 19', () => {
    for (const [texture, [capacity, wilting]] of Object.entries(digest.soils)) {
      const { fieldCapacity, wiltingPoint } = soils[texture as TextureName];
      expect([fieldCapacity.low, fieldCapacity.high], texture).toEqual(capacity);
      expect([wiltingPoint.low, wiltingPoint.high], texture).toEqual(wilting);
    }
  });
});

describe('carbon', () => {
  test('of every material lies within what its kind can hold', () => {
    for (const material of materialRows) {
      const { low, high } = carbonBounds[carbonKindOf(material)];
      const carbon = material.nitrogenPercent.typical * material.carbonToNitrogen.typical;
      expect(carbon, material.id).toBeGreaterThanOrEqual(low);
      expect(carbon, material.id).toBeLessThanOrEqual(high);
    }
  });
});
