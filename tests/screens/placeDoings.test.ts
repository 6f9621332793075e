// What is found by typing must lead to a button that is there, and be called as it is.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { placeDoings } from '../../app/screens/find/placeDoings';

const screens = join(import.meta.dirname, '../../app/screens');
const pages = readdirSync(screens, { recursive: true })
  .map(String)
  .filter((path) => path.endsWith('.tsx'))
  .map((path) => readFileSync(join(screens, path), 'utf8'));
const buttons = pages.flatMap((text) =>
  [...text.matchAll(/<button\b[^]*?data-doing="([^"]+)"[^]*?>\s*([^<{>]+?)\s*<\/button>/g)].map(
    ([, id, words]) => [id, words] as const,
  ),
);

test('each leads to one button', () => {
  expect(buttons.map(([id]) => id).toSorted()).toEqual(placeDoings.map(({ id }) => id).toSorted());
});

test.each(placeDoings)('$id is called as its button is', ({ id, words }) => {
  const [, says] = buttons.find(([own]) => own === id)!;
  expect(words.startsWith(says!.replace('…', ''))).toBe(true);
});
