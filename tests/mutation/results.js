// `node tests/mutation/results.js REPORT...` after `npm run mutation`: writes RESULTS.md beside this
// file from what was measured before (measured.json) and from the reports named. Of a file in several
// reports the last holds; without a report only what has changed since is looked at anew.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { format } from 'prettier';

/** @typedef {{ status: string, mutatorName: string, replacement?: string, location: { start: { line: number, column: number }, end: { line: number, column: number } } }} Mutant */
/** @typedef {{ source: string, mutants: Mutant[] }} FileReport */
/** @typedef {{ file: string, line: string, becomes: string, why: string }} Equivalent `becomes`: all of the mutants of the line whose text is this; `*` all of its mutants */

const top = dirname(dirname(import.meta.dirname));
const least = 80;
const folders = ['app/core/cover', 'app/core/crop', 'app/core/season', 'app/core/soil'];

/** @type {Equivalent[]} */
const equivalents = JSON.parse(readFileSync(join(import.meta.dirname, 'equivalents.json'), 'utf8'));
const paths = process.argv.slice(2);
/** @type {Map<string, FileReport>} */
const files = new Map();
for (const path of paths) {
  /** @type {{ files: Record<string, FileReport> }} */
  const report = JSON.parse(readFileSync(path, 'utf8'));
  for (const [file, of] of Object.entries(report.files)) files.set(file, of);
}

/** @param {Mutant} one */
const isAlive = ({ status }) => status === 'Survived' || status === 'NoCoverage';
/** @param {Mutant} one */
const isDead = ({ status }) => status === 'Killed' || status === 'Timeout';

const sums = ['ArithmeticOperator', 'AssignmentOperator', 'UnaryOperator', 'UpdateOperator'];

/** What a planted fault touches. Formulae are sums: `+` for `-`, `min` for `max`, a sign. */
/** @param {Mutant} one @param {string} original */
function kindOf({ mutatorName, replacement = '' }, original) {
  if (sums.includes(mutatorName)) return 'formula';
  if (mutatorName === 'MethodExpression' && /^Math\./.test(original)) return 'formula';
  if (mutatorName === 'EqualityOperator')
    return /^(<=?|>=?)$/.test(between(original, replacement))
      ? 'edge of a comparison'
      : 'condition';
  if (['ConditionalExpression', 'LogicalOperator', 'BooleanLiteral'].includes(mutatorName))
    return 'condition';
  return 'structure';
}
const kinds = ['formula', 'edge of a comparison', 'condition', 'structure'];

/** The operator that two texts differ in, where `<` became `<=` or the like; else ''. */
/** @param {string} one @param {string} other */
function between(one, other) {
  for (const [less, more] of [
    ['<', '<='],
    ['>', '>='],
  ])
    for (const [from, to] of [
      [less, more],
      [more, less],
    ])
      if (
        one.replace(` ${from} `, ` ${to} `) === other ||
        one.split(` ${from} `).join(` ${to} `) === other
      )
        return from ?? '';
  return '';
}

/** @param {FileReport} of @param {Mutant} one */
function originalOf({ source }, { location: { start, end } }) {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  lines[last] = (lines[last] ?? '').slice(0, end.column - 1);
  lines[0] = (lines[0] ?? '').slice(start.column - 1);
  return lines.join('\n');
}

const short = (/** @type {string} */ text) => text.replace(/\s+/g, ' ').trim();
/** @param {number} dead @param {number} alive */
const score = (dead, alive) =>
  dead + alive === 0 ? '-' : `${((100 * dead) / (dead + alive)).toFixed(1)} %`;

/** @typedef {{ at: number, line: string, original: string, becomes: string, kind: string }} Alive */
/** @typedef {{ sha: string, isPart: boolean, dead: number, alive: Alive[] }} Measured */

/** @param {string} text */
const shaOf = (text) => createHash('sha256').update(text).digest('hex');

// What was measured before and is in none of the reports stays as it was.
const measuredPath = join(import.meta.dirname, 'measured.json');
/** @type {Record<string, Measured>} */
const measured = existsSync(measuredPath) ? JSON.parse(readFileSync(measuredPath, 'utf8')) : {};
for (const [file, of] of files) {
  const counted = of.mutants.filter((one) => isDead(one) || isAlive(one));
  if (counted.length === 0 || !folders.some((folder) => file.startsWith(`${folder}/`))) continue;
  const lines = of.source.split('\n');
  measured[file] = {
    sha: shaOf(of.source),
    // the runner was asked for faults in formulae alone
    isPart: counted.every(
      ({ mutatorName }) => sums.includes(mutatorName) || mutatorName === 'MethodExpression',
    ),
    dead: of.mutants.filter(isDead).length,
    alive: of.mutants.filter(isAlive).map((mutant) => {
      const original = short(originalOf(of, mutant));
      return {
        at: mutant.location.start.line,
        line: short(lines[mutant.location.start.line - 1] ?? ''),
        original,
        becomes: short(mutant.replacement ?? ''),
        kind: kindOf(mutant, original),
      };
    }),
  };
}
for (const file of Object.keys(measured)) if (!existsSync(join(top, file))) delete measured[file];
const kept = Object.fromEntries(Object.entries(measured).sort(([a], [b]) => (a < b ? -1 : 1)));
writeFileSync(
  measuredPath,
  await format(JSON.stringify(kept), { parser: 'json', printWidth: 100 }),
);

const used = new Set();
const rows = Object.entries(kept).map(([file, { sha, isPart, dead, alive }]) => ({
  file,
  folder: folders.find((folder) => file.startsWith(`${folder}/`)) ?? '',
  dead,
  isPart,
  isOld: shaOf(readFileSync(join(top, file), 'utf8')) !== sha,
  alive: alive.map((one) => {
    const equivalent = equivalents.find(
      (other) =>
        other.file === file &&
        other.line === one.line &&
        (other.becomes === '*' || other.becomes === one.becomes),
    );
    if (equivalent) used.add(equivalent);
    return { ...one, why: equivalent?.why ?? null };
  }),
}));

const table = (/** @type {string[]} */ head, /** @type {string[][]} */ body) =>
  [head, head.map(() => '---'), ...body].map((row) => `| ${row.join(' | ')} |`).join('\n');
const code = (/** @type {string} */ text) =>
  '`' + text.replaceAll('|', '\\|').replaceAll('`', "'").slice(0, 110) + '`';

const scored = [...folders, 'all'].map((folder) => {
  const own = rows.filter((row) => folder === 'all' || row.folder === folder);
  const dead = own.reduce((sum, row) => sum + row.dead, 0);
  const alive = own.flatMap((row) => row.alive);
  return { folder, dead, alive };
});
const whole = scored.at(-1);
const equal = (whole?.alive ?? []).filter(({ why }) => why !== null);
const formulae = (whole?.alive ?? []).filter(({ kind }) => kind === 'formula');
const open = formulae.filter(({ why }) => why === null);
const old = rows.filter(({ isOld }) => isOld);
// types alone and lists reckoned once at the start hold nothing that is planted
const unmeasured = folders
  .flatMap((folder) =>
    readdirSync(join(top, folder), { recursive: true, encoding: 'utf8' }).map(
      (name) => `${folder}/${name}`,
    ),
  )
  .filter(
    (file) =>
      file.endsWith('.ts') &&
      !(file in kept) &&
      /^(export )?function |=> \{$/m.test(readFileSync(join(top, file), 'utf8')),
  )
  .sort();

const text = `# Planted faults

Made by \`npm run mutation\` and \`node tests/mutation/results.js\`, not by hand. The runner plants one small fault at a time and asks whether a test fails. Laws over random beds and the week's plan stay out of it (they take minutes), so a fault that only they would find counts as alive: the scores are lower bounds. Not planted: faults in what is reckoned once when a file is loaded (lists of names, tables of keys), which every test would have to be run for anew.

${table(
  ['folder', 'found', 'alive', 'score', ...kinds.map((kind) => `alive: ${kind}`)],
  scored.map(({ folder, dead, alive }) => [
    folder === 'all' ? '**all**' : `\`${folder}\``,
    `${dead}`,
    `${alive.length}`,
    score(dead, alive.length),
    ...kinds.map((kind) => `${alive.filter((one) => one.kind === kind).length}`),
  ]),
)}

Faults in formulae (a sign, \`*\` for \`/\`, \`min\` for \`max\`) that are alive: ${formulae.length}. Shown below to change nothing: ${formulae.length - open.length}, ${score(formulae.length - open.length, (whole?.alive.length ?? 0) - formulae.length + open.length)} of all that are alive. Open: ${open.length}.
${old.length > 0 ? `\nChanged since they were measured: ${old.map(({ file }) => `\`${file}\``).join(', ')}.\n` : ''}${unmeasured.length > 0 ? `\nNever measured: ${unmeasured.map((file) => `\`${file}\``).join(', ')}.\n` : ''}
## By file

${table(
  ['file', 'found', 'alive', 'score'],
  rows.map(({ file, dead, alive, isPart }) => [
    `\`${file.replace('app/core/', '')}\`${isPart ? ' (formulae only)' : ''}`,
    `${dead}`,
    `${alive.length}`,
    score(dead, alive.length),
  ]),
)}

## Alive and without effect

Each of these changes no number that a run can give.

${table(
  ['where', 'kind', 'text', 'becomes', 'why nothing changes'],
  rows.flatMap(({ file, alive }) =>
    alive
      .filter(({ why }) => why !== null)
      .map(({ at, kind, original, becomes, why }) => [
        `\`${file.replace('app/core/', '')}:${at}\``,
        kind,
        code(original),
        code(becomes),
        why ?? '',
      ]),
  ),
)}

## Alive and open

${table(
  ['where', 'kind', 'text', 'becomes'],
  rows.flatMap(({ file, alive }) =>
    alive
      .filter(({ why }) => why === null)
      .map(({ at, kind, original, becomes }) => [
        `\`${file.replace('app/core/', '')}:${at}\``,
        kind,
        code(original),
        code(becomes),
      ]),
  ),
)}
`;
writeFileSync(join(import.meta.dirname, 'RESULTS.md'), await format(text, { parser: 'markdown' }));

for (const { folder, dead, alive } of scored)
  console.log(`${folder}: ${score(dead, alive.length)} of ${dead + alive.length}`);
console.log(
  `formula faults alive and open: ${open.length}; alive and without effect: ${equal.length}`,
);
for (const one of equivalents)
  if (!used.has(one) && files.has(one.file))
    console.log(`no such survivor: ${one.file}: ${one.line}`);
process.exitCode = scored.some(
  ({ dead, alive }) => dead + alive.length > 0 && (100 * dead) / (dead + alive.length) < least,
)
  ? 1
  : 0;
