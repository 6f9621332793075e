import { describe, expect, test } from 'vitest';
import { sourceHazards } from '../../app/document/schema';
import { limits, thresholdRow } from '../../app/tables/thresholds';
import { safetyGroups } from '../../app/words/safetyPage';

const groups = safetyGroups(limits, '10 mm');
const lines = groups.flatMap((group) => group.lines);
const rows = lines.flatMap((line) => line.rows ?? []);

test('a line that rests on a rule is as heavy as the rule', () => {
  for (const { rows: own = [], weight, says } of lines)
    for (const id of own) {
      const { fact } = thresholdRow(id);
      if (fact) expect(fact.weight, says).toBe(weight);
    }
});

test('every danger that can be ticked has its line', () => {
  for (const hazard of sourceHazards) expect(rows, hazard).toContain(hazard);
  for (const row of ['dog poison', 'fouled grass', 'own well', 'compost depth'] as const)
    expect(rows).toContain(row);
});

describe('numbers are those of the rules', () => {
  const saying = (words: RegExp) => lines.find(({ says }) => words.test(says))!.says;
  test('raw manure: 7 CFR 205.203(c)(1)', () => {
    expect(saying(/splashed/)).toMatch(/120 days .* 90 days/);
  });
  test('a silent label: four mowings and six weeks', () => {
    expect(saying(/silent/)).toContain('4 mowings written down and 6 weeks');
  });
});

test('nothing is called safe, and nothing stands there twice', () => {
  for (const { says } of lines) expect(says).not.toMatch(/\bsafe\b|harmless|no danger/i);
  expect(new Set(lines.map(({ says }) => says)).size).toBe(lines.length);
});
