import { existsSync } from 'node:fs';
import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { channels, pushes } from '../../app/host/contract';
import { fileAmong, start } from '../../main/electron';
import { isOwnPage } from '../../main/ownPage';
import { contentPolicy } from '../../main/page';
import { DoubleEvent, electronDouble, ownFrame, type DoubleOptions } from './electronDouble';
import { newFolder } from './folders';

let folder = '';
beforeEach(() => {
  folder = newFolder();
});

async function started(options: Partial<DoubleOptions> = {}) {
  const double = electronDouble({
    documents: join(folder, 'documents'),
    userData: join(folder, 'data'),
    ...options,
  });
  await start(double.electron, ['electron', 'program'], {
    askWeather: async () => ({ ok: true, value: '{}' }),
  });
  const ask = (channel: string, request: unknown = null, senderFrame: unknown = ownFrame) =>
    double.seen.handlers.get(channel)!({ senderFrame }, request) as Promise<never>;
  const window = double.seen.windows[0]!;
  return { ...double, ask, window };
}

/** A lawful request of every channel, so that each refusal below has one fault only. */
const lawful: Record<keyof typeof channels, unknown> = {
  about: null,
  recentGardens: null,
  openGarden: { id: null },
  saveGarden: { id: null, name: 'Plot', text: '{}', replace: false },
  keepDraft: { id: null, name: 'Plot', text: '{}' },
  restoreDraft: null,
  discardDraft: null,
  exportFile: { name: 'Plot', ending: 'csv', base64: 'YQ==', replace: false },
  askWeather: {
    latitudeTenths: 525,
    longitudeTenths: -14,
    firstDay: '2031-05-01',
    lastDay: '2031-05-03',
  },
  callOffWeather: null,
  forgetWeather: null,
  chooseColourScheme: { scheme: 'dark' },
  describeWindow: { name: 'Plot', unsaved: false },
};
const everyPower = Object.keys(channels) as (keyof typeof channels)[];

describe('messages from the page', () => {
  test('every channel of the contract is answered, and no other', async () => {
    const { seen } = await started();
    expect([...seen.handlers.keys()].toSorted()).toEqual(Object.values(channels).toSorted());
  });

  test.each(everyPower)('%s: a lawful request of the own page is not refused', async (power) => {
    const { ask, seen } = await started();
    seen.saveAnswers.push(join(folder, 'plot.mowings'));
    const answer = await ask(channels[power], lawful[power]);
    if (power === 'openGarden') expect(answer).toEqual({ ok: false, error: { kind: 'cancelled' } });
    else expect(answer).toMatchObject({ ok: true });
  });

  const foreigners = {
    'a foreign site': { parent: null, url: 'https://example.org/' },
    'a site with our address in its query': {
      parent: null,
      url: 'https://example.org/?mowings://garden/',
    },
    'a look-alike host': { parent: null, url: 'mowings://garden.example.org/' },
    'our host behind a user name': { parent: null, url: 'mowings://garden@example.org/' },
    'a user name before our host': { parent: null, url: 'mowings://me@garden/' },
    'a file': { parent: null, url: 'file:///garden/' },
    'an empty page': { parent: null, url: 'about:blank' },
    'no address': { parent: null, url: '' },
    'a sub-frame of our own page': { parent: ownFrame, url: ownFrame.url },
    'a frame that has gone': null,
  };
  for (const [who, frame] of Object.entries(foreigners))
    test.each(everyPower)(`${who} is refused: %s`, async (power) => {
      const { ask, seen } = await started();
      expect(await ask(channels[power], lawful[power], frame)).toEqual({
        ok: false,
        error: { kind: 'refused', reason: expect.any(String) },
      });
      expect(seen.dialogs).toEqual([]);
      expect(existsSync(join(folder, 'data/state/recent.json'))).toBe(false);
    });

  const wrongShapes = (power: keyof typeof channels): unknown[] => {
    const right = lawful[power];
    const common = [undefined, 'text', 7, [], true, JSON.parse('{"__proto__":{"a":1}}')];
    if (right === null) return [...common.filter((shape) => shape !== undefined), {}];
    const keys = Object.keys(right as object);
    return [
      ...common,
      {},
      { ...(right as object), path: '/etc/passwd' },
      Object.assign(JSON.parse('{"__proto__":{"a":1}}'), right),
      ...keys.map((key) => ({ ...(right as object), [key]: 7.5 })),
      ...keys.map((key) => ({ ...(right as object), [key]: undefined })),
      ...('id' in (right as object)
        ? [
            { ...(right as object), id: '../../etc/passwd' },
            { ...(right as object), id: '' },
          ]
        : []),
      ...('name' in (right as object) ? [{ ...(right as object), name: 'x'.repeat(401) }] : []),
    ];
  };
  test.each(everyPower)('a wrong shape is refused: %s', async (power) => {
    const { ask, seen } = await started();
    for (const shape of wrongShapes(power))
      expect(await ask(channels[power], shape), JSON.stringify(shape)).toMatchObject({
        ok: false,
        error: { kind: 'refused' },
      });
    expect(seen.dialogs).toEqual([]);
  });

  test('more than one value is refused', async () => {
    const { seen } = await started();
    const receiver = seen.handlers.get(channels.about)!;
    expect(await receiver({ senderFrame: ownFrame }, null, null)).toMatchObject({
      error: { kind: 'refused' },
    });
  });
});

describe('the window', () => {
  test('is isolated and sandboxed', async () => {
    const { seen } = await started();
    expect(seen.windowOptions).toHaveLength(1);
    expect(seen.windowOptions[0]!.webPreferences).toEqual({
      preload: expect.stringMatching(/preload\.cjs$/),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      spellcheck: false,
      devTools: true,
    });
    expect(seen.isSandboxed).toBe(true);
    expect(seen.schemes).toEqual([
      {
        scheme: 'mowings',
        privileges: { standard: true, secure: true, supportFetchAPI: true },
      },
    ]);
    expect(seen.loaded).toEqual(['mowings://garden/']);
  });

  test.each(['will-navigate', 'will-frame-navigate', 'will-redirect'])(
    '%s: stays on the own page',
    async (name) => {
      const { seen } = await started();
      const stays = (url: string) => {
        const event = new DoubleEvent(url);
        seen.contents.emit(name, event);
        return event.defaultPrevented;
      };
      expect(stays('https://example.org/')).toBe(true);
      expect(stays('file:///etc/passwd')).toBe(true);
      expect(stays('mowings://garden.example.org/')).toBe(true);
      expect(stays('mowings://garden/index.html')).toBe(false);
    },
  );

  test('opens no windows, embeds nothing, grants nothing, downloads nothing', async () => {
    const { seen } = await started();
    for (const url of ['https://example.org/', 'file:///etc/passwd', 'mowings://garden/'])
      expect(seen.openHandler!({ url })).toEqual({ action: 'deny' });
    const attach = new DoubleEvent();
    seen.contents.emit('will-attach-webview', attach);
    expect(attach.defaultPrevented).toBe(true);
    const decide = vi.fn();
    for (const name of ['geolocation', 'media', 'notifications', 'clipboard-read'])
      seen.permissionRequest!(null, name, decide);
    expect(decide.mock.calls).toEqual([[false], [false], [false], [false]]);
    expect(seen.permissionCheck!()).toBe(false);
    expect(seen.devicePermission!()).toBe(false);
    const download = new DoubleEvent();
    seen.session.emit('will-download', download);
    expect(download.defaultPrevented).toBe(true);
  });

  test('the scheme serves the page folder only, with the policy', async () => {
    const { seen } = await started();
    const status = async (url: string) => (await seen.page!(new Request(url))).status;
    expect(await status('mowings://elsewhere/index.html')).toBe(404);
    expect(await status('mowings://garden/..%2f..%2fpackage.json')).toBe(404);
    const answer = await seen.page!(new Request('mowings://garden/no-such-file'));
    expect(answer.headers.get('content-security-policy')).toBe(contentPolicy);
  });

  test('own pages are told by their parts', () => {
    expect(isOwnPage('mowings://garden/')).toBe(true);
    expect(isOwnPage('mowings://garden/assets/a.js?b#c')).toBe(true);
    expect(isOwnPage('MOWINGS://garden/')).toBe(true);
    expect(isOwnPage('mowings://garden:80/')).toBe(false);
    expect(isOwnPage('mowings:garden/')).toBe(false);
    expect(isOwnPage('not an address')).toBe(false);
  });

  test('title shows the name and the mark of unsaved changes; the page cannot change it', async () => {
    const { ask, seen, window } = await started();
    await ask(channels.describeWindow, { name: 'Back plot', unsaved: true });
    await ask(channels.describeWindow, { name: 'Back plot', unsaved: false });
    expect(seen.titles).toEqual(['Back plot (edited) - Mowings', 'Back plot - Mowings']);
    const event = new DoubleEvent();
    window.emit('page-title-updated', event);
    expect(event.defaultPrevented).toBe(true);
  });

  test('its place is kept and found again, but not off the screen', async () => {
    (await started()).window.close();
    const again = await started();
    expect(again.seen.windowOptions[0]).toMatchObject({ x: 20, y: 30, width: 1000, height: 700 });
    await writeFile(
      join(folder, 'data/state/window.json'),
      JSON.stringify({ x: 5000, y: 30, width: 1000, height: 700, maximised: false }),
    );
    const moved = await started();
    expect(moved.seen.windowOptions[0]).toMatchObject({ width: 1000, height: 700 });
    expect(moved.seen.windowOptions[0]).not.toHaveProperty('x');
    await writeFile(join(folder, 'data/state/window.json'), '{"x": 1');
    expect((await started()).seen.windowOptions[0]).toMatchObject({ width: 1280, height: 860 });
  });
});

describe('files', () => {
  const garden = { id: null, name: 'Plot', text: '{"a": 1}', replace: false };

  test('save as, save, open and recent, with ids and never a path', async () => {
    const { ask, seen } = await started();
    seen.saveAnswers.push(join(folder, 'My plot'));
    const saved: { ok: true; value: { id: string; name: string } } = await ask(
      channels.saveGarden,
      garden,
    );
    expect(saved).toEqual({ ok: true, value: { id: expect.any(String), name: 'My plot' } });
    expect(await readFile(join(folder, 'My plot.mowings'), 'utf8')).toBe('{"a": 1}');
    const { id } = saved.value;
    await ask(channels.saveGarden, { ...garden, id, text: '{"a": 2}' });
    expect(await ask(channels.openGarden, { id })).toEqual({
      ok: true,
      value: { id, name: 'My plot', text: '{"a": 2}' },
    });
    const recent: unknown = await ask(channels.recentGardens);
    expect(recent).toMatchObject({ ok: true, value: [{ id, name: 'My plot', missing: false }] });
    expect(JSON.stringify(recent)).not.toContain(folder);
    expect(new Set(seen.recentDocuments)).toEqual(new Set([join(folder, 'My plot.mowings')]));
  });

  test('an ending that is added by us asks again before it replaces another file', async () => {
    await writeFile(join(folder, 'plot.mowings'), 'precious');
    const { ask, seen } = await started();
    seen.saveAnswers.push(join(folder, 'plot'), '');
    expect(await ask(channels.saveGarden, garden)).toEqual({
      ok: false,
      error: { kind: 'cancelled' },
    });
    expect(seen.dialogs).toHaveLength(2);
    expect(seen.dialogs[1]!.options['defaultPath']).toBe(join(folder, 'plot.mowings'));
    expect(await readFile(join(folder, 'plot.mowings'), 'utf8')).toBe('precious');
  });

  test('the name is cleaned before it is suggested', async () => {
    const { ask, seen } = await started();
    await ask(channels.saveGarden, { ...garden, name: '../../CON' });
    await ask(channels.saveGarden, { ...garden, name: '...' });
    expect(seen.dialogs.map(({ options }) => options['defaultPath'])).toEqual([
      join(folder, 'documents/Mowings/-..-CON.mowings'),
      join(folder, 'documents/Mowings/Garden.mowings'),
    ]);
  });

  test('a file named at start, double-clicked or handed over by a second start is opened', async () => {
    const path = join(folder, 'given.mowings');
    await writeFile(path, '{}');
    const { app, seen, ask, window } = await started();
    const event = new DoubleEvent();
    app.emit('open-file', event, path);
    expect(event.defaultPrevented).toBe(true);
    await expect.poll(() => seen.sent).toEqual([[pushes.openFile, expect.any(String)]]);
    expect(await ask(channels.openGarden, { id: seen.sent[0]![1] })).toMatchObject({
      value: { name: 'given', text: '{}' },
    });

    window.isMinimised = true;
    app.emit('second-instance', new DoubleEvent(), [], folder, { file: path });
    await expect.poll(() => seen.sent).toHaveLength(2);
    expect(window).toMatchObject({ isMinimised: false, isRaised: true });
    app.emit('second-instance', new DoubleEvent(), [], folder, { file: null });
    app.emit('second-instance', new DoubleEvent(), [], folder, null);
    expect(seen.sent).toHaveLength(2);
  });

  test('a file that comes before the window waits for it', async () => {
    const path = join(folder, 'early.mowings');
    const options = { documents: folder, userData: join(folder, 'data') };
    const order: string[] = [];
    const double = electronDouble({
      ...options,
      load: async () => void order.push('loaded'),
      deliver: (channel) => void order.push(channel),
    });
    const running = start(double.electron, ['electron', 'program']);
    double.app.emit('open-file', new DoubleEvent(), path);
    await running;
    await expect.poll(() => order).toEqual(['loaded', pushes.openFile]);
  });

  test('of two starts the later one gives its file to the first and ends', async () => {
    const second = electronDouble({ documents: folder, userData: folder, isOnlyInstance: false });
    await start(second.electron, ['electron', 'program', join(folder, 'a.mowings')]);
    expect(second.seen).toMatchObject({ hasQuit: true, windowOptions: [], loaded: [] });
    expect(second.seen.lockData).toEqual({ file: join(folder, 'a.mowings') });
  });

  test('arguments: the first that is no option, resolved against the caller', () => {
    expect(fileAmong(['electron', 'program', '--flag', 'a.mowings'], false, '/here')).toBe(
      '/here/a.mowings',
    );
    expect(fileAmong(['mowings', '/there/a.mowings'], true, '/here')).toBe('/there/a.mowings');
    expect(fileAmong(['electron', 'program'], false, '/here')).toBeNull();
  });

  test('a damaged recent list costs the list only', async () => {
    await mkdir(join(folder, 'data/state'), { recursive: true });
    await writeFile(join(folder, 'data/state/recent.json'), '[{"id": 7}]');
    const { ask } = await started();
    expect(await ask(channels.recentGardens)).toEqual({ ok: true, value: [] });
  });

  test('nothing is left beside what was saved', async () => {
    const { ask } = await started();
    await ask(channels.keepDraft, { id: null, name: 'Plot', text: '{}' });
    const left = await readdir(join(folder, 'data/state'));
    expect(left.filter((name) => name.endsWith('.part'))).toEqual([]);
    expect(left).toEqual([expect.stringMatching(/^draft-/)]);
  });
});

describe('closing with unsaved changes', () => {
  const garden = { id: null, name: 'Plot', text: '{}', replace: false };
  async function edited() {
    const all = await started();
    await all.ask(channels.keepDraft, { id: null, name: 'Plot', text: '{}' });
    await all.ask(channels.describeWindow, { name: 'Plot', unsaved: true });
    return all;
  }
  /** what should not come has had its time; what should is waited for */
  const settled = () => new Promise((resolve) => void setTimeout(resolve, 30));
  const drafts = async () =>
    (await readdir(join(folder, 'data/state'))).filter((name) => name.startsWith('draft-'));

  test('without changes it just closes', async () => {
    const { window, seen } = await started();
    window.close();
    expect(window.isClosed).toBe(true);
    expect(seen.dialogs).toEqual([]);
  });

  test('the question names the garden and the deeds', async () => {
    const { window, seen } = await edited();
    window.close();
    await expect.poll(() => seen.dialogs).toHaveLength(1);
    expect(seen.dialogs[0]!.options).toMatchObject({
      message: 'Save changes to Plot?',
      buttons: ['&Save', "&Don't save", 'Cancel'],
      cancelId: 2,
    });
  });

  test('Cancel leaves all as it was', async () => {
    const { window, seen } = await edited();
    seen.messageAnswers.push(2);
    window.close();
    await expect.poll(() => seen.dialogs).toHaveLength(1);
    await settled();
    expect(window.isClosed).toBe(false);
    expect(seen.sent).toEqual([]);
    expect(await drafts()).toHaveLength(1);
  });

  test("Don't save drops the draft and closes", async () => {
    const { window, seen } = await edited();
    seen.messageAnswers.push(1);
    window.close();
    await expect.poll(() => window.isClosed).toBe(true);
    expect(await drafts()).toEqual([]);
  });

  test('Save asks the page, and closes when the page has nothing unsaved', async () => {
    const { window, seen, ask } = await edited();
    seen.messageAnswers.push(0);
    seen.saveAnswers.push(join(folder, 'plot.mowings'));
    window.close();
    await expect.poll(() => seen.sent).toEqual([[pushes.menu, 'save']]);
    expect(window.isClosed).toBe(false);
    await ask(channels.saveGarden, garden);
    expect(window.isClosed).toBe(false);
    await ask(channels.describeWindow, { name: 'plot', unsaved: false });
    expect(window.isClosed).toBe(true);
  });

  test('a save that is cancelled or fails keeps the window open, also later', async () => {
    const { window, seen, ask } = await edited();
    seen.messageAnswers.push(0);
    window.close();
    await expect.poll(() => seen.sent).toHaveLength(1);
    await ask(channels.saveGarden, garden);
    await ask(channels.describeWindow, { name: 'Plot', unsaved: false });
    expect(window.isClosed).toBe(false);
  });

  test('an edit made while saving keeps it open', async () => {
    const { window, seen, ask } = await edited();
    seen.messageAnswers.push(0);
    seen.saveAnswers.push(join(folder, 'plot.mowings'));
    window.close();
    await expect.poll(() => seen.sent).toHaveLength(1);
    await ask(channels.saveGarden, garden);
    await ask(channels.describeWindow, { name: 'plot', unsaved: true });
    await ask(channels.describeWindow, { name: 'plot', unsaved: false });
    expect(window.isClosed).toBe(false);
  });

  test('the question comes once, however often closing is asked for', async () => {
    const { window, seen } = await edited();
    window.close();
    window.close();
    await expect.poll(() => seen.dialogs.length).toBeGreaterThan(0);
    await settled();
    expect(seen.dialogs).toHaveLength(1);
  });

  test('the end of the session is held up while something is unsaved', async () => {
    const { window, ask } = await edited();
    const first = new DoubleEvent();
    window.emit('query-session-end', first);
    expect(first.defaultPrevented).toBe(true);
    await ask(channels.describeWindow, { name: 'Plot', unsaved: false });
    const second = new DoubleEvent();
    window.emit('query-session-end', second);
    expect(second.defaultPrevented).toBe(false);
  });
});
