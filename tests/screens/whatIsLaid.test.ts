import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import { brownGroups, whatGroups } from '../../app/screens/week/sources';

test('no two things that can be laid have one name; what is in store says so', () => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('the sample cannot be read');
  const garden = parsed.value;
  const groups = whatGroups(garden, dayOf(garden.garden.today ?? ''), String);
  for (const list of [groups, brownGroups(garden, '')]) {
    const labels = list.flatMap(({ options }) => options.map(({ label }) => label));
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels).toContain('Wheat straw, in store');
    expect(labels).toContain('Wheat straw, from elsewhere');
  }
  // a store with a name of its own needs no mark
  expect(groups.flatMap(({ options }) => options.map(({ label }) => label))).toContain('Heap');
});
