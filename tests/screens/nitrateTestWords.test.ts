import { describe, expect, test } from 'vitest';
import { nitrateTestWords } from '../../app/screens/beds/nitrateTestWords';
import type { BedResults } from '../../app/store/contract';

const results = (startingMineralTop: number | null): BedResults =>
  ({
    season: { firstDay: 100, pools: { mineralTop: Float64Array.of(3.9, 7.8) } },
    input: { soil: { bulkDensityKgPerL: 1.3, startingMineralTop } },
  }) as unknown as BedResults;

describe('a laboratory’s nitrate beside the sums', () => {
  // 7.8 g/m2 in 300 L of soil of 1.3 kg/L: 7800 mg in 390 kg are 20 mg/kg
  test('says what the sums had on that day, that they are not bent, and what it weighs', () =>
    expect(nitrateTestWords(results(null), 101)).toMatch(
      /had 20 mg\/kg .*leaves that line.*odds and ranges lean/,
    ));
  test('or that they began with it', () =>
    expect(nitrateTestWords(results(3.9), 90)).toBe('It is what the sums began with.'));
  test('or that it is too old', () =>
    expect(nitrateTestWords(results(null), 90)).toMatch(/too old/));
  test('nothing of a day after the run', () =>
    expect(nitrateTestWords(results(null), 500)).toBe(''));
});
