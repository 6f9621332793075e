import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { isBuilt } from './freshness.js';
import { hasPackages, installPackages } from './packages.js';

/**
 * Installs packages and builds the parts, each only where something changed since the last time.
 *
 * @param {string} top
 * @param {readonly import('./freshness.js').Part[]} parts
 * @param {(line: string) => void} say
 * @returns {string | null} a sentence when it failed
 */
export function prepare(top, parts, say) {
  if (!hasPackages(top)) {
    const trouble = installPackages(top, say);
    if (trouble) return trouble;
  }
  const stale = parts.filter((part) => !isBuilt(top, part));
  if (stale.length === 0) return null;
  say('Building ...');
  const done = spawnSync(process.execPath, [join(top, 'main/launch/build.js'), ...stale], {
    cwd: top,
    stdio: ['ignore', 2, 2],
  });
  return done.status === 0 ? null : 'The build failed; what went wrong stands above.';
}
