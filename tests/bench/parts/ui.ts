import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright';
import { serializeGarden } from '../../../app/document/serialize';
import { findBrowser } from '../../../main/launch/findBrowser.js';
import { startService } from '../../../main/loopback';
import { bigGarden } from '../bigGarden';
import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';
import { firstPaints, type FirstPaint } from '../ui/firstPaint';
import { repaints, type Repaints } from '../ui/repaint';
import { tasksWhileTyping, type TypingTasks } from '../ui/typing';

const repaintLimits = [
  { beds: 12, milliseconds: 50 },
  { beds: 60, milliseconds: 100 },
] as const;
const paintLimit = 1000;
const taskLimit = 100;
/** even, so that the layer lies there again at the end */
const rounds = 10;
const ms = (value: number): string => value.toFixed(0);

interface Measured {
  readonly beds: number;
  readonly limit: number;
  readonly repaint: readonly Repaints[];
  readonly typing: readonly TypingTasks[];
  readonly first: readonly FirstPaint[];
}

export const part: BenchPart = {
  title: 'the window: edit to repaint, typing, first page',
  async run({ top, say }) {
    const built = spawnSync(process.execPath, [join(top, 'main/launch/build.js'), 'app'], {
      stdio: 'inherit',
    });
    if (built.status !== 0) throw new Error('The page does not build');
    const executablePath = findBrowser();
    if (!executablePath) throw new Error('There is no Chromium on this machine');
    const browser = await chromium.launch({
      executablePath,
      chromiumSandbox: process.getuid?.() !== 0,
      args: ['--disable-background-networking', '--disable-component-update', '--disable-sync'],
    });
    try {
      const measured: Measured[] = [];
      for (const { beds, milliseconds } of repaintLimits) {
        say(`${beds} beds`);
        measured.push(await measure(browser, top, beds, milliseconds));
      }
      return sectionOf(browser.version(), measured);
    } finally {
      await browser.close();
    }
  },
};

async function measure(
  browser: Browser,
  top: string,
  beds: number,
  limit: number,
): Promise<Measured> {
  const folder = mkdtempSync(join(tmpdir(), 'mowings-bench-'));
  const file = join(folder, 'big.mowings');
  writeFileSync(file, serializeGarden(bigGarden({ beds, years: 1, seed: 1 })));
  const service = await startService({
    pageFolder: join(top, '.build/app'),
    gardensFolder: folder,
    dataFolder: join(folder, 'data'),
    version: 'bench',
    file,
  });
  try {
    const first = await firstPaints(browser, service.address, 5);
    const repaint = await repaints(browser, service.address, rounds);
    const typing = await tasksWhileTyping(browser, service.address);
    return { beds, limit, repaint, typing, first };
  } finally {
    await service.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

function sectionOf(version: string, measured: readonly Measured[]): string {
  const repaintRows = measured.flatMap(({ beds, limit, repaint }) =>
    repaint.map(({ place, milliseconds }) => [
      `${beds} beds, ${place}`,
      ms(median(milliseconds)),
      ms(Math.min(...milliseconds)),
      ms(Math.max(...milliseconds)),
      String(limit),
      verdictOf(median(milliseconds), limit),
    ]),
  );
  const typingRows = measured.flatMap(({ beds, typing }) =>
    typing.map(({ field, tasks }) => {
      const longest = Math.max(0, ...tasks);
      return [
        `${beds} beds, ${field}`,
        String(tasks.length),
        longest > 0 ? ms(longest) : 'none over 50',
        verdictOf(longest, taskLimit),
      ];
    }),
  );
  const paintRows = measured.flatMap(({ beds, first }) =>
    first.map(({ what, milliseconds }) => [
      `${beds} beds, ${what}`,
      ms(median(milliseconds)),
      ms(Math.max(...milliseconds)),
      verdictOf(median(milliseconds), paintLimit),
    ]),
  );
  return `Chromium ${version} without a screen, drawn by the processor, the built page over the loopback service, gardens of one year. A layer of 30 L on one bed is taken back and done again by key, ${rounds} times: from the key's own time to the frame that shows the bed's cover without it or with it, at typical values; imagined seasons go on beside it.

${table(['edit to repaint', 'median [ms]', 'fastest', 'slowest', 'limit', ''], repaintRows)}

Tasks of the page's own thread that kept it for over 50 ms while somebody typed:

${table(['typing', 'over 50 ms', 'longest [ms]', `limit ${taskLimit} ms`], typingRows)}

From the request of the page, nothing kept from before, medians of 5:

${table(['first useful paint', 'median [ms]', 'slowest', `limit ${paintLimit} ms`], paintRows)}`;
}
