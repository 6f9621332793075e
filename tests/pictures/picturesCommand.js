// `npm run pictures`: looks at every place in light, dark, print and narrow, and holds each against
// the picture committed here; what differs lies in .build/test-results, before, after and difference.
// `npm run pictures -- renew` takes them all anew, to be looked at and committed. Letters are drawn
// otherwise on other systems, so pictures are held against each other only where they were taken.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { findBrowser } from '../../main/launch/findBrowser.js';

const here = import.meta.dirname;
const top = dirname(dirname(here));
const placeOfTaking = join(here, 'takenOn.json');

const browser = findBrowser();
const version = browser ? spawnSync(browser, ['--version'], { encoding: 'utf8' }).stdout : '';
const major = /\d+/.exec(version)?.[0];
if (!browser || !major) {
  console.error('There is no Chromium on this machine.');
  process.exit(1);
}
const now = { system: process.platform, processor: process.arch, chromium: Number(major) };

const isRenewed = process.argv.includes('renew');
const taken = JSON.parse(readFileSync(placeOfTaking, 'utf8'));
if (!isRenewed && JSON.stringify(taken) !== JSON.stringify(now)) {
  console.log(
    `NOT COMPARED: the pictures were taken on ${JSON.stringify(taken)}, this is ${JSON.stringify(now)}. “npm run pictures -- renew” takes them here.`,
  );
  process.exit(0);
}

const ran = spawnSync(
  process.execPath,
  [
    join(top, 'node_modules/@playwright/test/cli.js'),
    ...['test', '--config', join(top, '.config/playwright.config.ts')],
    ...['--project=service', 'pictures.spec.ts', '--grep', 'wide'],
    ...(isRenewed ? ['--update-snapshots=all'] : []),
  ],
  { cwd: top, stdio: 'inherit', env: { ...process.env, MOWINGS_PICTURES: '1' } },
);
if (isRenewed && ran.status === 0) writeFileSync(placeOfTaking, `${JSON.stringify(now, null, 2)}\n`);
process.exitCode = ran.status ?? 1;
