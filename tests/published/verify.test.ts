import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { groups, verify } from './verify';
import type { Comparison, ComparisonGroup } from './verify/comparison';
import { readKnown } from './verify/known';
import { leastPrinted, report, verdictOf } from './verify/report';
import { imports, unusedOf } from './verify/usage';

const fileBeside = (name: string): string => readFileSync(join(import.meta.dirname, name), 'utf8');

describe('the comparison with print', () => {
  const found = verify();

  test('is what RESULTS.md says; otherwise run `npm run verify` and look at what changed', () => {
    expect(found.markdown).toBe(fileBeside('RESULTS.md'));
  });

  test('has nothing to complain of', () => {
    expect(found.complaints).toEqual([]);
  });

  test('never counts what was not read in the source', () => {
    for (const { comparisons } of groups) {
      for (const { standing, source } of comparisons) {
        if (/recalled|worked out|converted|agreement/.test(source)) {
          expect(standing, source).not.toBe('printed');
        }
      }
    }
    // seen second-hand in tests of other programs, by the reading of FAO-56
    const secondHand = groups
      .flatMap(({ comparisons }) => comparisons)
      .filter(({ place }) => /^Example (2|3|5|11|12|14),/.test(place));
    expect(secondHand).toHaveLength(7);
    expect(secondHand.every(({ standing }) => standing === 'second-hand')).toBe(true);
  });

  test('names every number once', () => {
    const names = groups.flatMap(({ comparisons }) =>
      comparisons.map(({ source, place, quantity }) => `${source} | ${place} | ${quantity}`),
    );
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
  });
});

describe('what makes it fail', () => {
  const line = (at: number, change: Partial<Comparison> = {}): Comparison => ({
    source: 'Somebody 1999',
    place: 'Table 1',
    quantity: `number ${at}`,
    printed: '1.0',
    ours: 1.04,
    within: 'digits',
    standing: 'printed',
    ...change,
  });
  const group = (comparisons: readonly Comparison[]): ComparisonGroup => ({
    title: 'Made for the test',
    equations: [{ name: 'sum', file: 'app/core/sum' }],
    comparisons,
  });
  const enough = Array.from({ length: leastPrinted }, (_, at) => line(at));
  const known = (printed: string, reason = 'Their table is upside down.') =>
    readKnown(`| source | place | quantity | printed | reason |\n| --- | --- | --- | ---: | --- |
| Somebody 1999 | Table 1 | number 999 | ${printed} | ${reason} |\n`);
  const judged = (
    comparisons: readonly Comparison[],
    differences: ReturnType<typeof readKnown> = [],
    isUsed = true,
  ) =>
    report({
      groups: [group(comparisons)],
      known: differences,
      shares: [],
      unused: (equations) => (isUsed ? [] : equations),
    }).complaints;
  const off = line(999, { ours: 1.06 });

  test('nothing, when enough are met', () => expect(judged(enough)).toEqual([]));

  test('one number too few', () => {
    expect(judged(enough.slice(1))).toEqual([
      `Only ${leastPrinted - 1} printed numbers are met, ${leastPrinted} are wanted.`,
    ]);
  });

  test('a number beyond half a unit of its last digit', () => {
    expect(judged([...enough, off])).toEqual([
      'Somebody 1999, Table 1, number 999: printed 1.0, ours 1.060, and known.md gives no reason.',
    ]);
    expect(verdictOf(line(0, { ours: 1.05 }), [])).toBe('to its digits');
    expect(verdictOf(off, [])).toBe('differs');
  });

  test('a whole unit is allowed only where the print is known to be rounded so', () => {
    expect(verdictOf({ ...off, within: 'unit' }, [])).toBe('within one unit');
    expect(verdictOf({ ...off, within: 'unit', ours: 1.11 }, [])).toBe('differs');
  });

  test('no number that is none', () => {
    expect(judged([...enough, line(999, { ours: NaN })])).toHaveLength(1);
    expect(judged([...enough, line(999, { printed: '' })])).toHaveLength(1);
  });

  test('not a difference with its reason, but one without, or one of another number', () => {
    expect(judged([...enough, off], known('1.0'))).toEqual([]);
    expect(judged([...enough, off], known('1.0', ''))).toHaveLength(2);
    expect(judged([...enough, off], known('2.0'))).toHaveLength(2);
  });

  test('a reason for a number that no longer differs', () => {
    expect(judged([...enough, line(999)], known('1.0'))).toEqual([
      'known.md speaks of Somebody 1999, number 999, which no longer differs.',
    ]);
  });

  test('numbers of equations the program does not call, and of other standing, do not count', () => {
    expect(judged(enough, [], false)).toHaveLength(1);
    expect(judged(enough.map((one) => ({ ...one, standing: 'recalled' as const })))).toHaveLength(
      1,
    );
  });
});

describe('whether the program calls an equation', () => {
  const equation = { name: 'sum', file: 'app/core/sum' };

  test('is read from imports of its value', () => {
    expect(imports("import { sum } from '../core/sum';", equation)).toBe(true);
    expect(imports("import {\n  other,\n  sum as total,\n} from './sum';", equation)).toBe(true);
    expect(imports("import type { sum } from '../core/sum';", equation)).toBe(false);
    expect(imports("import { type sum } from '../core/sum';", equation)).toBe(false);
    expect(imports("import { summary } from '../core/sum';", equation)).toBe(false);
    expect(imports("import { sum } from '../core/mean';", equation)).toBe(false);
    expect(imports("// import { sum } from '../core/sum';", equation)).toBe(false);
  });

  test('an equation that is nowhere is unused; the day of water is not', () => {
    expect(unusedOf([equation])).toEqual([equation]);
    expect(unusedOf([{ name: 'waterDay', file: 'app/core/soil/water' }])).toEqual([]);
  });
});
