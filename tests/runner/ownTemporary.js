import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/**
 * A temporary folder for one run alone: what is left in it was left by this run, and whatever a
 * browser leaves behind goes with it.
 *
 * @returns {{ env: NodeJS.ProcessEnv, leftovers: () => string[], remove: () => void }}
 *   `env` sends everything that is started with it there; `leftovers` names what programs and tests of
 *   ours made there and did not take away, each of them once
 */
export function ownTemporary() {
  // short: Chromium puts a socket in it, and the paths of sockets may not be long
  const folder = mkdtempSync(join(tmpdir(), 'mow-'));
  /** @type {Set<string>} */
  const named = new Set();
  return {
    env: { TMPDIR: folder, TEMP: folder, TMP: folder },
    leftovers: () => {
      const left = readdirSync(folder).filter(
        (name) => name.startsWith('mowings-') && !named.has(name),
      );
      for (const name of left) named.add(name);
      return left;
    },
    remove: () => {
      try {
        rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
      } catch {
        // A browser that is still ending may write there; the system's own tidying takes the rest.
      }
    },
  };
}
