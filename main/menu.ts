import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../app/host/contract';

type Item = MenuItemConstructorOptions;

/** Names of the steps that undo and redo would go; null: none. */
export interface MenuSteps {
  readonly undo: string | null;
  readonly redo: string | null;
}

const longestStep = 60;
/** "&Undo: Lay 2 bags on Gate bed"; what people typed gives no access key. */
function named(label: string, step: string | null): string {
  if (step === null) return label;
  const short = step.length > longestStep ? `${step.slice(0, longestStep - 1)}…` : step;
  return `${label}: ${short.replaceAll('&', '&&')}`;
}
const line: Item = { type: 'separator' };

/**
 * The menu of the window (on macOS, of the program). What concerns the garden is sent to the page,
 * so that undo, save and print are the same ones as everywhere else in it.
 *
 * @param send  gives the page a command
 * @param steps what undo and redo would do
 */
export function menuTemplate(
  platform: NodeJS.Platform,
  programName: string,
  send: (command: MenuCommand) => void,
  steps: MenuSteps = { undo: null, redo: null },
): Item[] {
  const isMac = platform === 'darwin';
  const command = (name: MenuCommand, label: string, accelerator?: string): Item => ({
    id: name,
    label,
    ...(accelerator ? { accelerator } : {}),
    click: () => send(name),
  });
  const about = command('about', `&About ${programName}`);
  const quit: Item = { role: 'quit', label: `&Quit ${programName}`, accelerator: 'CmdOrCtrl+Q' };

  const program: Item = {
    label: programName,
    submenu: [
      about,
      line,
      { role: 'services' },
      line,
      { role: 'hide' },
      { role: 'hideOthers' },
      { role: 'unhide' },
      line,
      quit,
    ],
  };
  const file: Item = {
    label: '&File',
    submenu: [
      command('new', '&New', 'CmdOrCtrl+N'),
      command('open', '&Open...', 'CmdOrCtrl+O'),
      line,
      command('save', '&Save', 'CmdOrCtrl+S'),
      command('save-as', 'Save &As...', 'CmdOrCtrl+Shift+S'),
      line,
      command('print', '&Print...', 'CmdOrCtrl+P'),
      line,
      isMac ? { role: 'close', label: '&Close' } : quit,
    ],
  };
  const edit: Item = {
    label: '&Edit',
    submenu: [
      command('undo', named('&Undo', steps.undo), 'CmdOrCtrl+Z'),
      command(
        'redo',
        named('&Redo', steps.redo),
        platform === 'win32' ? 'Ctrl+Y' : 'CmdOrCtrl+Shift+Z',
      ),
      line,
      { role: 'cut', label: 'Cu&t', accelerator: 'CmdOrCtrl+X' },
      { role: 'copy', label: '&Copy', accelerator: 'CmdOrCtrl+C' },
      { role: 'paste', label: '&Paste', accelerator: 'CmdOrCtrl+V' },
      line,
      { role: 'selectAll', label: 'Select &all', accelerator: 'CmdOrCtrl+A' },
      line,
      command('find', '&Find...', 'F9'),
    ],
  };
  const view: Item = {
    label: '&View',
    submenu: [
      command('colour-scheme', '&Light or dark...'),
      line,
      { role: 'zoomIn', label: 'Zoom &in', accelerator: 'CmdOrCtrl+Plus' },
      { role: 'zoomOut', label: 'Zoom &out', accelerator: 'CmdOrCtrl+-' },
      { role: 'resetZoom', label: '&Actual size', accelerator: 'CmdOrCtrl+0' },
      line,
      {
        role: 'togglefullscreen',
        label: '&Full screen',
        accelerator: isMac ? 'Ctrl+Cmd+F' : 'F11',
      },
    ],
  };
  const help: Item = {
    role: 'help',
    label: '&Help',
    submenu: [
      command('guide', '&Guide', 'F1'),
      command('tour', '&Short tour'),
      ...(isMac ? [] : [line, about]),
    ],
  };
  return isMac
    ? [program, file, edit, view, { role: 'windowMenu' }, help]
    : [file, edit, view, help];
}
