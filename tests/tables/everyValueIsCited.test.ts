import { describe, expect, test } from 'vitest';
import type { Standing } from '../../app/core/reference';
import { ownSources } from '../../app/tables/sources/ownSources';
import { sources } from '../../app/tables/sources';
import { everyRow, type FoundRow } from './rows';

const rows = everyRow();

const standings: readonly Standing[] = [
  'read',
  'reported',
  'derived',
  'mixed',
  'memory',
  'assumed',
  'common practice',
  'definition',
  'measured',
];

/** What nature allows, by unit; a unit that is not listed only has to be finite. */
const bounds: Readonly<Record<string, readonly [number, number]>> = {
  '% of dry matter': [0, 20],
  '% salts of dry matter': [0, 50],
  '% of fresh weight': [0, 97],
  '% of plant N': [0, 100],
  '% of dry soil': [0, 60],
  'kg fresh per m3': [5, 1500],
  'kg dry matter per m3': [5, 900],
  'share of nitrogen': [0, 1],
  'share of plant N': [0, 1],
  'share of good yield': [0, 1],
  'share of available water': [0.1, 0.8],
  'share of ET0': [0, 1.3],
  'share of the season': [0, 1],
  share: [0, 1],
  'm3 per m3': [0.01, 0.6],
  'kg per L': [0.3, 1.8],
  'g N per m2': [0, 50],
  'kg fresh per m2': [0.05, 20],
  'g N per kg fresh': [0.5, 60],
  'g C per g N': [3, 1400],
  days: [0, 800],
  'deg C': [-10, 40],
  cm: [10, 250],
  mm: [0, 200],
  m: [0.1, 4],
  'deg C of air': [-45, 5],
  'deg C of soil': [-1, 40],
  'degree-days': [50, 2000],
  'weeks from the last frost': [-10, 6],
  'growing seasons without the family': [0, 20],
  'kg dry matter per m2': [0.1, 5],
  'share of what bare soil evaporates': [0, 1],
  'share of residue nitrogen': [0, 1],
  'mg nitrate-N per kg, 0-30 cm': [1, 60],
  'g nitrate-N per m2, 0-30 cm': [1, 25],
};

const problems = (check: (found: FoundRow) => string | null): string[] =>
  rows.flatMap((found) => {
    const problem = check(found);
    return problem === null ? [] : [`${found.where}: ${problem}`];
  });

describe('every number in the tables', () => {
  test('is found at all', () => {
    expect(rows.length).toBeGreaterThan(1700);
  });

  test('names a source that is listed, a place in it and a unit', () => {
    expect(
      problems(({ row }) =>
        !Object.hasOwn(sources, row.source)
          ? `unknown source ${row.source}`
          : row.place.trim() === ''
            ? 'no place'
            : row.unit.trim() === ''
              ? 'no unit'
              : null,
      ),
    ).toEqual([]);
  });

  test('has a standing, and is not called read where the source is our own', () => {
    expect(
      problems(({ row }) =>
        !standings.includes(row.standing)
          ? `unknown standing ${row.standing}`
          : Object.hasOwn(ownSources, row.source) &&
              (row.standing === 'read' || row.standing === 'reported')
            ? `${row.standing} from ${row.source}`
            : row.source === 'Recalled' && row.standing !== 'memory'
              ? `${row.standing} though recalled`
              : null,
      ),
    ).toEqual([]);
  });

  test('lies between its low and its high', () => {
    expect(
      problems(({ row: { low, typical, high } }) =>
        [low, typical, high].every((value) => Number.isFinite(value)) &&
        low <= typical &&
        typical <= high
          ? null
          : `${String(low)} ${String(typical)} ${String(high)}`,
      ),
    ).toEqual([]);
  });

  test('stays within what nature allows', () => {
    expect(
      problems(({ row: { low, high, unit } }) => {
        const range = bounds[unit];
        return range && (low < range[0] || high > range[1])
          ? `${String(low)} to ${String(high)} ${unit}`
          : null;
      }),
    ).toEqual([]);
  });

  test('comes from sources that all have author, title and place', () => {
    for (const [key, { author, title, where }] of Object.entries(sources)) {
      expect(
        [author, title, where].every((text) => text.trim() !== ''),
        key,
      ).toBe(true);
    }
  });
});
