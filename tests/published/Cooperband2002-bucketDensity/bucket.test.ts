import { describe, expect, test } from 'vitest';
import { likelyLot } from '../../../app/core/lawn/clippings';
import { exact, ordinary } from '../../core/lawn/lots';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);

describe('Zabaleta, after Cooperband (2002): density by bucket', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('empty_kg,full_kg,litres,kg_per_litre');
    expect(table.rows).toHaveLength(1);
  });

  test.each(table.rows)('%s kg empty, %s kg full, %s L', (empty, full, litres, printed = '') => {
    const weighed = {
      litres: Number(litres),
      kilograms: Number(full) - Number(empty),
      outsideWater: exact(0),
    };
    const lot = likelyLot({ ...ordinary, weighed, quantity: { kind: 'volume', litres: 1 } });
    expect(halfUnitsOff(lot.freshKilograms, printed)).toBeLessThanOrEqual(1);
  });
});
