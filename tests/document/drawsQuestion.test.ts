import { describe, expect, test } from 'vitest';
import { dayFromParts, dayOf, partsFromDay, textFromDay } from '../../app/core/days';
import { runDraws } from '../../app/core/season/draws/runDraws';
import { dayKinds } from '../../app/core/season/input';
import { drawsQuestion, drawsQuestions, drawsSeed } from '../../app/document/drawsQuestion';
import { nitrateTests } from '../../app/document/nitrateTests';
import { bedSeason } from '../../app/document/seasonInput';
import type { Application, Garden } from '../../app/document/schema';
import { limits } from '../../app/tables/thresholds';
import { exampleGarden } from './exampleGarden';

const today = dayOf('2021-06-20');
const imagined = dayKinds.indexOf('imagined');
const changed = (change: (garden: Garden) => void): Garden => {
  const garden = exampleGarden();
  change(garden);
  return garden;
};

/** Invented days from the start of one year to a day of another, each year wetter than the one before. */
function recordFrom(firstYear: number, last: string): Garden['weather']['days'] {
  const days: Garden['weather']['days'] = [];
  for (let day = dayFromParts(firstYear, 1, 1); day <= dayOf(last); day++) {
    const { year, month, dayOfMonth } = partsFromDay(day);
    const warmth = 10 - 8 * Math.cos((2 * Math.PI * (month - 1)) / 12);
    days.push([
      textFromDay(day),
      warmth - 4,
      warmth + 5,
      dayOfMonth % 4 === 0 ? year - firstYear + 2 : 0,
    ]);
  }
  return days;
}
const withRecord = (firstYear: number, last = '2021-06-20'): Garden =>
  changed((garden) => {
    garden.weather.days = recordFrom(firstYear, last);
  });

describe('where the weather to come is from', () => {
  test('from the monthly normals while fewer than three whole years are known', () => {
    const { weather } = drawsQuestion(withRecord(2019), 'bed-1', today, 10);
    expect(weather).toMatchObject({ kind: 'generated', isRoofed: false });
  });

  test('from each whole year of record where there are three: measured days in place', () => {
    const garden = withRecord(2017);
    const { weather, input } = drawsQuestion(garden, 'bed-1', today, 10);
    if (weather.kind !== 'years') throw new Error('not from years');
    expect(weather.seasons).toHaveLength(4);
    const known = today - input.firstDay;
    for (const [at, season] of weather.seasons.entries()) {
      expect([...season.kind]).toEqual([...input.weather.kind]);
      for (let index = 0; index < season.kind.length; index++) {
        const rain = season.rainMillimetres[index];
        if (index <= known) expect(rain).toBe(input.weather.rainMillimetres[index]);
        // a dry day in every year, or that year's own rain
        else expect([0, at + 2]).toContain(rain);
      }
      expect(season.rainMillimetres.subarray(known + 1)).toContain(at + 2);
    }
  });

  test('the record after today is not looked at, and the answer stays as it is', () => {
    for (const firstYear of [2017, 2020]) {
      const asked = (last: string, change: (row: number) => number) => {
        const garden = withRecord(firstYear, last);
        garden.weather.days = garden.weather.days.map(([date, low, high, rain]) =>
          dayOf(date) > today ? [date, low, high, change(rain ?? 0)] : [date, low, high, rain],
        );
        return drawsQuestion(garden, 'bed-1', today, 6);
      };
      const without = asked('2021-06-20', (rain) => rain);
      const known = asked('2024-12-31', (rain) => rain);
      const flooded = asked('2024-12-31', (rain) => rain + 40);
      expect(known).toEqual(without);
      expect(flooded).toEqual(without);
      expect(runDraws(flooded, limits)).toEqual(runDraws(without, limits));
    }
  });

  test('under glass or film no rain falls, from normals or from years', () => {
    const normals = drawsQuestion(exampleGarden(), 'bed-2', today, 3);
    expect(normals.weather).toMatchObject({ kind: 'generated', isRoofed: true });
    const { weather } = drawsQuestion(withRecord(2017), 'bed-2', today, 3);
    if (weather.kind !== 'years') throw new Error('not from years');
    for (const season of weather.seasons)
      expect(season.rainMillimetres.every((rain) => rain === 0)).toBe(true);
  });

  test('measured evaporation stays measured in every year, and is on no imagined day', () => {
    const garden = withRecord(2017);
    garden.weather.extra = {
      columns: ['humidity %', 'wind m/s'],
      days: [['2021-06-10', 60, 2]],
    } as NonNullable<Garden['weather']['extra']>;
    const { weather, input } = drawsQuestion(garden, 'bed-1', today, 3);
    if (weather.kind !== 'years') throw new Error('not from years');
    for (const season of weather.seasons) {
      const measured = season.referenceEvapotranspiration!;
      expect(measured[dayOf('2021-06-10') - input.firstDay]).toBeGreaterThan(0);
      measured.forEach((value, index) => {
        if (season.kind[index] === imagined) expect(value).toBeNaN();
      });
    }
  });

  test('beds of the same days share one laying out', () => {
    const garden = withRecord(2017);
    garden.beds[1] = { ...garden.beds[0]!, id: 'bed-2' };
    const [one, other] = drawsQuestions(garden, ['bed-1', 'bed-2'], today, 3);
    if (one!.weather.kind !== 'years' || other!.weather.kind !== 'years') throw new Error('years');
    expect(other!.weather.seasons).toBe(one!.weather.seasons);
  });
});

describe('what else is asked', () => {
  test('always under the same seed, with as many draws as wanted', () => {
    for (const bedId of ['bed-1', 'bed-2'])
      expect(drawsQuestion(exampleGarden(), bedId, today, 37)).toMatchObject({
        seed: drawsSeed,
        count: 37,
      });
  });

  test('a layer only thought of is in the season and in what is uncertain; all else is shared', () => {
    const garden = exampleGarden();
    const extra: Application = {
      ...garden.applications[0]!,
      id: 'application-9',
      date: '2021-06-20',
      passedStops: [],
    };
    const before = drawsQuestion(garden, 'bed-1', today, 20);
    const after = drawsQuestion(garden, 'bed-1', today, 20, { extraApplications: [extra] });
    expect(after.input.layers).toHaveLength(before.input.layers.length + 1);
    const { 'application-9': own, ...rest } = after.spread.layers;
    expect(rest).toEqual(before.spread.layers);
    // a part of the same mowing is as heavy as the rest of it
    expect(own!.mass.name).toBe(before.spread.layers['application-1']!.mass.name);
    const ratios = [before, after].map((question) => runDraws(question, limits)!.ratio!);
    expect(ratios[1]!.low).toBeGreaterThan(ratios[0]!.low);
    expect(ratios[1]!.high).toBeGreaterThan(ratios[0]!.high);
  });

  test('a season that is known already is taken as it is, and the question is the same', () => {
    const garden = exampleGarden();
    const known = Object.fromEntries(
      ['bed-1', 'bed-2'].map((id) => [id, { input: bedSeason(garden, id, today) }]),
    );
    const ids = ['bed-2', 'bed-1'];
    const questions = drawsQuestions(garden, ids, today, 5, known);
    expect(questions[0]!.input).toBe(known['bed-2']!.input);
    expect(questions).toEqual(drawsQuestions(garden, ids, today, 5));
  });

  test('nitrate tests after the run’s first day up to today, the later of two on a day', () => {
    const soilTest = (date: string, nitrateMgPerKg: number | null, depthCentimetres = 30) => ({
      id: `test-${date}-${String(nitrateMgPerKg)}`,
      date,
      kind: 'soil test' as const,
      bedId: 'bed-1',
      nitrateMgPerKg,
      organicMatterPercent: null,
      depthCentimetres,
    });
    const garden = changed((one) => {
      one.events = [
        soilTest('2021-06-01', 14),
        soilTest('2021-06-01', 18),
        soilTest('2021-04-15', 9, 15),
        soilTest('2021-05-01', null),
        // what the run starts from, and what is still to come
        soilTest('2021-01-01', 5),
        soilTest('2021-06-21', 50),
        { ...soilTest('2021-06-02', 70), bedId: 'bed-2' },
      ];
    });
    const { tests, input } = drawsQuestion(garden, 'bed-1', today, 5);
    expect(tests.map(({ day, mgPerKg }) => [textFromDay(day), mgPerKg])).toEqual([
      ['2021-04-15', 9],
      ['2021-06-01', 18],
    ]);
    // half the depth, twice the doubt
    expect(tests[0]!.spread).toBeCloseTo(2 * tests[1]!.spread, 12);
    expect(nitrateTests(garden, { ...input, today: dayOf('2021-05-01') })).toHaveLength(1);
  });
});
