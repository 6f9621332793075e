// The real program in the real Electron. Looks for the binary on the disk: loading the electron
// package would start its download.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron, expect, test } from '@playwright/test';
import { electronBinary, electronFolder } from '../../main/launch/electronBinary.js';

const top = join(import.meta.dirname, '../..');

function obstacle(binary: string | null): string | null {
  if (!binary) return 'Electron has no program here';
  const { DISPLAY, WAYLAND_DISPLAY } = process.env;
  const isBlind = process.platform === 'linux' && !DISPLAY && !WAYLAND_DISPLAY;
  return isBlind ? 'there is no screen to show its window on' : null;
}

test('the real program opens its window, isolated, on its own page', async () => {
  const folder = electronFolder(top);
  const binary = folder && electronBinary(folder);
  const reason = obstacle(binary);
  if (reason) console.warn(`\n*** NOT RUN: ${reason}, so the real window was not seen. ***\n`);
  test.skip(reason !== null, reason ?? '');
  const data = await mkdtemp(join(tmpdir(), 'mowings-electron-'));
  const program = await _electron.launch({
    executablePath: binary!,
    args: [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), top, `--user-data-dir=${data}`],
  });
  try {
    const page = await program.firstWindow();
    await expect(page.getByRole('heading').first()).toBeVisible();
    expect(page.url()).toBe('mowings://garden/');
    const reach = await page.evaluate(() => ({
      require: typeof (globalThis as { require?: unknown }).require,
      bridge: Object.keys(window.mowingsShell ?? {}).toSorted(),
    }));
    expect(reach).toEqual({ require: 'undefined', bridge: ['host', 'onMenu', 'onOpenFile'] });
    const about = await page.evaluate(() => window.mowingsShell!.host.about());
    expect(about).toMatchObject({ ok: true, value: { native: true } });
  } finally {
    await program.close();
    await rm(data, { recursive: true, force: true, maxRetries: 5 });
  }
});
