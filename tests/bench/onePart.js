// One part of the bench in a process of its own: code that another part has warmed for its own beds
// runs otherwise than code that has just begun. Words: the bundled bench, the part, the file its
// section's text goes to.
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [folder = '', name = '', answer = ''] = process.argv.slice(2);
try {
  /** @type {{ part: import('./part').BenchPart }} */
  const { part } = await import(pathToFileURL(join(folder, `${name}.js`)).href);
  const body = await part.run({
    top: dirname(dirname(import.meta.dirname)),
    folder,
    worker: (worker) => pathToFileURL(join(folder, `${worker}.js`)),
    say: (line) => console.log(`  ${line}`),
  });
  writeFileSync(answer, JSON.stringify({ title: part.title, body }));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
