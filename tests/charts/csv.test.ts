import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../app/charts/export/csv';

const cellsOf = (text: string): string[] =>
  csvOf({ head: text === '' ? [''] : [text], rows: [] })
    .slice(1, -2)
    .split('\r\n');

describe('a table as comma-separated text', () => {
  test('has its mark, its heads with units, points in numbers, and CRLF at each line’s end (RFC 4180)', () => {
    expect(
      csvOf({
        head: ['day', 'rain [mm]'],
        rows: [
          ['2013-06-15', 1.5],
          ['2013-06-16', null],
          ['2013-06-17', -0.25],
        ],
      }),
    ).toBe('\uFEFFday,rain [mm]\r\n2013-06-15,1.5\r\n2013-06-16,\r\n2013-06-17,-0.25\r\n');
  });

  test('quotes what has commas, quotes or line ends', () => {
    expect(csvOf({ head: ['a,b', 'say "no"', 'two\nlines'], rows: [] })).toBe(
      '\uFEFF"a,b","say ""no""","two\nlines"\r\n',
    );
  });

  // quality.md 22: names that begin a formula in a spreadsheet
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '  =1', '＝1+1', '=HYPERLINK("x")'])(
    'words that begin a sum stay words: %j',
    (text) => {
      const [cell] = cellsOf(text);
      expect(cell!.replace(/^"/, '').startsWith("'")).toBe(true);
    },
  );

  test('law: no cell of words begins as a sum, whatever a bed is called', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (text) => {
        const first = csvOf({ head: [text], rows: [] })
          .slice(1)
          .replace(/^"/, '');
        expect(first).not.toMatch(/^\s*[=+\-@\t]/);
      }),
      { numRuns: 1000, seed: 51 },
    );
  });

  test('what is no number leaves an empty cell', () => {
    expect(csvOf({ head: ['a'], rows: [[Number.NaN], [Number.POSITIVE_INFINITY], [-0]] })).toBe(
      '\uFEFFa\r\n\r\n\r\n0\r\n',
    );
  });
});
