import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { openAppWindow } from './appWindow.js';
import { readArguments } from './arguments.js';
import { chooseWindow, withoutElectron } from './chooseWindow.js';
import {
  electronBinary,
  electronFolder,
  fetchElectron,
  releaseSite,
  siteAnswers,
} from './electronBinary.js';
import { onEnd } from './endings.js';
import { findBrowser } from './findBrowser.js';
import { prepare } from './prepare.js';

const top = dirname(dirname(import.meta.dirname));
/** A window that ends sooner than this, and not well, did not start. */
const startLimitMilliseconds = 5000;

/**
 * Everything behind `npm start`; the process ends when the window does.
 *
 * @param {string[]} words
 */
export async function launch(words) {
  const read = readArguments(words, process.env['INIT_CWD'] ?? process.cwd());
  if ('complaint' in read) return fail(read.complaint);
  const trouble = prepare(top, ['app', 'main'], (line) => console.log(line));
  if (trouble) return fail(trouble);

  const { wish, file } = read.request;
  const probes = probesOf(wish);
  let choice = await chooseWindow(probes);
  console.log(choice.why);
  if (choice.kind === 'electron') {
    const { code, soon } = await runElectron(choice.program, file);
    if (code === 0 || !soon) return process.exit(code ?? 1);
    choice = withoutElectron(
      probes,
      `Electron did not start (it ended with ${code ?? 'a signal'})`,
    );
    console.log(choice.why);
  }
  await serve(choice, file);
}

/** @param {string} sentence */
function fail(sentence) {
  console.error(sentence);
  process.exitCode = 1;
}

/**
 * @param {import('./arguments.js').Wish} wish
 * @returns {import('./chooseWindow.js').Probes}
 */
function probesOf(wish) {
  const { env } = process;
  const folder = electronFolder(top);
  return {
    wish,
    hasScreen: process.platform !== 'linux' || !!(env['DISPLAY'] ?? env['WAYLAND_DISPLAY']),
    hasElectronPackage: folder !== null,
    binary: () => folder && electronBinary(folder),
    siteAnswers: () => siteAnswers(releaseSite(env)),
    fetchBinary: async () => {
      console.log('Fetching Electron (once, some 120 MB) ...');
      return folder ? fetchElectron(folder) : 'its package is not installed';
    },
    browser: () => findBrowser(),
  };
}

/**
 * @param {string} binary
 * @param {string | null} file
 * @returns {Promise<{ code: number | null, soon: boolean }>}
 */
function runElectron(binary, file) {
  // Editors set this for their own use; with it Electron would be a plain Node.
  const { ELECTRON_RUN_AS_NODE: _unwanted, ...env } = process.env;
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const began = Date.now();
  return new Promise((resolve) => {
    const child = spawn(binary, [...asRoot, top, ...(file ? [file] : [])], {
      stdio: 'inherit',
      env,
    });
    let isAsked = false;
    /** @param {number | null} code */
    const end = (code) =>
      resolve(
        isAsked
          ? { code: 0, soon: false }
          : { code, soon: Date.now() - began < startLimitMilliseconds },
      );
    onEnd((signal) => {
      isAsked = true;
      child.kill(signal);
    });
    child.once('error', () => end(-1));
    child.once('exit', end);
  });
}

/**
 * The loopback service, with or without a window of its own.
 *
 * @param {import('./chooseWindow.js').Choice} choice
 * @param {string | null} file
 */
async function serve(choice, file) {
  const { productName, version } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
  const { startService, dataFolder } = await import(
    pathToFileURL(join(top, '.build/main/loopback.js')).href
  );
  const service = await startService({
    pageFolder: join(top, '.build/app'),
    dataFolder: dataFolder(productName),
    gardensFolder: join(homedir(), 'Documents', productName),
    version,
    file,
  });
  const window = choice.kind === 'browser' ? openAppWindow(choice.program, service.address) : null;
  let isEnding = false;
  const end = async () => {
    isEnding = true;
    window?.close();
    await service.stop();
    process.exit(0);
  };
  onEnd(() => void end());

  if (window) {
    const began = Date.now();
    const code = await window.ended;
    if (isEnding) return;
    if (code === 0 || Date.now() - began > startLimitMilliseconds) return end();
    console.log(`That window did not open (it ended with ${code ?? 'a signal'}). The address is:`);
  }
  console.log(service.address);
  console.log('Ctrl+C ends it.');
}
