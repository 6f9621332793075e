import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** @param {string} top */
const lockPath = (top) => join(top, 'package-lock.json');
/** @param {string} top */
const stampPath = (top) => join(top, 'node_modules/.mowings-lock');
/** @param {string} top */
const lockHash = (top) =>
  createHash('sha256')
    .update(readFileSync(lockPath(top)))
    .digest('hex');

/**
 * Whether node_modules holds what the lock file asks for. The stamp written after an install answers
 * at once; where it does not fit (somebody ran npm by hand), npm's own record of what it installed is
 * compared with the lock.
 *
 * @param {string} top
 */
export function hasPackages(top) {
  const hash = lockHash(top);
  if (readOr(stampPath(top), '') === hash) return true;
  const installed = readOr(join(top, 'node_modules/.package-lock.json'), '');
  if (!installed || !fulfils(JSON.parse(installed), JSON.parse(readOr(lockPath(top), '{}'))))
    return false;
  writeFileSync(stampPath(top), hash);
  return true;
}

/**
 * @typedef {{ packages?: Record<string, { version?: string, optional?: boolean }> }} Lock
 *
 * @param {Lock} installed
 * @param {Lock} wanted
 * @returns {boolean} every wanted package is there in its version; optional ones (other systems') may be absent
 */
export function fulfils(installed, wanted) {
  return Object.entries(wanted.packages ?? {}).every(([place, { version, optional }]) => {
    if (place === '') return true;
    const found = installed.packages?.[place];
    return found ? found.version === version : optional === true;
  });
}

/**
 * Installs exactly what the lock file says. The stamp is written only after npm has succeeded, and npm
 * empties node_modules first, so an install that was broken off is repeated.
 *
 * @param {string} top
 * @param {(line: string) => void} say
 * @returns {string | null} a sentence when it failed
 */
export function installPackages(top, say) {
  say('Installing packages (once, some 300 MB on disk) ...');
  const npm = process.env['npm_execpath'];
  const options = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
  // npm's chatter goes to the error stream: a command's output must hold nothing but its answer.
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const how = { cwd: top, stdio: ['ignore', 2, 2] };
  const done =
    npm && existsSync(npm) && /\.c?js$/.test(npm)
      ? spawnSync(process.execPath, [npm, ...options], how)
      : spawnSync('npm', options, { ...how, shell: process.platform === 'win32' });
  if (done.status !== 0)
    return `The packages could not be installed (npm ci ended with ${done.status ?? done.error?.message ?? 'a signal'}). Check the network, then try again.`;
  writeFileSync(stampPath(top), lockHash(top));
  return null;
}

/**
 * @param {string} path
 * @param {string} otherwise
 */
function readOr(path, otherwise) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return otherwise;
  }
}
