// `npm run test:runner`: proves that `npm test` fails when anything in it fails. A small copy of the
// project, good as it stands, gets one fault planted at a time, a different one for each runner.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { after, before, test } from 'node:test';
import { hasPackages } from '../../main/launch/packages.js';

const top = dirname(dirname(import.meta.dirname));
let copy = '';

const copied = [
  ...['.config', '.prettierrc.json', '.prettierignore', 'package.json', 'package-lock.json'],
  ...['tsconfig.json', 'app/host', 'app/core/result.ts', 'app/core/days.ts', 'main'],
  ...['tests/run.js', 'tests/runner', 'tests/host', 'tests/main/electronDouble.ts'],
  ...['tests/pages/fixtures.ts', 'tests/pages/probe', 'tests/pages/shell.bridge.spec.ts'],
  ...['tests/pages/electron.spec.ts', 'tests/main/weather/madeService.ts'],
];
/** What stands in for the parts that are left out.
 * @type {Record<string, string>} */
const standIns = {
  'app/index.html': '<!doctype html>\n<title>Small</title>\n',
  'main/command.ts': 'export const runCommand = async (): Promise<number> => 1;\n',
};

before(() => {
  assert.ok(hasPackages(top), 'install the packages first (npm ci)');
  copy = mkdtempSync(join(tmpdir(), 'mowings-planted-'));
  for (const place of copied) cpSync(join(top, place), join(copy, place), { recursive: true });
  rmSync(join(copy, 'main/command'), { recursive: true, force: true });
  mkdirSync(join(copy, 'assets'));
  for (const [place, text] of Object.entries(standIns)) writeFileSync(join(copy, place), text);
  symlinkSync(join(top, 'node_modules'), join(copy, 'node_modules'), 'junction');
});
after(() => rmSync(copy, { recursive: true, force: true }));

/**
 * Runs `npm test`'s script in the copy with one fault in it.
 *
 * @param {Record<string, string>} planted  text by path; what was there before is put back
 */
function runWith(planted) {
  for (const [place, text] of Object.entries(planted)) writeFileSync(join(copy, place), text);
  const { NODE_TEST_CONTEXT: _ours, ...env } = process.env;
  const done = spawnSync(process.execPath, ['tests/run.js'], { cwd: copy, env, encoding: 'utf8' });
  for (const place of Object.keys(planted)) {
    rmSync(join(copy, place));
    const standIn = standIns[place];
    if (standIn !== undefined) writeFileSync(join(copy, place), standIn);
    else if (existsSync(join(top, place))) cpSync(join(top, place), join(copy, place));
  }
  const lines = done.stdout.trimEnd().split('\n');
  const [, passed, failed] = /^(\d+) passed, (\d+) failed$/.exec(lines.at(-1) ?? '') ?? [];
  assert.ok(passed && failed, `no sum on the last line:\n${done.stdout}\n${done.stderr}`);
  const failures = lines.slice(lines.lastIndexOf('Failed:') + 1, -2).map((line) => line.trim());
  return {
    code: done.status,
    passed: Number(passed),
    failed: Number(failed),
    failures: lines.includes('Failed:') ? failures : [],
    output: done.stdout + done.stderr,
  };
}

let goodPasses = 0;

test('nothing planted: all is well', () => {
  const { code, passed, failed, output } = runWith({});
  assert.deepEqual({ code, failed }, { code: 0, failed: 0 }, output);
  // Lint, types, and at least one test of each other runner.
  assert.ok(passed >= 4, output);
  goodPasses = passed;
});

/**
 * @param {string} name
 * @param {Record<string, string>} planted
 * @param {RegExp} failure  the one line that must be named
 * @param {number} lost     how many of the good passes are gone
 */
function fault(name, planted, failure, lost) {
  test(name, () => {
    const { code, passed, failed, failures, output } = runWith(planted);
    assert.equal(code, 1, output);
    assert.equal(failed, 1, output);
    assert.match(failures.join('\n'), failure, output);
    if (lost >= 0) assert.equal(passed, goodPasses - lost, output);
  });
}

fault(
  'lint: an import that the room table forbids',
  { 'app/core/planted.ts': "import { z } from 'zod';\n\nexport const planted = z;\n" },
  /^lint: /,
  1,
);
fault(
  'lint: a file that is not formatted',
  { 'app/core/planted.ts': 'export const a  = 1\n' },
  /^lint: /,
  1,
);
fault(
  'types: text where a number belongs',
  { 'app/core/planted.ts': "export const planted: number = 'text';\n" },
  /^types: /,
  1,
);
const failing = (/** @type {string} */ from) =>
  `import { expect, test } from '${from}';\n\ntest('planted', () => {\n  expect(1).toBe(2);\n});\n`;
fault(
  'unit: a failing test',
  { 'tests/planted.test.ts': failing('vitest') },
  /^unit: .*planted/,
  0,
);
fault(
  'unit: a file that cannot be loaded',
  { 'tests/planted.test.ts': "throw new Error('planted');\n\nexport {};\n" },
  /^unit: .*as a whole/,
  0,
);
fault(
  'unit: a temporary folder left behind',
  {
    'tests/planted.test.ts':
      "import { mkdtempSync } from 'node:fs';\nimport { tmpdir } from 'node:os';\nimport { join } from 'node:path';\nimport { expect, test } from 'vitest';\n\ntest('planted', () => {\n  expect(mkdtempSync(join(tmpdir(), 'mowings-planted-'))).not.toBe('');\n});\n",
  },
  /^unit: mowings-planted-.* was left in the temporary folder/,
  -1,
);
fault(
  'unit: every test skipped',
  {
    'tests/host/electronHost.test.ts':
      "import { test } from 'vitest';\n\ntest.skip('planted', () => undefined);\n",
    'tests/runner/sums.test.ts':
      "import { test } from 'vitest';\n\ntest.skip('planted', () => undefined);\n",
  },
  /^unit: nothing passed/,
  -1,
);
fault(
  'unit: settings that do not load',
  { '.config/vitest.config.ts': "throw new Error('planted');\n\nexport {};\n" },
  /^unit: it did not start/,
  -1,
);
fault(
  'pages: a failing test',
  { 'tests/pages/planted.bridge.spec.ts': failing('@playwright/test') },
  /^pages: .*planted/,
  0,
);
fault(
  'pages: a set-up that fails',
  {
    'tests/pages/probe/buildProbe.ts':
      "export const probeFolder = '';\n\nexport default async function plant(): Promise<void> {\n  throw new Error('planted');\n}\n",
  },
  /^pages: /,
  -1,
);
fault(
  'pages: settings that do not load',
  {
    '.config/playwright.config.ts': "throw new Error('planted');\n\nexport {};\n",
  },
  /^pages: /,
  -1,
);
test('the build: a page that does not build', () => {
  const { code, failures, output } = runWith({
    'app/index.html':
      '<!doctype html>\n<title>Small</title>\n<script type="module" src="./missing.ts"></script>\n',
  });
  assert.equal(code, 1, output);
  assert.match(failures.join('\n'), /^pages: it did not start/m, output);
});
