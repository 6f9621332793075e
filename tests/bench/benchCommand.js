// `npm run bench [-- part ...]`: measures the parts named, or all, and writes their sections of
// RESULTS.md anew. Times depend on the machine, so nothing here fails for being slow; it ends with 1
// when a part's answers are wrong.
import { readdirSync, readFileSync, existsSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, release, totalmem, type } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { build } from 'vite';
import { mergeSections } from './sections.js';

/** @typedef {import('./part').BenchPart} BenchPart */

const here = import.meta.dirname;
const top = dirname(dirname(here));
const folder = join(top, '.build', 'bench');
const results = join(here, 'RESULTS.md');

/** @param {string} place */
const namesIn = (place) =>
  readdirSync(join(here, place))
    .filter((file) => file.endsWith('.ts'))
    .map((file) => basename(file, '.ts'))
    .toSorted();

const parts = namesIn('parts');
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !parts.includes(name));
if (unknown.length > 0) {
  console.error(`No part ${unknown.join(', ')}. There are: ${parts.join(', ')}.`);
  process.exit(1);
}
const chosen = asked.length > 0 ? parts.filter((name) => asked.includes(name)) : parts;

// Bundled as the program is: modules served one by one are called through look-ups, and slower.
await build({
  root: top,
  configFile: false,
  publicDir: false,
  logLevel: 'warn',
  ssr: { noExternal: true },
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
  try {
    /** @type {{ part: BenchPart }} */
    const { part } = await import(pathToFileURL(join(folder, `${name}.js`)).href);
    const body = await part.run({
      top,
      folder,
      worker: (worker) => pathToFileURL(join(folder, `${worker}.js`)),
      say: (line) => console.log(`  ${line}`),
    });
    const under = `${machine}. ${date} UTC, load ${before} before and ${load()} after.`;
    sections.set(name, `## ${name}: ${part.title}\n\n_${under}_\n\n${body.trim()}\n`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}

const before = existsSync(results) ? readFileSync(results, 'utf8') : '';
const text = mergeSections(before, parts, sections);
const options = await resolveConfig(results);
writeFileSync(results, await format(text, { ...options, parser: 'markdown' }));
for (const section of sections.values()) console.log(`\n${section}`);
