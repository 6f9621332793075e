import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { posix, win32 } from 'node:path';

/** Names under which browsers of the Chromium family are installed, by kind of system. */
const names = {
  win32: [
    'Google/Chrome/Application/chrome.exe',
    'Microsoft/Edge/Application/msedge.exe',
    'Chromium/Application/chrome.exe',
    'BraveSoftware/Brave-Browser/Application/brave.exe',
  ],
  darwin: ['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser'],
  others: [
    'chromium',
    'chromium-browser',
    'google-chrome',
    'google-chrome-stable',
    'microsoft-edge',
    'microsoft-edge-stable',
    'brave-browser',
  ],
};

/**
 * @typedef {object} Machine  what the search may look at; the real machine unless a test says otherwise
 * @property {string} platform
 * @property {Record<string, string | undefined>} env
 * @property {string} home
 * @property {(path: string) => boolean} exists
 */

/** @returns {Machine} */
const thisMachine = () => ({
  platform: process.platform,
  env: process.env,
  home: homedir(),
  exists: existsSync,
});

/**
 * Path of an installed browser of the Chromium family, or null. BROWSER_PATH names one and ends the
 * search, also when nothing is there: whoever sets it wants that one or none.
 *
 * @param {Machine} [machine]
 * @returns {string | null}
 */
export function findBrowser(machine = thisMachine()) {
  const { platform, env, home, exists } = machine;
  const asked = env['BROWSER_PATH'];
  if (asked) return exists(asked) ? asked : null;
  return candidates(platform, env, home).find((path) => exists(path)) ?? null;
}

/**
 * @param {string} platform
 * @param {Record<string, string | undefined>} env
 * @param {string} home
 */
function candidates(platform, env, home) {
  if (platform === 'win32') {
    const bases = ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA'].flatMap(
      (name) => env[name] ?? [],
    );
    return bases.flatMap((base) => names.win32.map((name) => win32.join(base, name)));
  }
  if (platform === 'darwin')
    return ['/Applications', posix.join(home, 'Applications')].flatMap((base) =>
      names.darwin.map((name) => `${base}/${name}.app/Contents/MacOS/${name}`),
    );
  const folders = (env['PATH'] ?? '').split(':').filter(Boolean);
  return names.others.flatMap((name) => folders.map((folder) => posix.join(folder, name)));
}
