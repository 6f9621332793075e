import { chmod, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import type { HostError, OpenedFile, RecentFile } from '../../app/host/contract';
import type { Result } from '../../app/core/result';
import { createHandlers, todayHere, type Shell } from '../../main/handlers';
import { textLimitBytes } from '../../main/requests';
import { newFolder } from './folders';

let folder = '';
let gardens = '';
beforeEach(() => {
  folder = newFolder();
  gardens = join(folder, 'Documents/Mowings');
});

/** The handlers as a browser window has them: no dialogs, names in the gardens folder. */
function browserWindow(changes: Partial<Shell> = {}) {
  const handlers = createHandlers({
    version: '1.2.3',
    gardensFolder: gardens,
    dataFolder: join(folder, 'state'),
    dialogs: null,
    describe: () => undefined,
    wear: () => undefined,
    used: () => undefined,
    ...changes,
  });
  const ask = <Value>(power: string, request: unknown = null) =>
    handlers.answer(power, request) as Promise<Result<Value, HostError>>;
  const save = (changed: object = {}) =>
    ask<{ id: string; name: string }>('saveGarden', {
      id: null,
      name: 'Plot',
      text: '{}',
      replace: false,
      ...changed,
    });
  return { ask, save, handlers };
}
const valueOf = <Value>(result: Result<Value, HostError>): Value => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

describe('about', () => {
  test('says what the page must know, and the civil day of this computer', async () => {
    const { ask } = browserWindow();
    expect(await ask('about')).toEqual({
      ok: true,
      value: { native: false, version: '1.2.3', folder: gardens, today: todayHere(new Date()) },
    });
  });

  test('the day is the local one, also when it is another day in Greenwich', () => {
    expect(todayHere(new Date(2025, 0, 1, 0, 5))).toBe('2025-01-01');
    expect(todayHere(new Date(2024, 11, 31, 23, 55))).toBe('2024-12-31');
  });
});

describe('saving in the browser window', () => {
  test('goes to the gardens folder, which it makes, under the cleaned name', async () => {
    const { save } = browserWindow();
    expect(valueOf(await save({ name: ' Front/back ' })).name).toBe('Front-back');
    expect(await readdir(gardens)).toEqual(['Front-back.mowings']);
  });

  test('a name that is taken is said, and replaced only when that was agreed to', async () => {
    const { save } = browserWindow();
    await save({ text: 'first' });
    expect(await save({ text: 'second' })).toEqual({
      ok: false,
      error: { kind: 'name-taken', name: 'Plot' },
    });
    expect(await readFile(join(gardens, 'Plot.mowings'), 'utf8')).toBe('first');
    expect(await save({ text: 'second', replace: true })).toMatchObject({ ok: true });
    expect(await readFile(join(gardens, 'Plot.mowings'), 'utf8')).toBe('second');
  });

  test('with its id it is saved where it was, whatever the name says', async () => {
    const { save, ask } = browserWindow();
    const { id } = valueOf(await save());
    expect(valueOf(await save({ id, name: 'Other', text: 'later' })).name).toBe('Plot');
    expect(await readdir(gardens)).toEqual(['Plot.mowings']);
    expect(valueOf(await ask<OpenedFile>('openGarden', { id })).text).toBe('later');
  });

  test('a name of which nothing is left', async () => {
    expect(await browserWindow().save({ name: '...' })).toEqual({
      ok: false,
      error: { kind: 'bad-name', name: '...' },
    });
  });

  test('text that is too large is not written', async () => {
    const { save } = browserWindow();
    // Counted as bytes: each of these signs has two.
    const text = 'é'.repeat(textLimitBytes / 2 + 1);
    expect(await save({ text })).toEqual({
      ok: false,
      error: { kind: 'too-large', name: 'Plot', limitBytes: textLimitBytes },
    });
    expect(await save({ text: text.slice(2) })).toMatchObject({ ok: true });
  });

  test('an id that was never given out', async () => {
    const id = '00000000-0000-4000-8000-000000000000';
    expect(await browserWindow().save({ id })).toMatchObject({ error: { kind: 'not-found' } });
  });

  test('twenty at once: every file whole, the list with ten', async () => {
    const { save, ask } = browserWindow();
    const texts = Array.from({ length: 20 }, (_, n) => `${n}`.repeat(1000));
    const saved = await Promise.all(texts.map((text, n) => save({ name: `g${n}`, text })));
    const ids = saved.map((answer) => valueOf(answer).id);
    expect(new Set(ids).size).toBe(20);
    expect(valueOf(await ask<RecentFile[]>('recentGardens'))).toHaveLength(10);
    // An id stays good for the whole run, also when its garden has dropped off the list.
    for (const [n, id] of ids.entries())
      expect(valueOf(await ask<OpenedFile>('openGarden', { id })).text).toBe(texts[n]);
    expect((await readdir(gardens)).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('opening', () => {
  test('without an id there is nothing to ask with', async () => {
    expect(await browserWindow().ask('openGarden', { id: null })).toEqual({
      ok: false,
      error: { kind: 'cancelled' },
    });
  });

  test('from the recent list in a later run; a garden that has gone is marked and said', async () => {
    const { id } = valueOf(await browserWindow().save());
    const { ask } = browserWindow();
    expect(valueOf(await ask<OpenedFile>('openGarden', { id }))).toEqual({
      id,
      name: 'Plot',
      text: '{}',
    });
    await rm(join(gardens, 'Plot.mowings'));
    expect(valueOf(await ask<RecentFile[]>('recentGardens'))).toMatchObject([
      { id, missing: true },
    ]);
    expect(await ask('openGarden', { id })).toEqual({
      ok: false,
      error: { kind: 'not-found', name: 'Plot' },
    });
  });

  test('the last used stands first', async () => {
    const { save, ask } = browserWindow();
    const { id } = valueOf(await save({ name: 'a' }));
    await save({ name: 'b' });
    await ask('openGarden', { id });
    expect(valueOf(await ask<RecentFile[]>('recentGardens')).map(({ name }) => name)).toEqual([
      'a',
      'b',
    ]);
  });

  test('a file that the system handed over', async () => {
    const { ask, handlers } = browserWindow();
    const path = join(folder, 'elsewhere.mowings');
    await writeFile(path, 'text');
    const id = await handlers.adopt(path);
    expect(valueOf(await ask<RecentFile[]>('recentGardens'))).toEqual([]);
    expect(valueOf(await ask<OpenedFile>('openGarden', { id }))).toMatchObject({
      name: 'elsewhere',
      text: 'text',
    });
    expect(valueOf(await ask<RecentFile[]>('recentGardens'))).toMatchObject([{ id }]);
  });
});

describe('the draft', () => {
  const draft = { id: null, name: 'Plot', text: '{"half": 1' };

  test('is kept, given back after a reload, and dropped', async () => {
    const { ask } = browserWindow();
    expect(await ask('restoreDraft')).toEqual({ ok: true, value: null });
    expect(await ask('keepDraft', draft)).toEqual({ ok: true, value: null });
    expect(await ask('restoreDraft')).toMatchObject({ ok: true, value: draft });
    expect(await ask('discardDraft')).toEqual({ ok: true, value: null });
    expect(await ask('restoreDraft')).toEqual({ ok: true, value: null });
  });

  test('does not touch the garden file', async () => {
    const { ask, save } = browserWindow();
    const { id } = valueOf(await save());
    await ask('keepDraft', { ...draft, id });
    expect(await readFile(join(gardens, 'Plot.mowings'), 'utf8')).toBe('{}');
  });
});

test('what is not a power is refused', async () => {
  const { ask } = browserWindow();
  for (const power of ['toString', '__proto__', 'constructor', 'hasOwnProperty', '', 'garden:open'])
    expect(await ask(power, null), power).toMatchObject({ error: { kind: 'refused' } });
});

test('a keeping folder that cannot be made is an answer, not a crash, and is tried again', async () => {
  const dataFolder = join(folder, 'in-the-way/state');
  await writeFile(join(folder, 'in-the-way'), '');
  const { ask } = browserWindow({ dataFolder });
  expect(await ask('recentGardens')).toMatchObject({ ok: false });
  await rm(join(folder, 'in-the-way'));
  expect(await ask('recentGardens')).toEqual({ ok: true, value: [] });
});

test.runIf(process.getuid?.() !== 0 && process.platform !== 'win32')(
  'a folder that may not be written',
  async () => {
    await mkdir(gardens, { recursive: true });
    await chmod(gardens, 0o500);
    expect(await browserWindow().save()).toEqual({
      ok: false,
      error: { kind: 'no-permission', name: 'Plot' },
    });
  },
);

describe('what is taken out of the window', () => {
  const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 255]);
  const request = (changed: object = {}) => ({
    name: 'Season of Gate bed',
    ending: 'png',
    base64: png.toString('base64'),
    replace: false,
    ...changed,
  });

  test('goes byte by byte to a file of its own in the gardens folder', async () => {
    const { ask } = browserWindow();
    expect(await ask('exportFile', request())).toEqual({
      ok: true,
      value: { name: 'Season of Gate bed.png', folder: gardens },
    });
    expect(await readFile(join(gardens, 'Season of Gate bed.png'))).toEqual(png);
  });

  test('never over another file unasked', async () => {
    const { ask } = browserWindow();
    await ask('exportFile', request({ base64: 'YQ==' }));
    expect(await ask('exportFile', request())).toEqual({
      ok: false,
      error: { kind: 'name-taken', name: 'Season of Gate bed' },
    });
    expect(await readFile(join(gardens, 'Season of Gate bed.png'), 'utf8')).toBe('a');
    expect(await ask('exportFile', request({ replace: true }))).toMatchObject({ ok: true });
    expect(await readFile(join(gardens, 'Season of Gate bed.png'))).toEqual(png);
  });

  test('never over a garden, and never out of the folder, whatever it is called', async () => {
    const { ask, save } = browserWindow();
    await save({ text: 'mine' });
    expect(await ask('exportFile', request({ name: 'Plot.mowings', replace: true }))).toMatchObject(
      { ok: true, value: { name: 'Plot.png' } },
    );
    expect(await ask('exportFile', request({ name: '../../out', replace: true }))).toMatchObject({
      ok: true,
      value: { folder: gardens },
    });
    expect(await readFile(join(gardens, 'Plot.mowings'), 'utf8')).toBe('mine');
    expect((await readdir(gardens)).toSorted()).toEqual([
      '-..-out.png',
      'Plot.mowings',
      'Plot.png',
    ]);
    expect(await readdir(join(gardens, '../..'))).not.toContain('out.png');
  });

  test.each([
    ['an ending of its own', { ending: 'exe' }],
    ['the ending of gardens', { ending: 'mowings' }],
    ['what is no base64', { base64: '<svg>' }],
    ['a path', { path: '/etc/passwd' }],
  ])('%s is refused', async (_what, changed) => {
    const { ask } = browserWindow();
    expect(await ask('exportFile', request(changed))).toMatchObject({
      ok: false,
      error: { kind: 'refused' },
    });
  });

  test('what is too large is said, and nothing is written', async () => {
    const { ask } = browserWindow();
    const base64 = 'A'.repeat(textLimitBytes + 4);
    expect(await ask('exportFile', request({ base64 }))).toMatchObject({
      ok: false,
      error: { kind: 'too-large' },
    });
    expect(await readdir(folder)).not.toContain('Documents');
  });

  test('in the native window the dialog says where; called off, nothing is written', async () => {
    const chosen: (string | null)[] = [join(folder, 'desk.png'), null];
    const asked: string[] = [];
    const { ask } = browserWindow({
      dialogs: {
        chooseFile: async () => null,
        choosePlace: async () => null,
        chooseExportPlace: async (suggested) => {
          asked.push(suggested);
          return chosen.shift() ?? null;
        },
      },
    });
    expect(await ask('exportFile', request())).toEqual({
      ok: true,
      value: { name: 'desk.png', folder: '' },
    });
    expect(asked).toEqual([join(gardens, 'Season of Gate bed.png')]);
    expect(await ask('exportFile', request())).toEqual({
      ok: false,
      error: { kind: 'cancelled' },
    });
  });
});
