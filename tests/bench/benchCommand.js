// `npm run bench [-- part ...]`: measures the parts named, or all, and writes their sections of
// RESULTS.md anew. Times depend on the machine, so nothing here fails for being slow; it ends with 1
// when a part's answers are wrong.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, release, totalmem, type } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { format, resolveConfig } from 'prettier';
import { build } from 'vite';
import { mergeSections } from './sections.js';

const here = import.meta.dirname;
const top = dirname(dirname(here));
// of this run alone: another may be under way
const folder = join(top, '.build', `bench-${process.pid}`);
const results = join(here, 'RESULTS.md');

/** @param {string} place */
const namesIn = (place) =>
  readdirSync(join(here, place))
    .filter((file) => file.endsWith('.ts'))
    .map((file) => basename(file, '.ts'))
    .toSorted();

const parts = namesIn('parts');
/** Parts that are asked for by one name. @type {Readonly<Record<string, readonly string[]>>} */
const together = { ui: ['uiFirst', 'uiRepaint', 'uiSeason', 'uiTyping'] };
const asked = process.argv.slice(2).flatMap((name) => together[name] ?? [name]);
const unknown = asked.filter((name) => !parts.includes(name));
if (unknown.length > 0) {
  console.error(
    `No part ${unknown.join(', ')}. There are: ${[...parts, ...Object.keys(together)].join(', ')}.`,
  );
  process.exit(1);
}
const chosen = asked.length > 0 ? parts.filter((name) => asked.includes(name)) : parts;

// Bundled as the program is: modules served one by one are called through look-ups, and slower.
await build({
  root: top,
  configFile: false,
  publicDir: false,
  logLevel: 'warn',
  // the browser's driver finds its own files beside it
  ssr: { noExternal: true, external: ['playwright'] },
  build: {
    ssr: true,
    target: 'node20',
    minify: false,
    outDir: folder,
    emptyOutDir: true,
    rolldownOptions: {
      input: Object.fromEntries([
        ...chosen.map((name) => [name, join(here, 'parts', `${name}.ts`)]),
        ...namesIn('workers').map((name) => [name, join(here, 'workers', `${name}.ts`)]),
      ]),
      output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: '[name].js' },
    },
  },
});

const machine = `${cpus().length} × ${cpus()[0]?.model.trim() ?? 'unknown processor'}, ${Math.round(totalmem() / 2 ** 30)} GB, ${type()} ${release()}, Node ${process.versions.node}`;
const load = () => loadavg()[0]?.toFixed(1) ?? '?';

/** @type {Map<string, string>} */
const sections = new Map();
for (const name of chosen) {
  console.log(`${name} ...`);
  const before = load();
  const date = new Date().toISOString().slice(0, 16).replace('T', ' ');
  const answer = join(folder, `${name}.json`);
  const words = [join(here, 'onePart.js'), folder, name, answer];
  const done = spawnSync(process.execPath, words, { stdio: 'inherit' });
  if (done.status !== 0) {
    process.exitCode = 1;
    continue;
  }
  /** @type {{ title: string, body: string }} */
  const { title, body } = JSON.parse(readFileSync(answer, 'utf8'));
  const under = `${machine}. ${date} UTC, load ${before} before and ${load()} after.`;
  sections.set(name, `## ${name}: ${title}\n\n_${under}_\n\n${body.trim()}\n`);
}
rmSync(folder, { recursive: true });

const before = existsSync(results) ? readFileSync(results, 'utf8') : '';
const text = mergeSections(before, parts, sections);
const options = await resolveConfig(results);
writeFileSync(results, await format(text, { ...options, parser: 'markdown' }));
for (const section of sections.values()) console.log(`\n${section}`);
