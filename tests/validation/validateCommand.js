// `npm run validate`: sets the program against what others measured and writes RESULTS.md beside this
// file. Numbers outside our range are reported, not failed; one without a reason in why.json ends with 1.
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { runnerImport } from 'vite';

const top = dirname(dirname(import.meta.dirname));
/** @type {{ module: typeof import('./report') }} */
const { module } = await runnerImport(join(import.meta.dirname, 'report.ts'), {
  root: top,
  configFile: false,
  logLevel: 'error',
});
const { markdown, withoutReason, summary } = await module.report();
writeFileSync(join(import.meta.dirname, 'RESULTS.md'), markdown);
console.log(summary);
for (const id of withoutReason)
  console.error(`${id} lies outside our range and why.json has no reason.`);
process.exitCode = withoutReason.length > 0 ? 1 : 0;
