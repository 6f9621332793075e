// `npm run verify`: compares the program's sums with printed ones, writes RESULTS.md beside this file
// and ends with 1 when too few are met or one differs without a reason in known.md.
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { runnerImport } from 'vite';

const top = dirname(dirname(import.meta.dirname));
/** @type {{ module: typeof import('./verify') }} */
const { module } = await runnerImport(join(import.meta.dirname, 'verify.ts'), {
  root: top,
  configFile: false,
  logLevel: 'error',
});
const { markdown, complaints, summary } = module.verify();
writeFileSync(join(import.meta.dirname, 'RESULTS.md'), markdown);
for (const line of summary) console.log(line);
for (const complaint of complaints) console.error(complaint);
process.exitCode = complaints.length > 0 ? 1 : 0;
