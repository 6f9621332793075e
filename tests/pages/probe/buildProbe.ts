import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { prepare } from '../../../main/launch/prepare.js';

const top = join(import.meta.dirname, '../../..');
export const probeFolder = join(top, '.build/probe');

/** Before the page tests: the program as its sources are now, and the probe page with the same settings. */
export default async function buildProbe(): Promise<void> {
  const trouble = prepare(top, ['main'], console.log);
  if (trouble) throw new Error(trouble);
  if (prepare(top, ['app'], console.log)) {
    // Without this the journeys would run on the last page that could be built, and might pass.
    rmSync(join(top, '.build/app'), { recursive: true, force: true });
    console.error('The page does not build, so every test of a screen will fail.');
  }
  await build({
    configFile: join(top, '.config/vite.app.ts'),
    root: import.meta.dirname,
    build: { outDir: probeFolder },
  });
}
