import { describe, expect, test } from 'vitest';
import { checkRooms } from '../../.config/rooms.js';
import table from '../../.config/rooms.json';

const complaints = (file: string, source: string) =>
  checkRooms([[file, source]], table).map((problem) => `${problem.line}: ${problem.message}`);

describe('forbidden imports are reported', () => {
  test.each([
    ['app/core/a.ts', "import { row } from '../tables/row'", 'core may not import app/tables/row'],
    ['app/core/a.ts', "import type { Row } from '../tables/shapes'", 'core may not import'],
    ['app/core/a.ts', "import { z } from 'zod'", 'core may not use the package zod'],
    ['app/core/a.ts', "import { readFile } from 'node:fs'", 'core may not use the package node:fs'],
    ['app/core/a.ts', "export * from '../words/say'", 'core may not import app/words/say'],
    ['app/core/a.ts', "const late = await import('../store/store')", 'core may not import'],
    ['app/core/a.ts', "type T = import('../words/say').T", 'core may not import app/words/say'],
    ['app/core/a.ts', "const old = require('../words/say')", 'core may not import app/words/say'],
    ['app/core/a.ts', 'const late = await import(name)', 'only known at run time'],
    ['app/tables/a.ts', "import { say } from '../words/say'", 'tables may not import'],
    ['app/words/a.ts', "import { parse } from '../document/parse'", 'only types from'],
    ['app/words/a.ts', "import { type Parsed } from '../document/parse'", 'only types from'],
    ['app/words/a.ts', "export { parse } from '../document/parse'", 'only types from'],
    ['app/host/a.ts', "import { days } from '../core/days'", 'host may not import app/core/days'],
    ['app/store/a.ts', "import { f } from '../host/loopbackHost'", 'store may not import'],
    ['app/store/a.ts', "import { Bed } from '../screens/beds/Bed'", 'store may not import'],
    ['app/screens/a.tsx', "import { host } from '../host/chooseHost'", 'screens may not import'],
    [
      'app/screens/a.tsx',
      "import W from '../worker/season.worker?worker'",
      'screens may not import',
    ],
    ['app/charts/a.tsx', "import { scale } from 'd3'", 'charts may not use the package d3'],
    ['app/controls/a.tsx', "import { useStore } from '../store/store'", 'controls may not import'],
    ['app/start.tsx', "import { files } from '../main/files'", 'start may not import main/files'],
    ['app/worker/a.ts', "new Worker(new URL('../store/b.ts', import.meta.url))", 'worker may not'],
    ['app/document/a.ts', "const all = import.meta.glob('../screens/*.ts')", 'document may not'],
    ['main/handlers.ts', "import { parse } from '../app/document/parse'", 'main may not import'],
    ['main/handlers.ts', "import express from 'express'", 'main may not use the package express'],
    ['main/preload.ts', "import { z } from 'zod'", 'preload may not use the package zod'],
    ['main/preload.ts', "import { files } from './files'", 'preload may not import main/files'],
    [
      'main/command.ts',
      "import { app } from 'electron'",
      'command may not use the package electron',
    ],
    ['main/start.js', "import { build } from 'vite'", 'launch may not use the package vite'],
    ['main/launch/a.js', "import { z } from 'zod'", 'launch may not use the package zod'],
  ])('%s: %s', (file, source, message) => {
    expect(complaints(file, source)).toEqual([expect.stringContaining(message)]);
  });

  test('the line is named, and every fault of a file', () => {
    const source = "import '../words/a';\n\nimport '../store/b';\n";
    expect(checkRooms([['app/core/deep/../x.ts', source]], table)).toMatchObject([
      { line: 1 },
      { line: 3 },
    ]);
  });

  test('a file in no room and a file that does not parse', () => {
    expect(complaints('app/helpers/a.ts', '')).toEqual([expect.stringContaining('no room')]);
    expect(complaints('app/core/a.ts', 'const = 1')).toEqual([
      expect.stringContaining('does not parse'),
    ]);
  });
});

describe('lawful imports are left alone', () => {
  test.each([
    ['app/core/soil/a.ts', "import { success } from '../result'; import './b'"],
    [
      'app/tables/a.ts',
      "import { unit } from '../core/units'; import r from '../../assets/w.json'",
    ],
    ['app/document/a.ts', "import { z } from 'zod'; import { crops } from '../tables/crops'"],
    ['app/document/a.ts', "import sample from '../../assets/gardens/sample.mowings?raw'"],
    ['app/words/a.ts', "import type { Parsed } from '../document/parse'"],
    ['app/words/a.ts', "import type { Row } from '../tables/shapes'"],
    ['app/words/a.ts', "type Failure = import('../host/contract').HostError"],
    ['app/amounts/a.ts', "import { create } from 'mathjs/number'"],
    ['app/worker/a.ts', "import W from './season.worker?worker'; import '../core/season/season'"],
    ['app/worker/a.ts', "new Worker(new URL('./season.worker.ts', import.meta.url))"],
    ['app/store/a.ts', "import { ask } from '../worker/client'; import '../host/contract'"],
    ['app/screens/a.tsx', "import { jsx } from 'react/jsx-runtime'; import '../style/bed.css'"],
    ['app/start.tsx', "import { createRoot } from 'react-dom/client'; import './host/chooseHost'"],
    [
      'main/handlers.ts',
      "import { z } from 'zod'; import 'node:fs'; import '../app/host/contract'",
    ],
    ['main/electron.ts', 'electron.ipcMain.handle(channel, answer)'],
    ['main/command.ts', "import { parse } from '../app/document/parse'; import 'node:path'"],
    ['main/launch/a.js', "import 'node:fs'; const built = await import(address)"],
    ['main/launch/build.js', "import { build } from 'vite'"],
    // Only code counts: comments, strings and patterns that look like imports do not.
    [
      'app/core/a.ts',
      "// import { z } from 'zod'\nconst a = \"import('zod')\"; /'import \"zod\"/.test(a)",
    ],
  ])('%s: %s', (file, source) => {
    expect(complaints(file, source)).toEqual([]);
  });
});

describe('forbidden names', () => {
  test.each([
    ['app/core/a.ts', 'const now = new Date()'],
    ['app/core/a.ts', 'const now = Date.now()'],
    ['app/core/a.ts', 'const dice = Math.random()'],
    ['app/core/a.ts', "const dice = Math['random']()"],
    ['app/core/a.ts', 'const { random } = Math'],
    ['app/core/a.ts', 'const all = { Date }'],
    ['app/tables/a.ts', "console.log('hello')"],
    ['app/tables/a.ts', 'export const f = () => performance.now()'],
    ['main/handlers.ts', "import { ipcMain } from 'electron'"],
    ['main/menu.ts', 'const { ipcMain } = electron'],
    ['main/menu.ts', 'electron.ipcMain.on(name, f)'],
    ['main/electron.ts', "void electron.shell.openExternal('https://example.org')"],
    ['main/electron.ts', 'const preferences = { experimentalFeatures: true }'],
    ['app/screens/a.tsx', 'export const A = () => <p dangerouslySetInnerHTML={x} />'],
  ])('%s: %s', (file, source) => {
    expect(complaints(file, source)).toHaveLength(1);
  });

  test.each([
    [
      'app/core/a.ts',
      'const top = Math.max(1, Math.exp(2)); const event = { Date: 1 }; event.Date',
    ],
    ['app/core/a.ts', "// new Date()\nconst text = 'Math.random() and console'"],
    ['app/screens/a.tsx', 'const now = new Date(); console.log(now)'],
    ['main/files.ts', 'const at = Date.now()'],
  ])('lawful: %s: %s', (file, source) => {
    expect(complaints(file, source)).toEqual([]);
  });
});

test('every room stands for something: names are unique, and what may be imported is a room or a file of one', () => {
  const names = table.rooms.map((room) => room.name);
  expect(new Set(names).size).toBe(names.length);
  const places = table.rooms.flatMap((room) => room.holds);
  const known = (place: string) =>
    ['app/', 'assets/', '.build/'].includes(place) ||
    places.some((holds) => place.startsWith(holds));
  for (const room of table.rooms)
    for (const place of [...room.may, ...(room.types ?? [])])
      expect(known(place), `${room.name} -> ${place}`).toBe(true);
});
