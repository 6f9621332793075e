import { describe, expect, test } from 'vitest';
import { readContent, type Content } from '../../app/amounts/readContent';

const value = (text: string, content: Content, water: number | null = null): number | string => {
  const reading = readContent(text, content, water);
  return reading.ok ? reading.value.value : reading.error.kind;
};

describe('what a laboratory measured of a material', () => {
  // units by definition: 1 % is 10 g/kg and 20 lb in a ton of 2,000 lb
  test.each([
    ['2.4', 2.4],
    ['2,4 %', 2.4],
    ['2 2/5 %', 2.4],
    ['2⅖', 2.4],
    ['12/5', 2.4],
    ['24 g/kg', 2.4],
    ['48 lb/ton', 2.4],
    ['48 lbs per ton dry', 2.4],
    ['24000 ppm', 2.4],
    ['24 kg/t of dry matter', 2.4],
  ])('nitrogen: %s', (text, wanted) => expect(value(text, 'nitrogen')).toBeCloseTo(wanted, 10));

  test('nitrogen of the stuff as it came is turned by its water', () => {
    expect(value('0.6 % fresh', 'nitrogen', 75)).toBeCloseTo(2.4, 10);
    expect(value('12 lb/ton as received', 'nitrogen', 75)).toBeCloseTo(2.4, 10);
    expect(value('0.6 % fresh', 'nitrogen')).toBe('water unknown');
  });

  // the oxides by atomic weights: P of P2O5 0.4364, K of K2O 0.8301
  test.each([
    ['0.35', 'phosphorus', 0.35],
    ['0.35 % P', 'phosphorus', 0.35],
    ['3.5 g/kg', 'phosphorus', 0.35],
    ['0.8 % P2O5', 'phosphorus', 0.8 * 0.4364],
    ['16 lb/ton phosphate', 'phosphorus', 0.8 * 0.4364],
    ['0.2 % P2O5 fresh', 'phosphorus', 0.8 * 0.4364],
    ['0.9 % K', 'potassium', 0.9],
    ['1.1 % K2O', 'potassium', 1.1 * 0.8301],
    ['22 lb/ton potash as received', 'potassium', 4 * 1.1 * 0.8301],
  ] as const)('%s of %s', (text, content, wanted) =>
    expect(value(text, content, 75)).toBeCloseTo(wanted, 10),
  );

  test.each([
    ['20', 20],
    ['20:1', 20],
    ['20 : 1', 20],
    ['20 to 1', 20],
    ['17,5', 17.5],
    ['17½ : 1', 17.5],
    ['1:20', 20],
    ['1 to 17,5', 17.5],
  ])('ratio: %s', (text, wanted) => expect(value(text, 'ratio')).toBe(wanted));

  test.each([
    ['60', 60],
    ['60 % water', 60],
    ['40 % dry matter', 60],
    ['40 dry', 60],
  ])('water: %s', (text, wanted) => expect(value(text, 'water')).toBe(wanted));

  test.each([
    ['', 'nitrogen', 'no number'],
    ['much', 'nitrogen', 'no number'],
    ['2 furlongs', 'nitrogen', 'unknown words'],
    ['20 %', 'ratio', 'unknown words'],
    ['80', 'nitrogen', 'out of range'],
    ['0.8 % K2O', 'phosphorus', 'unknown words'],
    ['0.8 % P2O5', 'nitrogen', 'unknown words'],
    ['30 %', 'potassium', 'out of range'],
    ['1', 'ratio', 'out of range'],
    ['100 %', 'water', 'out of range'],
    ['-3', 'water', 'out of range'],
    ['-1 %', 'nitrogen', 'out of range'],
    ['1/0', 'nitrogen', 'unknown words'],
    ['2:20', 'ratio', 'unknown words'],
    ['3.1.2', 'nitrogen', 'unknown words'],
  ] as const)('refused: %s as %s', (text, content, kind) => {
    expect(value(text, content)).toBe(kind);
    const reading = readContent(text, content, null);
    const offered = reading.ok ? '' : reading.error.suggestion;
    expect(readContent(offered, content, null).ok).toBe(true);
  });
});
