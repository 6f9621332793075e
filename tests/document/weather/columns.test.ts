import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../../app/core/days';
import { bundledRecord } from '../../../app/tables/bundledRecords';
import { readWeather } from '../../../app/document/weather/readWeather';
import { columnsSeen } from '../../../app/document/weather/tableLayout';
import type { WeatherOptions } from '../../../app/document/weather/weatherTypes';

const read = (text: string, options: WeatherOptions = {}) => {
  const result = readWeather(text, options);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { preview, days } = result.value;
  return {
    preview,
    days,
    values: Object.fromEntries(days.map(({ day, values }) => [textFromDay(day), values])),
  };
};
const wanted = {
  '2021-05-01': { lowest: 7.1, highest: 18.4, rain: 0 },
  '2021-05-02': { lowest: 8, highest: 21.5, rain: 3.2 },
  '2021-05-13': { lowest: -0.5, highest: 9, rain: 12.5 },
};
/** Usual weather of a temperate place, made up. */
const normals = {
  minimumCelsius: [-3, -2, 1, 5, 10, 14, 17, 16, 12, 7, 3, -1],
  maximumCelsius: [4, 6, 10, 16, 21, 26, 29, 28, 24, 17, 11, 6],
  rainMillimetres: [80, 70, 90, 90, 95, 100, 105, 100, 95, 85, 85, 90],
  wetDays: [9, 8, 9, 9, 10, 9, 9, 8, 8, 8, 8, 9],
};

describe('one and the same three days, however they are written', () => {
  test.each<[string, string, WeatherOptions]>([
    [
      'commas and points',
      'date,tmax,tmin,rain\n2021-05-01,18.4,7.1,0.0\n2021-05-02,21.5,8.0,3.2\n2021-05-13,9.0,-0.5,12.5',
      { temperature: 'C' },
    ],
    [
      'semicolons and decimal commas, days first with dots',
      'Datum;Tmin (\u00B0C);Tmax (\u00B0C);Rain (mm)\r\n01.05.2021;7,1;18,4;0,0\r\n02.05.2021;8,0;21,5;3,2\r\n13.05.2021;-0,5;9,0;12,5\r\n',
      {},
    ],
    [
      'tabs, months first',
      'Date\tHigh (C)\tLow (C)\tPrecip (mm)\n5/1/2021\t18.4\t7.1\tT\n5/2/2021\t21.5\t8\t3.2\n5/13/2021\t9\t-0.5\t12.5',
      {},
    ],
    [
      'days first with slashes',
      'Day,Low \u00B0C,High \u00B0C,Rainfall mm\n',
      { columns: { date: 'Day' } },
    ],
    [
      'year, month and day apart, beside things nobody wants',
      'YYYY,MM,DD,temp_mean,temp_min,temp_max,precip_mm,pressure\n2021,5,1,12,7.1,18.4,0,1013\n2021,5,2,14,8,21.5,3.2,1012\n2021,5,13,4,-0.5,9,12.5,1001',
      { temperature: 'C' },
    ],
    [
      'a station program with lines before its header and a remark',
      'My station\nExported by hand\n\nDate,Min Temp (C),Max Temp (C),Rain (mm)\n# winter time\n2021-05-01T00:00,7.1,18.4,0\n2021-05-02T00:00,8,21.5,3.2\n2021-05-13T00:00,-0.5,9,12.5',
      {},
    ],
    [
      'days with the month in words',
      'Date,Low (\u00B0C),High (\u00B0C),Rain (mm)\n1 May 2021,7.1,18.4,0\n2 May 2021,8,21.5,3.2\n"May 13, 2021",-0.5,9,12.5',
      {},
    ],
    [
      'packed dates, everything in quotes',
      '"date","t_max (C)","t_min (C)","precipitation (mm)"\n"20210501","18.4","7.1","0"\n"20210502","21.5","8","3.2"\n"20210513","9","-0.5","12.5"',
      {},
    ],
    [
      'tenths',
      'date,tmax,tmin,rain\n2021-05-01,184,71,0\n2021-05-02,215,80,32\n2021-05-13,90,-5,125',
      {},
    ],
    [
      'lines that end the old way',
      'date,tmax (C),tmin (C),rain (mm)\r2021-05-01,18.4,7.1,0\r2021-05-02,21.5,8,3.2\r2021-05-13,9,-0.5,12.5\r',
      {},
    ],
    [
      'a byte order mark and no header',
      '\uFEFF2021-05-01,18.4,7.1,0\n2021-05-02,21.5,8,3.2\n2021-05-13,9,-0.5,12.5',
      { columns: { date: 1, highest: 2, lowest: 3, rain: 4 }, temperature: 'C' },
    ],
  ])('%s', (name, text, options) => {
    const whole = name.startsWith('days first with slashes')
      ? `${text}01/05/2021,7.1,18.4,0\n02/05/2021,8,21.5,3.2\n13/05/2021,-0.5,9,12.5`
      : text;
    const { values, preview } = read(whole, options);
    expect(values).toEqual(wanted);
    expect(preview.unclear).toEqual([]);
    expect([preview.firstDay, preview.lastDay, preview.days]).toEqual([
      '2021-05-01',
      '2021-05-13',
      3,
    ]);
    expect(preview.gaps).toEqual({
      first: [
        { from: '2021-05-03', to: '2021-05-12', days: 10, missing: ['lowest', 'highest', 'rain'] },
      ],
      total: 1,
    });
  });

  test('Fahrenheit and inches named in the headers', () => {
    const { values } = read(
      'date,high (F),low (F),rain (in)\n2021-05-01,65.12,44.78,0\n2021-05-02,70.7,46.4,0.126\n',
    );
    expect(values).toEqual({
      '2021-05-01': { highest: 18.4, lowest: 7.1, rain: 0 },
      '2021-05-02': { highest: 21.5, lowest: 8, rain: 3.2 },
    });
  });
});

describe('what a file does not say', () => {
  const short = 'date,tmax,tmin,rain\n2021-05-01,52,41,0\n2021-05-02,55,43,0.12\n';

  test('a short table that may be either unit is asked about', () => {
    const { preview } = read(short);
    expect(preview.unclear).toEqual([{ kind: 'temperature unit', taken: 'C' }]);
  });

  test('the usual weather of the place settles it', () => {
    const { preview, values } = read(short, { normals });
    expect([preview.temperature, preview.rain, preview.unclear]).toEqual(['F', 'in', []]);
    expect(values['2021-05-02']).toEqual({ highest: 12.778, lowest: 6.111, rain: 3.048 });
  });

  test('what was said is never doubted', () => {
    const { preview } = read(short, { temperature: 'C', rain: 'mm', normals });
    expect([preview.temperature, preview.rain, preview.unclear]).toEqual(['C', 'mm', []]);
  });

  test('dates of which no part is above twelve: the order in which they follow each other', () => {
    const rows = (dates: string[]) =>
      `date,rain (mm)\n${dates.map((date) => `${date},1`).join('\n')}\n`;
    expect(read(rows(['01/02/2021', '02/02/2021', '03/02/2021'])).preview.dates).toBe('dmy');
    expect(read(rows(['02/01/2021', '02/02/2021', '02/03/2021'])).preview.dates).toBe('mdy');
    const single = read(rows(['02/01/2021']));
    expect(single.preview.unclear).toEqual([{ kind: 'date order', taken: 'dmy' }]);
    expect(read(rows(['02/01/2021']), { dates: 'mdy' }).values).toEqual({
      '2021-02-01': { rain: 1 },
    });
  });

  test('one date written wrongly does not turn all the others round', () => {
    const dates = Array.from({ length: 25 }, (_unused, at) => `${at + 1}/5/2021,1`);
    const { preview } = read(`date,rain (mm)\n${dates.join('\n')}\n5/31/2021,1\n`);
    expect(preview.dates).toBe('dmy');
    expect(preview.refused.first).toEqual([
      { line: 27, day: null, reason: { kind: 'no day', text: '5/31/2021' } },
    ]);
  });

  test('without headers the values tell which column is which', () => {
    const rows = Array.from(
      { length: 12 },
      (_unused, at) =>
        `${at % 3 === 0 ? 4.5 : 0};${7 + at};2021-06-${String(at + 1).padStart(2, '0')};${15 + at / 2}`,
    );
    const { values, preview } = read(rows.join('\n'), { temperature: 'C' });
    expect(values['2021-06-02']).toEqual({ rain: 0, lowest: 8, highest: 15.5 });
    expect(preview.understood.map(({ role, where, how }) => [role, where, how])).toEqual([
      ['date', 'column 3', 'by its values'],
      ['rain', 'column 1', 'by its values'],
      ['highest', 'column 4', 'by its values'],
      ['lowest', 'column 2', 'by its values'],
    ]);
  });

  const days = (row: (at: number) => string): string =>
    Array.from(
      { length: 12 },
      (_unused, at) => `2021-06-${String(at + 1).padStart(2, '0')},${row(at)}`,
    ).join('\n');

  test('lowest, mean and highest are told apart without headers', () => {
    const { preview } = read(
      days((at) => `${10 + at},${15 + at},${20 + at},0`),
      { temperature: 'C' },
    );
    expect(preview.understood.map(({ role, where }) => [role, where])).toEqual([
      ['date', 'column 1'],
      ['rain', 'column 5'],
      ['highest', 'column 4'],
      ['lowest', 'column 2'],
    ]);
  });

  test('with a column of humidity besides, nothing is guessed', () => {
    expect(readWeather(days((at) => `${10 + at},${20 + at},${70 + at},0`))).toMatchObject({
      error: { kind: 'no measure column' },
    });
  });

  test('headers of another language can be named', () => {
    const text = 'Tag;Hoch;Tief\n01.05.2021;18,4;7,1\n';
    expect(readWeather(text)).toMatchObject({ ok: true });
    const { values } = read(text, {
      columns: { date: 'Tag', highest: 'Hoch', lowest: 'tief' },
      temperature: 'C',
    });
    expect(values).toEqual({ '2021-05-01': { highest: 18.4, lowest: 7.1 } });
  });

  test('a column that was named and is not there; no dates; no values', () => {
    expect(readWeather('a,b\n2021-05-01,3\n', { columns: { highest: 'c' } })).toMatchObject({
      error: { kind: 'no such column', role: 'highest', named: 'c' },
    });
    expect(readWeather('tmax,tmin\n3,1\n4,2\n')).toMatchObject({
      error: { kind: 'no date column' },
    });
    expect(readWeather('date,mood\n2021-05-01,good\n')).toMatchObject({
      error: { kind: 'no measure column', headers: ['date', 'mood'] },
    });
    expect(readWeather('date,rain (mm)\nx,1\n')).toMatchObject({
      error: { kind: 'no days', refused: { total: 1 } },
    });
    expect(readWeather(' \n\n')).toEqual({ ok: false, error: { kind: 'empty' } });
    expect(readWeather('PK\u0003\u0004\u0000\u0000')).toEqual({
      ok: false,
      error: { kind: 'not text' },
    });
  });
});

describe('what cannot be is refused with its line, and the rest is kept', () => {
  const lines = [
    'date,tmax (C),tmin (C),rain (mm)',
    '2021-05-01,18,7,0',
    '2021-05-02,5,9,1',
    '2021-05-03,18,7,-2',
    '2021-05-04,99,7,0',
    '2021-05-01,18,7,0',
    '2021-02-29,18,7,0',
    '2021-05-05,warm,7,0',
    '2021-05-06,NA,,-9999',
    '1850-05-06,1,0,0',
    'the end',
    `2021-05-07,1,0,0${' '.repeat(9000)}`,
  ];
  const { preview, values } = read(lines.join('\n'));

  test('each with its reason', () => {
    expect(preview.refused.first.map(({ line, reason }) => [line, reason.kind])).toEqual([
      [11, 'too few cells'],
      [12, 'line too long'],
      [4, 'below nought'],
      [5, 'out of range'],
      [6, 'day twice'],
      [7, 'no day'],
      [8, 'no number'],
      [10, 'year beyond belief'],
      [3, 'highest below lowest'],
    ]);
  });

  test('missing is not nought', () => {
    expect(values).toEqual({
      '2021-05-01': { highest: 18, lowest: 7, rain: 0 },
      '2021-05-02': { rain: 1 },
      '2021-05-03': { highest: 18, lowest: 7 },
      '2021-05-04': { lowest: 7, rain: 0 },
      '2021-05-05': { lowest: 7, rain: 0 },
    });
  });

  test('the list is cut at a hundred, the count is not', () => {
    const many = `date,rain (mm)\n2021-01-01,1\n${'x,1\n'.repeat(5000)}`;
    const { refused } = read(many).preview;
    expect([refused.first.length, refused.total]).toEqual([100, 5000]);
  });
});

describe('what a station measured besides', () => {
  test('wind from its height and unit, humidity, dew point, sunshine, radiation', () => {
    const { values, preview } = read(
      'date,tmax (C),tmin (C),wind (km/h),RH max (%),RH min (%),humidity (%),dew point (C),sunshine (min),radiation (W/m2)\n2021-05-01,20,10,18,90,40,66,9.5,300,200\n',
      { windHeightMetres: 2 },
    );
    expect(values['2021-05-01']).toEqual({
      highest: 20,
      lowest: 10,
      wind: 5,
      'highest humidity': 90,
      'lowest humidity': 40,
      humidity: 66,
      'dew point': 9.5,
      sunshine: 5,
      radiation: 17.28,
    });
    expect(preview.windHeightMetres).toBe(2);
  });

  test('gusts, directions and soil are left alone', () => {
    const { preview } = read(
      'date,rain (mm),max wind gust (km/h),wind direction,soil temp max,snow depth\n2021-05-01,1,50,180,12,0\n',
    );
    expect(preview.understood.map(({ role }) => role)).toEqual(['date', 'rain']);
    expect(preview.unused).toHaveLength(4);
  });
});

describe('real records', () => {
  const data = join(import.meta.dirname, '../../../node_modules/vega-datasets/data');

  test('Seattle 2012-2015 (vega-datasets 3.2.1): every day, units told by the values', () => {
    const { preview, values } = read(readFileSync(join(data, 'seattle-weather.csv'), 'utf8'));
    expect([preview.firstDay, preview.lastDay]).toEqual(['2012-01-01', '2015-12-31']);
    expect([preview.days, preview.wholeDays]).toEqual([1461, 1461]);
    expect([preview.gaps.total, preview.refused.total, preview.unclear]).toEqual([0, 0, []]);
    expect([preview.temperature, preview.rain]).toEqual(['C', 'mm']);
    expect(values['2012-01-02']).toMatchObject({ rain: 10.9, highest: 10.6, lowest: 2.8 });
  });

  test('New York is the record that comes with the program', () => {
    const csv = readFileSync(join(data, 'weather.csv'), 'utf8');
    const [header, ...lines] = csv.split('\n');
    const own = lines.filter((line) => line.startsWith('New York'));
    const { days } = read([header, ...own].join('\n'));
    const record = bundledRecord('new-york');
    if (!record) throw new Error('no record');
    expect(days).toHaveLength(record.rainMillimetres.length);
    days.forEach(({ day, values }) => {
      const at = day - dayOf(record.firstDay);
      expect([values.lowest, values.highest, values.rain]).toEqual([
        record.minimumCelsius[at],
        record.maximumCelsius[at],
        record.rainMillimetres[at],
      ]);
    });
  });

  test('two places in one table: the second place’s days are refused as days twice', () => {
    const { preview } = read(readFileSync(join(data, 'weather.csv'), 'utf8'));
    expect(preview.days).toBe(1461);
    expect(preview.refused.total).toBe(1461);
    expect(preview.refused.first[0]?.reason).toEqual({ kind: 'day twice', firstLine: 2 });
  });
});

// They are so long that whatever takes the square of a text's length for it would not end.
describe('hostile texts are answered at all', () => {
  const within = (text: string, options: WeatherOptions = {}) => {
    const result = readWeather(text, options);
    return result.ok ? 'read' : result.error.kind;
  };

  test('too much text', () => expect(within('x'.repeat(48_000_001))).toBe('too large'));
  test('one enormous line', () => {
    expect(within(`date,rain\n2021-01-01,1\n${'9,'.repeat(10_000_000)}`)).toBe('read');
  });
  test('quotes that never close', () => {
    expect(within(`date,rain (mm)\n2021-01-01,1\n${`"${'x'.repeat(7000)}\n`.repeat(2000)}`)).toBe(
      'read',
    );
  });
  test('millions of line ends of both kinds', () => {
    expect(within('\n'.repeat(20_000_000))).toBe('empty');
    expect(within(`date,rain (mm)\n2021-01-01,1\n${'\r\n'.repeat(5_000_000)}`)).toBe('too large');
    expect(within(`date,rain (mm)\n2021-01-01,1\n${'\r'.repeat(1_000_000)}`)).toBe('read');
  });
  test('thousands of columns', () => {
    expect(within(`date,rain (mm)${',x'.repeat(3000)}\n2021-01-01,1${',1'.repeat(3000)}\n`)).toBe(
      'read',
    );
  });
  test('numbers with a hundred thousand digits, dates made to be matched slowly', () => {
    expect(within(`date,rain (mm)\n2021-01-01,1\n2021-01-02,${'1'.repeat(5000)}\n`)).toBe('read');
    expect(within(`date,rain (mm)\n2021-01-01,1\n${`${'1-'.repeat(3000)},1\n`.repeat(200)}`)).toBe(
      'read',
    );
  });

  test('any text at all is answered, never thrown', () => {
    const line = fc.array(
      fc.oneof(
        fc.constantFrom(
          '2021-05-01',
          '1/2/21',
          'tmax',
          'date',
          '"',
          '',
          '-9999',
          'T',
          '1e9',
          '__proto__',
        ),
        fc.string({ maxLength: 8 }),
        fc.integer({ min: -200, max: 400 }).map(String),
      ),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 12 }),
        fc.constantFrom(',', ';', '\t'),
        (rows, by) => {
          const result = readWeather(rows.map((cells) => cells.join(by)).join('\n'));
          if (!result.ok) return;
          for (const { values } of result.value.days) {
            const { lowest, highest, rain } = values;
            if (lowest !== undefined && highest !== undefined)
              expect(highest).toBeGreaterThanOrEqual(lowest);
            if (rain !== undefined) expect(rain).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { numRuns: 2000, seed: 20_130_615 },
    );
  });
});

describe('columns as a person picks them', () => {
  test('by header and first value, numbers from 1', () => {
    expect(columnsSeen('wann;nass;oben\n2011-05-01;0,5;18\n2011-05-02;1;19\n')).toEqual([
      { number: 1, header: 'wann', firstValue: '2011-05-01' },
      { number: 2, header: 'nass', firstValue: '0,5' },
      { number: 3, header: 'oben', firstValue: '18' },
    ]);
  });
  test('without headers; and none where there is no table', () => {
    expect(columnsSeen('2011-05-01,0.5,18\n2011-05-02,1,19\n')).toEqual([
      { number: 1, header: '', firstValue: '2011-05-01' },
      { number: 2, header: '', firstValue: '0.5' },
      { number: 3, header: '', firstValue: '18' },
    ]);
    expect(columnsSeen('')).toEqual([]);
    expect(columnsSeen('rain today\nand tomorrow')).toEqual([]);
  });
});
