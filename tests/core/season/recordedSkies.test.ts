import { describe, expect, test } from 'vitest';
import { dayFromParts, dayOf, partsFromDay } from '../../../app/core/days';
import {
  seasonsOfYears,
  seasonWeather,
  usualDegreeDays,
  wholeYears,
  type RecordedDay,
} from '../../../app/core/season/ahead';
import { imaginedMonth } from '../../../app/core/season/imagine';
import { monthlyKnots, smoothNormal } from '../../../app/core/season/smoothNormals';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { newYorkNormals as normals } from './handMadeBed';

/* What was measured, filled and imagined, day by day; records made up so that each number is known. */

const [measured, filled, imagined] = [0, 1, 2];
const spread = typicalWeatherSpread(40.8);
type Value = number | null;
const entry = (day: number, low: Value, high: Value, rain: Value): RecordedDay => ({
  day,
  minimumCelsius: low,
  maximumCelsius: high,
  rainMillimetres: rain,
});

const first = dayOf('2013-05-20');
const today = dayOf('2013-06-20');
/** Lowest 10 and rising half a degree a day, highest 10 above it, 2 mm a day. */
const usualEntry = (day: number): RecordedDay => {
  const low = 10 + 0.5 * (day - first);
  return entry(day, low, low + 10, 2);
};
const full = Array.from({ length: today - first + 1 }, (_, at) => usualEntry(first + at));
const without = (from: number, to: number): RecordedDay[] =>
  full.filter(({ day }) => day - first < from || day - first > to);
const sky = (record: readonly RecordedDay[], now = today, last = today) =>
  seasonWeather(record, normals, first, last, now, 3, spread, false);
const kinds = (record: readonly RecordedDay[], from: number, to: number) => [
  ...sky(record).kind.slice(from, to + 1),
];
const of = (month: number, inYear = 2013) => imaginedMonth(normals, spread, 3, inYear, month);

describe('gaps', () => {
  test('five days are filled on the straight line, each with its own month’s mean rain', () => {
    // 29 May to 2 June
    const weather = sky(without(9, 13));
    expect(kinds(without(9, 13), 8, 14)).toEqual([
      measured,
      ...new Array(5).fill(filled),
      measured,
    ]);
    for (let at = 8; at <= 14; at++) {
      expect(weather.minimumCelsius[at]).toBeCloseTo(10 + 0.5 * at, 12);
      expect(weather.maximumCelsius[at]).toBeCloseTo(20 + 0.5 * at, 12);
    }
    // 100.6 mm in 31 days of May, 115.3 in 30 of June
    expect(weather.rainMillimetres[11]).toBeCloseTo(100.6 / 31, 12);
    expect(weather.rainMillimetres[12]).toBeCloseTo(115.3 / 30, 12);
    expect(weather.rainMillimetres[14]).toBe(2);
  });

  test('an uneven line: by the days to either end', () => {
    const record = [
      ...without(9, 11).filter(({ day }) => day !== first + 12),
      entry(first + 12, 30, 44, 2),
    ];
    const { minimumCelsius, maximumCelsius } = sky(record);
    // 14 on day 8, 30 on day 12
    expect([...minimumCelsius.slice(9, 12)]).toEqual([18, 22, 26]);
    expect([...maximumCelsius.slice(9, 12)]).toEqual([29, 34, 39]);
  });

  test('six days are imagined, all of them, as the month without a record has them', () => {
    const weather = sky(without(9, 14));
    expect(kinds(without(9, 14), 8, 15)).toEqual([
      measured,
      ...new Array(6).fill(imagined),
      measured,
    ]);
    const [may, june] = [of(5), of(6)];
    // 29, 30, 31 May and 1, 2, 3 June
    for (const [at, month, date] of [
      [9, may, 29],
      [11, may, 31],
      [12, june, 1],
      [14, june, 3],
    ] as const) {
      expect(weather.minimumCelsius[at]).toBe(month.minimumCelsius[date - 1]);
      expect(weather.maximumCelsius[at]).toBe(month.maximumCelsius[date - 1]);
      expect(weather.rainMillimetres[at]).toBe(month.rainMillimetres[date - 1]);
    }
  });

  test('a gap that is open at either end is imagined', () => {
    expect(kinds(without(0, 1), 0, 2)).toEqual([imagined, imagined, measured]);
    expect(kinds(without(31, 31), 30, 31)).toEqual([measured, imagined]);
    expect(kinds(without(30, 30), 29, 31)).toEqual([measured, filled, measured]);
    // what stands in the record of tomorrow does not close it
    expect(kinds([...without(31, 31), usualEntry(today + 1)], 31, 31)).toEqual([imagined]);
    const tomorrow = [...without(30, 31), usualEntry(today + 1)];
    expect(kinds(tomorrow, 29, 31)).toEqual([measured, imagined, imagined]);
  });

  test('what was measured of a day stays, what was not is filled from its own neighbours', () => {
    const record = full.map((one) => {
      const at = one.day - first;
      if (at < 10 || at > 12) return one;
      return entry(one.day, at === 11 ? 3 : null, 40, at === 10 ? null : 7);
    });
    const weather = sky(record);
    expect([...weather.minimumCelsius.slice(9, 14)]).toEqual([14.5, 8.75, 3, 9.75, 16.5]);
    expect([...weather.maximumCelsius.slice(9, 14)]).toEqual([24.5, 40, 40, 40, 26.5]);
    expect(weather.rainMillimetres[10]).toBeCloseTo(100.6 / 31, 12);
    expect([...weather.rainMillimetres.slice(11, 13)]).toEqual([7, 7]);
    expect([...weather.kind.slice(9, 14)]).toEqual([measured, filled, measured, filled, measured]);
  });

  test('a gauge in a long gap: its rain is measured, the warmth imagined, the day counts as filled', () => {
    const record = [...without(9, 22), entry(first + 15, null, null, 33)];
    const weather = sky(record);
    expect(weather.rainMillimetres[15]).toBe(33);
    // 4 June
    expect(weather.minimumCelsius[15]).toBe(of(6).minimumCelsius[3]);
    expect([...weather.kind.slice(14, 17)]).toEqual([imagined, filled, imagined]);
  });

  test('an upside-down day is turned', () => {
    const weather = sky([...full, entry(first + 3, 25, 5, 0)]);
    expect(weather.minimumCelsius[3]).toBe(5);
    expect(weather.maximumCelsius[3]).toBe(25);
  });

  test('days after today are imagined, months on, over the year’s end', () => {
    const weather = sky(full, today, dayOf('2014-02-03'));
    const { kind, minimumCelsius, rainMillimetres } = weather;
    expect([...kind.slice(31, 34)]).toEqual([measured, imagined, imagined]);
    for (const [text, month, inYear] of [
      ['2013-12-31', 12, 2013],
      ['2014-01-01', 1, 2014],
      ['2014-02-03', 2, 2014],
    ] as const) {
      const { dayOfMonth } = partsFromDay(dayOf(text));
      expect(minimumCelsius[dayOf(text) - first]).toBe(
        of(month, inYear).minimumCelsius[dayOfMonth - 1],
      );
      expect(rainMillimetres[dayOf(text) - first]).toBe(
        of(month, inYear).rainMillimetres[dayOfMonth - 1],
      );
    }
  });

  test('a run of no days has no weather', () => {
    const empty = seasonWeather(full, normals, first, first - 3, today, 3, spread, false);
    expect(empty.kind).toHaveLength(0);
  });
});

/** Whole years of one value a day: lowest, highest 10 above it, and rain of each half-year. */
function year(ofYear: number, low: number, summerRain: number, winterRain: number): RecordedDay[] {
  const [from, to] = [dayFromParts(ofYear, 1, 1), dayFromParts(ofYear, 12, 31)];
  return Array.from({ length: to - from + 1 }, (_, at) => {
    const { month } = partsFromDay(from + at);
    const rain = month >= 4 && month <= 9 ? summerRain : winterRain;
    return entry(from + at, low, low + 10, rain);
  });
}

describe('years of record in place of the normals', () => {
  const now = dayOf('2011-12-31');
  const after = (record: readonly RecordedDay[], isSouthern = false, text = '2013-06-15') => {
    const day = dayOf(text);
    const weather = seasonWeather(record, normals, day, day, now, 3, spread, isSouthern);
    return [weather.minimumCelsius[0], weather.maximumCelsius[0], weather.rainMillimetres[0]];
  };
  // by summer: 2008 driest, then 2010, 2009, 2011; by winter the other way round
  const four = [
    ...year(2011, 11, 4, 1),
    ...year(2008, 8, 1, 4),
    ...year(2009, 9, 3, 2),
    ...year(2010, 10, 2, 3),
  ];

  test('the drier of the two in the middle, of the half-year in which things grow', () => {
    expect(after(four)).toEqual([10, 20, 2]);
    // in the south October to March: 2011 driest, then 2009
    expect(after(four, true)).toEqual([9, 19, 3]);
  });

  test('of three the middle one; of years alike the earlier', () => {
    expect(after(four.filter(({ day }) => partsFromDay(day).year !== 2008))).toEqual([9, 19, 3]);
    const alike = [...year(2011, 11, 2, 2), ...year(2010, 10, 2, 2), ...year(2009, 9, 2, 2)];
    expect(after(alike)).toEqual([10, 20, 2]);
    expect(after([...alike, ...year(2008, 8, 2, 2)])).toEqual([9, 19, 2]);
  });

  test('two are too few', () => {
    const two = [...year(2010, 10, 2, 2), ...year(2011, 11, 2, 2)];
    expect(after(two)[0]).toBe(of(6).minimumCelsius[14]);
    expect(seasonsOfYears(two, normals, first, today, now)).toBeNull();
  });

  test('the months that grow are April to September, to the day', () => {
    const rainOn = (ofYear: number, ...texts: readonly string[]) =>
      year(ofYear, ofYear - 2000, 0, 0).map((one) =>
        texts.some((text) => one.day === dayOf(`${ofYear}-${text}`))
          ? { ...one, rainMillimetres: 9 }
          : one,
      );
    const middle = (a: string, b: string, c: string) =>
      after([...rainOn(2009, a), ...rainOn(2010, b), ...rainOn(2011, c)])[0];
    // rain on the edges of the half-year counts, beside them not: the dry year is then the first of two alike
    expect(middle('04-01', '03-31', '09-30')).toBe(9);
    expect(middle('10-01', '04-01', '09-30')).toBe(10);
    expect(middle('05-31', '06-30', '03-31')).toBe(9);
    expect(middle('08-31', '12-31', '07-31')).toBe(9);
  });

  test('a day that is missing in that year is filled there, or usual', () => {
    const hole = (from: string, to: string) =>
      four.filter(({ day }) => day < dayOf(from) || day > dayOf(to));
    expect(after(hole('2010-06-14', '2010-06-16'))).toEqual([
      10,
      20,
      expect.closeTo(115.3 / 30, 9),
    ]);
    const wide = after(hole('2010-06-10', '2010-06-19'));
    const usual = (values: readonly number[]) =>
      smoothNormal(monthlyKnots(values), dayOf('2010-06-15'));
    expect(wide[0]).toBeCloseTo(usual(normals.minimumCelsius), 9);
    expect(wide[1]).toBeCloseTo(usual(normals.maximumCelsius), 9);
    expect(wide[2]).toBeCloseTo(115.3 / 30, 9);
  });

  test('29 February: the 28th once more, dry; of a leap year itself', () => {
    expect(after(four, false, '2016-02-29')).toEqual([10, 20, 0]);
    expect(after(four, false, '2016-02-28')).toEqual([10, 20, 3]);
    const leap = [...year(2008, 8, 2, 5), ...year(2007, 7, 1, 1), ...year(2009, 9, 3, 3)];
    expect(after(leap, false, '2016-02-29')).toEqual([8, 18, 5]);
  });

  test('one season a year, the earliest first; what is known of the run stays', () => {
    const record = [...four, ...full.map((one) => ({ ...one, day: one.day }))];
    const seasons = seasonsOfYears(record, normals, first, dayOf('2013-06-30'), today)!;
    expect(seasons.map(({ minimumCelsius }) => minimumCelsius.at(-1))).toEqual([8, 9, 10, 11]);
    for (const season of seasons) {
      expect([...season.minimumCelsius.slice(0, 32)]).toEqual([...sky(full).minimumCelsius]);
      expect([...season.kind.slice(31, 33)]).toEqual([measured, imagined]);
    }
    expect(seasons).toHaveLength(4);
  });
});

describe('which years are whole', () => {
  const one = year(2009, 9, 2, 2);
  const some = (missing: number, spoil: (day: RecordedDay) => RecordedDay | null = () => null) =>
    one.flatMap((day, at) => {
      if (at < 40 || at >= 40 + missing) return [day];
      const left = spoil(day);
      return left ? [left] : [];
    });

  test('ten days may be missing, eleven not; a day without its rain is missing', () => {
    const now = dayOf('2010-01-01');
    expect(wholeYears(some(10), now)).toEqual([2009]);
    expect(wholeYears(some(11), now)).toEqual([]);
    for (const key of ['minimumCelsius', 'maximumCelsius', 'rainMillimetres'] as const) {
      expect(
        wholeYears(
          some(10, (day) => ({ ...day, [key]: null })),
          now,
        ),
      ).toEqual([2009]);
      expect(
        wholeYears(
          some(11, (day) => ({ ...day, [key]: null })),
          now,
        ),
      ).toEqual([]);
    }
  });

  test('only once it is over, in order, whatever the order of the list', () => {
    const record = [...year(2010, 10, 2, 2), ...one, ...year(2008, 8, 2, 2)];
    expect(wholeYears(record, dayOf('2010-12-31'))).toEqual([2008, 2009, 2010]);
    expect(wholeYears(record, dayOf('2010-12-30'))).toEqual([2008, 2009]);
    expect(wholeYears(record, dayOf('2008-12-31'))).toEqual([2008]);
  });
});

describe('usual degree-days', () => {
  const start = dayOf('2013-05-30');

  test('of the normals: the mean of each smooth day above the base, from the start on', () => {
    const low = monthlyKnots(normals.minimumCelsius);
    const high = monthlyKnots(normals.maximumCelsius);
    let sum = 0;
    for (let day = start; day <= start + 9; day++)
      sum += (smoothNormal(low, day) + smoothNormal(high, day)) / 2 - 12;
    expect(usualDegreeDays([], normals, today, start, 10, 12)).toBeCloseTo(sum, 9);
    expect(usualDegreeDays([], normals, today, start, 10, 60)).toBe(0);
    expect(usualDegreeDays([], normals, today, start, 0, 12)).toBe(0);
  });

  test('of years of record: their mean, each above the base by itself', () => {
    // means of 15, 20 and 25 C
    const three = [...year(2009, 10, 2, 2), ...year(2010, 15, 2, 2), ...year(2011, 20, 2, 2)];
    const sum = (base: number, days = 10) =>
      usualDegreeDays(three, normals, dayOf('2012-01-01'), start, days, base);
    expect(sum(12)).toBeCloseTo((10 * (3 + 8 + 13)) / 3, 9);
    expect(sum(22)).toBeCloseTo((10 * 3) / 3, 9);
    // until the third year is over the normals hold
    const early = usualDegreeDays(three, normals, dayOf('2011-12-30'), start, 10, 12);
    expect(early).toBe(usualDegreeDays([], normals, dayOf('2011-12-30'), start, 10, 12));
  });

  test('each day asks the same day of each year', () => {
    const warmTenth = [2009, 2010, 2011].flatMap((one) =>
      year(one, 10, 2, 2).map((known) => {
        const { month, dayOfMonth } = partsFromDay(known.day);
        return month === 6 && dayOfMonth === 10 ? { ...known, maximumCelsius: 40 } : known;
      }),
    );
    const on = (text: string) =>
      usualDegreeDays(warmTenth, normals, dayOf('2012-01-01'), dayOf(text), 1, 0);
    expect(['2013-06-09', '2013-06-10', '2013-06-11', '2013-06-30'].map(on)).toEqual([
      expect.closeTo(15, 9),
      expect.closeTo(25, 9),
      expect.closeTo(15, 9),
      expect.closeTo(15, 9),
    ]);
  });

  test('a value that is missing in a year is the usual one, and 29 February the 28th', () => {
    const day = dayOf('2010-05-31');
    const three = [...year(2009, 10, 2, 2), ...year(2010, 15, 2, 2), ...year(2011, 20, 2, 2)].map(
      (one) => (one.day === day ? { ...one, minimumCelsius: null } : one),
    );
    const low = smoothNormal(monthlyKnots(normals.minimumCelsius), day);
    expect(
      usualDegreeDays(three, normals, dayOf('2012-01-01'), dayOf('2013-05-31'), 1, 0),
    ).toBeCloseTo((15 + (low + 25) / 2 + 25) / 3, 9);
    const noHigh = three.map((one) =>
      one.day === day ? { ...one, minimumCelsius: 15, maximumCelsius: null } : one,
    );
    const high = smoothNormal(monthlyKnots(normals.maximumCelsius), day);
    expect(
      usualDegreeDays(noHigh, normals, dayOf('2012-01-01'), dayOf('2013-05-31'), 1, 0),
    ).toBeCloseTo((15 + (15 + high) / 2 + 25) / 3, 9);
    const leap = usualDegreeDays(three, normals, dayOf('2012-01-01'), dayOf('2012-02-29'), 1, 0);
    expect(leap).toBeCloseTo(20, 9);
  });
});
