import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright';
import { serializeGarden } from '../../../app/document/serialize';
import { findBrowser } from '../../../main/launch/findBrowser.js';
import { startService } from '../../../main/loopback';
import { bigGarden } from '../bigGarden';
import type { Bench } from '../part';

/** Gardens that are measured, and how long an edit of each may take to be seen [ms]. */
export const gardens = [
  { beds: 12, repaintLimit: 50 },
  { beds: 60, repaintLimit: 100 },
] as const;
export interface MeasuredGarden {
  readonly beds: number;
  /** of log; one where it is not said */
  readonly years?: number;
  readonly repaintLimit: number;
}
/** The same smaller one, and as big a garden as there is. */
export const grownGardens: readonly MeasuredGarden[] = [
  gardens[0],
  { beds: 60, years: 10, repaintLimit: 100 },
];

export const howMeasured =
  'Chromium without a screen, drawn by the processor, the built page over the loopback service';
export const ofOneYear = `${howMeasured}, gardens of one year`;

/** So often a measurement is begun anew when the browser gave no answer in time. */
const tries = 2;

/**
 * Measures in the built page with each of the gardens open, each in a browser and a service of its
 * own. A measurement that comes to nothing, on a machine too busy for it, is begun once more.
 *
 * @throws when the page does not build, there is no browser, or a measurement came to nothing twice
 */
export async function inBrowser<Measured>(
  { top, say }: Bench,
  measure: (browser: Browser, address: string, garden: MeasuredGarden) => Promise<Measured>,
  chosen: readonly MeasuredGarden[] = gardens,
): Promise<readonly (readonly [MeasuredGarden, Measured])[]> {
  const built = spawnSync(process.execPath, [join(top, 'main/launch/build.js'), 'app'], {
    stdio: 'inherit',
  });
  if (built.status !== 0) throw new Error('The page does not build');
  const executablePath = findBrowser();
  if (!executablePath) throw new Error('There is no Chromium on this machine');
  const once = async (garden: MeasuredGarden): Promise<Measured> => {
    const folder = mkdtempSync(join(tmpdir(), 'mowings-bench-'));
    const file = join(folder, 'big.mowings');
    writeFileSync(
      file,
      serializeGarden(bigGarden({ beds: garden.beds, years: garden.years ?? 1, seed: 1 })),
    );
    const service = await startService({
      pageFolder: join(top, '.build/app'),
      gardensFolder: folder,
      dataFolder: join(folder, 'data'),
      version: 'bench',
      file,
    });
    const browser = await chromium.launch({
      executablePath,
      chromiumSandbox: process.getuid?.() !== 0,
      args: ['--disable-background-networking', '--disable-component-update', '--disable-sync'],
    });
    try {
      return await measure(browser, service.address, garden);
    } finally {
      await browser.close();
      await service.stop();
      rmSync(folder, { recursive: true, force: true });
    }
  };
  const measured: (readonly [MeasuredGarden, Measured])[] = [];
  for (const garden of chosen) {
    say(`${garden.beds} beds`);
    for (let left = tries - 1; ; left--) {
      try {
        measured.push([garden, await once(garden)]);
        break;
      } catch (error) {
        if (left === 0) throw error;
        say(`once more: ${error instanceof Error ? (error.message.split('\n')[0] ?? '') : ''}`);
      }
    }
  }
  return measured;
}
