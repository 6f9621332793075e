import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../../app/core/days';
import { parseGarden } from '../../../app/document/parse';
import type { Garden, WeatherRow } from '../../../app/document/schema';
import { serializeGarden } from '../../../app/document/serialize';
import { dayOriginsOf, downloadedDays, weatherFrom } from '../../../app/document/weatherFrom';
import { weatherKnown } from '../../../app/document/weatherKnown';
import { recordOf } from '../../../app/document/weatherRecord';
import {
  daysToAsk,
  roundedDegrees,
  withDownload,
} from '../../../app/document/weather/withDownload';
import { exampleGarden } from '../exampleGarden';

const place = { latitudeDegrees: 47.2, longitudeDegrees: 8.5 };

/** The example, its weather cleared, with the rows given for each way of knowing. */
function gardenWith(rows: {
  download?: WeatherRow[];
  record?: WeatherRow[];
  gauge?: [string, number][];
  thermometer?: [string, number | null, number | null][];
}): Garden {
  const garden = exampleGarden();
  const { extra: _extra, thermometer: _thermometer, ...weather } = garden.weather;
  return {
    ...garden,
    events: (rows.gauge ?? []).map(([date, millimetres], at) => ({
      id: `gauge-${at}`,
      date,
      kind: 'rain gauge',
      millimetres,
    })),
    weather: {
      ...weather,
      days: rows.record ?? [],
      thermometer: rows.thermometer ?? [],
      download: {
        ...place,
        agreedOn: '2021-06-01',
        askedOn: '2021-06-01',
        days: rows.download ?? [],
      },
    },
  };
}
const today = dayOf('2021-06-20');

describe('what is known of a day', () => {
  const rows = (garden: Garden) =>
    recordOf(garden, today).map((row) => [
      row.minimumCelsius,
      row.maximumCelsius,
      row.rainMillimetres,
    ]);

  test('own readings go before the record, the record before what was downloaded, value by value', () => {
    const day = '2021-06-02';
    const download: WeatherRow[] = [[day, 8, 20, 5]];
    expect(rows(gardenWith({ download }))).toEqual([[8, 20, 5]]);
    expect(rows(gardenWith({ download, record: [[day, 9, null, null]] }))).toEqual([[9, 20, 5]]);
    expect(
      rows(
        gardenWith({
          download,
          record: [[day, 9, null, null]],
          gauge: [[day, 2]],
          thermometer: [[day, null, 21]],
        }),
      ),
    ).toEqual([[9, 21, 2]]);
  });

  test('where both cannot be, the lesser gives way', () => {
    const day = '2021-06-02';
    expect(
      rows(gardenWith({ download: [[day, 8, 20, 5]], record: [[day, 22, null, null]] })),
    ).toEqual([[22, null, 5]]);
    expect(rows(gardenWith({ record: [[day, 8, 20, 5]], thermometer: [[day, null, 3]] }))).toEqual([
      [null, 3, 5],
    ]);
  });

  test('days after today are nobody’s knowledge', () => {
    expect(rows(gardenWith({ download: [['2021-06-21', 8, 20, 5]] }))).toEqual([]);
  });
});

test('how each value is known is counted, and the sums are told from a gauge’s', () => {
  const garden = gardenWith({
    download: [
      ['2021-06-01', 8, 20, 5],
      ['2021-06-02', 8, 20, 5],
      ['2021-06-05', 8, 20, 5],
    ],
    record: [['2021-06-02', 9, 19, null]],
    gauge: [
      ['2021-06-01', 1],
      ['2021-06-20', 0],
    ],
    thermometer: [['2021-06-05', 7, null]],
  });
  const [first, last] = [dayOf('2021-06-01'), dayOf('2021-06-20')];
  expect(weatherFrom(garden, first, last)).toEqual({
    // the 5th: lowest by the thermometer, highest downloaded; the 3rd and 4th lie in a short gap
    temperatures: { own: 0, record: 1, downloaded: 2, filled: 2, imagined: 15 },
    rain: { own: 2, record: 0, downloaded: 2, filled: 2, imagined: 14 },
  });
  expect([...downloadedDays(garden, first, last)].sort()).toEqual(
    ['2021-06-01', '2021-06-02', '2021-06-05'].map(dayOf),
  );
  expect(weatherKnown(garden, today).downloaded).toBe(3);
  expect(weatherKnown(exampleGarden(), today).downloaded).toBe(0);
});

test('each day is called by where it is from, the least sure first', () => {
  const garden = gardenWith({
    download: [
      ['2021-06-01', 8, 20, 5],
      ['2021-06-02', 8, 20, 5],
    ],
    record: [
      ['2021-06-02', 9, 19, 2],
      ['2021-06-03', 9, 19, 0],
      ['2021-06-04', 9, 19, null],
    ],
    gauge: [
      ['2021-06-01', 1],
      ['2021-06-04', 2],
      ['2021-06-06', 3],
    ],
  });
  const [first, last] = [dayOf('2021-06-01'), dayOf('2021-06-20')];
  expect(
    [...dayOriginsOf(garden, first, last)].map(([day, from]) => [textFromDay(day), from]).sort(),
  ).toEqual([
    ['2021-06-01', 'downloaded'],
    ['2021-06-02', 'record'],
    ['2021-06-03', 'record'],
    ['2021-06-04', 'own and record'],
    ['2021-06-06', 'own'],
  ]);
  expect(dayOriginsOf(garden, first + 5, last).size).toBe(1);
});

test('counts are of every day, whatever is known', () => {
  for (const garden of [exampleGarden(), gardenWith({})]) {
    const counts = weatherFrom(garden, dayOf('2021-01-01'), today);
    for (const part of [counts.temperatures, counts.rain])
      expect(Object.values(part).reduce((sum, one) => sum + one, 0)).toBe(
        today - dayOf('2021-01-01') + 1,
      );
  }
});

describe('which days are worth asking for', () => {
  const bare = (): Garden => {
    const { download: _download, ...weather } = gardenWith({}).weather;
    return { ...exampleGarden(), plantings: [], applications: [], mowings: [], beds: [], weather };
  };
  test('three whole years and this one, up to yesterday', () => {
    expect(daysToAsk(bare(), place, today, today)).toEqual({
      firstDay: '2018-01-01',
      lastDay: '2021-06-19',
    });
  });
  test('back to the season of the first entry of an older garden', () => {
    const garden = { ...bare(), mowings: exampleGarden().mowings.slice(0, 1) };
    garden.mowings = garden.mowings.map((mowing) => ({ ...mowing, date: '2015-07-04' }));
    expect(daysToAsk(garden, place, today, today)?.firstDay).toBe('2015-01-01');
  });
  test('no day to come, though the garden looks at one', () => {
    expect(daysToAsk(bare(), place, today + 200, today)?.lastDay).toBe('2021-06-19');
  });
  test('only what is not there yet; all of it for another place; nothing when all is there', () => {
    const merged = withDownload(
      bare(),
      ['2018-01-01', '2021-06-14'].map((date) => ({ day: dayOf(date), values: { rain: 1 } })),
      { ...place, firstDay: '2018-01-01', lastDay: '2021-06-19' },
      '2021-06-20',
    );
    if (!merged.ok) throw new Error('too many');
    const garden = { ...bare(), weather: { ...bare().weather, download: merged.value.download } };
    expect(daysToAsk(garden, place, today, today)).toEqual({
      firstDay: '2021-06-15',
      lastDay: '2021-06-19',
    });
    expect(daysToAsk(garden, { ...place, longitudeDegrees: 9 }, today, today)?.firstDay).toBe(
      '2018-01-01',
    );
    expect(daysToAsk(garden, place, dayOf('2021-06-15'), today)).toBeNull();
  });
});

describe('taking downloaded days', () => {
  const day = (date: string, rain: number) => ({ day: dayOf(date), values: { rain } });
  const asked = { ...place, firstDay: '2021-06-01', lastDay: '2021-06-19' };

  test('a place is rounded to a tenth of a degree', () => {
    expect([52.549, -0.06, -33.87].map(roundedDegrees)).toEqual([52.5, -0.1, -33.9]);
  });

  test('new days are put in order, the record stays as it was, and the file holds them', () => {
    const before = gardenWith({
      download: [['2021-06-03', 8, 20, 5]],
      record: [['2021-06-02', 9, 19, 0]],
    });
    const merged = withDownload(
      before,
      [day('2021-06-02', 1), day('2021-06-04', 2)],
      asked,
      '2021-06-20',
    );
    if (!merged.ok) throw new Error('too many');
    expect(merged.value).toMatchObject({ added: 2, replaced: 0 });
    expect(merged.value.download).toMatchObject({ agreedOn: '2021-06-01', askedOn: '2021-06-20' });
    const after = { ...before, weather: { ...before.weather, download: merged.value.download } };
    expect(after.weather.days).toBe(before.weather.days);
    const parsed = parseGarden(serializeGarden(after));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
    expect(parsed.value.weather.download?.days).toEqual([
      ['2021-06-02', null, null, 1],
      ['2021-06-03', 8, 20, 5],
      ['2021-06-04', null, null, 2],
    ]);
  });

  test('days of another place go out, and the agreement is one of that day', () => {
    const before = gardenWith({ download: [['2021-06-03', 8, 20, 5]] });
    const merged = withDownload(
      before,
      [day('2021-06-02', 1)],
      { ...asked, longitudeDegrees: 9 },
      '2021-06-20',
    );
    expect(merged).toMatchObject({
      ok: true,
      value: {
        added: 1,
        replaced: 1,
        download: {
          longitudeDegrees: 9,
          agreedOn: '2021-06-20',
          days: [['2021-06-02', null, null, 1]],
        },
      },
    });
  });
});

test.each([
  [
    'days that fall back',
    [
      ['2021-06-03', 8, 20, 5],
      ['2021-06-02', 8, 20, 5],
    ],
  ],
  ['a lowest above its highest', [['2021-06-03', 21, 20, 5]]],
] as [string, WeatherRow[]][])('a file with %s is refused at its place', (_name, download) => {
  const parsed = parseGarden(JSON.stringify(gardenWith({ download })));
  expect(parsed).toMatchObject({ ok: false, error: { kind: 'broken' } });
  expect(parsed.ok ? '' : (parsed.error as { where: string }).where).toMatch(/weather/);
});
