import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const made: string[] = [];

/** A new empty folder, removed when the tests of the file are done. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'mowings-test-'));
  made.push(folder);
  return folder;
}

afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});
