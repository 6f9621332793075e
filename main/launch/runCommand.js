// The command line (`npm run -s ledger`): the same preparation as `npm start`, but nothing except the
// command's own answer on stdout.
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { nodeComplaint } from './nodeVersion.js';
import { prepare } from './prepare.js';

const top = dirname(dirname(import.meta.dirname));
const trouble =
  nodeComplaint(process.versions.node) ?? prepare(top, ['main'], (line) => console.error(line));
if (trouble) {
  console.error(trouble);
  process.exitCode = 1;
} else {
  const { runCommand } = await import(pathToFileURL(join(top, '.build/main/command.js')).href);
  process.exitCode = await runCommand(
    process.argv.slice(2),
    process.env['INIT_CWD'] ?? process.cwd(),
  );
}
