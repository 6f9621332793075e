import { describe, expect, test } from 'vitest';
import type { SingleMeasure } from '../../../app/amounts/measureText';
import { readMeasure } from '../../../app/amounts/readMeasure';
import { usUnits } from '../../../app/amounts/unitSystem';
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  gramsPerM2PerCentimetrePerPoundPerAcreInch,
  gramsPerM2PerPoundPer1000SquareFeet,
  kilogramsPerM3PerPoundPerCubicYard,
  litresPerBushel,
  millimetresPerInch,
} from '../../../app/core/conversions';
import { fromShown, toShown } from '../../../app/core/shownUnit';
import { halfUnitsOff, readCases } from '../readCases';

const definitions = readCases(import.meta.dirname, 'definitions.csv');
const table = readCases(import.meta.dirname);
const context = { units: 'metric', containers: [] } as const;

const ways: Readonly<Record<string, (value: number) => number>> = {
  'lb/yd3 kg/m3': (value) => value * kilogramsPerM3PerPoundPerCubicYard,
  'g/m2 lb/1000ft2': (value) => toShown(value, usUnits.nitrogenPerArea),
  'lb/1000ft2 g/m2': (value) => value * gramsPerM2PerPoundPer1000SquareFeet,
  'lb/acre/in g/m2/cm': (value) => value * gramsPerM2PerCentimetrePerPoundPerAcreInch,
  'kg/ha g/m2': (value) => (value * 1000) / 10_000,
  'in mm': (value) => value * millimetresPerInch,
  'bushel L': (value) => value * litresPerBushel,
  'F C': (value) => fromShown(value, usUnits.temperature),
};

describe('units by definition, as they are typed', () => {
  test('no row of it is missing', () => {
    expect(definitions.header).toBe('typed,field,inside');
    expect(definitions.rows).toHaveLength(22);
  });

  test.each(definitions.rows)('%s (%s) is %s', (typed = '', field, inside = '') => {
    const reading = readMeasure(typed, field as SingleMeasure, context);
    if (!reading.ok) throw new Error(reading.error.kind);
    const wanted = Number(inside);
    expect(Math.abs(reading.value.value - wanted)).toBeLessThanOrEqual(1e-11 * Math.abs(wanted));
  });
});

describe('conversions as sources print them', () => {
  test('no row of it is missing, and each way is used', () => {
    expect(table.header).toBe('from,value,to,printed');
    expect(table.rows).toHaveLength(32);
    const used = new Set(table.rows.map(([from, , to]) => `${from} ${to}`));
    expect([...used].sort()).toEqual(Object.keys(ways).sort());
  });

  test.each(table.rows)('%s %s is in %s %s', (from, value, to, printed = '') => {
    const way = ways[`${from} ${to}`];
    expect(halfUnitsOff(way?.(Number(value)) ?? NaN, printed)).toBeLessThanOrEqual(1);
  });

  test('Celsius and Fahrenheit go there and back', () => {
    for (const celsius of [-40, -17.8, 0, 15, 37.5])
      expect(celsiusFromFahrenheit(fahrenheitFromCelsius(celsius))).toBeCloseTo(celsius, 12);
  });
});
