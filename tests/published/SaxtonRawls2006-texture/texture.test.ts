import { describe, expect, test } from 'vitest';
import { organicMatterLimit, saxtonRawls } from '../../../app/core/soil/pedotransfer';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const example = readCases(import.meta.dirname, 'read-example.csv');

describe('Saxton & Rawls (2006)', () => {
  test('the whole tables are here', () => {
    expect(table.rows).toHaveLength(12);
    expect(example.rows).toHaveLength(6);
  });

  test.each(table.rows)(
    '%s: the class table (recalled) to half a unit of its last digit',
    (...[, sand, clay, matter, wilting, capacity, saturation, density]) => {
      const soil = saxtonRawls({
        sand: Number(sand) / 100,
        clay: Number(clay) / 100,
        organicMatterPercent: Number(matter),
      });
      expect(halfUnitsOff(100 * soil.wiltingPoint, wilting!)).toBeLessThanOrEqual(1);
      expect(halfUnitsOff(100 * soil.fieldCapacity, capacity!)).toBeLessThanOrEqual(1);
      expect(halfUnitsOff(100 * soil.saturation, saturation!)).toBeLessThanOrEqual(1);
      expect(halfUnitsOff(soil.bulkDensityKgPerL, density!)).toBeLessThanOrEqual(1);
    },
  );

  const soil = saxtonRawls({ sand: 0.2, clay: 0.2, organicMatterPercent: 2.5 });
  const ours = new Map<string, number>([
    ['wilting_point', soil.wiltingPoint],
    ['field_capacity', soil.fieldCapacity],
    ['saturation', soil.saturation],
    ['wilting_point_percent', 100 * soil.wiltingPoint],
    ['field_capacity_percent', 100 * soil.fieldCapacity],
    ['saturation_percent', 100 * soil.saturation],
  ]);

  test.each(example.rows.filter(([, quantity]) => quantity !== 'wilting_point_percent'))(
    'sand 20 %%, clay 20 %%, organic matter 2.5 %%, %s: %s %s',
    (_, quantity, printed) => {
      expect(halfUnitsOff(ours.get(quantity!)!, printed!)).toBeLessThanOrEqual(1);
    },
  );

  test('the wilting point quoted as the paper’s is 0.15 points above the equations', () => {
    const quoted = example.rows.find(([, quantity]) => quantity === 'wilting_point_percent')!;
    expect(Number(quoted[2]) - ours.get('wilting_point_percent')!).toBeCloseTo(0.1455, 4);
  });

  test('beyond the organic matter of the soils it was fitted to it is held there', () => {
    const at = (organicMatterPercent: number) =>
      saxtonRawls({ sand: 0.4, clay: 0.2, organicMatterPercent });
    expect(at(20)).toEqual(at(organicMatterLimit));
    expect(at(organicMatterLimit).bulkDensityKgPerL).toBeLessThan(at(2.5).bulkDensityKgPerL);
  });
});
