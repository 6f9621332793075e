// Odds are told in numbers: words that only hedge stand nowhere, and what a range or a band means is
// said where it is drawn and where it is listed.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bandMeaning, howToRead } from '../../app/words/seasonChart';
import { rangeOdds } from '../../app/words/ranges';

const app = join(import.meta.dirname, '../../app');
const files = ['words', 'screens', 'charts', 'controls'].flatMap((room) =>
  readdirSync(join(app, room), { recursive: true })
    .map(String)
    .filter((path) => /\.tsx?$/.test(path))
    .map((path) => join(room, path)),
);
/** The program's words of a file, without what only its readers see. */
const withoutComments = (text: string): string =>
  text.replace(/\/\*[^]*?\*\//g, '').replace(/(?<!:)\/\/.*$/gm, '');
const hedges =
  /\b(?:unlikely|probably|probable|improbable|presumably|perhaps|possibly|(?:very|most|quite|almost) (?:likely|certainly)|chances are|good chance)\b/i;

test('the files were found', () => expect(files.length).toBeGreaterThan(300));

test('the hedges are found where they are', () => {
  expect(hedges.test(withoutComments("const says = 'it will probably rot'; // perhaps"))).toBe(
    true,
  );
  expect(hedges.test(withoutComments("const says = 'about 9'; // perhaps"))).toBe(false);
});

test.each(files)('%s hedges with no word that has no number', (file) => {
  const text = withoutComments(readFileSync(join(app, file), 'utf8'));
  expect(hedges.exec(text)?.[0]).toBeUndefined();
});

test('“likely” has one number', () => expect(rangeOdds).toBe('8 times in 10'));

test('a band is said to be no swing from day to day, beside the drawing and in its table', () => {
  expect(bandMeaning).toMatch(/no swing from one day to the next/);
  expect(howToRead('since 1 January')).toContain(bandMeaning);
  expect(readFileSync(join(app, 'charts/season/WeeksTable.tsx'), 'utf8')).toMatch(
    /caption = .*bandMeaning/,
  );
});
