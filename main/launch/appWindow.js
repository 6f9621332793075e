import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/**
 * A browser that was installed as a snap sees neither the machine's temporary folder nor hidden
 * folders, only its own.
 *
 * @param {string} browser
 * @param {string} home
 * @param {(path: string) => string} [real]
 * @param {(path: string) => boolean} [exists]
 */
export function profileParent(browser, home, real = realpathSync, exists = existsSync) {
  const whole = real(browser);
  const isSnap =
    whole.endsWith('/snap') ||
    whole.includes('/snap/') ||
    (browser.endsWith('/chromium-browser') && exists('/snap/bin/chromium'));
  return isSnap ? join(home, 'snap/chromium/common') : tmpdir();
}

/**
 * @param {string} profile  folder of the browser profile
 * @param {string} door     address of the page that leads to the program
 * @param {boolean} isRoot
 */
export const windowOptions = (profile, door, isRoot) => [
  `--app=${door}`,
  `--user-data-dir=${profile}`,
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--window-size=1280,860',
  // Chromium refuses its sandbox to root; --test-type keeps it from warning about that on every start.
  ...(isRoot ? ['--no-sandbox', '--test-type'] : []),
];

/**
 * Opens the address in a window without an address bar, in a profile of its own: a shared one would
 * hand the window to a browser that is running already, and its end could not be seen.
 *
 * @param {string} browser
 * @param {string} address  holds the token, so it must not stand on a command line that others can read
 * @returns {{ ended: Promise<number | null>, close: () => void }}  `ended` gives the exit code
 */
export function openAppWindow(browser, address) {
  const parent = profileParent(browser, homedir());
  mkdirSync(parent, { recursive: true });
  const profile = mkdtempSync(join(parent, 'mowings-window-'));
  const door = join(profile, 'open.html');
  writeFileSync(
    door,
    `<!doctype html><meta charset="utf-8"><title>Mowings</title><script>location.replace(${JSON.stringify(address)})</script>`,
    { mode: 0o600 },
  );
  const child = spawn(
    browser,
    windowOptions(profile, pathToFileURL(door).href, process.getuid?.() === 0),
    { stdio: 'ignore' },
  );
  /** @type {Promise<number | null>} */
  const ended = new Promise((resolve) => {
    child.once('error', () => resolve(-1));
    child.once('exit', (code) => resolve(code));
  });
  const tidy = () => {
    try {
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    } catch {
      // A process of the browser may still be writing there; the system's own tidying takes the rest.
    }
  };
  process.once('exit', tidy);
  return { ended, close: () => void child.kill() };
}
