import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, test, vi } from 'vitest';
import { channels, menuCommands, pushes } from '../../app/host/contract';
import { start } from '../../main/electron';
import { menuTemplate } from '../../main/menu';
import { pageAddress } from '../../main/ownPage';
import { electronDouble } from './electronDouble';
import { newFolder } from './folders';

type Item = MenuItemConstructorOptions;
const submenu = (item: Item): Item[] => (Array.isArray(item.submenu) ? item.submenu : []);
const platforms = ['linux', 'win32', 'darwin'] as const;
const everyItem = (menu: Item[]): Item[] =>
  menu.flatMap((item) => [item, ...everyItem(submenu(item))]);
/** What a click sends; an item that does something else has no click. */
const click = (item: Item) => (item.click as (() => void) | undefined)?.();

describe.each(platforms)('the menu on %s', (platform) => {
  const menu = (send = vi.fn()) => menuTemplate(platform, 'Mowings', send);
  const find = (wanted: Pick<Item, 'id' | 'role'>): Item | undefined =>
    everyItem(menu()).find((item) =>
      wanted.id === undefined ? item.role === wanted.role : item.id === wanted.id,
    );

  test('every command of the contract stands in it once', () => {
    const send = vi.fn();
    for (const item of everyItem(menu(send))) click(item);
    expect(send.mock.calls.flat().toSorted()).toEqual([...menuCommands].toSorted());
  });

  test('menus stand in the order of the platform', () => {
    const names = menu().map((top) => (top.label ?? String(top.role)).replace('&', ''));
    const ours = ['File', 'Edit', 'View'];
    expect(names).toEqual(
      platform === 'darwin' ? ['Mowings', ...ours, 'windowMenu', 'Help'] : [...ours, 'Help'],
    );
  });

  test.each([
    ['new', 'CmdOrCtrl+N'],
    ['open', 'CmdOrCtrl+O'],
    ['save', 'CmdOrCtrl+S'],
    ['save-as', 'CmdOrCtrl+Shift+S'],
    ['print', 'CmdOrCtrl+P'],
    ['undo', 'CmdOrCtrl+Z'],
    ['redo', platform === 'win32' ? 'Ctrl+Y' : 'CmdOrCtrl+Shift+Z'],
    ['guide', 'F1'],
    // browsers and screen readers leave this one alone
    ['find', 'F9'],
  ])('the key of %s is the one every program gives it', (id, key) =>
    expect(find({ id })?.accelerator).toBe(key),
  );

  test.each([
    ['cut', 'CmdOrCtrl+X'],
    ['copy', 'CmdOrCtrl+C'],
    ['paste', 'CmdOrCtrl+V'],
    ['selectAll', 'CmdOrCtrl+A'],
  ] as const)('fields of the page can be edited: %s', (role, key) => {
    const edit = menu().find(({ label }) => label === '&Edit')!;
    expect(submenu(edit).find((item) => item.role === role)?.accelerator).toBe(key);
  });

  test('a page can be made larger, smaller, and as it was', () => {
    const view = menu().find(({ label }) => label === '&View')!;
    const roles = submenu(view).flatMap(({ role }) => role ?? []);
    for (const role of ['zoomIn', 'zoomOut', 'resetZoom', 'togglefullscreen'])
      expect(roles).toContain(role);
  });

  test('it ends by its key, from the last line of the menu where people look for it', () => {
    const quit = find({ role: 'quit' })!;
    expect(quit.accelerator).toBe('CmdOrCtrl+Q');
    const home = menu()[0]!;
    expect(home.label).toBe(platform === 'darwin' ? 'Mowings' : '&File');
    expect(submenu(home).at(-1)).toEqual(quit);
  });

  test('what it is called and which version: first in the program’s menu, or last in Help', () => {
    const holder = platform === 'darwin' ? menu()[0]! : menu().at(-1)!;
    expect(submenu(holder).at(platform === 'darwin' ? 0 : -1)?.id).toBe('about');
  });

  test('an ellipsis stands only where more is asked', () => {
    const asking = everyItem(menu()).filter((item) => item.label?.includes('...'));
    expect(asking.map((item) => item.id)).toEqual([
      'open',
      'save-as',
      'print',
      'find',
      'colour-scheme',
    ]);
  });

  test('no key is given twice', () => {
    const keys = everyItem(menu()).flatMap((item) => String(item.accelerator ?? []) || []);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.length).toBeGreaterThan(12);
  });

  test('nothing in it reloads the page or opens its tools', () => {
    const roles = everyItem(menu()).map((item) => String(item.role).toLowerCase());
    for (const role of ['reload', 'forcereload', 'toggledevtools'])
      expect(roles).not.toContain(role);
  });
});

// macOS has no access keys.
test.each(['linux', 'win32'] as const)(
  'on %s every item has an access key, one of its level',
  (platform) => {
    const menu = menuTemplate(platform, 'Mowings', () => undefined);
    for (const level of [menu, ...menu.map(submenu)]) {
      const items = level.filter((item) => item.type !== 'separator');
      const accessKeys = items.map((item) => /&(\w)/.exec(item.label ?? '')?.[1]?.toLowerCase());
      expect(accessKeys).not.toContain(undefined);
      expect(new Set(accessKeys).size, String(accessKeys)).toBe(items.length);
    }
  },
);

test('undo and redo say what they would do; what was typed gives no access key', () => {
  const steps = { undo: 'Lay 2 bags on Beans & peas', redo: `Change ${'long '.repeat(30)}` };
  const items = everyItem(menuTemplate('linux', 'Mowings', () => undefined, steps));
  const label = (id: string) => items.find((item) => item.id === id)?.label ?? '';
  expect(label('undo')).toBe('&Undo: Lay 2 bags on Beans && peas');
  expect(label('redo').startsWith('&Redo: Change long long')).toBe(true);
  expect(label('redo').length).toBeLessThan(80);
});

test('the menu follows what the page says of its steps', async () => {
  const folder = newFolder();
  const { electron, seen } = electronDouble({ documents: folder, userData: folder });
  await start(electron, []);
  const undo = () => everyItem(seen.menu).find((item) => item.id === 'undo')?.label;
  expect(undo()).toBe('&Undo');
  const tell = seen.handlers.get(channels.describeWindow)!;
  const senderFrame = { url: pageAddress, parent: null };
  await tell({ senderFrame }, { name: 'Plot', unsaved: true, undo: 'Water Long bed' });
  expect(undo()).toBe('&Undo: Water Long bed');
  await tell({ senderFrame }, { name: 'Plot', unsaved: true, undo: null, redo: null });
  expect(undo()).toBe('&Undo');
});

test('a chosen command reaches the page', async () => {
  const folder = newFolder();
  const { electron, seen } = electronDouble({ documents: folder, userData: folder });
  await start(electron, []);
  click(everyItem(seen.menu).find((item) => item.id === 'undo')!);
  expect(seen.sent).toEqual([[pushes.menu, 'undo']]);
});
