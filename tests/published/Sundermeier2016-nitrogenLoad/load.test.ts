import { describe, expect, test } from 'vitest';
import { readAmount } from '../../../app/amounts/readAmount';
import { kilogramsPerPound } from '../../../app/core/conversions';
import { likelyLot } from '../../../app/core/lawn/clippings';
import { exact, ordinary } from '../../core/lawn/lots';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);

describe('Sundermeier (2016) Table 1: nitrogen of manures and composts', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe(
      'nitrogen_percent_as_is,tons_per_acre,pounds_per_ton,pounds_per_acre',
    );
    expect(table.rows).toHaveLength(8);
  });

  test.each(table.rows)('%s %, %s tons an acre', (percent, tons, perTon = '', perAcre = '') => {
    const poundsOf = (typed: string): number => {
      const reading = readAmount(typed, 'stock', { units: 'us', containers: [] });
      if (!reading.ok) throw new Error(reading.error.kind);
      const lot = likelyLot({
        ...ordinary,
        quantity: reading.value.amount.quantity,
        // as-is contents: no water is taken off
        moistureNowPercent: exact(0),
        stuff: { ...ordinary.stuff, nitrogenPercent: exact(Number(percent)) },
      });
      return lot.nitrogenGrams / 1000 / kilogramsPerPound;
    };
    const isRoundedBefore = percent === '0.96';
    expect(halfUnitsOff(poundsOf('1 short ton'), perTon)).toBeLessThanOrEqual(
      isRoundedBefore ? 2 : 1,
    );
    expect(halfUnitsOff(poundsOf(`${tons} short tons`), perAcre)).toBeLessThanOrEqual(
      isRoundedBefore ? 8 : 1,
    );
  });
});
