import { describe, expect, test } from 'vitest';
import { mostPastedLines, readPasted, type PastedKind } from '../../app/amounts/readPasted';
import type { DateOrder } from '../../app/amounts/pastedCells';
import { dayOf, textFromDay } from '../../app/core/days';

const context = {
  units: 'metric' as const,
  containers: [{ id: 'bag', name: 'bag', plural: 'bags', litres: 45 }],
  lawns: [
    { id: 'back', name: 'Back lawn', areaM2: 100 },
    { id: 'front', name: 'Front lawn', areaM2: 50 },
  ],
  today: dayOf('2013-06-15'),
};
const read = (text: string, kind: PastedKind = 'mowings', order: DateOrder | null = null) =>
  readPasted(text, kind, context, order);
const told = (text: string, kind: PastedKind = 'mowings') =>
  read(text, kind).lines.map(({ number, read: line }) => {
    if (!line.ok) return `${number} ${line.refusal.kind}`;
    const { entry } = line;
    return entry.kind === 'rain'
      ? `${textFromDay(entry.day)} ${entry.millimetres}`
      : `${textFromDay(entry.day)} ${entry.lawnId} ${entry.amount.text} ${entry.wetness}`;
  });

const daysOf = ({ lines }: ReturnType<typeof readPasted>) =>
  lines.map(({ read: line }) => line.ok && textFromDay(line.entry.day));

describe('a list pasted from a spreadsheet', () => {
  test('mowings with headings, in any order of columns', () => {
    expect(
      told('Lawn\tBags\tDate\tWet?\nBack lawn\t2\t2013-06-01\tsoaked\nfront lawn\t1 1/2\t8 June\t'),
    ).toEqual(['2013-06-01 back 2 bags soaked', '2013-06-08 front 1 1/2 bags damp']);
  });

  test('under a heading of many, one is one', () => {
    expect(
      told(
        'Day\tLawn\tBags\n1 June\tBack lawn\t1\n2 June\tBack lawn\t1/2\n3 June\tBack lawn\t1 1/2',
      ),
    ).toEqual([
      '2013-06-01 back 1 bag damp',
      '2013-06-02 back 1/2 bag damp',
      '2013-06-03 back 1 1/2 bags damp',
    ]);
  });

  test('mowings without headings', () => {
    expect(told('2013-06-01\tBack lawn\t2 bags\n2013-06-08\tFront lawn\t12 kg\tdry')).toEqual([
      '2013-06-01 back 2 bags damp',
      '2013-06-08 front 12 kg dry',
    ]);
  });

  test('rain in millimetres and inches', () => {
    expect(told('Day;Rain (in)\n1 June 2013;0.5\n2 June 2013;0', 'rain')).toEqual([
      '2013-06-01 12.7',
      '2013-06-02 0',
    ]);
    expect(told('2013-06-01, 4\n2013-06-02, 1/4 in', 'rain')).toEqual([
      '2013-06-01 4',
      '2013-06-02 6.35',
    ]);
  });

  test('every line that cannot be read says why, and none is lost', () => {
    expect(
      told(
        [
          'Date\tLawn\tAmount',
          '31 February\tBack lawn\t2 bags',
          '2013-06-01\tSide lawn\t2 bags',
          '2013-06-01\t\t2 bags',
          '',
          '2013-06-02\tBack lawn\tlots',
          '2014-01-01\tBack lawn\t2 bags',
          '2013-06-03',
        ].join('\r\n'),
      ),
    ).toEqual([
      '2 day',
      '3 unknown lawn',
      '4 which lawn',
      '6 amount',
      '7 ahead',
      '8 too few columns',
    ]);
  });

  test('3/4/2013 is asked about, not guessed', () => {
    const text = '3/4/2013\tBack lawn\t2 bags\n2013-04-13\tBack lawn\t2 bags';
    const unsaid = read(text);
    expect(unsaid).toMatchObject({ asksDateOrder: true, order: null, eitherWay: '3/4/2013' });
    const said = read(text, 'mowings', 'day first');
    expect(said.asksDateOrder).toBe(false);
    expect(daysOf(said)).toEqual(['2013-04-03', '2013-04-13']);
  });

  test('a date among them that fits one way only tells the way; what is said goes before it', () => {
    const text = '3/4/2013\tBack lawn\t2 bags\n13/4/2013\tBack lawn\t2 bags';
    const found = read(text);
    expect(found).toMatchObject({
      asksDateOrder: false,
      order: 'day first',
      eitherWay: '3/4/2013',
    });
    expect(daysOf(found)).toEqual(['2013-04-03', '2013-04-13']);
    expect(read(text, 'mowings', 'month first').order).toBe('month first');
    expect(read(`${text}\n3/14/2013\tBack lawn\t1 bag`).order).toBeNull();
  });

  test('days of a notebook, "18.4.", belong to the year gone by', () => {
    expect(daysOf(read('18.4.\tBack lawn\t2 bags\n20.8.\tBack lawn\t2 bags'))).toEqual([
      '2013-04-18',
      '2012-08-20',
    ]);
  });

  test('how wet it was is read from a remark where no column is headed so', () => {
    const text =
      'date\tlawn\tbags\tremarks\n1 June 2013\tBack lawn\t5\tfirst cut, wet\n2 June 2013\tBack lawn\t4\tdry\n3 June 2013\tBack lawn\t4\tlate';
    expect(
      read(text).lines.map(
        ({ read: line }) => line.ok && line.entry.kind === 'mowing' && line.entry.wetness,
      ),
    ).toEqual(['soaked', 'dry', 'damp']);
  });

  test('one lawn needs no column of lawns', () => {
    const one = { ...context, lawns: context.lawns.slice(0, 1) };
    const [line] = readPasted('2013-06-01\t3 bags', 'mowings', one).lines;
    expect(line?.read).toMatchObject({ ok: true, entry: { lawnId: 'back' } });
  });

  test('a whole workbook is read up to a limit, and says so', () => {
    const text = Array.from({ length: mostPastedLines + 7 }, () => '2013-06-01\t4').join('\n');
    const pasted = read(text, 'rain');
    expect(pasted.lines).toHaveLength(mostPastedLines);
    expect(pasted.leftOut).toBe(7);
  });

  test.each([
    '2013/6/1',
    '20130601',
    '2013-06-01T00:00:00',
    '2013-06-01 09:00',
    '2013-06-01 9:00 AM',
    'Sat 1 Jun 2013',
    'Saturday, June 1, 2013',
    '1-Jun-13',
    '01-Jun-2013',
    '1 June 2013',
  ])('a date as spreadsheets write it: %s', (date) => {
    expect(told(`${date}\t4`, 'rain')).toEqual(['2013-06-01 4']);
  });

  test.each(['3/4/13', '3-4-2013', '03.04.2013', '3/4'])(
    'the order once said holds for %s',
    (date) => {
      expect(read(`${date}\t4`, 'rain').asksDateOrder).toBe(true);
      const said = (order: 'day first' | 'month first') => {
        const [line] = readPasted(`${date}\t4`, 'rain', context, order).lines;
        return line?.read.ok === true ? textFromDay(line.read.entry.day) : null;
      };
      expect([said('day first'), said('month first')]).toEqual(['2013-04-03', '2013-03-04']);
    },
  );

  test('a date that the order said makes no day is refused as it was typed', () => {
    const { lines } = read('6/13/2013\t4', 'rain', 'day first');
    expect(lines[0]?.read).toMatchObject({
      ok: false,
      refusal: { kind: 'day', failure: { kind: 'unknown-day', text: '6/13/2013' } },
    });
  });

  test('a unit is read off the heading, in brackets or behind it', () => {
    const { metric, us } = { metric: 'metric', us: 'us' } as const;
    for (const heading of ['Rainfall (in)', 'Precip [inches]', 'rain_in', 'Rain, in', 'PRCP (")'])
      for (const units of [metric, us])
        expect(
          readPasted(`Date\t${heading}\n2013-06-01\t0.5`, 'rain', { ...context, units }).lines[0]
            ?.read,
          `${heading} ${units}`,
        ).toMatchObject({ ok: true, entry: { millimetres: 12.7 } });
    const [line] = readPasted('Date\tRain mm\n2013-06-01\t5', 'rain', {
      ...context,
      units: us,
    }).lines;
    expect(line?.read).toMatchObject({ ok: true, entry: { millimetres: 5 } });
    // words in brackets that are no unit of rain say nothing of it
    expect(told('Date\tRain (total)\n2013-06-01\t5', 'rain')).toEqual(['2013-06-01 5']);
  });

  test('cells in quotes keep separators, line ends and doubled quotes', () => {
    const named = { ...context, lawns: [{ id: 'q', name: 'The "big", one', areaM2: 9 }] };
    const { lines } = readPasted(
      '"2013-06-01"\t"The ""big"", one"\t"2 bags"\r\n"two\nlines"\tx\t1\n2013-06-03\t"unclosed\t2 bags',
      'mowings',
      named,
    );
    expect(lines.map(({ number, cells }) => [number, ...cells])).toEqual([
      [1, '2013-06-01', 'The "big", one', '2 bags'],
      [2, 'two\nlines', 'x', '1'],
      [4, '2013-06-03', '"unclosed', '2 bags'],
    ]);
    expect(lines[0]?.read).toMatchObject({ ok: true, entry: { lawnId: 'q' } });
    expect(told('2013-06-01,"4,2"', 'rain')).toEqual(['2013-06-01 4.2']);
  });

  test('of several numbers without headings none is taken, with headings the one that is named', () => {
    expect(told('2013-06-01,4,2', 'rain')).toEqual(['1 two numbers']);
    expect(told('2013-06-01\t17.5\t4', 'rain')).toEqual(['1 two numbers']);
    expect(told('Day\tTemp\tRain\n2013-06-01\t17.5\t4', 'rain')).toEqual(['2013-06-01 4']);
    // a time of day and a remark are no amounts; a column left empty before the day is none
    expect(told('\t2013-06-01\t09:00\t4\twindy', 'rain')).toEqual(['2013-06-01 4']);
  });

  test('a trace is no rain; how wet clippings were is not passed over; a year is looked at', () => {
    expect(told('2013-06-01\tT\n2013-06-02\ttrace', 'rain')).toEqual([
      '2013-06-01 0',
      '2013-06-02 0',
    ]);
    expect(told('Date\tLawn\tBags\tState\n1 June\tBack lawn\t2\tfrozen')).toEqual([
      '2 unknown wetness',
    ]);
    expect(told('1013-06-01\t4', 'rain')).toEqual(['1 long ago']);
  });

  test('without headings an unknown lawn is said, even where there is only one', () => {
    const one = { ...context, lawns: context.lawns.slice(0, 1) };
    const [line] = readPasted('2013-06-01\tSide lawn\t3 bags', 'mowings', one).lines;
    expect(line?.read).toMatchObject({ refusal: { kind: 'unknown lawn', name: 'Side lawn' } });
    expect(told('2013-06-01\tStation 5\t4', 'rain')).toEqual(['2013-06-01 4']);
  });

  test('a first line with numbers in it is never lost as a heading', () => {
    expect(told('31 February\tLawn\t2 bags\n1 June\tBack lawn\t2 bags')).toEqual([
      '1 day',
      '2013-06-01 back 2 bags damp',
    ]);
  });

  test('every line can be had back as it was pasted', () => {
    const text = 'Date\tRain\r\n 2013-06-01 \t"4"\r\n\r\nnonsense\tx';
    const { header, lines } = read(text, 'rain');
    expect([header?.raw, ...lines.map(({ raw }) => raw)]).toEqual([
      'Date\tRain',
      ' 2013-06-01 \t"4"',
      'nonsense\tx',
    ]);
    const many = Array.from({ length: mostPastedLines + 2 }, (_, at) => `x\t${String(at)}`);
    expect(read(many.join('\n'), 'rain').leftOutText).toBe(many.slice(mostPastedLines).join('\n'));
  });
});
