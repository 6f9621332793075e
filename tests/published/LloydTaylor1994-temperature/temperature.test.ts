import { describe, expect, test } from 'vitest';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);
const compared = table.rows.filter(([celsius]) => Number(celsius) >= 1);
/** The table took 273 for 273.15: its temperature is ours plus this. */
const shift = 0.15;

describe('Lloyd & Taylor (1994), computed to three digits', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe('celsius,scaled_to_10,scaled_to_15');
    expect(table.rows.map(([celsius]) => Number(celsius))).toEqual([0, 5, 10, 15, 20, 25, 30, 35]);
    expect(compared).toHaveLength(7);
  });

  test.each(compared)('%s C: %s scaled to 10, %s scaled to 15', (text, at10, at15) => {
    const celsius = Number(text);
    const shifted = temperatureFactor(celsius - shift);
    expect(halfUnitsOff(shifted / temperatureFactor(10), at10!)).toBeLessThanOrEqual(1);
    expect(halfUnitsOff(shifted / temperatureFactor(15 - shift), at15!)).toBeLessThanOrEqual(1);
    expect(Math.abs(temperatureFactor(celsius) / Number(at15) - 1)).toBeLessThan(0.006);
  });

  test('1 at 15 C', () => expect(temperatureFactor(15)).toBe(1));

  test('from 1 C a straight line to nothing at -1 C', () => {
    const atOne = Math.exp(308.56 * (1 / (15 + 46.02) - 1 / (1 + 46.02)));
    expect(temperatureFactor(1)).toBeCloseTo(atOne, 12);
    expect(temperatureFactor(1 - 1e-9)).toBeCloseTo(atOne, 8);
    expect(temperatureFactor(0)).toBeCloseTo(atOne / 2, 12);
    expect(temperatureFactor(-1)).toBe(0);
    expect(temperatureFactor(-40)).toBe(0);
  });
});
