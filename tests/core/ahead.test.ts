import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  longestFilledGap,
  seasonWeather,
  usualDegreeDays,
  wholeYears,
  type RecordedDay,
} from '../../app/core/season/ahead';
import { imaginedMonth } from '../../app/core/season/imagine';
import { dayKinds, type MonthlyNormals } from '../../app/core/season/input';
import { daysInMonth, monthlyKnots, smoothNormal } from '../../app/core/season/smoothNormals';
import { dayFromParts, dayOf } from '../../app/core/days';
import { typicalWeatherSpread } from '../../app/tables/imaginedWeather';

/** Invented, with the shape of a damp northern place. */
const northern: MonthlyNormals = {
  minimumCelsius: [-2, -1, 2, 7, 13, 18, 21, 20, 16, 10, 5, 0],
  maximumCelsius: [4, 6, 10, 16, 22, 27, 30, 29, 25, 18, 12, 7],
  rainMillimetres: [92, 80, 108, 104, 100, 115, 117, 116, 109, 111, 91, 111],
  wetDays: [9, 8, 9, 9, 9, 9, 8, 8, 7, 7, 8, 9],
};
/** The same place upside down, with a dry summer. */
const southern: MonthlyNormals = {
  minimumCelsius: [...northern.minimumCelsius.slice(6), ...northern.minimumCelsius.slice(0, 6)],
  maximumCelsius: [...northern.maximumCelsius.slice(6), ...northern.maximumCelsius.slice(0, 6)],
  rainMillimetres: [0, 1.3, 20, 40, 60, 90, 100, 80, 50, 30, 10, 0.4],
  wetDays: [0, 0.3, 3, 5, 8, 11, 12, 10, 7, 4, 2, 0.2],
};
const places = [
  { name: 'north', normals: northern, latitude: 41 },
  { name: 'south', normals: southern, latitude: -38 },
] as const;
const spread = typicalWeatherSpread(41);
const imaginedKind = dayKinds.indexOf('imagined');
const filledKind = dayKinds.indexOf('filled');

const ahead = (
  record: readonly RecordedDay[],
  today: number,
  first: number,
  last: number,
  place: (typeof places)[number] = places[0],
  seed = 1,
) =>
  seasonWeather(
    record,
    place.normals,
    first,
    last,
    today,
    seed,
    typicalWeatherSpread(place.latitude),
    place.latitude < 0,
  );

const recordOf = (from: number, to: number, shift = 0): RecordedDay[] =>
  Array.from({ length: to - from + 1 }, (_unused, index) => ({
    day: from + index,
    minimumCelsius: 5 + shift + (index % 7),
    maximumCelsius: 15 + shift + (index % 5),
    rainMillimetres: index % 4 === 0 ? 6 + shift : 0,
  }));

describe('smooth normals', () => {
  test('daily values of a month average to its normal, to a thousandth of the yearly range', () => {
    for (const values of [northern.minimumCelsius, southern.maximumCelsius]) {
      const knots = monthlyKnots(values);
      for (const year of [2012, 2013]) {
        for (let month = 1; month <= 12; month++) {
          const count = daysInMonth(year, month);
          let sum = 0;
          for (let date = 1; date <= count; date++) {
            sum += smoothNormal(knots, dayFromParts(year, month, date));
          }
          expect(Math.abs(sum / count - (values[month - 1] ?? 0))).toBeLessThan(0.03);
        }
      }
    }
  });
  test('no day differs from the next by more than half a degree, across months and years', () => {
    const knots = monthlyKnots(northern.maximumCelsius);
    for (let day = dayOf('2012-01-01'); day < dayOf('2014-01-01'); day++) {
      expect(Math.abs(smoothNormal(knots, day + 1) - smoothNormal(knots, day))).toBeLessThan(0.5);
    }
  });
});

describe.each(places)('a month imagined from normals, $name', ({ normals, latitude }) => {
  const own = typicalWeatherSpread(latitude);
  test('rain adds up to the normal, whatever the seed, and every wet day has its millimetre', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1900, max: 2100 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer(),
        (year, month, seed) => {
          const { rainMillimetres } = imaginedMonth(normals, own, seed, year, month);
          const total = normals.rainMillimetres[month - 1] ?? 0;
          const sum = rainMillimetres.reduce((one, other) => one + other, 0);
          expect(sum).toBeCloseTo(total, 9);
          const wet = [...rainMillimetres].filter((rain) => rain > 0);
          if (total >= 1) wet.forEach((rain) => expect(rain).toBeGreaterThanOrEqual(1 - 1e-12));
          expect(wet.length > 0).toBe(total > 0);
        },
      ),
    );
  });
  test('wet days: the mean of 400 years is within a third of a day of the normal', () => {
    for (let month = 1; month <= 12; month++) {
      const wanted = normals.wetDays[month - 1] ?? 0;
      if ((normals.rainMillimetres[month - 1] ?? 0) < wanted + 1) continue;
      let count = 0;
      for (let year = 1900; year < 2300; year++) {
        const { rainMillimetres } = imaginedMonth(normals, own, 7, year, month);
        count += rainMillimetres.filter((rain) => rain > 0).length;
      }
      // below one wet day a month still gets one, so that its rain can fall
      expect(Math.abs(count / 400 - Math.max(1, wanted))).toBeLessThan(0.34);
    }
  });
  test('temperatures: mean of the month is the normal, spread that of the rows, no day upside down', () => {
    for (const month of [1, 4, 7, 10]) {
      let squares = 0;
      let days = 0;
      const knots = monthlyKnots(normals.maximumCelsius);
      for (let year = 1900; year < 2100; year++) {
        const imaginedDays = imaginedMonth(normals, own, 3, year, month);
        let mean = 0;
        imaginedDays.maximumCelsius.forEach((highest, index) => {
          const lowest = imaginedDays.minimumCelsius[index] ?? 0;
          expect(highest).toBeGreaterThan(lowest);
          mean += (highest + lowest) / 2 / imaginedDays.maximumCelsius.length;
          const usual = smoothNormal(knots, dayFromParts(year, month, index + 1));
          squares += (highest - usual) ** 2;
          days += 1;
        });
        const wanted =
          ((normals.minimumCelsius[month - 1] ?? 0) + (normals.maximumCelsius[month - 1] ?? 0)) / 2;
        expect(Math.abs(mean - wanted)).toBeLessThan(0.05);
      }
      const row = own.maximumSpreadCelsius[month - 1] ?? 0;
      expect(Math.sqrt(squares / days) / row).toBeGreaterThan(0.9);
      expect(Math.sqrt(squares / days) / row).toBeLessThan(1.1);
    }
  });
});

test('the spreads are those of Central Park, NOAA normals 1991-2020, and turn with the hemisphere', () => {
  expect(typicalWeatherSpread(41).maximumSpreadCelsius[0]).toBe(5.6);
  expect(typicalWeatherSpread(41).minimumSpreadCelsius[6]).toBe(2.6);
  expect(typicalWeatherSpread(-41).maximumSpreadCelsius[6]).toBe(5.6);
});

test('departures keep the persistence of the row from day to day, over month ends too', () => {
  const knots = monthlyKnots(northern.minimumCelsius);
  let products = 0;
  let squares = 0;
  let over = 0;
  let overSquares = 0;
  for (let year = 1900; year < 2100; year++) {
    const series: number[] = [];
    for (const month of [7, 8]) {
      imaginedMonth(northern, spread, 5, year, month).minimumCelsius.forEach((value, index) => {
        const departure = value - smoothNormal(knots, dayFromParts(year, month, index + 1));
        series.push(departure / (spread.minimumSpreadCelsius[month - 1] ?? 1));
      });
    }
    for (let index = 1; index < series.length; index++) {
      const product = (series[index] ?? 0) * (series[index - 1] ?? 0);
      if (index === 31) {
        over += product;
        overSquares += (series[index] ?? 0) ** 2;
      } else {
        products += product;
        squares += (series[index] ?? 0) ** 2;
      }
    }
  }
  // centring on the month lowers both a little
  expect(products / squares).toBeGreaterThan(spread.persistence - 0.12);
  expect(products / squares).toBeLessThan(spread.persistence + 0.05);
  expect(over / overSquares).toBeGreaterThan(0.3);
});

describe.each(places)('days ahead, $name', (place) => {
  const first = dayOf('2013-01-01');
  const last = dayOf('2014-12-31');
  test('an imagined day is the same whenever today is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 600 }),
        fc.integer({ min: 0, max: 120 }),
        (start, step) => {
          const record = recordOf(first, last);
          const early = ahead(record, first + start, first, last, place);
          const late = ahead(record, first + start + step, first, last, place);
          for (let index = start + step + 1; index <= last - first; index++) {
            for (const key of ['minimumCelsius', 'maximumCelsius', 'rainMillimetres'] as const) {
              expect(late[key][index]).toBe(early[key][index]);
            }
            expect(early.kind[index]).toBe(imaginedKind);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
  test('the record after today is never looked at', () => {
    const today = dayOf('2013-06-15');
    const known = recordOf(first, today);
    const honest = ahead(known, today, first, last, place);
    const tempted = ahead([...recordOf(today + 1, last, 9), ...known], today, first, last, place);
    expect(tempted).toEqual(honest);
  });
  test('no whole month ahead is without its normal rain, none has rain on every day', () => {
    const weather = ahead([], first - 1, first, last, place);
    for (let month = 1; month <= 12; month++) {
      const from = dayFromParts(2013, month, 1) - first;
      const rain = weather.rainMillimetres.slice(from, from + daysInMonth(2013, month));
      const sum = rain.reduce((one, other) => one + other, 0);
      expect(sum).toBeCloseTo(place.normals.rainMillimetres[month - 1] ?? 0, 9);
      expect(rain.filter((value) => value === 0).length).toBeGreaterThan(10);
    }
  });
  test('another seed gives other days', () => {
    const one = ahead([], first - 1, first, last, place, 1);
    const other = ahead([], first - 1, first, last, place, 2);
    expect(one.rainMillimetres).not.toEqual(other.rainMillimetres);
  });
});

describe('gaps in the record', () => {
  const first = dayOf('2013-05-01');
  const today = dayOf('2013-05-31');
  const without = (...missing: number[]) =>
    recordOf(first, today).filter(({ day }) => !missing.includes(day - first));
  test('a short gap is filled: temperature on the line, rain at the daily mean of the month', () => {
    const weather = ahead(without(10, 11), today, first, today);
    expect([...weather.kind.slice(9, 13)]).toEqual([0, filledKind, filledKind, 0]);
    const [before = 0, one = 0, two = 0, after = 0] = weather.minimumCelsius.slice(9, 13);
    expect(one).toBeCloseTo(before + (after - before) / 3, 12);
    expect(two).toBeCloseTo(before + (2 * (after - before)) / 3, 12);
    expect(weather.rainMillimetres[10]).toBeCloseTo(100 / 31, 12);
  });
  test('the longest gap that is filled is filled, one longer is imagined', () => {
    const gap = Array.from({ length: longestFilledGap }, (_unused, index) => 10 + index);
    expect(ahead(without(...gap), today, first, today).kind[12]).toBe(filledKind);
    const longer = [...gap, 10 + longestFilledGap];
    expect(ahead(without(...longer), today, first, today).kind[12]).toBe(imaginedKind);
  });
  test('a gap that is still open is imagined, as the same days were before', () => {
    const weather = ahead(without(29, 30), today, first, today);
    const before = ahead(recordOf(first, today), first + 28, first, today);
    expect(weather.kind[29]).toBe(imaginedKind);
    expect(weather.minimumCelsius[29]).toBe(before.minimumCelsius[29]);
  });
  test('a rain gauge alone keeps its rain, and the day counts as filled', () => {
    const gauge = {
      day: first + 30,
      minimumCelsius: null,
      maximumCelsius: null,
      rainMillimetres: 33,
    };
    const weather = ahead([...without(30), gauge], today, first, today);
    expect(weather.rainMillimetres[30]).toBe(33);
    expect(weather.kind[30]).toBe(filledKind);
  });
  test('later entries for a day outrank earlier ones', () => {
    const again = { day: first, minimumCelsius: 1, maximumCelsius: 2, rainMillimetres: 3 };
    expect(ahead([...without(), again], today, first, today).rainMillimetres[0]).toBe(3);
  });
});

describe('three whole years of record', () => {
  const years = { wet: 2009, middle: 2010, dry: 2011 };
  const record = [
    ...recordOf(dayFromParts(years.wet, 1, 1), dayFromParts(years.wet, 12, 31), 2),
    ...recordOf(dayFromParts(years.middle, 1, 1), dayFromParts(years.middle, 12, 31), 0),
    ...recordOf(dayFromParts(years.dry, 1, 1), dayFromParts(years.dry, 12, 31), -2),
  ];
  const first = dayOf('2012-01-01');
  const last = dayOf('2012-12-31');
  test('days ahead are those of the year of median growing-season rain', () => {
    const weather = ahead(record, first - 1, first, last);
    const donor = recordOf(dayFromParts(years.middle, 1, 1), dayFromParts(years.middle, 12, 31));
    const may = dayOf('2012-05-04');
    expect(weather.minimumCelsius[may - first]).toBe(
      donor[dayFromParts(years.middle, 5, 4) - dayFromParts(years.middle, 1, 1)]?.minimumCelsius,
    );
    expect(weather.kind[may - first]).toBe(imaginedKind);
  });
  test('29 February repeats the 28th of a shorter donor, dry', () => {
    const weather = ahead(record, first - 1, first, last);
    const leap = dayOf('2012-02-29') - first;
    expect(weather.maximumCelsius[leap]).toBe(weather.maximumCelsius[leap - 1]);
    expect(weather.rainMillimetres[leap]).toBe(0);
  });
  test('a year that has not ended by today does not count', () => {
    expect(wholeYears(record, dayFromParts(years.dry, 12, 30))).toEqual([years.wet, years.middle]);
    expect(wholeYears(record, dayFromParts(years.dry, 12, 31))).toHaveLength(3);
  });
  test('a year with eleven days missing does not count', () => {
    const holed = record.filter(({ day }) => {
      const into = day - dayFromParts(years.wet, 3, 1);
      return into < 0 || into > 10;
    });
    expect(wholeYears(holed, first)).toEqual([years.middle, years.dry]);
  });
  test('usual degree-days are the mean of the years', () => {
    const sums = [years.wet, years.middle, years.dry].map((year) =>
      record
        .filter(({ day }) => day >= dayFromParts(year, 6, 1) && day < dayFromParts(year, 6, 11))
        .reduce(
          (sum, day) =>
            sum + Math.max(0, ((day.minimumCelsius ?? 0) + (day.maximumCelsius ?? 0)) / 2 - 10),
          0,
        ),
    );
    const mean = sums.reduce((one, other) => one + other, 0) / 3;
    expect(usualDegreeDays(record, northern, first, dayOf('2012-06-01'), 10, 10)).toBeCloseTo(
      mean,
      9,
    );
  });
});

test('usual degree-days from normals: 30 days of June at the mean of its normals less the base', () => {
  const fromNormals = usualDegreeDays(
    [],
    northern,
    dayOf('2013-01-01'),
    dayOf('2013-06-01'),
    30,
    10,
  );
  expect(fromNormals).toBeCloseTo(30 * ((18 + 27) / 2 - 10), 0);
});
