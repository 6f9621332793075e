// `npm run lint`: the linter, the room table and the formatter. All three run even when one complains.
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { checkRooms } from './rooms.js';

const top = dirname(import.meta.dirname);
const require = createRequire(import.meta.url);

/**
 * Runs a package's own program with this Node, so that no shell or shim is needed on any system.
 *
 * @param {string} packageName
 * @param {string[]} options
 * @returns {boolean} whether it was content
 */
function run(packageName, options) {
  const manifest = require.resolve(`${packageName}/package.json`);
  /** @type {{ bin: string | Record<string, string> }} */
  const { bin } = JSON.parse(readFileSync(manifest, 'utf8'));
  const script = typeof bin === 'string' ? bin : bin[packageName];
  if (!script) throw new Error(`${packageName} has no program of its own name`);
  const done = spawnSync(process.execPath, [join(dirname(manifest), script), ...options], {
    cwd: top,
    stdio: 'inherit',
  });
  return done.status === 0;
}

function checkTable() {
  const table = JSON.parse(readFileSync(join(import.meta.dirname, 'rooms.json'), 'utf8'));
  const files = ['app', 'main'].flatMap((folder) =>
    readdirSync(join(top, folder), { recursive: true, encoding: 'utf8' })
      .map((path) => `${folder}/${path.replaceAll('\\', '/')}`)
      .filter((path) => /\.[cm]?[jt]sx?$/.test(path)),
  );
  const problems = checkRooms(
    files.toSorted().map((file) => [file, readFileSync(join(top, file), 'utf8')]),
    table,
  );
  for (const { file, line, message } of problems) console.error(`${file}:${line} ${message}`);
  console.log(`Rooms: ${files.length} files, ${problems.length} problems.`);
  return problems.length === 0;
}

const content = [
  run('oxlint', [
    '-c',
    '.config/oxlint.json',
    '--deny-warnings',
    'app',
    'main',
    'tests',
    '.config',
  ]),
  checkTable(),
  run('prettier', ['--check', '--log-level', 'warn', '.']),
];
process.exitCode = content.every(Boolean) ? 0 : 1;
