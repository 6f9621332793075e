import { describe, expect, test } from 'vitest';
import { dayFromParts } from '../../../app/core/days';
import {
  imaginedClimate,
  imaginedMonth,
  imaginedMonthOf,
  innovations,
  innovationsBefore,
  type WeatherSpread,
} from '../../../app/core/season/imagine';
import type { MonthlyNormals } from '../../../app/core/season/input';
import { daysInMonth, monthlyKnots, smoothNormal } from '../../../app/core/season/smoothNormals';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { newYorkNormals } from './handMadeBed';

/* The equations of imagined weather, worked a second time from how the docstrings write them. */

const spread = typicalWeatherSpread(40.8);
const climate = imaginedClimate(newYorkNormals, spread);
const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, one) => sum + one, 0) / values.length;

describe('the mean of a Weibull draw is a gamma function', () => {
  // 0! = 1, 2! = 2, 3! = 6, 9! = 362 880, and the square root of pi over 2: any table
  test.each([
    [1, 1],
    [0.5, 2],
    [1 / 3, 6],
    [1 / 9, 362_880],
    [2, Math.sqrt(Math.PI) / 2],
  ])('shape %d', (amountShape, printed) => {
    const { meanDraw } = imaginedClimate(newYorkNormals, { ...spread, amountShape });
    expect(meanDraw / printed).toBeCloseTo(1, 9);
  });
});

describe('the raw numbers of a month', () => {
  test('one a day for each temperature, standard normal, together as the row says', () => {
    const low: number[] = [];
    const high: number[] = [];
    for (let year = 1900; year < 2000; year++)
      for (const month of [2, 7]) {
        const made = innovations(climate, 5, year, month);
        expect(made.low).toHaveLength(daysInMonth(year, month));
        low.push(...made.low);
        high.push(...made.high);
      }
    // 5 925 numbers: a standard error of 0.013
    for (const values of [low, high]) {
      expect(Math.abs(mean(values))).toBeLessThan(0.05);
      expect(Math.abs(mean(values.map((one) => one * one)) - 1)).toBeLessThan(0.08);
    }
    const both = mean(low.map((one, at) => one * high[at]!));
    expect(Math.abs(both - spread.togetherness)).toBeLessThan(0.05);
  });

  test('January follows the December before', () => {
    expect(innovationsBefore(climate, 5, 2014, 1)).toEqual(innovations(climate, 5, 2013, 12));
    expect(innovationsBefore(climate, 5, 2014, 12)).toEqual(innovations(climate, 5, 2014, 11));
    expect(innovationsBefore(climate, 5, 2014, 2)).toEqual(innovations(climate, 5, 2014, 1));
  });
});

/** a[t] = sqrt(1 - p^2) x sum of p^k e[t-k], over the thirty days up to each. */
function departures(before: Float64Array, own: Float64Array): number[] {
  const p = spread.persistence;
  const all = [...before, ...own];
  return Array.from(own, (_, day) => {
    let sum = 0;
    for (let k = 0; k < 30; k++) sum += p ** k * (all[before.length + day - k] ?? 0);
    return Math.sqrt(1 - p * p) * sum;
  });
}

describe.each([
  [2014, 1],
  [2012, 3],
  [2013, 7],
  [2013, 10],
] as const)('temperatures of %i, month %i', (year, month) => {
  const days = daysInMonth(year, month);
  const before = innovationsBefore(climate, 9, year, month);
  const own = innovations(climate, 9, year, month);
  const usual = (values: readonly number[], day: number): number =>
    smoothNormal(monthlyKnots(values), dayFromParts(year, month, day + 1));
  const low = departures(before.low, own.low);
  const high = departures(before.high, own.high);
  const lowSpread = spread.minimumSpreadCelsius[month - 1]!;
  const highSpread = spread.maximumSpreadCelsius[month - 1]!;

  const asWritten = (lows: readonly number[], highs: readonly number[], day: number) => {
    const lowest = usual(newYorkNormals.minimumCelsius, day) + lowSpread * lows[day]!;
    const highest = usual(newYorkNormals.maximumCelsius, day) + highSpread * highs[day]!;
    const middle = (lowest + highest) / 2;
    const half = Math.max(0.5, highest - lowest) / 2;
    return [middle - half, middle + half] as const;
  };

  test('of a draw: the usual value and the departure in standard deviations', () => {
    const made = imaginedMonth(newYorkNormals, spread, 9, year, month, false);
    for (let day = 0; day < days; day++) {
      const [lowest, highest] = asWritten(low, high, day);
      expect(made.minimumCelsius[day]).toBeCloseTo(lowest, 6);
      expect(made.maximumCelsius[day]).toBeCloseTo(highest, 6);
    }
  });

  test('of the typical run: departures about their mean, as wide as if it had not been taken off', () => {
    const p = spread.persistence;
    const centred = (values: readonly number[]): number[] => {
      const widening = 1 / Math.sqrt(1 - (1 + p) / (1 - p) / days);
      return values.map((value) => (value - mean(values)) * widening);
    };
    const made = imaginedMonth(newYorkNormals, spread, 9, year, month);
    for (let day = 0; day < days; day++) {
      const [lowest, highest] = asWritten(centred(low), centred(high), day);
      expect(made.minimumCelsius[day]).toBeCloseTo(lowest, 6);
      expect(made.maximumCelsius[day]).toBeCloseTo(highest, 6);
    }
  });

  test('at hand or made anew, a month is the same', () => {
    for (const isTypical of [true, false])
      expect(imaginedMonthOf(climate, before, own, 9, year, month, isTypical)).toEqual(
        imaginedMonth(newYorkNormals, spread, 9, year, month, isTypical),
      );
  });
});

test('where nights are as warm as days, half a degree lies between them, about their mean', () => {
  const flat: MonthlyNormals = {
    ...newYorkNormals,
    minimumCelsius: new Array<number>(12).fill(10),
    maximumCelsius: new Array<number>(12).fill(10),
  };
  const still: WeatherSpread = {
    ...spread,
    minimumSpreadCelsius: new Array<number>(12).fill(0),
    maximumSpreadCelsius: new Array<number>(12).fill(0),
  };
  const { minimumCelsius, maximumCelsius } = imaginedMonth(flat, still, 1, 2013, 5);
  for (const one of minimumCelsius) expect(one).toBeCloseTo(9.75, 9);
  for (const one of maximumCelsius) expect(one).toBeCloseTo(10.25, 9);
});

/** Normals of one kind of month all the year round. */
const rainy = (rain: number, wetDays: number): MonthlyNormals => ({
  ...newYorkNormals,
  rainMillimetres: new Array<number>(12).fill(rain),
  wetDays: new Array<number>(12).fill(wetDays),
});
/** Rain of many Junes, day by day. */
const junes = (normals: MonthlyNormals, isTypical: boolean, count = 200, own = spread) =>
  Array.from({ length: count }, (_, at) => [
    ...imaginedMonth(normals, own, 3, 1900 + at, 6, isTypical).rainMillimetres,
  ]);
const wetIn = (month: readonly number[]): number => month.filter((rain) => rain > 0).length;
const sum = (month: readonly number[]): number => month.reduce((all, rain) => all + rain, 0);

describe('rain of the typical run', () => {
  test('a wet day has its millimetre at least, and a share of what is over by its draw', () => {
    const months = junes(rainy(90, 9), true);
    const wet = months.flatMap((month) => month.filter((rain) => rain > 0));
    expect(Math.min(...wet)).toBeGreaterThanOrEqual(1);
    for (const month of months) expect(sum(month)).toBeCloseTo(90, 9);
    // what is over is drawn with shape 0.77 (wide) or 3 (narrow): the scatter tells
    const scatter = (amountShape: number): number => {
      const over = junes(rainy(90, 9), true, 200, { ...spread, amountShape }).flatMap((month) =>
        month.filter((rain) => rain > 0).map((rain) => rain - 1),
      );
      const middle = mean(over);
      return Math.sqrt(mean(over.map((one) => (one - middle) ** 2))) / middle;
    };
    // of a Weibull: sqrt(G(1 + 2/k)/G(1 + 1/k)^2 - 1): 1 for k 1, 0.363 for k 3; a month's own total
    // takes off one part in its wet days
    expect(Math.abs(scatter(1) - 0.95)).toBeLessThan(0.12);
    expect(Math.abs(scatter(3) - 0.363)).toBeLessThan(0.06);
  });

  test('is as often wet as the normals say, within a day in nearly every month', () => {
    const months = junes(rainy(90, 9), true);
    expect(Math.abs(mean(months.map(wetIn)) - 9)).toBeLessThan(0.2);
    expect(months.filter((month) => Math.abs(wetIn(month) - 9) > 1).length).toBeLessThan(3);
  });

  test('less rain than its wet days want: fewer of them, a millimetre each at least', () => {
    for (const month of junes(rainy(3.4, 9), true, 100)) {
      expect(wetIn(month)).toBeLessThanOrEqual(3);
      expect(wetIn(month)).toBeGreaterThanOrEqual(1);
      expect(Math.min(...month.filter((rain) => rain > 0))).toBeGreaterThanOrEqual(1);
      expect(sum(month)).toBeCloseTo(3.4, 9);
    }
    for (const month of junes(rainy(0.4, 9), true, 50)) {
      expect(wetIn(month)).toBe(1);
      expect(sum(month)).toBeCloseTo(0.4, 9);
    }
    for (const month of junes(rainy(30, 0), true, 50)) expect(sum(month)).toBeCloseTo(30, 9);
    for (const month of junes(rainy(0, 9), true, 20)) expect(sum(month)).toBe(0);
  });

  test('each month has the rain and the wet days of its own row', () => {
    for (let month = 1; month <= 12; month++) {
      const { rainMillimetres } = imaginedMonth(newYorkNormals, spread, 3, 2013, month);
      const rain = [...rainMillimetres];
      expect(sum(rain)).toBeCloseTo(newYorkNormals.rainMillimetres[month - 1]!, 9);
      expect(Math.abs(wetIn(rain) - newYorkNormals.wetDays[month - 1]!)).toBeLessThanOrEqual(1);
    }
    // a dry December after wet months
    const dry = { ...newYorkNormals, wetDays: [9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 1] };
    const december = imaginedMonth(dry, spread, 3, 2013, 12).rainMillimetres;
    expect(wetIn([...december])).toBeLessThanOrEqual(2);
  });

  test('another least rain of a wet day allows other numbers of them', () => {
    const two = { ...spread, wetDayMillimetres: 2 };
    for (const month of junes(rainy(3.4, 9), true, 50, two)) expect(wetIn(month)).toBe(1);
    for (const month of junes(rainy(9, 9), true, 50, two))
      expect(Math.min(...month.filter((rain) => rain > 0))).toBeGreaterThanOrEqual(2);
  });

  test('which of too many wet days stay dry, and where a lone one falls, is left to chance', () => {
    // without company, so that each day is by itself; the middle of 30 is 14.5, and the mean of 500
    // and more is known to 0.4
    const alone = { ...spread, wetAfterDry: 1 };
    for (const normals of [rainy(2.4, 9), rainy(30, 0)]) {
      const days = junes(normals, true, 500, alone).flatMap((month) =>
        month.flatMap((rain, day) => (rain > 0 ? [day] : [])),
      );
      expect(days.length).toBeGreaterThanOrEqual(500);
      expect(Math.abs(mean(days) - 14.5)).toBeLessThan(0.9);
      expect(new Set(days).size).toBe(30);
    }
  });

  test('wet on every day where the normals say so', () => {
    for (const month of junes(rainy(300, 30), true, 20)) expect(wetIn(month)).toBe(30);
    // more wet days than days: no chain comes near, and the search for one ends all the same
    for (const month of junes(rainy(300, 40), true, 3)) expect(wetIn(month)).toBe(30);
  });
});

describe('rain of a draw', () => {
  test('only the mean of many years is the normals’', () => {
    const months = junes(rainy(90, 9), false, 800);
    // standard error of the mean total about 1.6 mm
    expect(Math.abs(mean(months.map(sum)) - 90)).toBeLessThan(6);
    expect(Math.abs(mean(months.map(wetIn)) - 9)).toBeLessThan(0.5);
    const wet = months.flatMap((month) => month.filter((rain) => rain > 0));
    expect(Math.min(...wet)).toBeGreaterThanOrEqual(1);
    // 9 of 10 mm are over the first; a Weibull of shape k exceeds its mean with exp(-G(1 + 1/k)^k)
    const chance = Math.exp(-(climate.meanDraw ** spread.amountShape));
    const above = wet.filter((rain) => rain - 1 > 9).length / wet.length;
    expect(Math.abs(above - chance)).toBeLessThan(0.025);
  });

  test('less rain than wet days: what a wet day has is its share', () => {
    const months = junes(rainy(4, 8), false, 400);
    expect(months.flat().every((rain) => rain === 0 || rain === 0.5)).toBe(true);
    expect(Math.abs(mean(months.map(sum)) - 4)).toBeLessThan(0.3);
    expect(
      junes(rainy(0, 8), false, 20)
        .flat()
        .every((rain) => rain === 0),
    ).toBe(true);
  });

  test('a month of no wet day by the normals counts as one of one', () => {
    const months = junes(rainy(20, 0), false, 1000);
    expect(Math.abs(mean(months.map(wetIn)) - 1)).toBeLessThan(0.2);
    expect(Math.abs(mean(months.map(sum)) - 20)).toBeLessThan(4);
  });

  test('more wet days than days is every day', () => {
    for (const month of junes(rainy(310, 40), false, 20)) expect(wetIn(month)).toBe(30);
  });
});

describe.each([true, false])('spells, typical %s', (isTypical) => {
  test('rain follows a dry day less often than it falls at all, and dry a wet one', () => {
    const months = junes(rainy(90, 9), isTypical, 500);
    let dry = 0;
    let wetAfterDry = 0;
    for (const month of months)
      for (let day = 1; day < month.length; day++) {
        if (month[day - 1]! > 0) continue;
        dry += 1;
        if (month[day]! > 0) wetAfterDry += 1;
      }
    const share = 9 / 30;
    expect(Math.abs(wetAfterDry / dry / share - spread.wetAfterDry)).toBeLessThan(0.08);
  });

  test('without company every day is as likely wet as any other', () => {
    const months = junes(rainy(90, 9), isTypical, 500, { ...spread, wetAfterDry: 1 });
    for (let day = 0; day < 30; day++) {
      const share = months.filter((month) => month[day]! > 0).length / months.length;
      expect(Math.abs(share - 0.3)).toBeLessThan(0.1);
    }
  });
});
