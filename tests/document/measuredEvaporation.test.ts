import { describe, expect, test } from 'vitest';
import { dayOf, dayOfYear } from '../../app/core/days';
import { dayKinds } from '../../app/core/season/input';
import { penmanMonteith, type MeasuredDay } from '../../app/core/soil/penmanMonteith';
import { bedSeason } from '../../app/document/seasonInput';
import type { ExtraWeather, Garden } from '../../app/document/schema';
import { likelyGaps } from '../../app/tables/weatherGaps';
import { exampleGarden } from './exampleGarden';

const today = dayOf('2021-06-20');
const weatherOf = (garden: Garden, bedId = 'bed-1') => bedSeason(garden, bedId, today).weather;
function withExtra(extra: ExtraWeather | undefined, elevationMetres?: number): Garden {
  const garden = exampleGarden();
  return {
    ...garden,
    garden: { ...garden.garden, ...(elevationMetres === undefined ? {} : { elevationMetres }) },
    weather: {
      ...garden.weather,
      days: [
        ['2021-06-18', 12, 25, 0],
        ['2021-06-19', 13, 24, 2],
        ['2021-06-20', 11, 22, 0],
      ],
      ...(extra ? { extra } : {}),
    },
  };
}
const first = bedSeason(withExtra(undefined), 'bed-1', today).firstDay;
const at = (series: Float64Array | undefined, date: string) => series?.[dayOf(date) - first];
const june18: MeasuredDay = {
  minimumCelsius: 12,
  maximumCelsius: 25,
  latitudeDegrees: 47.2,
  dayOfYear: dayOfYear(dayOf('2021-06-18')),
  elevationMetres: 0,
  humidity: null,
  wind: null,
  sun: null,
};
const gaps = likelyGaps('inland');

describe('evapotranspiration of days on which more than temperatures was measured', () => {
  test('without such columns, or with wind alone, nothing changes', () => {
    expect(weatherOf(withExtra(undefined)).referenceEvapotranspiration).toBeUndefined();
    const windy = withExtra({ columns: ['wind m/s at 2 m'], days: [['2021-06-18', 3]] });
    expect(weatherOf(windy).referenceEvapotranspiration).toBeUndefined();
  });

  test('humidity or light of a day is used, other days are left to their temperatures', () => {
    const series = weatherOf(
      withExtra({
        columns: ['wind m/s at 2 m', 'dew point deg C', 'sunshine h'],
        days: [
          ['2021-06-18', 3, 9, null],
          ['2021-06-19', null, null, 7],
          ['2021-06-20', 2, null, null],
        ],
      }),
    ).referenceEvapotranspiration;
    expect(at(series, '2021-06-17')).toBeNaN();
    expect(at(series, '2021-06-20')).toBeNaN();
    expect(at(series, '2021-06-18')).toBe(
      penmanMonteith(
        {
          ...june18,
          humidity: { kind: 'dew point', celsius: 9 },
          wind: { metresPerSecond: 3, heightMetres: 2 },
        },
        gaps,
      ),
    );
    expect(at(series, '2021-06-19')).toBe(
      penmanMonteith(
        {
          ...june18,
          minimumCelsius: 13,
          maximumCelsius: 24,
          dayOfYear: june18.dayOfYear + 1,
          sun: { kind: 'hours', hours: 7 },
        },
        gaps,
      ),
    );
  });

  test.each<[ExtraWeather['columns'], number[], Partial<MeasuredDay>]>([
    [['humidity %'], [60], { humidity: { kind: 'mean relative', percent: 60 } }],
    [
      ['humidity %', 'lowest humidity %', 'highest humidity %'],
      [60, 40, 90],
      { humidity: { kind: 'relative', lowestPercent: 40, highestPercent: 90 } },
    ],
    [['radiation MJ/m2', 'sunshine h'], [20, 3], { sun: { kind: 'radiation', megajoules: 20 } }],
  ])('the surest of %j counts', (columns, values, given) => {
    const garden = withExtra({ columns, days: [['2021-06-18', ...values]] }, 400);
    expect(at(weatherOf(garden).referenceEvapotranspiration, '2021-06-18')).toBe(
      penmanMonteith({ ...june18, elevationMetres: 400, ...given }, gaps),
    );
  });

  test('the lowest humidity alone is no measure of a day', () => {
    const garden = withExtra({ columns: ['lowest humidity %'], days: [['2021-06-18', 40]] });
    expect(weatherOf(garden).referenceEvapotranspiration).toBeUndefined();
  });

  test('never on an imagined day, though the file has a value for it', () => {
    const garden = withExtra({ columns: ['dew point deg C'], days: [['2021-08-01', 12]] });
    expect(weatherOf(garden).kind[dayOf('2021-08-01') - first]).toBe(dayKinds.indexOf('imagined'));
    expect(weatherOf(garden).referenceEvapotranspiration).toBeUndefined();
  });

  test('wind and light outside say nothing of a bed under glass', () => {
    const garden = withExtra({ columns: ['dew point deg C'], days: [['2021-06-18', 9]] });
    expect(weatherOf(garden, 'bed-2').referenceEvapotranspiration).toBeUndefined();
    expect(Math.max(...weatherOf(garden, 'bed-2').rainMillimetres)).toBe(0);
  });
});
