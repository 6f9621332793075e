import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { heldAgainstMeasured } from '../../app/tables/heldAgainst';
import { casesWithoutFacts } from './compare';
import groupNotes from './groupNotes.json' with { type: 'json' };
import measured from './measured.json' with { type: 'json' };
import notCompared from './notCompared.json' with { type: 'json' };
import { report, type Report } from './report';
import signs from './signs.json' with { type: 'json' };
import reasons from './why.json' with { type: 'json' };

describe('the comparison with measurements', () => {
  let made: Report;
  beforeAll(async () => {
    made = await report();
  });

  test('RESULTS.md is what the program says today (npm run validate writes it anew)', () => {
    expect(readFileSync(join(import.meta.dirname, 'RESULTS.md'), 'utf8')).toBe(made.markdown);
  });

  test('what the window says of its ranges is what this came to', () => {
    const { inside, of } = heldAgainstMeasured;
    expect(made.markdown).toContain(
      `Of ${String(of)} measured numbers ${String(inside)} lie inside our ranges`,
    );
  });

  test('whatever lies outside our range has a reason beside it', () => {
    expect(made.withoutReason).toEqual([]);
  });
});

describe('the facts', () => {
  const facts = [...measured, ...signs];
  test('each is named once, has a source, a place and a standing, and stands somewhere', () => {
    const ids = [...facts, ...notCompared].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { source, place, standing } of facts)
      for (const word of [source, place, standing]) expect(word.length).toBeGreaterThan(3);
    for (const { because } of notCompared) expect(because.length).toBeGreaterThan(10);
    for (const { low, high } of measured) expect(low).toBeLessThanOrEqual(high);
  });

  test('a group has one unit and a note on how ours was run', () => {
    const units = new Map<string, Set<string>>();
    for (const { group, unit } of measured)
      units.set(group, (units.get(group) ?? new Set()).add(unit));
    for (const [group, found] of units) expect([group, found.size]).toEqual([group, 1]);
    expect(Object.keys(groupNotes).toSorted()).toEqual([...units.keys()].toSorted());
  });

  test('nothing of ours stands alone, and no reason is for something unknown', () => {
    expect(casesWithoutFacts()).toEqual([]);
    const known = new Set(measured.map(({ id }) => id));
    expect(Object.keys(reasons).filter((id) => !known.has(id))).toEqual([]);
  });
});
