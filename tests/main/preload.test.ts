import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import vm from 'node:vm';
import { build } from 'vite';
import { beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { channels, pushes, type ShellBridge } from '../../app/host/contract';
import { newFolder } from './folders';

let source = '';
let built: string[] = [];
beforeAll(async () => {
  const outDir = newFolder();
  await build({
    configFile: join(import.meta.dirname, '../../.config/vite.main.ts'),
    mode: 'preload',
    build: { outDir },
  });
  built = await readdir(outDir);
  source = await readFile(join(outDir, 'preload.cjs'), 'utf8');
});

const invoke = vi.fn(async (..._words: unknown[]) => 'answer');
let exposed: [string, ShellBridge][] = [];
let required: string[] = [];
let receivers = new Map<string, (event: unknown, ...words: unknown[]) => void>();
beforeEach(() => {
  invoke.mockClear();
  exposed = [];
  required = [];
  receivers = new Map();
  // A sandboxed preload is given little more than a `require` that knows 'electron'.
  vm.runInNewContext(source, {
    exports: {},
    module: { exports: {} },
    require(name: string) {
      required.push(name);
      if (name !== 'electron') throw new Error(`a sandboxed preload cannot load ${name}`);
      return {
        contextBridge: {
          exposeInMainWorld: (key: string, value: ShellBridge) => exposed.push([key, value]),
        },
        ipcRenderer: {
          invoke,
          on: (channel: string, receiver: never) => receivers.set(channel, receiver),
        },
      };
    },
  });
});
const bridge = () => exposed[0]![1];

test('is one file that loads nothing but electron', () => {
  expect(built).toEqual(['preload.cjs']);
  expect(new Set(required)).toEqual(new Set(['electron']));
});

test('exposes exactly the listed names, all of them functions', () => {
  expect(exposed.map(([key]) => key)).toEqual(['mowingsShell']);
  expect(Object.keys(bridge()).toSorted()).toEqual(['host', 'onMenu', 'onOpenFile']);
  expect(Object.keys(bridge().host).toSorted()).toEqual(Object.keys(channels).toSorted());
  const leaves = [bridge().onMenu, bridge().onOpenFile, ...Object.values(bridge().host)];
  for (const leaf of leaves) {
    expect(typeof leaf).toBe('function');
    expect(Object.keys(leaf)).toEqual([]);
  }
});

test('each power sends one message on its own channel', async () => {
  const { host } = bridge();
  const request = { marker: 1 } as never;
  for (const [power, channel] of Object.entries(channels)) {
    invoke.mockClear();
    await host[power as keyof typeof host](request);
    expect(invoke.mock.calls).toEqual([
      [channel, host[power as keyof typeof host].length === 0 ? null : request],
    ]);
  }
});

test('a caller cannot pass on more than one value', async () => {
  const loose = bridge().host.openGarden as (...words: unknown[]) => unknown;
  await loose({ id: null }, 'extra');
  expect(invoke.mock.calls).toEqual([[channels.openGarden, { id: null }]]);
});

describe('what the shell sends', () => {
  test('listens on the listed channels only', () => {
    expect([...receivers.keys()].toSorted()).toEqual(Object.values(pushes).toSorted());
  });

  test('reaches the page as a plain value, without the event', () => {
    const onMenu = vi.fn();
    const onOpenFile = vi.fn();
    bridge().onMenu(onMenu);
    bridge().onOpenFile(onOpenFile);
    receivers.get(pushes.menu)!({ sender: 'secret' }, 'undo', 'extra');
    receivers.get(pushes.openFile)!({ sender: 'secret' }, 'some-id', 'extra');
    expect(onMenu.mock.calls).toEqual([['undo']]);
    expect(onOpenFile.mock.calls).toEqual([['some-id']]);
  });

  test('unknown commands are dropped', () => {
    const onMenu = vi.fn();
    bridge().onMenu(onMenu);
    for (const wrong of ['format-disk', 7, null, {}]) receivers.get(pushes.menu)!({}, wrong);
    expect(onMenu).not.toHaveBeenCalled();
  });

  test('what comes before the page listens is kept for it, once', () => {
    receivers.get(pushes.openFile)!({}, 'early-id');
    const first = vi.fn();
    const second = vi.fn();
    bridge().onOpenFile(first);
    bridge().onOpenFile(second);
    expect(first.mock.calls).toEqual([['early-id']]);
    expect(second).not.toHaveBeenCalled();
  });
});
