import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const app = join(import.meta.dirname, '../../app');
const files = readdirSync(app, { recursive: true, encoding: 'utf8' });
const textOf = (ends: RegExp): string =>
  files
    .filter((file) => ends.test(file))
    .map((file) => readFileSync(join(app, file), 'utf8'))
    .join('\n');

test('every name of a colour, size or weight that is used is given somewhere', () => {
  const styles = textOf(/\.css$/);
  const screens = textOf(/\.tsx?$/);
  const used = new Set(
    [...(styles + screens).matchAll(/var\((--[a-z0-9-]+)/g)].map(([, name]) => name!),
  );
  const given = new Set([
    ...[...styles.matchAll(/(--[a-z0-9-]+)\s*:/g)].map(([, name]) => name!),
    // set on a single thing by a screen
    ...[...screens.matchAll(/['"](--[a-z0-9-]+)['"]\s*[:\],]/g)].map(([, name]) => name!),
  ]);
  expect(used.size).toBeGreaterThan(60);
  // an unknown name falls back without a word: a range was once filled with ink
  expect([...used].filter((name) => !given.has(name))).toEqual([]);
});
