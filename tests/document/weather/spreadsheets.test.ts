// Days as spreadsheets, browsers and station programs really hand them on.
import { describe, expect, test } from 'vitest';
import { textFromDay } from '../../../app/core/days';
import { readWeather } from '../../../app/document/weather/readWeather';
import { textOfBytes } from '../../../app/document/weather/textOfBytes';
import type { WeatherOptions } from '../../../app/document/weather/weatherTypes';
import { refusedSentence, weatherFailureSentence } from '../../../app/words/weatherMessages';

const read = (text: string, options: WeatherOptions = {}) => {
  const result = readWeather(text, options);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  const { preview, days } = result.value;
  return {
    preview,
    values: Object.fromEntries(days.map(({ day, values }) => [textFromDay(day), values])),
    refused: preview.refused.first.map((one) => refusedSentence(one)),
  };
};

describe('the bytes of a file', () => {
  const text = 'date,high (°F),low (°F)\n2021-05-01,65,44\n';
  const utf16 = (isLittle: boolean): Uint8Array => {
    const bytes = [isLittle ? [0xff, 0xfe] : [0xfe, 0xff]];
    for (const sign of text) {
      const code = sign.charCodeAt(0);
      bytes.push(isLittle ? [code % 256, code >> 8] : [code >> 8, code % 256]);
    }
    return Uint8Array.from(bytes.flat());
  };
  test.each([
    ['UTF-8', new TextEncoder().encode(text)],
    ['UTF-8 with its mark', new TextEncoder().encode(`\uFEFF${text}`)],
    ['UTF-16, small end first', utf16(true)],
    ['UTF-16, big end first', utf16(false)],
    // in that code page ° is the one byte B0
    ['the code page of Windows', Uint8Array.from([...text].map((sign) => sign.charCodeAt(0)))],
  ])('%s', (_name, bytes) => {
    expect(textOfBytes(bytes)).toBe(text);
    expect(read(textOfBytes(bytes)).preview).toMatchObject({ temperature: 'F', unclear: [] });
  });

  test('a packed workbook named as a table is no text', () => {
    // the first bytes of a ZIP archive
    const bytes = Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8, 0, 0, 0, 33, 0, 255, 1]);
    expect(readWeather(textOfBytes(bytes))).toMatchObject({ error: { kind: 'not text' } });
  });
});

describe('units behind the numbers', () => {
  test('a table copied from a page', () => {
    const { values, preview } = read(
      'Date\tHigh\tLow\tRain\n1 May 2021\t65.12 °F\t44.78\u00A0°F\t0.00 in\n2 May 2021\t70.7 °F\t46.4 °F\t0.126 in',
    );
    expect(values).toEqual({
      '2021-05-01': { highest: 18.4, lowest: 7.1, rain: 0 },
      '2021-05-02': { highest: 21.5, lowest: 8, rain: 3.2 },
    });
    expect(preview.unclear).toEqual([]);
  });

  test('decimal commas and their units', () => {
    const { values } = read(
      'Datum;Max;Min;Rain\n01.05.2021;18,4 °C;7,1 °C;0,0 mm\n02.05.2021;21,5 °C;8,0 °C;3,2 mm',
    );
    expect(values['2021-05-02']).toEqual({ highest: 21.5, lowest: 8, rain: 3.2 });
  });

  test('another unit than the rest, or than the header, is refused and not converted', () => {
    const { refused, values } = read(
      'Date\tHigh\tLow\n2021-05-01\t18 °C\t7 °C\n2021-05-02\t70 °F\t8 °C\n2021-05-03\t20 °C\t9 °C',
    );
    expect(refused).toEqual(['Line 3, 2021-05-02: “70 °F” is no number for highest temperature.']);
    expect(values['2021-05-02']).toEqual({ lowest: 8 });
    expect(
      readWeather('Date\tHigh (°F)\tLow (°F)\n2021-05-01\t18 °C\t7 °C\n2021-05-02\t19 °C\t8 °C'),
    ).toMatchObject({ error: { kind: 'no days' } });
  });

  test('what a few cells alone write behind their numbers is no unit of the column', () => {
    const { refused } = read(
      'Date,Rain\n2021-05-01,2 in\n2021-05-02,3.5\n2021-05-03,0\n2021-05-04,1.5',
      { rain: 'mm' },
    );
    expect(refused).toEqual(['Line 2, 2021-05-01: “2 in” is no number for rain.']);
  });

  test('words behind a number are no unit', () => {
    expect(
      readWeather('Date,High,Low\n2021-05-01,18 est,7 est\n2021-05-02,19 est,8 est'),
    ).toMatchObject({ error: { kind: 'no days' } });
  });
});

describe('what spreadsheets put where a day or a number should be', () => {
  const table = (...lines: string[]): string => ['date,tmax,tmin,rain', ...lines].join('\n');

  test('broken cells are refused by line, remarks behind a hash passed over', () => {
    const { refused, values, preview } = read(
      table(
        '# measured at the shed',
        '########,18,7,0',
        '#VALUE!,18,7,0',
        '2021-05-01,#N/A,7.5,0',
        '2021-05-02,18.5,#DIV/0!,1.5',
      ),
      { temperature: 'C' },
    );
    expect(refused).toEqual([
      'Line 3: “########” is no day.',
      'Line 4: “#VALUE!” is no day.',
      'Line 5, 2021-05-01: “#N/A” is no number for highest temperature.',
      'Line 6, 2021-05-02: “#DIV/0!” is no number for lowest temperature.',
    ]);
    expect(values).toEqual({
      '2021-05-01': { lowest: 7.5, rain: 0 },
      '2021-05-02': { highest: 18.5, rain: 1.5 },
    });
    expect(preview.gaps.total).toBe(2);
  });

  test('a date that became a count of days is told apart from no day', () => {
    const result = readWeather(table('44317,18,7,0', '44318,19,8,0'));
    if (result.ok) throw new Error('read');
    expect(weatherFailureSentence(result.error)).toContain(
      'Line 2: “44317” is a spreadsheet’s own count of days.',
    );
  });

  test('a weekday ahead of the date', () => {
    const { values } = read(
      table('Sat 01 May 2021,18.4,7.1,0', '"Sunday, May 2, 2021",21.5,8,3.2'),
      { temperature: 'C' },
    );
    expect(Object.keys(values)).toEqual(['2021-05-01', '2021-05-02']);
  });

  test('sums, signs and tabs in cells are words or numbers, never worked out', () => {
    const { refused, values } = read(
      table('2021-05-01,=B1,+7.5,-0.1', '2021-05-02,@SUM(B1),7,0', '"2021-05-03","\t19.5",7,0'),
      { temperature: 'C', rain: 'mm' },
    );
    expect(refused).toEqual([
      'Line 2, 2021-05-01: “=B1” is no number for highest temperature.',
      'Line 2, 2021-05-01: rain below nought (-0.1).',
      'Line 3, 2021-05-02: “@SUM(B1)” is no number for highest temperature.',
    ]);
    expect(values['2021-05-01']).toEqual({ lowest: 7.5 });
    expect(values['2021-05-03']).toEqual({ highest: 19.5, lowest: 7, rain: 0 });
  });

  test('hours are not taken for days; the same table twice over is refused line by line', () => {
    const hours = Array.from(
      { length: 72 },
      (_, at) =>
        `2021-05-0${String(1 + Math.floor(at / 24))} ${String(at % 24).padStart(2, '0')}:00,18,7,0`,
    );
    expect(readWeather(table(...hours))).toMatchObject({
      error: { kind: 'several a day', lines: 72, days: 3 },
    });
    const days = ['2021-05-01,18.5,7,0', '2021-05-02,19,8,3'];
    const { values, refused } = read(table(...days, ...days), { temperature: 'C' });
    expect(Object.keys(values)).toHaveLength(2);
    expect(refused).toEqual([
      'Line 4, 2021-05-01: the same day as line 2, which is kept.',
      'Line 5, 2021-05-02: the same day as line 3, which is kept.',
    ]);
  });
});
