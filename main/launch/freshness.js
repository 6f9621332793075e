import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * What is built apart: the page, and what runs on Node. The command line needs only the second, so
 * that it does not wait for (or fall with) the first.
 *
 * @typedef {'app' | 'main'} Part
 */

const common = ['app', 'assets', '.config', 'package.json', 'package-lock.json'];
/** @type {Record<Part, string[]>} */
const sources = { app: common, main: [...common, 'main'] };
/** @type {Record<Part, string[]>} */
const products = {
  app: ['index.html'],
  main: ['entry.js', 'loopback.js', 'command.js', 'preload.cjs'],
};

/**
 * A hash over the names and contents of everything that a part is built from. Contents, because a
 * checkout or a copy changes every file's time.
 *
 * @param {string} top
 * @param {Part} part
 */
export function sourceHash(top, part) {
  const hash = createHash('sha256');
  for (const file of sources[part].flatMap((place) => filesUnder(top, place))) {
    const content = readFileSync(join(top, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}

/**
 * @param {string} top
 * @param {Part} part
 */
export function isBuilt(top, part) {
  const folder = join(top, '.build', part);
  const stamp = join(folder, '.sources');
  return (
    products[part].every((name) => existsSync(join(folder, name))) &&
    existsSync(stamp) &&
    readFileSync(stamp, 'utf8') === sourceHash(top, part)
  );
}

/**
 * @param {string} folder  the folder of the built part
 * @param {string} hash    `sourceHash` as it was before the build began
 */
export function recordBuild(folder, hash) {
  writeFileSync(join(folder, '.sources'), hash);
}

/**
 * @param {string} top
 * @param {string} place
 * @returns {string[]}
 */
function filesUnder(top, place) {
  const whole = join(top, place);
  if (!existsSync(whole)) return [];
  if (/\.json$/.test(place)) return [place];
  return readdirSync(whole, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(top.length + 1)
        .replaceAll('\\', '/'),
    )
    .toSorted();
}
