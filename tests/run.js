// `npm test`: sets up what is missing (packages, the build, a Chromium), runs every runner, and ends
// with one line that sums them. Names after it (`npm test -- unit`) choose among the runners.
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { nodeComplaint } from '../main/launch/nodeVersion.js';
import { prepare } from '../main/launch/prepare.js';
import { provideChromium } from './runner/chromium.js';
import { ownTemporary } from './runner/ownTemporary.js';
import { judgeRunner, readPlaywright, readVitest, summary, withLeftovers } from './runner/sums.js';

/**
 * @typedef {import('./runner/sums.js').Outcome} Outcome
 * @typedef {object} Runner
 * @property {string} name
 * @property {string[]} words  what Node runs
 * @property {number} minutes  after which it is stopped and has failed
 * @property {((report: any) => Outcome)} [read]  without it the runner is one check by itself
 */

const top = dirname(import.meta.dirname);
const reports = join(top, '.build/reports');
/** @param {string} path */
const inPackages = (path) => join(top, 'node_modules', path);
/** @param {string} name */
const reportOf = (name) => join(reports, `${name}.json`);

/** @type {Runner[]} */
const runners = [
  { name: 'lint', words: [join(top, '.config/lint.js')], minutes: 3 },
  { name: 'types', words: [inPackages('typescript/bin/tsc'), '-p', 'tsconfig.json'], minutes: 5 },
  {
    name: 'unit',
    words: [
      inPackages('vitest/vitest.mjs'),
      ...['run', '--config', '.config/vitest.config.ts'],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${reportOf('unit')}`],
    ],
    minutes: 30,
    read: (report) => readVitest(report, top),
  },
  {
    name: 'pages',
    words: [
      inPackages('@playwright/test/cli.js'),
      ...['test', '--config', '.config/playwright.config.ts', '--reporter=list,json'],
    ],
    minutes: 60,
    read: readPlaywright,
  },
];

/**
 * @param {Runner} runner
 * @param {NodeJS.ProcessEnv} env
 * @returns {Promise<string>} how it ended, or '' for well
 */
function run(runner, env) {
  return new Promise((resolve) => {
    // A group of its own, so that a runner that hangs is stopped with all it started.
    const isGroup = process.platform !== 'win32';
    const child = spawn(process.execPath, runner.words, {
      cwd: top,
      env,
      stdio: ['ignore', 'inherit', 'inherit'],
      detached: isGroup,
    });
    let isLate = false;
    /** @param {NodeJS.Signals} signal */
    const stop = (signal) => {
      try {
        if (isGroup && child.pid) process.kill(-child.pid, signal);
        else child.kill(signal);
      } catch {
        // It has ended by itself in the meantime.
      }
    };
    const interrupt = () => {
      stop('SIGTERM');
      process.exit(1);
    };
    process.once('SIGINT', interrupt).once('SIGTERM', interrupt);
    const limit = setTimeout(() => {
      isLate = true;
      stop('SIGKILL');
    }, runner.minutes * 60_000);
    /** @param {string} how */
    const end = (how) => {
      clearTimeout(limit);
      process.off('SIGINT', interrupt).off('SIGTERM', interrupt);
      resolve(isLate ? `was stopped after ${runner.minutes} minutes` : how);
    };
    child.once('error', (error) => end(`failed: ${error.message}`));
    child.once('exit', (code, signal) => end(code === 0 ? '' : `ended with ${code ?? signal}`));
  });
}

/**
 * @param {Runner} runner
 * @param {NodeJS.ProcessEnv} env
 * @returns {Promise<Outcome>}
 */
async function outcomeOf(runner, env) {
  console.log(`\n--- ${runner.name} ---`);
  const report = reportOf(runner.name);
  rmSync(report, { force: true });
  const ended = await run(runner, { ...env, PLAYWRIGHT_JSON_OUTPUT_FILE: report });
  if (!runner.read)
    return ended
      ? { passed: 0, failed: [`it ${ended}; see above`], notRun: [] }
      : { passed: 1, failed: [], notRun: [] };
  try {
    return judgeRunner(runner.read(JSON.parse(readFileSync(report, 'utf8'))), ended);
  } catch {
    return judgeRunner(null, ended);
  }
}

/** @param {string[]} chosen */
async function main(chosen) {
  const unknown = chosen.find((name) => !runners.some((runner) => runner.name === name));
  if (unknown) {
    console.error(
      `There is no runner "${unknown}"; there are: ${runners.map((r) => r.name).join(', ')}.`,
    );
    return false;
  }
  mkdirSync(reports, { recursive: true });
  const setUp = nodeComplaint(process.versions.node) ?? prepare(top, [], console.log);
  const built = setUp ?? prepare(top, ['main', 'app'], console.log);
  const wantsPages = chosen.length === 0 || chosen.includes('pages');
  const browser = setUp || !wantsPages ? null : await provideChromium(top, console.log);
  const temporary = ownTemporary();
  process.once('exit', temporary.remove);
  const env = {
    // Runners then write no missing snapshots, and so do not pass for want of them.
    CI: 'true',
    ...process.env,
    ...temporary.env,
    ...(browser ? { BROWSER_PATH: browser } : {}),
  };

  /** @param {Runner} runner */
  const obstacle = (runner) => {
    if (setUp) return setUp;
    if (runner.name !== 'pages') return null;
    return built ?? (browser ? null : 'no Chromium could be found or fetched');
  };
  /** @type {[string, Outcome][]} */
  const outcomes = [];
  for (const runner of runners) {
    const inTheWay = obstacle(runner);
    if (chosen.length > 0 && !chosen.includes(runner.name))
      outcomes.push([runner.name, { passed: 0, failed: [], notRun: ['all of it (not chosen)'] }]);
    else if (inTheWay) outcomes.push([runner.name, judgeRunner(null, inTheWay)]);
    else {
      const outcome = await outcomeOf(runner, env);
      outcomes.push([runner.name, withLeftovers(outcome, temporary.leftovers())]);
    }
  }
  const { lines, isGood } = summary(outcomes);
  console.log(lines.join('\n'));
  return isGood;
}

process.exitCode = (await main(process.argv.slice(2))) ? 0 : 1;
