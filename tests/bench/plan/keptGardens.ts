import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Compared } from './compareGardens';

/** Gardens that were played already by the very same code. */
export interface KeptGardens {
  readonly bySeed: ReadonlyMap<number, Compared>;
  readonly file: string;
  keep(garden: Compared): void;
}

/** What a bundled file and all it is made of come to. */
export function codeOf(folder: string, name: string): string {
  const hash = createHash('sha256');
  const seen = new Set<string>();
  const take = (file: string): void => {
    if (seen.has(file)) return;
    seen.add(file);
    const text = readFileSync(join(folder, file), 'utf8');
    hash.update(text);
    for (const [, next] of text.matchAll(/from "\.\/([^"]+)"/g)) take(next!);
  };
  take(`${name}.js`);
  return hash.digest('hex').slice(0, 16);
}

/** Whole lines of a file; a run that was cut short may have left half a line at its end. */
const wholeLines = (file: string): string[] =>
  existsSync(file) ? readFileSync(file, 'utf8').split('\n').slice(0, -1) : [];

/**
 * Keeps gardens as they are played, outside of the project, so that a run that was cut short goes on
 * where it was. Another code, another file: what old code played is never taken for the new.
 */
export function keptGardens(code: string): KeptGardens {
  const file = join(tmpdir(), 'mowings-bench', `plan-${code}.jsonl`);
  mkdirSync(dirname(file), { recursive: true });
  const lines = wholeLines(file);
  writeFileSync(file, lines.map((line) => `${line}\n`).join(''));
  const bySeed = new Map(
    lines.map((line) => JSON.parse(line) as Compared).map((garden) => [garden.seed, garden]),
  );
  return {
    bySeed,
    file,
    keep(garden) {
      bySeed.set(garden.seed, garden);
      appendFileSync(file, `${JSON.stringify(garden)}\n`);
    },
  };
}
