import { describe, expect, test } from 'vitest';
import { dayFromParts, monthOf } from '../../../app/core/days';
import { seasonWeather } from '../../../app/core/season/ahead';
import { runSeason } from '../../../app/core/season/season';
import { climateOf } from '../../../app/tables/climates';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { soils } from '../../../app/tables/soils';
import { bareBed } from './handMadeBed';

/**
 * Hall 1908, The Soil, chapter 3: over 35 years a little less than half of the rain drained through
 * the bare soil of Rothamsted's gauges, in winter months up to 80 per cent of it, in August little
 * more than 20. Heathrow's warmth stands in, with Rothamsted's 28 inches of rain (recalled), on a
 * clay loam; the gauges are 50 cm deep, our two layers 60.
 */
const years = 6;
const firstDay = dayFromParts(2001, 1, 1);
const lastDay = dayFromParts(2001 + years, 1, 1) - 1;
const heathrow = climateOf('heathrow')!;
const yearRain = 28 * 25.4;

function drained(bareCropCoefficient: number): (months: readonly number[]) => number {
  const rain = heathrow.rainMillimetres.reduce((sum, month) => sum + month, 0);
  const normals = {
    ...heathrow,
    rainMillimetres: heathrow.rainMillimetres.map((month) => (month * yearRain) / rain),
  };
  const { latitudeDegrees } = heathrow;
  const weather = seasonWeather(
    [],
    normals,
    firstDay,
    lastDay,
    firstDay - 1,
    1,
    typicalWeatherSpread(latitudeDegrees),
    false,
  );
  const bed = bareBed({
    firstDay,
    lastDay,
    latitudeDegrees,
    normals,
    weather,
    soil: {
      ...bareBed().soil,
      fieldCapacity: soils['clay loam'].fieldCapacity.typical,
      wiltingPoint: soils['clay loam'].wiltingPoint.typical,
    },
    coefficients: { ...typicalCoefficients(), bareCropCoefficient },
  });
  const result = runSeason(bed);
  return (months) => {
    let [fell, left] = [0, 0];
    // the first year only wets what was dry
    for (let index = 365; index < result.days; index++) {
      if (!months.includes(monthOf(firstDay + index))) continue;
      fell += result.rain[index]!;
      left += result.drainageLower[index]!;
    }
    return left / fell;
  };
}

const whole = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];

describe('what drains through bare soil, against the drain gauges of Rothamsted', () => {
  test('a little less than half of the rain of the years, most of it in winter and little in August', () => {
    const share = drained(typicalCoefficients().bareCropCoefficient);
    expect(share(whole)).toBeGreaterThan(0.44);
    expect(share(whole)).toBeLessThan(0.52);
    expect(share([12, 1, 2])).toBeGreaterThan(0.75);
    expect(share([8])).toBeLessThan(0.28);
    expect(share([8])).toBeGreaterThan(0.1);
  });

  test('ground that gives off 0.35 of ET0 when moist would let far too much through', () => {
    const share = drained(0.35);
    expect(share(whole)).toBeGreaterThan(0.6);
    expect(share([8])).toBeGreaterThan(0.35);
  });

  test('the more bare ground gives off, the less drains', () => {
    const shares = [0.2, 0.35, 0.6, 0.9, 1.15].map((value) => drained(value)(whole));
    for (let at = 1; at < shares.length; at++) expect(shares[at]!).toBeLessThan(shares[at - 1]!);
  });
});
