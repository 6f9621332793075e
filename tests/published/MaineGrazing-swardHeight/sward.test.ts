import { describe, expect, test } from 'vitest';
import { readAmount } from '../../../app/amounts/readAmount';
import {
  gramsPerM2PerCentimetrePerPoundPerAcreInch,
  kilogramsPerPound,
} from '../../../app/core/conversions';
import { likelyLot } from '../../../app/core/lawn/clippings';
import { exact, ordinary } from '../../core/lawn/lots';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);

describe('University of Maine: dry matter by height taken off', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('inches_off,pounds_per_acre_inch,pounds_per_acre,grams_per_m2_cm');
    expect(table.rows).toHaveLength(2);
  });

  test.each(table.rows)('%s in at %s lb', (inches, perInch, perAcre = '', perCentimetre = '') => {
    const ours = Number(perInch) * gramsPerM2PerCentimetrePerPoundPerAcreInch;
    expect(halfUnitsOff(ours, perCentimetre)).toBeLessThanOrEqual(1);
    const reading = readAmount(`1 acre, ${inches} in off`, 'mowing', {
      units: 'us',
      containers: [],
    });
    if (!reading.ok) throw new Error(reading.error.kind);
    const lot = likelyLot({
      ...ordinary,
      quantity: reading.value.amount.quantity,
      dryMassPerCentimetre: exact(ours),
    });
    expect(halfUnitsOff(lot.dryKilograms / kilogramsPerPound, perAcre)).toBeLessThanOrEqual(1);
  });
});
