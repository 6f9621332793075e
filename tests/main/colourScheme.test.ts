import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { channels } from '../../app/host/contract';
import { keepColourScheme, readColourScheme } from '../../main/colourScheme';
import { start } from '../../main/electron';
import { electronDouble, ownFrame } from './electronDouble';
import { newFolder } from './folders';

test('what is kept is read again; nothing, damage and other words are the computer’s own', async () => {
  const folder = newFolder();
  expect(await readColourScheme(folder)).toBe('system');
  for (const scheme of ['dark', 'light', 'system'] as const) {
    expect(await keepColourScheme(folder, scheme)).toEqual({ ok: true, value: null });
    expect(await readColourScheme(folder)).toBe(scheme);
  }
  for (const damaged of ['{"scheme":"da', '{"scheme":"sepia"}', '7', '']) {
    await writeFile(join(folder, 'colourScheme.json'), damaged);
    expect(await readColourScheme(folder)).toBe('system');
  }
});

test('a folder that cannot be written is told, and nothing throws', async () => {
  const folder = join(newFolder(), 'gone');
  expect(await keepColourScheme(folder, 'dark')).toMatchObject({ ok: false });
});

test('Electron’s own parts wear it at once, and at the next start before there is a window', async () => {
  const folder = newFolder();
  const places = { documents: join(folder, 'documents'), userData: join(folder, 'data') };
  await mkdir(places.userData, { recursive: true });
  const first = electronDouble(places);
  await start(first.electron, ['electron', 'program']);
  expect(first.seen.theme.themeSource).toBe('system');
  const answer = await first.seen.handlers.get(channels.chooseColourScheme)!(
    { senderFrame: ownFrame },
    { scheme: 'dark' },
  );
  expect(answer).toEqual({ ok: true, value: null });
  expect(first.seen.theme.themeSource).toBe('dark');
  expect(await readFile(join(folder, 'data/state/colourScheme.json'), 'utf8')).toBe(
    '{"scheme":"dark"}',
  );

  let atLoad = '';
  const second = electronDouble({
    ...places,
    load: async () => void (atLoad = second.seen.theme.themeSource),
  });
  await start(second.electron, ['electron', 'program']);
  expect(atLoad).toBe('dark');
});
