import { describe, expect, test } from 'vitest';
import { amountText, numberText } from '../../app/amounts/amountText';
import { metricUnits, unitsAnswering, unitsOf, usUnits } from '../../app/amounts/unitSystem';
import { readAmount } from '../../app/amounts/readAmount';
import { fromShown, toShown } from '../../app/core/shownUnit';
import { metricGarden } from './gardens';

describe('units on screen', () => {
  // a garden column: 2 lb N per 1000 ft2 as 9.8 g/m2; Rhode Island 1990-91: 111-260 kg/ha as 2.3-5.3 lb
  test.each([
    [usUnits.nitrogenPerArea, 9.8, '2.0'],
    [usUnits.nitrogenPerArea, 11.1, '2.3'],
    [usUnits.nitrogenPerArea, 26.0, '5.3'],
    [usUnits.depth, 6.35, '0.25'],
    [usUnits.temperature, 20, '68'],
    [usUnits.temperature, -40, '-40'],
    [usUnits.nitrogen, 77, '2.7'],
    [metricUnits.nitrogenPerArea, 9.8, '9.8'],
  ])('%o: %d is %s', (unit, inside, shown) => {
    const decimals = shown.split('.')[1]?.length ?? 0;
    expect(toShown(inside, unit).toFixed(decimals)).toBe(shown);
    expect(fromShown(toShown(inside, unit), unit)).toBeCloseTo(inside, 9);
  });

  test('an answer goes back in the unit that came in', () => {
    const typed = readAmount('1 1/2 bushels', 'mowing', metricGarden);
    const units = unitsAnswering('metric', typed.ok ? typed.value.unit : null);
    expect(units.volume.symbol).toBe('bushel');
    expect(units.mass.symbol).toBe('kg');
    const pounds = readAmount('13 lb', 'mowing', metricGarden);
    expect(unitsAnswering('metric', pounds.ok ? pounds.value.unit : null).mass.symbol).toBe('lb');
    expect(unitsAnswering('us', null)).toBe(unitsOf('us'));
  });

  test('fractions where a ruler has them', () => {
    expect(numberText(2.5, true)).toBe('2 1/2');
    expect(numberText(0.25, true)).toBe('1/4');
    expect(numberText(1 / 3, true)).toBe('1/3');
    expect(numberText(0.1, true)).toBe('0.1');
    expect(numberText(2.5, false)).toBe('2.5');
    expect(numberText(3, true)).toBe('3');
  });

  test('an amount of an unknown container has no text', () => {
    expect(
      amountText({ kind: 'containers', count: 2, containerId: 'gone' }, 'metric', []),
    ).toBeNull();
  });
});
