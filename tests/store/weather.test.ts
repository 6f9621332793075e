import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import type { ReadDay } from '../../app/document/weather/weatherTypes';
import { mostWeatherDays } from '../../app/document/weather/withWeather';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith } from './surroundings';

const open = async () => (await storeWith(exampleGarden())).store;
const day = (date: string, values: ReadDay['values']): ReadDay => ({ day: dayOf(date), values });

describe('bringing measured weather', () => {
  test('is one step, named, and undone whole', async () => {
    const store = await open();
    const before = store.getState().garden!;
    const result = store
      .getState()
      .bringWeather([
        day('2021-07-01', { lowest: 14, highest: 28, rain: 3, 'dew point': 12 }),
        day('2021-07-02', { lowest: 15, highest: 27, rain: 0 }),
      ]);
    expect(result).toEqual({
      ok: true,
      value: { added: 2, changed: 0, same: 0, contradicted: 0 },
    });
    const { garden, past } = store.getState();
    expect(past.map(({ label }) => label)).toEqual(['Bring 2 days of weather']);
    expect(garden!.weather.days.at(-1)).toEqual(['2021-07-02', 15, 27, 0]);
    expect(garden!.weather.extra?.days).toEqual([['2021-07-01', 12]]);
    expect(garden!.beds).toBe(before.beds);
    store.getState().undo();
    expect(store.getState().garden).toBe(before);
  });

  test('more than a file can hold changes nothing', async () => {
    const store = await open();
    const days = Array.from({ length: mostWeatherDays }, (_unused, at) => ({
      day: dayOf('1905-01-01') + at,
      values: { rain: 0 },
    }));
    expect(store.getState().bringWeather(days)).toMatchObject({ error: { kind: 'too many days' } });
    expect(store.getState().past).toEqual([]);
  });

  test('days no file could hold are refused like any other change', async () => {
    const store = await open();
    const result = store.getState().bringWeather([day('2021-07-01', { rain: -3 })]);
    expect(result).toMatchObject({ error: { kind: 'broken', where: 'weather of 2021-07-01' } });
    expect(store.getState().past).toEqual([]);
  });
});

test('a look at the thermometer is kept, replaced and taken out again', async () => {
  const store = await open();
  const look = (lowestCelsius: number | null, highestCelsius: number | null) =>
    store.getState().readThermometer({ date: '2021-06-19', lowestCelsius, highestCelsius });
  expect(look(11, 24).ok).toBe(true);
  expect(look(10.5, 24).ok).toBe(true);
  expect(store.getState().garden!.weather.thermometer).toEqual([['2021-06-19', 10.5, 24]]);
  expect(store.getState().past.map(({ label }) => label)).toEqual([
    'Log the thermometer',
    'Log the thermometer',
  ]);
  expect(look(30, 24)).toMatchObject({ error: { kind: 'broken', where: 'weather of 2021-06-19' } });
  expect(look(null, null).ok).toBe(true);
  expect(store.getState().garden!.weather.thermometer).toEqual([]);
});
