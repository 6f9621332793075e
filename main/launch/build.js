// `npm run build [app|main]`: builds the parts named, or both, whether or not they are fresh.
import { existsSync } from 'node:fs';
import { mkdir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { recordBuild, sourceHash } from './freshness.js';

/** @typedef {import('./freshness.js').Part} Part */

const top = dirname(dirname(import.meta.dirname));
/** @type {Record<Part, { config: string, modes: string[] }>} */
const passes = {
  app: { config: '.config/vite.app.ts', modes: ['production'] },
  main: { config: '.config/vite.main.ts', modes: ['production', 'preload'] },
};

/** @param {Part} part */
async function buildPart(part) {
  const { build } = await import('vite');
  const fresh = join(top, '.build', `${part}-new-${process.pid}`);
  const hash = sourceHash(top, part);
  try {
    for (const mode of passes[part].modes)
      await build({
        configFile: join(top, passes[part].config),
        mode,
        build: { outDir: fresh, emptyOutDir: mode === 'production' },
      });
    recordBuild(fresh, hash);
    await swapIn(fresh, join(top, '.build', part));
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

/**
 * Puts the finished folder in place, so that a build that fails leaves the last good one.
 *
 * @param {string} fresh
 * @param {string} place
 */
async function swapIn(fresh, place) {
  const old = `${place}-old-${process.pid}`;
  for (let attempt = 1; ; attempt++) {
    if (existsSync(place)) await rename(place, old).catch(() => undefined);
    try {
      await rename(fresh, place);
      break;
    } catch (error) {
      // Another build may have put its own result there in between.
      if (attempt === 5) throw error;
      await rm(old, { recursive: true, force: true });
    }
  }
  await rm(old, { recursive: true, force: true });
}

process.env['NODE_ENV'] = 'production';
const named = process.argv.slice(2).filter((word) => word === 'app' || word === 'main');
await mkdir(join(top, '.build'), { recursive: true });
try {
  for (const part of named.length > 0 ? named : /** @type {const} */ (['app', 'main']))
    await buildPart(part);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
