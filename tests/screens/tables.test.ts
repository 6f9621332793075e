import { describe, expect, test } from 'vitest';
import { placeOn, rangeGeometry, scaleOf } from '../../app/charts/range/geometry';
import {
  cropColumns,
  cropNumbers,
  materialColumns,
  materialNumbers,
} from '../../app/screens/tables/tableColumns';
import { matches } from '../../app/screens/tables/SearchField';
import { cropRows } from '../../app/tables/crops';
import { materialRows } from '../../app/tables/materials';
import { isEstimate, standingMark } from '../../app/words/tableWords';

describe('the place Tables', () => {
  test('finds a name by the beginnings of its words, accents and case aside', () => {
    expect(matches('Clippings, seed-headed', 'cl se')).toBe(true);
    expect(matches('Clippings, seed-headed', 'HEAD')).toBe(true);
    expect(matches('Clippings, seed-headed', 'eaded')).toBe(false);
    expect(matches('Crème brûlée beans', 'creme bru')).toBe(true);
    expect(matches('Anything', '')).toBe(true);
  });

  test('every range of a column lies on the column’s scale, in its order', () => {
    const all = [
      ...materialColumns.flatMap((column) =>
        materialRows.map((line) => ({ row: column.of(line), scale: column.scale })),
      ),
      ...cropColumns.flatMap((column) =>
        cropRows.map((line) => ({ row: column.of(line), scale: column.scale })),
      ),
    ];
    expect(all.length).toBeGreaterThan(3 * 100);
    for (const { row, scale } of all) {
      const { low, typical, high } = rangeGeometry(row, scale, 100, 0);
      expect(low).toBeLessThanOrEqual(typical);
      expect(typical).toBeLessThanOrEqual(high);
      const places = [row.low, row.high].map((value) => placeOn(value, scale));
      if (row.high > row.low) expect(places[1]).toBeGreaterThan(places[0] ?? NaN);
    }
  });

  test('equal factors are equal steps where a scale goes by factors', () => {
    const scale = scaleOf([{ low: 10, typical: 20, high: 1000 }], true);
    const step = placeOn(100, scale) - placeOn(10, scale);
    expect(placeOn(1000, scale) - placeOn(100, scale)).toBeCloseTo(step, 12);
  });

  test('every number of every row is shown, and says so where nobody read it', () => {
    const cells = (row: object): number =>
      Object.values(row).filter(
        (value: unknown) => typeof value === 'object' && value !== null && 'standing' in value,
      ).length;
    // besides what a row holds, its phosphorus and potassium
    for (const row of materialRows) expect(materialNumbers(row)).toHaveLength(cells(row) + 2);
    for (const row of cropRows) {
      // within: three coefficients and, of legumes, five
      const shown = cropNumbers(row);
      const own = cells(row) - (row.stageSharesSource ? 1 : 0);
      expect(shown.length).toBe(own + 3 + (row.legume ? 5 : 0));
      for (const { row: number } of shown)
        if (isEstimate(number.standing)) expect(standingMark[number.standing]).not.toBe('');
    }
  });
});
