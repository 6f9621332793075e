import { describe, expect, test } from 'vitest';
import { metricUnits, usUnits } from '../../app/amounts/unitSystem';
import { placeOn, rangeGeometry, scaleOf } from '../../app/charts/range/geometry';
import {
  cropColumns,
  cropNumbers,
  materialColumns,
  materialNumbers,
} from '../../app/screens/tables/tableColumns';
import { foundGroups } from '../../app/screens/tables/foundGroups';
import { cropRows } from '../../app/tables/crops';
import { materialRows } from '../../app/tables/materials';
import { otherNames } from '../../app/words/otherNames';
import { rowInUnits } from '../../app/words/rowInUnits';
import { foundWords, inTableWords, isEstimate, standingMark } from '../../app/words/tableWords';

describe('the place Tables', () => {
  describe('is searched', () => {
    const line = (name: string, tableId = name) => ({ id: name, name, tableId, line: null });
    const groups = [
      { name: 'Your own', lines: [line('Crème brûlée beans', 'dry_bean'), line('Моя солома')] },
      { name: 'Greens', also: ['greens'], lines: [line('Clippings, seed-headed', 'grass-seed')] },
      { name: 'The rest', lines: [line('Zucchini', 'zucchini'), line('Wheat straw')] },
    ];
    const found = (typed: string): readonly string[] =>
      foundGroups(groups, typed).left.flatMap(({ lines }) => lines.map(({ name }) => name));

    test.each([
      ['cl se', ['Clippings, seed-headed']],
      ['HEAD', ['Clippings, seed-headed']],
      ['raw', []],
      ['creme bru', ['Crème brûlée beans']],
      ['CRÈME', ['Crème brûlée beans']],
      ['солома', ['Моя солома']],
      // by what it is called elsewhere, by what it counts as, and with a slip of the finger
      ['Courgette', ['Zucchini']],
      ['grass', ['Clippings, seed-headed']],
      ['greens', ['Clippings, seed-headed']],
      ['clipings', ['Clippings, seed-headed']],
      ['wheat hedgehog', []],
    ])('“%s” finds %j', (typed, names) => expect(found(typed)).toEqual(names));

    test('nothing typed, or nothing but blanks and marks, leaves all', () => {
      for (const typed of ['', '  ', ' – ']) expect(found(typed)).toHaveLength(5);
      expect(foundGroups([{ name: 'Your own', lines: [] }, ...groups], '').left).toHaveLength(3);
    });

    test('what only comes near is said to', () => {
      expect(foundGroups(groups, 'strow').isNear).toBe(true);
      expect(foundGroups(groups, 'straw').isNear).toBe(false);
      expect(foundWords(1, 5, 'materials', true)).toContain('come near');
      expect(foundWords(0, 5, 'materials', true)).toMatch(/^None of 5/);
      expect(foundWords(5, 5, 'materials', false)).toBe('5 materials');
    });

    test('every other name belongs to a row there is', () => {
      const rows = [...materialRows, ...cropRows].map(({ id }) => id as string);
      expect(Object.keys(otherNames).filter((id) => !rows.includes(id))).toEqual([]);
    });
  });

  test('what is recalled or estimated, and nothing else, is an estimate and says so', () => {
    const all = Object.keys(standingMark) as (keyof typeof standingMark)[];
    expect(all.filter(isEstimate)).toEqual(['mixed', 'memory', 'assumed']);
    expect(all.filter((one) => isEstimate(one) && standingMark[one] === '')).toEqual([]);
    expect(inTableWords('80 %', 'memory')).toBe('The table’s: 80 %, recalled');
    expect(inTableWords('80 %', 'read')).toBe('The table’s: 80 %');
  });

  test('every range of a column lies on the column’s scale, in its order', () => {
    const all = [
      ...materialColumns.flatMap((column) =>
        materialRows.map((line) => ({ row: column.of(line), scale: column.scale })),
      ),
      ...[metricUnits, usUnits]
        .flatMap(cropColumns)
        .flatMap((column) =>
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

  test('in US units a crop’s numbers are the same numbers, turned', () => {
    const told = (unit: string, value: number) => {
      const { typical, unit: shown } = rowInUnits(
        { low: value, typical: value, high: value, unit },
        usUnits,
      );
      return [Number(typical.toPrecision(4)), shown];
    };
    // by definition: 453.59237 g, 25.4 mm, 0.3048 m, 9/5 of a degree and 32
    expect(told('g N per m2', 4.8824)).toEqual([1, 'lb/1,000 sq ft of nitrogen']);
    expect(told('kg fresh per m2', 4.8824)).toEqual([1, 'lb per sq ft, fresh']);
    expect(told('cm', 30.48)).toEqual([12, 'in']);
    expect(told('deg C', 10)).toEqual([50, '°F']);
    expect(told('kg fresh per m3', 160.2)).toEqual([10, 'lb per cu ft']);
    expect(told('kg dry matter per m3', 16.02)).toEqual([1, 'lb of dry matter per cu ft']);
    expect(told('days', 60)).toEqual([60, 'days']);
    const row = cropRows[0]!.uptake;
    expect(rowInUnits(row, metricUnits)).toBe(row);
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
