// What has to come before the first page stands, and that the build has nothing to complain of.
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, createLogger } from 'vite';
import { beforeAll, describe, expect, test } from 'vitest';

const top = join(import.meta.dirname, '../..');

interface Chunk {
  readonly type: 'chunk';
  readonly fileName: string;
  readonly code: string;
  readonly isEntry: boolean;
  readonly imports: readonly string[];
  readonly moduleIds: readonly string[];
}
interface Asset {
  readonly type: 'asset';
  readonly fileName: string;
  readonly source: string | Uint8Array;
}

const complaints: string[] = [];
let files: readonly (Chunk | Asset)[] = [];

beforeAll(async () => {
  const logger = createLogger('warn');
  logger.warn = (message) => void complaints.push(message);
  logger.warnOnce = (message) => void complaints.push(message);
  const mode = process.env['NODE_ENV'];
  process.env['NODE_ENV'] = 'production';
  try {
    const built = await build({
      configFile: join(top, '.config/vite.app.ts'),
      customLogger: logger,
      build: { write: false },
    });
    files = (built as unknown as { output: readonly (Chunk | Asset)[] }).output;
  } finally {
    process.env['NODE_ENV'] = mode;
  }
});

const chunks = (): readonly Chunk[] => files.filter((file): file is Chunk => file.type === 'chunk');

/** The entry and all that it cannot run without. */
function fromTheStart(): readonly Chunk[] {
  const found = new Set<Chunk>(chunks().filter(({ isEntry }) => isEntry));
  for (const chunk of found)
    for (const name of chunk.imports) {
      const next = chunks().find(({ fileName }) => fileName === name);
      if (next) found.add(next);
    }
  return [...found];
}

const zipped = (text: string | Uint8Array): number => gzipSync(text, { level: 9 }).length;
const isHeld = (within: readonly Chunk[], path: RegExp): boolean =>
  within.some(({ moduleIds }) => moduleIds.some((id) => path.test(id)));

describe('what comes before the first page', () => {
  test('is at most 350 kB, packed: code, styles and the page itself', () => {
    const assets = files.filter((file): file is Asset => file.type === 'asset');
    const page = assets.find(({ fileName }) => fileName === 'index.html')!;
    // those that the page itself names; the others come with the place that wants them
    const styles = assets.filter(
      ({ fileName }) => fileName.endsWith('.css') && String(page.source).includes(fileName),
    );
    expect(styles.length).toBeGreaterThanOrEqual(1);
    const parts = [
      ...fromTheStart().map(({ fileName, code }) => [fileName, zipped(code)] as const),
      ...[page, ...styles].map(({ fileName, source }) => [fileName, zipped(source)] as const),
    ];
    const whole = parts.reduce((sum, [, bytes]) => sum + bytes, 0);
    expect(whole, parts.map((part) => part.join(' ')).join('\n')).toBeLessThanOrEqual(350_000);
    // less would mean that the start was not followed
    expect(whole).toBeGreaterThan(100_000);
  });

  test('holds the first places and none that is brought on demand', () => {
    const start = fromTheStart();
    for (const path of [/screens\/week\/ThisWeek\.tsx$/, /screens\/first\/FirstRun\.tsx$/])
      expect(isHeld(start, path), String(path)).toBe(true);
    const later = [
      /screens\/beds\/BedPage\.tsx$/,
      /screens\/garden\/GardenPage\.tsx$/,
      /charts\/season\/Chart\.tsx$/,
      /document\/weather\/readWeather\.ts$/,
      /assets\/weather\//,
      /assets\/gardens\/sample\.mowings/,
    ];
    for (const path of later) {
      expect(isHeld(chunks(), path), `${String(path)} is built`).toBe(true);
      expect(isHeld(start, path), `${String(path)} comes with the start`).toBe(false);
    }
  });

  test('of the parser only what reads plain numbers', () => {
    expect(isHeld(chunks(), /node_modules\/mathjs\//)).toBe(true);
    expect(isHeld(chunks(), /node_modules\/(?:decimal\.js|fraction\.js|complex\.js)\//)).toBe(
      false,
    );
  });
});

test('the build has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
