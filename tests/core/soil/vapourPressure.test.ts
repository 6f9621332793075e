import { describe, expect, test } from 'vitest';
import { vapourPressure, type MeasuredDay } from '../../../app/core/soil/penmanMonteith';

/*
 * Allen et al. 1998 (FAO-56), Table 2.3: saturation vapour pressure is 2.064 kPa at 18 C and 3.168
 * at 25 C, and 1.228 at 10 C.
 */
const day = (humidity: MeasuredDay['humidity']): MeasuredDay => ({
  minimumCelsius: 18,
  maximumCelsius: 25,
  latitudeDegrees: 0,
  dayOfYear: 1,
  elevationMetres: 0,
  humidity,
  wind: null,
  sun: null,
});

describe('vapour pressure by what was measured of the air', () => {
  test('mean relative humidity: its share of the mean of both saturation pressures (eq. 19)', () => {
    const of = (percent: number): number => vapourPressure(day({ kind: 'mean relative', percent }));
    expect(of(100)).toBeCloseTo((2.064 + 3.168) / 2, 3);
    expect(of(68)).toBeCloseTo(0.68 * 2.616, 3);
    expect(of(34)).toBeCloseTo(of(68) / 2, 12);
  });

  // Example 5 of FAO-56: 18 C at 82 % and 25 C at 54 % make 1.70 kPa.
  test('highest and lowest humidity: the printed example of 1.70 kPa (eq. 17)', () => {
    const humidity = { kind: 'relative', highestPercent: 82, lowestPercent: 54 } as const;
    expect(vapourPressure(day(humidity))).toBeCloseTo(1.7, 2);
  });

  test('dew point and vapour pressure are taken as they are; without any, the coldest moment', () => {
    expect(vapourPressure(day({ kind: 'dew point', celsius: 10 }))).toBeCloseTo(1.228, 3);
    expect(vapourPressure(day({ kind: 'vapour pressure', kilopascals: 1.3 }))).toBe(1.3);
    expect(vapourPressure(day(null))).toBeCloseTo(2.064, 3);
  });
});
