// Records what the main process asks of Electron. It proves our side of each call, not Electron's.
import { EventEmitter } from 'node:events';
import type * as ElectronModule from 'electron';

export type Receiver = (event: unknown, ...words: unknown[]) => unknown;

/** An event as Electron passes it, with the address that the navigation events carry. */
export class DoubleEvent {
  defaultPrevented = false;
  constructor(readonly url = '') {}
  preventDefault() {
    this.defaultPrevented = true;
  }
}

export interface DoubleOptions {
  documents: string;
  userData: string;
  /** what loading the page does; nothing unless said */
  load?: (url: string) => Promise<void>;
  /** what the page receives */
  deliver?: (channel: string, word: unknown) => void;
  isOnlyInstance?: boolean;
}

export function electronDouble(options: DoubleOptions) {
  const seen = {
    windowOptions: [] as ElectronModule.BrowserWindowConstructorOptions[],
    windows: [] as DoubleWindow[],
    loaded: [] as string[],
    handlers: new Map<string, Receiver>(),
    schemes: [] as ElectronModule.CustomScheme[],
    page: undefined as undefined | ((request: Request) => Promise<Response> | Response),
    openHandler: undefined as undefined | ((details: { url: string }) => { action: string }),
    permissionRequest: undefined as
      undefined | ((contents: unknown, name: string, decide: (isGranted: boolean) => void) => void),
    permissionCheck: undefined as undefined | (() => boolean),
    devicePermission: undefined as undefined | (() => boolean),
    sent: [] as [string, unknown][],
    menu: [] as ElectronModule.MenuItemConstructorOptions[],
    titles: [] as string[],
    recentDocuments: [] as string[],
    theme: { themeSource: 'system' } as { themeSource: string },
    isSandboxed: false,
    hasQuit: false,
    lockData: undefined as unknown,
    contents: new EventEmitter(),
    session: new EventEmitter(),
    /** answers of the system's dialogs, in order; an empty list means cancelled */
    openAnswers: [] as string[],
    saveAnswers: [] as string[],
    messageAnswers: [] as number[],
    dialogs: [] as { kind: string; options: Record<string, unknown> }[],
    displays: [{ id: 1, workArea: { x: 0, y: 0, width: 1920, height: 1040 } }],
  };

  class DoubleWindow extends EventEmitter {
    readonly webContents = Object.assign(seen.contents, {
      setWindowOpenHandler: (handler: typeof seen.openHandler) => void (seen.openHandler = handler),
      send(channel: string, word: unknown) {
        seen.sent.push([channel, word]);
        options.deliver?.(channel, word);
      },
    });
    isClosed = false;
    isMinimised = false;
    isRaised = false;
    constructor(given: ElectronModule.BrowserWindowConstructorOptions) {
      super();
      seen.windowOptions.push(given);
      seen.windows.push(this);
      app.emit('web-contents-created', new DoubleEvent(), this.webContents);
    }
    async loadURL(url: string) {
      seen.loaded.push(url);
      await options.load?.(url);
    }
    close() {
      const event = new DoubleEvent();
      this.emit('close', event);
      if (!event.defaultPrevented) this.isClosed = true;
    }
    show() {}
    maximize() {}
    restore() {
      this.isMinimised = false;
    }
    focus() {
      this.isRaised = true;
    }
    isMinimized = () => this.isMinimised;
    isMaximized = () => false;
    getNormalBounds = () => ({ x: 20, y: 30, width: 1000, height: 700 });
    setTitle = (title: string) => void seen.titles.push(title);
    setDocumentEdited() {}
  }

  const app = Object.assign(new EventEmitter(), {
    name: 'Mowings',
    isPackaged: false,
    requestSingleInstanceLock(data: unknown) {
      seen.lockData = data;
      return options.isOnlyInstance ?? true;
    },
    enableSandbox: () => void (seen.isSandboxed = true),
    whenReady: async () => undefined,
    getPath: (name: 'documents' | 'userData') => options[name],
    getVersion: () => '0.0.0-test',
    addRecentDocument: (path: string) => void seen.recentDocuments.push(path),
    quit: () => void (seen.hasQuit = true),
  });
  const electron = {
    app,
    BrowserWindow: DoubleWindow,
    Menu: {
      buildFromTemplate: (template: typeof seen.menu) => template,
      setApplicationMenu: (menu: typeof seen.menu) => void (seen.menu = menu),
    },
    nativeTheme: seen.theme,
    screen: {
      getPrimaryDisplay: () => seen.displays[0],
      getAllDisplays: () => seen.displays,
    },
    dialog: {
      async showOpenDialog(_window: unknown, given: Record<string, unknown>) {
        seen.dialogs.push({ kind: 'open', options: given });
        return { filePaths: seen.openAnswers.splice(0, 1) };
      },
      async showSaveDialog(_window: unknown, given: Record<string, unknown>) {
        seen.dialogs.push({ kind: 'save', options: given });
        return { filePath: seen.saveAnswers.shift() ?? '' };
      },
      async showMessageBox(_window: unknown, given: Record<string, unknown>) {
        seen.dialogs.push({ kind: 'message', options: given });
        return { response: seen.messageAnswers.shift() ?? 2 };
      },
    },
    ipcMain: {
      handle: (channel: string, receiver: Receiver) => void seen.handlers.set(channel, receiver),
    },
    protocol: {
      registerSchemesAsPrivileged: (schemes: ElectronModule.CustomScheme[]) =>
        void seen.schemes.push(...schemes),
      handle: (_scheme: string, answer: typeof seen.page) => void (seen.page = answer),
    },
    session: {
      defaultSession: Object.assign(seen.session, {
        setPermissionRequestHandler: (handler: typeof seen.permissionRequest) =>
          void (seen.permissionRequest = handler),
        setPermissionCheckHandler: (handler: typeof seen.permissionCheck) =>
          void (seen.permissionCheck = handler),
        setDevicePermissionHandler: (handler: typeof seen.devicePermission) =>
          void (seen.devicePermission = handler),
      }),
    },
  };
  return { seen, app, electron: electron as unknown as typeof ElectronModule };
}

/** The frame that may ask: the top one of the program's own page. */
export const ownFrame = { parent: null, url: 'mowings://garden/' };
