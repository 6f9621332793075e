import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { lawnKindOn, lawnWaterShare } from '../../app/document/lawnKind';
import { clippingsOf } from '../../app/document/materialValues';
import { parseGarden } from '../../app/document/parse';
import { lawnKinds, type Garden, type Lawn, type Mowing } from '../../app/document/schema';
import { bundledRecord } from '../../app/tables/bundledRecords';
import { droughtLine } from '../../app/tables/lawnGrowthWater';

const text = readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8');
const parsed = parseGarden(text);
if (!parsed.ok) throw new Error(parsed.error.kind);
const sample: Garden = parsed.value;
const back = sample.lawns.find(({ name }) => name.startsWith('Back')) as Lawn;
const record = bundledRecord('new-york')!;
/** The sample's place with the whole of its real record. */
const garden: Garden = {
  ...sample,
  garden: { ...sample.garden, today: '2014-01-01' },
  weather: {
    ...sample.weather,
    days: record.rainMillimetres.map((rain, at) => [
      textFromDay(dayOf(record.firstDay) + at),
      record.minimumCelsius[at]!,
      record.maximumCelsius[at]!,
      rain,
    ]),
  },
};
const mowing = (date: string, kind: Mowing['kind'] = null): Mowing => ({
  ...sample.mowings[0]!,
  date,
  kind,
});

describe('clippings turn lean in drought by themselves', () => {
  // vega-datasets, New York 2013: under 1 mm from 15 to 21 July at 35-38 C; 176 mm from 7 to 14 June
  test('New York, 20 July 2013 is dry, 15 June is not', () => {
    expect(lawnWaterShare(garden, 'cool', dayOf('2013-07-20'))).toBeLessThan(droughtLine.typical);
    expect(lawnWaterShare(garden, 'cool', dayOf('2013-06-15'))).toBeGreaterThan(0.8);
    expect(clippingsOf(garden, mowing('2013-07-20')).id).toBe('grass-fresh-lean-summer');
    expect(clippingsOf(garden, mowing('2013-06-15')).id).toBe('grass-fresh-generic');
  });

  test('what the gardener said of a mowing stands', () => {
    expect(clippingsOf(garden, mowing('2013-07-20', 'fed')).id).toBe('grass-fresh-fertilised');
    expect(clippingsOf(garden, mowing('2013-07-20', 'seed-headed')).id).toBe('grass-seed-headed');
  });

  test('fed, ordinary and clover-rich lawns turn lean, poor ones stay what they are', () => {
    for (const kind of lawnKinds) {
      const turned = lawnKindOn(garden, { ...back, kind }, dayOf('2013-07-20'));
      const isLush = kind === 'fed' || kind === 'ordinary' || kind === 'clover-rich';
      expect(turned, kind).toBe(isLush ? 'lean' : kind);
    }
  });

  test('every mowing of the sample garden is of its lawn’s own kind', () => {
    for (const one of sample.mowings) {
      const lawn = sample.lawns.find(({ id }) => id === one.lawnId)!;
      expect(lawnKindOn(sample, lawn, dayOf(one.date)), one.date).toBe(lawn.kind);
    }
  });

  test('weather that nobody measured makes no drought', () => {
    const bare: Garden = { ...garden, weather: { ...garden.weather, days: [] } };
    expect(lawnWaterShare(bare, 'cool', dayOf('2013-07-20'))).toBeNull();
    const half: Garden = {
      ...garden,
      weather: { ...garden.weather, days: garden.weather.days.filter((_one, at) => at % 2 === 0) },
    };
    expect(lawnWaterShare(half, 'cool', dayOf('2013-07-20'))).toBeNull();
    expect(lawnKindOn(bare, back, dayOf('2013-07-20'))).toBe(back.kind);
  });

  test('only the days before the mowing count', () => {
    const cut: Garden = {
      ...garden,
      weather: {
        ...garden.weather,
        days: garden.weather.days.filter(([date]) => date < '2013-07-20'),
      },
    };
    expect(lawnWaterShare(cut, 'cool', dayOf('2013-07-20'))).toBe(
      lawnWaterShare(garden, 'cool', dayOf('2013-07-20')),
    );
  });

  test('of a mowing that lies ahead, nothing after the garden’s day is looked at', () => {
    expect(clippingsOf(garden, mowing('2013-07-20')).id).toBe('grass-fresh-lean-summer');
    const then: Garden = { ...garden, garden: { ...garden.garden, today: '2013-06-15' } };
    expect(clippingsOf(then, mowing('2013-07-20')).id).toBe('grass-fresh-generic');
  });

  test('rain of the gardener’s own gauge ends it', () => {
    const rained: Garden = {
      ...garden,
      events: ['2013-07-06', '2013-07-10', '2013-07-14'].map((date, at) => ({
        id: `event-${String(at)}`,
        date,
        kind: 'rain gauge',
        millimetres: 40,
      })),
    };
    expect(lawnKindOn(rained, back, dayOf('2013-07-20'))).toBe('ordinary');
  });
});
