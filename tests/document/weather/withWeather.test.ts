import { describe, expect, test } from 'vitest';
import { parseGarden } from '../../../app/document/parse';
import { serializeGarden } from '../../../app/document/serialize';
import type { Garden } from '../../../app/document/schema';
import { readWeather } from '../../../app/document/weather/readWeather';
import type { ReadDay } from '../../../app/document/weather/weatherTypes';
import {
  mostWeatherDays,
  withThermometer,
  withWeather,
} from '../../../app/document/weather/withWeather';
import { dayOf } from '../../../app/core/days';
import { recordOf } from '../../../app/document/seasonInput';
import { exampleGarden } from '../exampleGarden';

const daysOf = (text: string): readonly ReadDay[] => {
  const read = readWeather(text, { temperature: 'C', windHeightMetres: 2 });
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value.days;
};
const merged = (garden: Garden, text: string) => {
  const result = withWeather(garden, daysOf(text));
  if (!result.ok) throw new Error(result.error.kind);
  return result.value;
};

describe('measured days put into a garden', () => {
  const garden = exampleGarden();
  const before = garden.weather.days;

  test('replace what they measured, and nothing else is another object', () => {
    const result = merged(garden, 'date,tmin,tmax,rain\n2021-06-18,9,21,1\n2021-07-01,14,28,0\n');
    const after = result.garden;
    expect(after.weather.days.map(([date]) => date)).toEqual([
      ...before.map(([date]) => date),
      '2021-07-01',
    ]);
    expect(after.weather.days.at(-1)).toEqual(['2021-07-01', 14, 28, 0]);
    expect([result.added, result.contradicted]).toEqual([1, 0]);
    for (const key of Object.keys(garden) as (keyof Garden)[]) {
      if (key !== 'weather') expect(after[key]).toBe(garden[key]);
    }
    expect(after.weather.normals).toBe(garden.weather.normals);
    expect(garden.weather.days).toBe(before);
    expect(parseGarden(serializeGarden(after))).toEqual({ ok: true, value: after });
  });

  test('a value that was not measured leaves the old one', () => {
    const start = merged(garden, 'date,tmin,tmax,rain\n2021-07-01,14,28,3\n').garden;
    const result = merged(start, 'date,tmin,tmax,rain\n2021-07-01,15,,\n');
    expect(result.garden.weather.days.at(-1)).toEqual(['2021-07-01', 15, 28, 3]);
    expect([result.added, result.changed, result.same]).toEqual([0, 1, 0]);
  });

  test('an old value that the new one contradicts gives way, and is counted', () => {
    const start = merged(garden, 'date,tmin,tmax,rain\n2021-07-01,14,28,3\n').garden;
    const result = merged(start, 'date,tmax\n2021-07-01,10\n');
    expect(result.garden.weather.days.at(-1)).toEqual(['2021-07-01', null, 10, 3]);
    expect(result.contradicted).toBe(1);
  });

  test('the same file twice changes nothing the second time', () => {
    const text = 'date,tmin,tmax,rain,wind (m/s)\n2021-07-01,14,28,3,2\n';
    const once = merged(garden, text).garden;
    const twice = merged(once, text);
    expect([twice.added, twice.changed, twice.same]).toEqual([0, 0, 1]);
    expect(twice.garden).toEqual(once);
    expect(twice.garden.weather.days).toBe(once.weather.days);
  });

  test('what a station measured besides is kept in columns of its own', () => {
    const one = merged(
      garden,
      'date,rain (mm),wind (m/s)\n2021-07-02,1,2.5\n2021-07-01,3,2\n',
    ).garden;
    expect(one.weather.extra).toEqual({
      columns: ['wind m/s at 2 m'],
      days: [
        ['2021-07-01', 2],
        ['2021-07-02', 2.5],
      ],
    });
    const two = merged(
      one,
      'date,rain (mm),dew point (C)\n2021-07-02,1,11\n2021-07-03,0,12\n',
    ).garden;
    expect(two.weather.extra).toEqual({
      columns: ['wind m/s at 2 m', 'dew point deg C'],
      days: [
        ['2021-07-01', 2, null],
        ['2021-07-02', 2.5, 11],
        ['2021-07-03', null, 12],
      ],
    });
    expect(parseGarden(serializeGarden(two))).toEqual({ ok: true, value: two });
    // a file without such columns leaves them alone
    const three = merged(two, 'date,rain (mm)\n2021-07-04,1\n').garden;
    expect(three.weather.extra).toBe(two.weather.extra);
  });

  test('more days than a file can hold are refused before anything is changed', () => {
    const days = Array.from({ length: mostWeatherDays }, (_unused, at): ReadDay => ({
      day: dayOf('1905-01-01') + at,
      values: { rain: 0 },
    }));
    const lone = { day: dayOf('2030-01-01'), values: { rain: 0 } };
    const empty = { ...garden, weather: { ...garden.weather, days: [] } };
    expect(withWeather(empty, days).ok).toBe(true);
    expect(withWeather(empty, [...days, lone])).toEqual({
      ok: false,
      error: { kind: 'too many days', days: mostWeatherDays + 1, limit: mostWeatherDays },
    });
  });
});

describe('the gardener’s own thermometer', () => {
  const reading = (date: string, lowestCelsius: number | null, highestCelsius: number | null) => ({
    date,
    lowestCelsius,
    highestCelsius,
  });
  const recorded = (garden: Garden, date: string) =>
    recordOf(garden, dayOf('2021-12-31')).find(({ day }) => day === dayOf(date));

  test('outranks the record of its day, value by value', () => {
    const start = merged(exampleGarden(), 'date,tmin,tmax,rain\n2021-07-01,14,28,3\n').garden;
    const garden = withThermometer(start, reading('2021-07-01', 11.5, null));
    expect(recorded(garden, '2021-07-01')).toEqual({
      day: dayOf('2021-07-01'),
      minimumCelsius: 11.5,
      maximumCelsius: 28,
      rainMillimetres: 3,
    });
    expect(parseGarden(serializeGarden(garden))).toEqual({ ok: true, value: garden });
  });

  test('stands alone where the record has no such day', () => {
    const garden = withThermometer(exampleGarden(), reading('2021-07-05', 9, 24));
    expect(recorded(garden, '2021-07-05')).toMatchObject({
      minimumCelsius: 9,
      maximumCelsius: 24,
      rainMillimetres: null,
    });
  });

  test('a record that a reading contradicts gives way on both sides', () => {
    const start = merged(exampleGarden(), 'date,tmin,tmax,rain\n2021-07-01,14,28,3\n').garden;
    const garden = withThermometer(start, reading('2021-07-01', null, 12));
    expect(recorded(garden, '2021-07-01')).toMatchObject({
      minimumCelsius: null,
      maximumCelsius: 12,
    });
  });

  test('one reading a day, rising; an empty one takes it out', () => {
    let garden = withThermometer(exampleGarden(), reading('2021-07-05', 9, 24));
    garden = withThermometer(garden, reading('2021-07-02', 8, 20));
    garden = withThermometer(garden, reading('2021-07-05', 10, 25));
    expect(garden.weather.thermometer).toEqual([
      ['2021-07-02', 8, 20],
      ['2021-07-05', 10, 25],
    ]);
    garden = withThermometer(garden, reading('2021-07-02', null, null));
    expect(garden.weather.thermometer).toEqual([['2021-07-05', 10, 25]]);
  });
});
