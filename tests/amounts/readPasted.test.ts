import { describe, expect, test } from 'vitest';
import { mostPastedLines, readPasted, type PastedKind } from '../../app/amounts/readPasted';
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
const read = (text: string, kind: PastedKind = 'mowings', order: 'day first' | null = null) =>
  readPasted(text, kind, context, order);
const told = (text: string, kind: PastedKind = 'mowings') =>
  read(text, kind).lines.map(({ number, read: line }) => {
    if (!line.ok) return `${number} ${line.refusal.kind}`;
    const { entry } = line;
    return entry.kind === 'rain'
      ? `${textFromDay(entry.day)} ${entry.millimetres}`
      : `${textFromDay(entry.day)} ${entry.lawnId} ${entry.amount.text} ${entry.wetness}`;
  });

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
    const text = '3/4/2013\tBack lawn\t2 bags\n13/4/2013\tBack lawn\t2 bags';
    const unsaid = read(text);
    expect(unsaid.asksDateOrder).toBe(true);
    const said = read(text, 'mowings', 'day first');
    expect(said.asksDateOrder).toBe(false);
    expect(said.lines.map(({ read: line }) => line.ok && textFromDay(line.entry.day))).toEqual([
      '2013-04-03',
      '2013-04-13',
    ]);
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
});
