import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from '../../main/launch/findBrowser.js';

const minute = 60_000;

/**
 * Path of a Chromium that runs: an installed one, else Playwright's, else (for root) Debian's. The
 * later ones are fetched where they are not there yet.
 *
 * @param {string} top
 * @param {(line: string) => void} say
 * @returns {Promise<string | null>}
 */
export async function provideChromium(top, say) {
  const installed = findBrowser();
  if (installed && runs(installed)) return installed;
  return (await playwrightsOwn(top, say)) ?? debians(say);
}

/** @param {string} browser */
function runs(browser) {
  if (!existsSync(browser)) return false;
  // On Windows and macOS the question would open a window.
  if (process.platform !== 'linux') return true;
  return spawnSync(browser, ['--version'], { timeout: minute / 2 }).status === 0;
}

/**
 * @param {string} top
 * @param {(line: string) => void} say
 */
async function playwrightsOwn(top, say) {
  const { chromium } = await import('@playwright/test');
  const browser = chromium.executablePath();
  if (runs(browser)) return browser;
  say("No Chromium is installed; fetching Playwright's ...");
  spawnSync(
    process.execPath,
    [join(top, 'node_modules/@playwright/test/cli.js'), 'install', 'chromium'],
    { cwd: top, stdio: ['ignore', 2, 2], timeout: 4 * minute },
  );
  return runs(browser) ? browser : null;
}

/** @param {(line: string) => void} say */
function debians(say) {
  if (process.getuid?.() !== 0) return null;
  if (spawnSync('apt-get', ['--version']).status !== 0) return null;
  say("That did not work; installing the system's own Chromium ...");
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const words of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']])
    spawnSync('apt-get', words, { env, stdio: ['ignore', 2, 2], timeout: 10 * minute });
  const installed = findBrowser();
  return installed && runs(installed) ? installed : null;
}
