import { mkdir } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type * as ElectronModule from 'electron';
import { failure, type Result } from '../app/core/result';
import {
  channels,
  pushes,
  type ExportEnding,
  type HostError,
  type MenuCommand,
} from '../app/host/contract';
import { createClosing } from './closing';
import { withEnding } from './fileNames';
import { createHandlers, type Shell } from './handlers';
import { readColourScheme } from './colourScheme';
import { menuTemplate, type MenuSteps } from './menu';
import { isOwnPage, pageAddress, scheme } from './ownPage';
import { createPage } from './page';
import { isPower } from './requests';
import { stateFolder } from './stateFolder';
import { keepWindowPlace, placeOptions, readWindowPlace, smallest } from './windowPlace';

type Electron = typeof ElectronModule;
const here = import.meta.dirname;
const brokenAtOnceMilliseconds = 10_000;
const filters = [{ name: 'Mowings gardens', extensions: ['mowings'] }];

/** Only the top frame of our own page may ask; a frame that has gone may not. */
export function mayAsk(event: Pick<ElectronModule.IpcMainInvokeEvent, 'senderFrame'>): boolean {
  const frame = event.senderFrame;
  return frame !== null && frame.parent === null && isOwnPage(frame.url);
}

/** The garden file among the arguments of a start, as a whole path, or null. */
export function fileAmong(
  words: readonly string[],
  isPackaged: boolean,
  folder: string,
): string | null {
  const file = words.slice(isPackaged ? 1 : 2).find((word) => !word.startsWith('-'));
  return file === undefined ? null : resolve(folder, file);
}

/**
 * The whole program in Electron. The module comes as an argument, so that tests can hand in a double.
 * Everything up to the first await happens before Electron is ready, as its own rules demand.
 *
 * @param words  what the program was started with
 */
export async function start(
  electron: Electron,
  words: readonly string[] = process.argv,
  surroundings: Pick<Shell, 'askWeather'> = {},
): Promise<void> {
  const { app, protocol, session } = electron;
  protocol.registerSchemesAsPrivileged([
    { scheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
  const named = fileAmong(words, app.isPackaged, process.cwd());
  if (!app.requestSingleInstanceLock({ file: named })) return app.quit();
  app.enableSandbox();
  app.on('web-contents-created', (_event, contents) => confine(contents));
  app.on('window-all-closed', () => app.quit());

  // The system may hand over files before there is a window to show them.
  const files = createHandover();
  if (named) files.put(named);
  app.on('open-file', (event, path) => {
    event.preventDefault();
    files.put(path);
  });
  app.on('second-instance', (_event, _theirWords, _theirFolder, data) => {
    const file = typeof data === 'object' && data !== null && 'file' in data ? data.file : null;
    files.put(typeof file === 'string' ? file : null);
  });
  await app.whenReady();

  const kept = stateFolder(app.getPath('userData'));
  electron.nativeTheme.themeSource = await readColourScheme(kept);
  const page = createPage(join(here, '../app'), () => readColourScheme(kept));
  protocol.handle(scheme, (request) =>
    isOwnPage(request.url)
      ? page(new URL(request.url).pathname)
      : new Response('Not found', { status: 404 }),
  );
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  defaultSession.setPermissionCheckHandler(() => false);
  defaultSession.setDevicePermissionHandler(() => false);
  defaultSession.on('will-download', (event) => event.preventDefault());

  await openWindow(electron, files, surroundings);
}

/** A page can neither leave, nor open windows, nor embed foreign pages. */
function confine(contents: ElectronModule.WebContents): void {
  const stay = (event: { preventDefault(): void }, url: string) => {
    if (!isOwnPage(url)) event.preventDefault();
  };
  contents.on('will-navigate', (event) => stay(event, event.url));
  contents.on('will-frame-navigate', (event) => stay(event, event.url));
  contents.on('will-redirect', (event) => stay(event, event.url));
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}

interface Handover {
  /** a file to open, or null to raise the window only */
  put(file: string | null): void;
  /** takes what has come so far and everything from now on */
  onFile(take: (file: string | null) => void): void;
}

function createHandover(): Handover {
  const early: (string | null)[] = [];
  let take: ((file: string | null) => void) | null = null;
  return {
    put(file) {
      if (take) take(file);
      else early.push(file);
    },
    onFile(next) {
      take = next;
      for (const file of early.splice(0)) next(file);
    },
  };
}

async function openWindow(
  electron: Electron,
  files: Handover,
  surroundings: Pick<Shell, 'askWeather'>,
): Promise<void> {
  const { app, BrowserWindow, dialog, Menu, screen } = electron;
  const dataFolder = stateFolder(app.getPath('userData'));
  await mkdir(dataFolder, { recursive: true, mode: 0o700 }).catch(() => undefined);
  const last = await readWindowPlace(dataFolder);
  const main = screen.getPrimaryDisplay();
  const screens = [main, ...screen.getAllDisplays().filter(({ id }) => id !== main.id)];
  const window = new BrowserWindow({
    ...placeOptions(
      last,
      screens.map(({ workArea }) => workArea),
    ),
    minWidth: smallest.width,
    minHeight: smallest.height,
    show: false,
    title: app.name,
    webPreferences: {
      preload: join(here, 'preload.cjs'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      spellcheck: false,
      devTools: !app.isPackaged,
    },
  });
  if (last?.maximised) window.maximize();

  const handlers = createHandlers({
    ...surroundings,
    version: app.getVersion(),
    gardensFolder: join(app.getPath('documents'), app.name),
    dataFolder,
    dialogs: dialogsOf(dialog, window),
    describe({ name, unsaved, undo = null, redo = null }) {
      window.setTitle(
        name === '' ? app.name : `${name}${unsaved ? ' (edited)' : ''} - ${app.name}`,
      );
      window.setDocumentEdited(unsaved);
      closing.described({ name, unsaved });
      showMenu({ undo, redo });
    },
    wear: (worn) => void (electron.nativeTheme.themeSource = worn),
    used: (path) => app.addRecentDocument(path),
  });
  const closing = createClosing({
    ask: (name) => askToSave(dialog, window, name),
    requestSave: () => window.webContents.send(pushes.menu, 'save'),
    discardDraft: () => handlers.answer('discardDraft', null),
    close: () => window.close(),
  });
  answerMessages(electron, handlers.answer, closing.saveAnswered);
  let shown = '';
  /** A menu's words cannot be changed, so it is made anew when a step's name is another. */
  function showMenu(steps: MenuSteps): void {
    const words = JSON.stringify(steps);
    if (words === shown) return;
    shown = words;
    const send = (command: MenuCommand): void => window.webContents.send(pushes.menu, command);
    Menu.setApplicationMenu(
      Menu.buildFromTemplate(menuTemplate(process.platform, app.name, send, steps)),
    );
  }
  showMenu({ undo: null, redo: null });

  // The shell words the title; the page's own would drop the mark of unsaved changes.
  window.on('page-title-updated', (event) => event.preventDefault());
  window.on('close', (event) => {
    closing.onClose(event);
    if (event.defaultPrevented) return;
    const place = { ...window.getNormalBounds(), maximised: window.isMaximized() };
    keepWindowPlace(dataFolder, place);
  });
  window.on('query-session-end', (event) => {
    if (closing.isUnsaved) event.preventDefault();
  });
  // The question about unsaved changes has been asked by then; the page's own would ask twice.
  window.webContents.on('will-prevent-unload', (event) => event.preventDefault());
  let loadedAt = Date.now();
  window.webContents.on('render-process-gone', () => {
    // The draft holds the work, so a page that broke starts again; one that breaks at once does not.
    if (Date.now() - loadedAt < brokenAtOnceMilliseconds) return;
    loadedAt = Date.now();
    void window.loadURL(pageAddress);
  });
  window.once('ready-to-show', () => window.show());
  await window.loadURL(pageAddress);

  files.onFile((file) => {
    if (window.isMinimized()) window.restore();
    window.focus();
    if (file) void handlers.adopt(file).then((id) => window.webContents.send(pushes.openFile, id));
  });
}

/** The one place where messages from the page are received. */
function answerMessages(
  { ipcMain }: Electron,
  answer: (power: string, request: unknown) => Promise<Result<unknown, HostError>>,
  saveAnswered: (wasSaved: boolean) => void,
): void {
  for (const [power, channel] of Object.entries(channels).filter(([name]) => isPower(name)))
    ipcMain.handle(channel, async (event, ...words: unknown[]) => {
      if (!mayAsk(event))
        return failure({ kind: 'refused', reason: 'Only the page of the program may ask.' });
      if (words.length > 1) return failure({ kind: 'refused', reason: 'A request is one value.' });
      const result = await answer(power, words[0]);
      if (channel === channels.saveGarden) saveAnswered(result.ok);
      return result;
    });
}

function dialogsOf(dialog: Electron['dialog'], window: ElectronModule.BrowserWindow) {
  const placeFor = async (
    suggested: string,
    kinds: ElectronModule.FileFilter[],
    wanted?: string,
  ): Promise<string | null> => {
    for (let defaultPath = suggested; ;) {
      const { filePath } = await dialog.showSaveDialog(window, { defaultPath, filters: kinds });
      if (!filePath) return null;
      const whole = withEnding(filePath, wanted);
      // The dialog asked about replacing the name as typed. With our ending it may be another
      // file, so the dialog comes again with that name and asks about that one.
      if (whole === filePath || !existsSync(whole)) return whole;
      defaultPath = whole;
    }
  };
  return {
    async chooseFile() {
      const { filePaths } = await dialog.showOpenDialog(window, {
        properties: ['openFile'],
        filters,
      });
      return filePaths[0] ?? null;
    },
    choosePlace: (suggested: string) => placeFor(suggested, filters),
    chooseExportPlace: (suggested: string, exportEnding: ExportEnding) =>
      placeFor(
        suggested,
        [{ name: exportEnding.toUpperCase(), extensions: [exportEnding] }],
        `.${exportEnding}`,
      ),
  };
}

async function askToSave(
  dialog: Electron['dialog'],
  window: ElectronModule.BrowserWindow,
  name: string,
): Promise<'save' | 'discard' | 'cancel'> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'question',
    message: `Save changes to ${name || 'this garden'}?`,
    detail: 'Changes that are not saved are lost.',
    buttons: ['&Save', "&Don't save", 'Cancel'],
    normalizeAccessKeys: true,
    noLink: true,
    defaultId: 0,
    cancelId: 2,
  });
  return (['save', 'discard', 'cancel'] as const)[response] ?? 'cancel';
}
