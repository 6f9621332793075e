import { describe, expect, test } from 'vitest';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import {
  expectedWords,
  leftInAll,
  seasonColumn,
  seasonLine,
  seasonLineNames,
  seasonWord,
} from '../../app/words/seasonAccountWords';

describe('a season is called by the year it starts in', () => {
  test.each([
    [2013, 1, '2013'],
    [2013, 7, '2013–14'],
    [1999, 7, '1999–00'],
    [2008, 4, '2008–09'],
  ])('%d from month %d: %s', (year, month, word) => expect(seasonWord(year, month)).toBe(word));

  test('one that is not over is foretold', () => {
    expect(seasonColumn({ year: 2013, isOver: true }, 7)).toBe('2013–14');
    expect(seasonColumn({ year: 2013, isOver: false }, 1)).toBe('2013, as it should end');
  });
});

describe('the column of a season', () => {
  // started with 5, got 6, lost 13; the soil gave 9, so 7 are left: 5 + 6 + 9 - 13
  const ledger = {
    totals: { opening: 5, cameIn: 6, wentOut: 13, onHand: -2 },
    onHand: [
      { key: 'in the cover', gM2: 7 },
      { key: 'in the soil itself', gM2: -9 },
    ],
  } as const;
  test('adds up to what is left, what the soil gave counted as given', () => {
    expect(seasonLineNames.map((name) => seasonLine(name, ledger))).toEqual([5, 6, 9, 13]);
    expect(leftInAll(ledger)).toBe(7);
  });
});

describe('what is left for the next season', () => {
  test('comes free, with its range and both seasons named', () => {
    const words = expectedWords({ low: 2, middle: 4.04, high: 7 }, 2013, 7, metricChartUnits);
    expect(words).toContain('left from 2013–14, about 4.0 g/m² should come free in 2014–15');
    expect(words).toContain('in 8 of 10 imagined cases 2.0 to 7.0 g/m²');
  });

  test('is taken by browns: sizes, not signs', () => {
    const words = expectedWords({ low: -3, middle: -2, high: -1 }, 2013, 1, metricChartUnits);
    expect(words).toContain('takes more from the soil than it gives, by about 2.0 g/m²');
    expect(words).toContain('1.0 to 3.0 g/m²');
    expect(words).not.toContain('−');
  });

  test('may go either way', () => {
    const words = expectedWords({ low: -0.4, middle: -0.2, high: 0.4 }, 2012, 1, metricChartUnits);
    expect(words).toContain('gives the soil little in 2013');
    expect(words).toContain('−0.4 to 0.4 g/m²');
  });

  test('speaks pounds where a person does', () => {
    expect(expectedWords({ low: 2, middle: 4, high: 7 }, 2013, 1, usChartUnits)).toContain(
      'lb/1,000 sq ft',
    );
  });
});
