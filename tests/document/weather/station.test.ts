import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../../app/core/days';
import { windAtTwoMetres } from '../../../app/core/soil/penmanMonteith';
import { readWeather } from '../../../app/document/weather/readWeather';
import type { WeatherOptions } from '../../../app/document/weather/weatherTypes';
import { listLine, monthLine } from './stationLines';

// Layouts: NOAA NCEI, GHCN-Daily, section III of its readme; the day of a line begins 8 columns after the one before. All lines are made up.

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

describe('a .dly file', () => {
  test('the widths are those of the description', () => {
    const line = monthLine(2021, 1, 'TMAX', { 1: 123 });
    expect(line).toHaveLength(269);
    expect(line.slice(21, 29)).toBe('  123  X');
    // eight columns a day behind the 21 of the head
    expect(monthLine(2021, 1, 'TMAX', { 31: -15 }).slice(261, 266)).toBe('  -15');
  });

  const january = [
    monthLine(2021, 1, 'TMAX', { 1: 123, 2: -15, 4: { value: 80, quality: 'G' } }),
    monthLine(2021, 1, 'TMIN', { 1: 20, 2: -77, 4: -30 }),
    monthLine(2021, 1, 'PRCP', { 1: { value: 0, measurement: 'T' }, 2: 84, 5: 0 }),
    monthLine(2021, 1, 'SNOW', { 1: 30 }),
    monthLine(2021, 1, 'AWND', { 2: 40 }),
  ];

  test('tenths, a trace as nought, a failed check left out, missing as missing', () => {
    const { preview, values } = read(january.join('\n'));
    expect(preview.form).toBe('station months');
    expect(preview.station).toBe('XX000000001');
    expect(values).toEqual({
      '2021-01-01': { highest: 12.3, lowest: 2, rain: 0 },
      '2021-01-02': {
        highest: -1.5,
        lowest: -7.7,
        rain: 8.4,
        wind: Math.round(windAtTwoMetres({ metresPerSecond: 4, heightMetres: 10 }) * 1000) / 1000,
      },
      '2021-01-04': { lowest: -3 },
      '2021-01-05': { rain: 0 },
    });
    expect(preview.flagged).toBe(1);
    expect(preview.unused).toEqual(['SNOW']);
    expect(preview.windHeightMetres).toBe(10);
    expect(preview.refused.total).toBe(0);
  });

  test('every letter in the quality flag leaves the value out', () => {
    for (const quality of 'DGIKLMNORSTWXZ') {
      const text = monthLine(2021, 3, 'PRCP', { 1: { value: 50, quality }, 2: 10 });
      expect(read(text).values).toEqual({ '2021-03-02': { rain: 1 } });
    }
  });

  test('rain gathered over several days is not dry, and not spread', () => {
    const text = [
      monthLine(2021, 2, 'PRCP', { 1: 0, 5: 12 }),
      monthLine(2021, 2, 'MDPR', { 4: 230 }),
      monthLine(2021, 2, 'DAPR', { 4: 3 }),
    ].join('\r\n');
    const { preview, values } = read(text);
    expect(values).toEqual({ '2021-02-01': { rain: 0 }, '2021-02-05': { rain: 1.2 } });
    expect(preview.severalDayTotals).toBe(1);
    expect(preview.gaps).toEqual({
      first: [{ from: '2021-02-02', to: '2021-02-04', days: 3, missing: ['rain'] }],
      total: 1,
    });
  });

  test('surplus days of a short month are nothing, a value on them is refused', () => {
    const { preview, values } = read(monthLine(2021, 2, 'TMAX', { 28: 90, 30: 95 }));
    expect(Object.keys(values)).toEqual(['2021-02-28']);
    expect(preview.refused.first).toEqual([
      { line: 1, day: null, reason: { kind: 'no day', text: '2021-2-30' } },
    ]);
  });

  test('a line whose blanks at the end were cut is read all the same', () => {
    const text = monthLine(2021, 1, 'TMAX', { 1: 123 }).slice(0, 26);
    expect(read(text).values).toEqual({ '2021-01-01': { highest: 12.3 } });
  });

  test('the highest below the lowest: both left out, with both lines', () => {
    const { preview, values } = read(
      [
        monthLine(2021, 1, 'TMAX', { 1: 10, 2: 20 }),
        monthLine(2021, 1, 'TMIN', { 1: 30, 2: 15 }),
      ].join('\n'),
    );
    expect(values).toEqual({ '2021-01-02': { highest: 2, lowest: 1.5 } });
    expect(preview.refused.first).toEqual([
      {
        line: 2,
        day: '2021-01-01',
        reason: { kind: 'highest below lowest', lowest: 3, highest: 1, otherLine: 1 },
      },
    ]);
  });

  test('a month that stands twice: the first is kept, the second refused by value', () => {
    const { preview, values } = read(
      [monthLine(2021, 1, 'TMAX', { 1: 100 }), monthLine(2021, 1, 'TMAX', { 1: 110, 2: 120 })].join(
        '\n',
      ),
    );
    expect(values).toEqual({ '2021-01-01': { highest: 10 }, '2021-01-02': { highest: 12 } });
    expect(preview.refused.first[0]).toEqual({
      line: 2,
      day: '2021-01-01',
      reason: { kind: 'value twice', measure: 'highest', firstLine: 1 },
    });
  });

  test('two stations: which one is meant has to be said', () => {
    const text = [
      monthLine(2021, 1, 'TMAX', { 1: 100 }),
      monthLine(2021, 1, 'TMAX', { 1: 110 }, 'YY000000002'),
    ].join('\n');
    expect(readWeather(text)).toEqual({
      ok: false,
      error: { kind: 'several stations', stations: ['XX000000001', 'YY000000002'], total: 2 },
    });
    expect(read(text, { station: 'YY000000002' }).values).toEqual({
      '2021-01-01': { highest: 11 },
    });
    expect(readWeather(text, { station: 'ZZ' })).toMatchObject({
      error: { kind: 'no such station' },
    });
  });

  test('years no garden file can hold are refused, days not asked for are counted', () => {
    const text = [
      monthLine(1869, 1, 'TMAX', { 1: 10 }),
      monthLine(2019, 1, 'TMAX', { 1: 10 }),
      monthLine(2020, 1, 'TMAX', { 1: 10 }),
    ].join('\n');
    const { preview, values } = read(text, { from: dayOf('2020-01-01') });
    expect(Object.keys(values)).toEqual(['2020-01-01']);
    expect(preview.outside).toBe(1);
    expect(preview.refused.first).toEqual([
      { line: 1, day: null, reason: { kind: 'year beyond belief', year: 1869 } },
    ]);
  });
});

describe('the long form, by station or year', () => {
  const lines = [
    listLine('20140102', 'TMAX', { value: 6 }),
    listLine('20140102', 'TMIN', { value: -77 }),
    listLine('20140102', 'PRCP', { value: 84 }),
    listLine('20140105', 'PRCP', { value: 0, measurement: 'T' }),
    listLine('20140105', 'TMAX', { value: 900, quality: 'X' }),
    listLine('20140106', 'MDPR', { value: 120 }),
    listLine('20140106', 'DAPR', { value: 2 }),
  ];
  const wanted = {
    '2014-01-02': { highest: 0.6, lowest: -7.7, rain: 8.4 },
    '2014-01-05': { rain: 0 },
  };

  test('without a header line', () => {
    const { preview, values } = read(lines.join('\n'));
    expect(preview.form).toBe('station list');
    expect(values).toEqual(wanted);
    expect([preview.flagged, preview.severalDayTotals]).toEqual([1, 1]);
  });

  test.each([
    'ID,YEAR/MONTH/DAY,ELEMENT,DATA VALUE,M-FLAG,Q-FLAG,S-FLAG,OBS-TIME',
    'ID,DATE,ELEMENT,DATA_VALUE,M_FLAG,Q_FLAG,S_FLAG,OBS_TIME',
  ])('with the header %s', (header) => {
    expect(read([header, ...lines].join('\n')).values).toEqual(wanted);
  });

  // two lines of a real station of GHCN-Daily, 2014, which lack the station column where they were read
  test('without the station column', () => {
    const { values } = read('20140102,TMAX,6,,,W,2400\n20140102,TMIN,-77,,,W,2400\n');
    expect(values).toEqual({ '2014-01-02': { highest: 0.6, lowest: -7.7 } });
  });

  test('a line of another kind, a day that is none, a temperature that cannot be', () => {
    const { preview } = read(
      [
        ...lines,
        'hello',
        listLine('20140230', 'TMAX', { value: 10 }),
        listLine('20140301', 'TMAX', { value: 700 }),
        listLine('20140301', 'PRCP', { value: -3 }),
      ].join('\n'),
    );
    expect(preview.refused.first.map(({ line, reason }) => [line, reason.kind])).toEqual([
      [8, 'not of this form'],
      [9, 'no day'],
      [10, 'out of range'],
      [11, 'below nought'],
    ]);
  });
});

describe('daily summaries, one line a day', () => {
  const header =
    '"STATION","DATE","LATITUDE","LONGITUDE","ELEVATION","NAME","PRCP","PRCP_ATTRIBUTES","SNOW","SNOW_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"';
  const row = (date: string, rain: string, high: string, low: string, highFlags = ',,X'): string =>
    `"XX000000001","${date}","40.0","-70.0","10.0","MADE UP, NY US","${rain}",",,X,2400","    0",",,X","${high}","${highFlags}","${low}",",,X"`;

  test('tenths, padded with blanks: told by whole numbers beyond 60', () => {
    const text = [
      header,
      row('2014-07-02', '   84', '  306', '  177'),
      row('2014-07-03', '    0', '  350', '  201', ',I,X'),
      row('2014-07-04', '', '  281', '  150'),
    ].join('\n');
    const { preview, values } = read(text);
    expect(preview.form).toBe('daily summaries');
    expect([preview.temperature, preview.rain]).toEqual(['tenths of C', 'tenths of mm']);
    expect(preview.unclear).toEqual([]);
    expect(values).toEqual({
      '2014-07-02': { rain: 8.4, highest: 30.6, lowest: 17.7 },
      '2014-07-03': { rain: 0, lowest: 20.1 },
      '2014-07-04': { highest: 28.1, lowest: 15 },
    });
    expect([preview.flagged, preview.station]).toEqual([1, 'XX000000001']);
    expect(preview.gaps.first).toEqual([
      { from: '2014-07-03', to: '2014-07-03', days: 1, missing: ['highest'] },
      { from: '2014-07-04', to: '2014-07-04', days: 1, missing: ['rain'] },
    ]);
  });

  test('whole degrees with decimals are what they say', () => {
    const text = [
      header,
      row('2014-07-02', '8.4', '30.6', '17.7'),
      row('2014-07-03', '0.0', '35.0', '20.1'),
    ];
    const { preview, values } = read(text.join('\n'), { temperature: 'C' });
    expect(preview.rain).toBe('mm');
    expect(values['2014-07-02']).toEqual({ rain: 8.4, highest: 30.6, lowest: 17.7 });
  });

  test('Fahrenheit and inches: whole degrees beyond 60 beside rain with decimals', () => {
    const text = [
      header,
      row('2014-07-02', '0.33', '87', '64'),
      row('2014-07-03', '0.00', '95', '68'),
    ];
    const { preview, values } = read(text.join('\n'));
    expect([preview.temperature, preview.rain, preview.unclear]).toEqual(['F', 'in', []]);
    expect(values['2014-07-02']).toEqual({ rain: 8.382, highest: 30.556, lowest: 17.778 });
  });

  test('whole numbers that could be tenths or Fahrenheit are asked about', () => {
    const text = [header, row('2014-01-02', '0', '87', '64'), row('2014-01-03', '0', '95', '68')];
    const { preview } = read(text.join('\n'));
    expect(preview.unclear.map(({ kind }) => kind)).toContain('temperature unit');
    const settled = read(text.join('\n'), { temperature: 'tenths of C' });
    expect(settled.preview.unclear).toEqual([]);
    expect(settled.values['2014-01-02']).toEqual({ rain: 0, highest: 8.7, lowest: 6.4 });
  });
});
