import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base, type Frame, type Page } from '@playwright/test';
import type { MenuCommand } from '../../app/host/contract';
import { readColourScheme } from '../../main/colourScheme';
import { start } from '../../main/electron';
import { startService } from '../../main/loopback';
import { pageAddress } from '../../main/ownPage';
import { createPage } from '../../main/page';
import { stateFolder } from '../../main/stateFolder';
import { weatherService } from '../../main/weather/weatherService';
import { electronDouble } from '../main/electronDouble';
import { madeService, type MadeService } from '../main/weather/madeService';

const top = join(import.meta.dirname, '../..');

/** Which of the program's two shells stands behind the page. */
export interface Sides {
  side: 'service' | 'bridge';
}

/** The program with its page open, and what only the machine around it knows or does. */
export interface Program {
  readonly page: Page;
  /** `Documents/Mowings` of this test's own home */
  readonly gardensFolder: string;
  /** recent list and drafts */
  readonly dataFolder: string;
  /** What the person answers in the system's dialogs, in order; `bridge` only, the other side has none. */
  readonly dialogAnswers: { open: string[]; save: string[] };
  /** Chooses a command in the window's menu; `bridge` only, the other side has keys. */
  chooseInMenu(command: MenuCommand): void;
  /** What the window's title bar shows. */
  title(): Promise<string>;
  /** Ends the program and starts it anew on the same folders, optionally with a file. */
  restart(file?: string): Promise<void>;
}

interface Fixtures extends Sides {
  /** Built page to serve; the program's own unless a spec says otherwise. */
  pageFolder: string;
  /** Complaints of the page (console errors, uncaught failures); a test that leaves any fails. */
  trouble: string[];
  /** A folder of this test's own. */
  folder: string;
  /** What stands in for the weather service, on this machine; the real one is never asked. */
  weather: MadeService;
  program: Program;
  /** The page of `program`. */
  garden: Page;
}

interface Running {
  title(): Promise<string>;
  chooseInMenu(command: MenuCommand): void;
  dialogAnswers: Program['dialogAnswers'];
  stop(): Promise<void>;
}

interface Setting {
  readonly page: Page;
  readonly pageFolder: string;
  readonly folder: string;
  readonly file: string | null;
  readonly weather: MadeService;
}

const places = (folder: string) => ({
  documents: join(folder, 'Documents'),
  gardensFolder: join(folder, 'Documents/Mowings'),
  userData: join(folder, 'data'),
  dataFolder: join(folder, 'data/state'),
});

/** As `npm start` opens it where Electron cannot be had: the real loopback service. */
async function overService({ page, pageFolder, folder, file, weather }: Setting): Promise<Running> {
  const { gardensFolder, dataFolder } = places(folder);
  const service = await startService({
    pageFolder,
    gardensFolder,
    dataFolder,
    version: '0.0.0-test',
    file,
    askWeather: weatherService({ address: weather.address }),
  });
  // From the second start on, the same page must load anew and not only move to another fragment.
  await page.goto('about:blank');
  await page.goto(service.address);
  return {
    title: () => page.title(),
    chooseInMenu: () => {
      throw new Error('a browser window has no menu; press the key');
    },
    dialogAnswers: { open: [], save: [] },
    stop: () => service.stop(),
  };
}

/** A secure address that stands in for the program's own scheme, which only Electron can register. */
const site = 'https://garden.test';

/**
 * As Electron opens it: the real built preload, and the real `start()` with its handlers behind it.
 * Only the electron module is a double, so what it stands for (scheme, sandbox, dialogs) is not proved.
 */
async function overBridge({ page, pageFolder, folder, file, weather }: Setting): Promise<Running> {
  const { documents, userData } = places(folder);
  const { userData: kept } = places(folder);
  const answer = createPage(pageFolder, () => readColourScheme(stateFolder(kept)));
  let deliver: (channel: string, word: unknown) => void = () => undefined;
  const { electron, seen } = electronDouble({
    documents,
    userData,
    deliver: (channel, word) => deliver(channel, word),
    async load() {
      await page.context().unrouteAll();
      await page.context().route('**/*', async (route) => {
        const address = new URL(route.request().url());
        if (address.origin !== site) return route.abort();
        const response = await answer(address.pathname);
        return route.fulfill({
          status: response.status,
          headers: Object.fromEntries(response.headers),
          body: Buffer.from(await response.arrayBuffer()),
        });
      });
      await page.goto(`${site}/`);
    },
  });
  const frameOf = (frame: Frame): { url: string; parent: object | null } => ({
    url: frame.url().replace(`${site}/`, pageAddress),
    parent: frame.parentFrame(),
  });
  wires.set(page, (frame, channel, words) =>
    seen.handlers.get(channel)!({ senderFrame: frameOf(frame) }, ...words),
  );
  deliver = (channel, word) =>
    void page.evaluate(([name, value]) => (window as never as Wired).mowingsDeliver(name, value), [
      channel,
      word,
    ] as const);
  await start(electron, ['electron', 'program', ...(file ? [file] : [])], {
    askWeather: weatherService({ address: weather.address }),
  });
  return {
    title: async () => seen.titles.at(-1) ?? '',
    chooseInMenu: (command) => deliver('shell:menu', command),
    dialogAnswers: { open: seen.openAnswers, save: seen.saveAnswers },
    stop: async () => undefined,
  };
}

interface Wired {
  mowingsDeliver(channel: string, word: unknown): void;
}
type Wire = (frame: Frame, channel: string, words: unknown[]) => unknown;
/** Where the messages of a page go; a restart changes it. */
const wires = new WeakMap<Page, Wire>();

/** Once per page: the preload with stand-ins for the two parts of electron that it uses. */
async function layWire(page: Page): Promise<void> {
  await page.exposeBinding('mowingsInvoke', ({ frame }, channel: string, ...words: unknown[]) =>
    wires.get(page)!(frame, channel, words),
  );
  const preload = readFileSync(join(top, '.build/main/preload.cjs'), 'utf8');
  await page.addInitScript(`if (location.origin === '${site}') {
    const invoke = window.mowingsInvoke;
    const receivers = new Map();
    window.mowingsDeliver = (channel, word) => receivers.get(channel)?.({}, word);
    const frozen = (value) => {
      if (typeof value === 'object') Object.values(value).forEach(frozen);
      return Object.freeze(value);
    };
    const require = () => ({
      contextBridge: {
        exposeInMainWorld: (key, value) => Object.defineProperty(window, key, { value: frozen(value) }),
      },
      ipcRenderer: {
        invoke: (channel, ...words) => invoke(channel, ...words),
        on: (channel, receiver) => receivers.set(channel, receiver),
      },
    });
    const module = { exports: {} };
    ((require, module, exports) => { ${preload} })(require, module, module.exports);
  }`);
}

export const test = base.extend<Fixtures>({
  side: ['service', { option: true }],
  pageFolder: [join(top, '.build/app'), { option: true }],
  trouble: async ({}, use) => use([]),
  folder: async ({}, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'mowings-page-'));
    await use(folder);
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  },
  weather: async ({}, use) => {
    const weather = await madeService();
    await use(weather);
    await weather.stop();
  },
  program: async ({ page, folder, side, pageFolder, trouble, weather }, use) => {
    page.on('console', (message) => {
      if (message.type() === 'error') trouble.push(message.text());
    });
    page.on('pageerror', (error) => trouble.push(String(error)));
    if (side === 'bridge') await layWire(page);
    const begin = side === 'service' ? overService : overBridge;
    let running = await begin({ page, pageFolder, folder, file: null, weather });
    const { gardensFolder, dataFolder } = places(folder);
    await use({
      page,
      gardensFolder,
      dataFolder,
      get dialogAnswers() {
        return running.dialogAnswers;
      },
      chooseInMenu: (command) => running.chooseInMenu(command),
      title: () => running.title(),
      async restart(file) {
        // The page goes first: what it still had to ask would find nobody there and complain.
        await page.goto('about:blank');
        await running.stop();
        running = await begin({ page, pageFolder, folder, file: file ?? null, weather });
      },
    });
    await page.goto('about:blank');
    await running.stop();
    if (trouble.length > 0) throw new Error(`The page complained: ${trouble.join('; ')}`);
  },
  garden: async ({ program }, use) => use(program.page),
});
export { expect } from '@playwright/test';
