import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import type { Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import { checkGardens } from './gardens/checkGardens';
import { sampleGarden } from './gardens/sampleGarden';

/**
 * The gardens that come with the program are made here, so that nobody edits 600 days of weather
 * by hand. To write them anew after a change:
 *
 *     WRITE_GARDENS=1 npx vitest run --config .config/vitest.config.ts tests/documents
 */
const folder = join(import.meta.dirname, '../../assets/gardens');
const files: readonly (readonly [string, Garden])[] = [
  ['sample.mowings', sampleGarden()],
  ...Object.entries(checkGardens()).map(
    ([name, garden]) => [`checks/${name}.mowings`, garden] as const,
  ),
];

if (process.env['WRITE_GARDENS'] === '1') {
  for (const [name, garden] of files) writeFileSync(join(folder, name), serializeGarden(garden));
}

describe('gardens that come with the program', () => {
  test.each(files)('%s is what the maker makes, and can be read', (name, garden) => {
    const text = readFileSync(join(folder, name), 'utf8');
    expect(text).toBe(serializeGarden(garden));
    const parsed = parseGarden(text);
    expect(parsed.ok ? null : parsed.error).toBeNull();
  });

  test('no garden lies there that nothing makes', () => {
    const made = files.map(([name]) => name).sort();
    const there = readdirSync(folder, { recursive: true })
      .map((name) => String(name).replaceAll('\\', '/'))
      .filter((name) => name.endsWith('.mowings'))
      .sort();
    expect(there).toEqual(made);
  });
});
