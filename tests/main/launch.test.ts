import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { mkdirSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { profileParent, windowOptions } from '../../main/launch/appWindow.js';
import { readArguments } from '../../main/launch/arguments.js';
import { chooseWindow, withoutElectron } from '../../main/launch/chooseWindow.js';
import { electronBinary, releaseSite, siteAnswers } from '../../main/launch/electronBinary.js';
import { findBrowser } from '../../main/launch/findBrowser.js';
import { isBuilt, recordBuild, sourceHash } from '../../main/launch/freshness.js';
import { nodeComplaint } from '../../main/launch/nodeVersion.js';
import { fulfils, hasPackages } from '../../main/launch/packages.js';
import { newFolder } from './folders';

describe('Node', () => {
  test.each(['20.19.0', '20.20.2', '21.0.0', '22.12.0', '24.1.0'])('%s will do', (version) => {
    expect(nodeComplaint(version)).toBeNull();
  });
  test.each(['20.18.3', '18.20.0', '16.0.0', '8.17.0'])('%s is too old', (version) => {
    expect(nodeComplaint(version)).toMatch(
      `Mowings needs Node 20.19 or newer, and this is Node ${version}.`,
    );
  });
});

describe('what stands after npm start --', () => {
  let folder = '';
  beforeEach(() => {
    folder = newFolder();
    writeFileSync(join(folder, 'plot.mowings'), '{}');
  });

  test.each([
    [[], { wish: 'any', file: null }],
    [['--no-open'], { wish: 'none', file: null }],
    [['--browser'], { wish: 'browser', file: null }],
  ])('%j', (words, request) => {
    expect(readArguments(words, folder)).toEqual({ request });
  });

  test('a file is resolved against the caller’s folder', () => {
    const file = join(folder, 'plot.mowings');
    expect(readArguments(['plot.mowings'], folder)).toEqual({ request: { wish: 'any', file } });
    expect(readArguments([file, '--no-open'], '/')).toEqual({ request: { wish: 'none', file } });
  });

  test.each([
    [['--open'], 'not an option'],
    [['none.mowings'], 'There is no file'],
    [['.'], 'There is no file'],
    [['plot.mowings', 'plot.mowings'], 'one garden file only'],
  ])('%j is answered with a sentence', (words, sentence) => {
    expect(readArguments(words, folder)).toEqual({ complaint: expect.stringContaining(sentence) });
  });
});

describe('which window', () => {
  const probes = (changes: object = {}) => ({
    wish: 'any' as const,
    hasScreen: true,
    hasElectronPackage: true,
    binary: vi.fn<() => string | null>(() => '/electron'),
    siteAnswers: vi.fn(async () => true),
    fetchBinary: vi.fn<() => Promise<string | null>>(async () => null),
    browser: vi.fn<() => string | null>(() => '/usr/bin/chromium'),
    ...changes,
  });

  test('Electron where its binary is, without asking anybody', async () => {
    const asked = probes();
    expect(await chooseWindow(asked)).toMatchObject({ kind: 'electron', program: '/electron' });
    expect(asked.siteAnswers).not.toHaveBeenCalled();
    expect(asked.browser).not.toHaveBeenCalled();
  });

  test('Electron where its binary can be had', async () => {
    const binary = vi
      .fn<() => string | null>()
      .mockReturnValueOnce(null)
      .mockReturnValue('/fetched');
    expect(await chooseWindow(probes({ binary }))).toEqual({
      kind: 'electron',
      program: '/fetched',
      why: 'Opening Mowings in Electron: its binary has just been fetched.',
    });
  });

  test('a browser where the release site does not answer; nothing is fetched', async () => {
    const asked = probes({ binary: () => null, siteAnswers: async () => false });
    expect(await chooseWindow(asked)).toEqual({
      kind: 'browser',
      program: '/usr/bin/chromium',
      why: "Opening Mowings in a window of /usr/bin/chromium: Electron's program is missing here, and the site that has it does not answer.",
    });
    expect(asked.fetchBinary).not.toHaveBeenCalled();
  });

  test('a browser where fetching failed, with the reason', async () => {
    const fetchBinary = async () => 'Error: checksum';
    const choice = await chooseWindow(probes({ binary: () => null, fetchBinary }));
    expect(choice).toMatchObject({
      kind: 'browser',
      why: expect.stringContaining('(Error: checksum)'),
    });
  });

  test('a browser where the package is not installed, or on wish', async () => {
    expect(await chooseWindow(probes({ hasElectronPackage: false }))).toMatchObject({
      kind: 'browser',
    });
    const asked = probes({ wish: 'browser' });
    expect(await chooseWindow(asked)).toMatchObject({ kind: 'browser' });
    expect(asked.binary).not.toHaveBeenCalled();
  });

  test('the address where there is no browser either', async () => {
    const nothing = { binary: () => null, siteAnswers: async () => false, browser: () => null };
    expect(await chooseWindow(probes(nothing))).toEqual({
      kind: 'address',
      why: expect.stringMatching(/site that has it does not answer, and no browser .* was found/),
    });
  });

  test('neither, on wish or where there is no screen', async () => {
    for (const changes of [{ wish: 'none' }, { hasScreen: false }]) {
      const asked = probes(changes);
      expect(await chooseWindow(asked)).toMatchObject({ kind: 'address' });
      for (const probe of [asked.binary, asked.siteAnswers, asked.fetchBinary, asked.browser])
        expect(probe).not.toHaveBeenCalled();
    }
  });

  test('after Electron failed to start', () => {
    expect(withoutElectron(probes(), 'Electron did not start (it ended with 1)')).toMatchObject({
      kind: 'browser',
      why: expect.stringContaining('did not start'),
    });
  });
});

describe('a browser of the Chromium family', () => {
  const machine = (platform: string, env: Record<string, string>, ...there: string[]) => ({
    platform,
    env,
    home: '/home/me',
    exists: (path: string) => there.includes(path),
  });

  test('on the path, by preference and not by folder', () => {
    const env = { PATH: '/a:/b' };
    expect(findBrowser(machine('linux', env, '/b/google-chrome', '/a/chromium'))).toBe(
      '/a/chromium',
    );
    expect(findBrowser(machine('linux', env, '/b/google-chrome'))).toBe('/b/google-chrome');
    expect(findBrowser(machine('linux', env, '/b/firefox'))).toBeNull();
    expect(findBrowser(machine('linux', {}))).toBeNull();
  });

  test('on macOS, for all and for one', () => {
    const chrome = 'Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(findBrowser(machine('darwin', {}, `/home/me/Applications/${chrome}`))).toBe(
      `/home/me/Applications/${chrome}`,
    );
  });

  test('on Windows', () => {
    const edge = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { 'ProgramFiles(x86)': 'C:\\Program Files (x86)' };
    expect(findBrowser(machine('win32', env, edge))).toBe(edge);
  });

  test('BROWSER_PATH names one, or none', () => {
    const env = { BROWSER_PATH: '/mine', PATH: '/a' };
    expect(findBrowser(machine('linux', env, '/mine', '/a/chromium'))).toBe('/mine');
    expect(findBrowser(machine('linux', env, '/a/chromium'))).toBeNull();
  });
});

describe('the app window', () => {
  test('the address does not stand on the command line; no sandbox only for root', () => {
    const options = windowOptions('/profile', 'file:///profile/open.html', false);
    expect(options).toContain('--app=file:///profile/open.html');
    expect(options.join(' ')).not.toMatch(/token|--no-sandbox/);
    expect(windowOptions('/profile', 'file:///x', true)).toContain('--no-sandbox');
  });

  test('a browser in a snap gets a folder that it can see', () => {
    const parent = (browser: string, real: string, there = false) =>
      profileParent(
        browser,
        '/home/me',
        () => real,
        () => there,
      );
    expect(parent('/snap/bin/chromium', '/usr/bin/snap')).toBe('/home/me/snap/chromium/common');
    expect(parent('/usr/bin/chromium-browser', '/usr/bin/chromium-browser', true)).toMatch(
      /^\/home/,
    );
    expect(parent('/usr/bin/chromium', '/usr/bin/chromium', true)).not.toMatch(/^\/home/);
  });
});

describe('Electron’s binary', () => {
  test('is found on the disk, without loading the package', () => {
    const folder = newFolder();
    expect(electronBinary(folder, {})).toBeNull();
    writeFileSync(join(folder, 'path.txt'), 'electron');
    expect(electronBinary(folder, {})).toBeNull();
    mkdirSync(join(folder, 'dist'));
    writeFileSync(join(folder, 'dist/electron'), '');
    expect(electronBinary(folder, {})).toBe(join(folder, 'dist/electron'));
    expect(electronBinary(folder, { ELECTRON_OVERRIDE_DIST_PATH: '/none' })).toBeNull();
  });

  test('its release site, or a mirror', () => {
    expect(releaseSite({ ELECTRON_MIRROR: 'https://mirror.example/' })).toBe(
      'https://mirror.example/',
    );
    expect(releaseSite({})).toMatch(/^https:/);
  });

  const servers: ReturnType<typeof createServer>[] = [];
  afterEach(() => {
    for (const server of servers.splice(0)) {
      server.closeAllConnections();
      server.close();
    }
  });
  async function site(respond: RequestListener) {
    const server = createServer(respond);
    servers.push(server);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  }

  test.each([
    [200, true],
    [302, true],
    [404, true],
    [403, false],
    [407, false],
    [502, false],
  ])('a site that says %i answers: %s', async (status, isAnswer) => {
    const address = await site((_request, response) => response.writeHead(status).end());
    expect(await siteAnswers(address)).toBe(isAnswer);
  });

  test('a site that takes the call and never speaks is given up', async () => {
    const address = await site(() => undefined);
    expect(await siteAnswers(address, 200)).toBe(false);
  });

  test('no site at all', async () => {
    expect(await siteAnswers('http://127.0.0.1:1/')).toBe(false);
  });
});

describe('packages', () => {
  const lock = (packages: object) => JSON.stringify({ packages });
  let top = '';
  beforeEach(() => {
    top = newFolder();
    writeFileSync(
      join(top, 'package-lock.json'),
      lock({ '': {}, 'node_modules/a': { version: '1.0.0' } }),
    );
  });
  const installed = (version: string) => {
    mkdirSync(join(top, 'node_modules'), { recursive: true });
    writeFileSync(
      join(top, 'node_modules/.package-lock.json'),
      lock({ 'node_modules/a': { version } }),
    );
  };

  test('are missing in a fresh clone, and after an install that was broken off', () => {
    expect(hasPackages(top)).toBe(false);
    mkdirSync(join(top, 'node_modules'));
    expect(hasPackages(top)).toBe(false);
  });

  test('are there when npm has installed what the lock says, also by hand', () => {
    installed('1.0.0');
    expect(hasPackages(top)).toBe(true);
    // From here on the stamp is enough.
    rmSync(join(top, 'node_modules/.package-lock.json'));
    expect(hasPackages(top)).toBe(true);
  });

  test('are not, when the lock says otherwise', () => {
    installed('1.0.0');
    expect(hasPackages(top)).toBe(true);
    writeFileSync(
      join(top, 'package-lock.json'),
      lock({ '': {}, 'node_modules/a': { version: '1.0.1' } }),
    );
    expect(hasPackages(top)).toBe(false);
    installed('1.0.1');
    expect(hasPackages(top)).toBe(true);
  });

  test('other systems’ optional packages may be absent, but not in another version', () => {
    const wanted = {
      packages: { '': {}, 'node_modules/b': { version: '2.0.0', optional: true } },
    };
    expect(fulfils({ packages: {} }, wanted)).toBe(true);
    expect(fulfils({ packages: { 'node_modules/b': { version: '1.0.0' } } }, wanted)).toBe(false);
    expect(fulfils({}, { packages: { 'node_modules/b': { version: '2.0.0' } } })).toBe(false);
  });
});

describe('what is built is fresh', () => {
  let top = '';
  beforeEach(() => {
    top = newFolder();
    for (const folder of ['app/core', 'main', 'assets', '.config', '.build/app', '.build/main'])
      mkdirSync(join(top, folder), { recursive: true });
    for (const file of ['app/core/a.ts', 'main/b.ts', 'package.json', 'package-lock.json'])
      writeFileSync(join(top, file), 'x');
    for (const file of [
      'app/index.html',
      ...['entry.js', 'loopback.js', 'command.js', 'preload.cjs'].map((name) => `main/${name}`),
    ])
      writeFileSync(join(top, '.build', file), '');
    for (const part of ['app', 'main'] as const)
      recordBuild(join(top, '.build', part), sourceHash(top, part));
  });
  const fresh = () => [isBuilt(top, 'app'), isBuilt(top, 'main')];

  test('as long as nothing changed, whatever the times of the files', () => {
    utimesSync(join(top, 'app/core/a.ts'), new Date(), new Date());
    expect(fresh()).toEqual([true, true]);
  });

  test.each([
    ['app/core/a.ts', [false, false]],
    ['app/core/new.ts', [false, false]],
    ['assets/icon.svg', [false, false]],
    ['.config/vite.app.ts', [false, false]],
    ['package-lock.json', [false, false]],
    ['main/b.ts', [true, false]],
    ['tests.ts', [true, true]],
  ])('a change in %s', (file, expected) => {
    writeFileSync(join(top, file), 'changed');
    expect(fresh()).toEqual(expected);
  });

  test('a file that was removed or renamed', () => {
    rmSync(join(top, 'main/b.ts'));
    expect(fresh()).toEqual([true, false]);
    writeFileSync(join(top, 'main/c.ts'), 'x');
    expect(fresh()).toEqual([true, false]);
  });

  test('not without its products or its stamp', () => {
    rmSync(join(top, '.build/app/index.html'));
    rmSync(join(top, '.build/main/.sources'));
    expect(fresh()).toEqual([false, false]);
  });

  test('a folder that links to itself does not hang it', () => {
    symlinkSync(join(top, 'app'), join(top, 'app/core/loop'));
    expect(sourceHash(top, 'app')).toMatch(/^[0-9a-f]{64}$/);
  });
});
