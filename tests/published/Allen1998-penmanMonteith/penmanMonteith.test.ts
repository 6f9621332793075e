import { describe, expect, test } from 'vitest';
import { hargreavesReferenceEvapotranspiration } from '../../../app/core/soil/evapotranspiration';
import {
  type MeasuredDay,
  penmanMonteith,
  radiationOfDay,
} from '../../../app/core/soil/penmanMonteith';
import { likelyGaps } from '../../../app/tables/weatherGaps';
import { halfUnitsOff, readCases } from '../readCases';
import { oursOf } from './ours';

const table = readCases(import.meta.dirname);
const gaps = likelyGaps('inland');

describe('FAO Irrigation and Drainage Paper 56 (1998), worked examples of equation 6 and what leads to it', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('example,page,quantity,printed,read,within');
    expect(table.rows).toHaveLength(49);
    expect(table.rows.filter(([, , , , read]) => read === 'read')).toHaveLength(42);
  });

  test.each(table.rows)('Example %s (page %s), %s: %s (%s, to its %s)', (...row) => {
    const [example = '', , quantity = '', printed = '', , within] = row;
    // one unit of the last digit only where the reading of the paper found the print rounded so
    const allowed = within === 'unit' ? 2 : 1;
    expect(halfUnitsOff(oursOf(example, quantity), printed)).toBeLessThanOrEqual(allowed);
  });
});

describe('what holds on any day', () => {
  const summer: MeasuredDay = {
    minimumCelsius: 14,
    maximumCelsius: 26,
    latitudeDegrees: 41,
    dayOfYear: 200,
    elevationMetres: 40,
    humidity: null,
    wind: null,
    sun: null,
  };

  test('with temperatures alone it lies near the equation for temperatures alone', () => {
    const other = hargreavesReferenceEvapotranspiration(14, 26, 41, 200);
    expect(Math.abs(penmanMonteith(summer, gaps) / other - 1)).toBeLessThan(0.2);
  });

  test('damper air takes less, more wind in dry air takes more', () => {
    const dry: MeasuredDay = { ...summer, humidity: { kind: 'mean relative', percent: 35 } };
    const damp: MeasuredDay = { ...summer, humidity: { kind: 'mean relative', percent: 85 } };
    expect(penmanMonteith(damp, gaps)).toBeLessThan(penmanMonteith(dry, gaps));
    expect(penmanMonteith(dry, { ...gaps, wind: 4 })).toBeGreaterThan(penmanMonteith(dry, gaps));
  });

  test('a dew point and its vapour pressure give one answer', () => {
    const point: MeasuredDay = { ...summer, humidity: { kind: 'dew point', celsius: 14 } };
    expect(penmanMonteith(point, gaps)).toBe(penmanMonteith(summer, gaps));
  });

  test('polar night and day stay finite and never below nought', () => {
    for (const dayOfYear of [1, 172, 355]) {
      for (const latitudeDegrees of [-85, 85]) {
        const cold: MeasuredDay = {
          ...summer,
          latitudeDegrees,
          dayOfYear,
          minimumCelsius: -30,
          maximumCelsius: -20,
          sun: { kind: 'hours', hours: 0 },
        };
        const answer = penmanMonteith(cold, gaps);
        expect(Number.isFinite(answer)).toBe(true);
        expect(answer).toBeGreaterThanOrEqual(0);
        expect(radiationOfDay(cold, gaps).solar).toBeGreaterThanOrEqual(0);
      }
    }
  });
});
