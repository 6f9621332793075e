import { expect, test } from 'vitest';
import { mergeSections } from './sections.js';

const parts = ['cost', 'draws'];
const section = (name: string, words: string) => `## ${name}: what it is\n\n${words}\n`;

test('a part that was run again takes the place of its section, the others stay', () => {
  const first = mergeSections('', parts, new Map([['draws', section('draws', 'slow')]]));
  const both = mergeSections(first, parts, new Map([['cost', section('cost', 'dear')]]));
  expect(both.indexOf('dear')).toBeLessThan(both.indexOf('slow'));
  const again = mergeSections(both, parts, new Map([['draws', section('draws', 'fast')]]));
  expect(again).toContain('dear');
  expect(again).toContain('fast');
  expect(again).not.toContain('slow');
  expect(mergeSections(again, parts, new Map())).toBe(again);
});

test('a part that is no more goes', () => {
  const both = new Map(parts.map((name) => [name, section(name, `about ${name}`)]));
  const text = mergeSections(mergeSections('', parts, both), ['cost'], new Map());
  expect(text).toContain('about cost');
  expect(text).not.toContain('about draws');
});
