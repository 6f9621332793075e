import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/**
 * Folder of the installed electron package, or null. The package itself is never loaded: that would
 * start its download.
 *
 * @param {string} top
 */
export function electronFolder(top) {
  try {
    return dirname(createRequire(join(top, 'package.json')).resolve('electron/package.json'));
  } catch {
    return null;
  }
}

/**
 * Path of Electron's binary if it is on this machine, or null.
 *
 * @param {string} folder  of the electron package
 * @param {Record<string, string | undefined>} [env]
 */
export function electronBinary(folder, env = process.env) {
  try {
    const inside = readFileSync(join(folder, 'path.txt'), 'utf8').trim();
    const binary = join(env['ELECTRON_OVERRIDE_DIST_PATH'] ?? join(folder, 'dist'), inside);
    return existsSync(binary) ? binary : null;
  } catch {
    return null;
  }
}

/** @param {Record<string, string | undefined>} env */
export const releaseSite = (env) =>
  env['ELECTRON_MIRROR'] ??
  env['npm_config_electron_mirror'] ??
  'https://github.com/electron/electron/releases/';

/**
 * Whether Electron's release site can be asked at all: offline must cost seconds, not minutes.
 *
 * @param {string} site
 * @param {number} [limitMilliseconds]
 */
export async function siteAnswers(site, limitMilliseconds = 3000) {
  try {
    const { status } = await fetch(site, {
      method: 'HEAD',
      redirect: 'manual',
      signal: AbortSignal.timeout(limitMilliseconds),
    });
    // A proxy that forbids the site answers in its place; a mirror may know no page at its top.
    return status < 400 || status === 404 || status === 405;
  } catch {
    return false;
  }
}

/**
 * Runs the package's own installer, which checks the sum of what it fetches.
 *
 * @param {string} folder
 * @returns {Promise<string | null>} why it failed, or null
 */
export function fetchElectron(folder) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(folder, 'install.js')], {
      stdio: ['ignore', 'inherit', 'pipe'],
      timeout: 15 * 60_000,
    });
    let said = '';
    child.stderr.setEncoding('utf8').on('data', (text) => (said += text));
    child.once('error', (error) => resolve(error.message));
    child.once('close', (code) =>
      resolve(code === 0 ? null : (/^\w*Error.*$/m.exec(said)?.[0] ?? 'no reason given')),
    );
  });
}
