import type { Result } from '../core/result';

/** A garden file as the shell hands it over. `id` is an opaque handle given out by the shell, never a path. */
export interface OpenedFile {
  readonly id: string;
  readonly name: string;
  readonly text: string;
}

export interface RecentFile {
  readonly id: string;
  readonly name: string;
  /** milliseconds since 1970, for ordering and "last saved" only */
  readonly savedAt: number;
  readonly missing: boolean;
}

/** What can go wrong outside the page. `path` is for showing to the person, never for sending back. */
export type HostError =
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'not-found'; readonly name: string }
  | { readonly kind: 'no-permission'; readonly name: string }
  | { readonly kind: 'disk-full'; readonly name: string }
  | { readonly kind: 'read-only'; readonly name: string }
  | { readonly kind: 'too-large'; readonly name: string; readonly limitBytes: number }
  | { readonly kind: 'name-taken'; readonly name: string }
  | { readonly kind: 'bad-name'; readonly name: string }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'unreachable' }
  | { readonly kind: 'failed'; readonly reason: string };

/** Who is asked for the weather of a place, and nobody else: shown before it is asked, and asked. */
export const weatherServiceHost = 'archive-api.open-meteo.com';

/** A place and the days wanted of it. Whole tenths of a degree: nothing finer can be said. */
export interface WeatherQuestion {
  readonly latitudeTenths: number;
  /** east of Greenwich */
  readonly longitudeTenths: number;
  /** YYYY-MM-DD, both included */
  readonly firstDay: string;
  readonly lastDay: string;
}

export interface WeatherGiven {
  /** as the service wrote it */
  readonly text: string;
  /** it is what the service said earlier on the same day; it was not asked again */
  readonly isKept: boolean;
}

/** Why the weather service gave nothing. */
export type WeatherTrouble =
  'no way' | 'slow' | 'turned down' | 'moved' | 'too much' | 'cut off' | 'no data' | 'asked today';
export type WeatherError =
  | HostError
  | { readonly kind: 'no-weather'; readonly why: WeatherTrouble; readonly detail: string };

export interface About {
  /** true in Electron: native dialogs; false in a browser window: the page's own dialogs */
  readonly native: boolean;
  readonly version: string;
  /** where gardens go unless the person says otherwise, to be shown */
  readonly folder: string;
  /** the computer's civil day, YYYY-MM-DD */
  readonly today: string;
}

export interface Restored {
  readonly text: string;
  readonly name: string;
  readonly id: string | null;
  readonly savedAt: number;
}

export interface WindowDescribed {
  readonly name: string;
  readonly unsaved: boolean;
  /** the step that undo would take back, and the one that redo would do again; null: none */
  readonly undo?: string | null | undefined;
  readonly redo?: string | null | undefined;
}

/** Light or dark, whatever the computer says; `system`: as the computer has it at the time. */
export const colourSchemes = ['system', 'light', 'dark'] as const;
export type ColourScheme = (typeof colourSchemes)[number];

/** What the window may write besides gardens, by the ending of the file. */
export const exportEndings = ['svg', 'png', 'csv'] as const;
export type ExportEnding = (typeof exportEndings)[number];

/** The short list of powers. Every request is one object or null; every answer is a Result. */
export interface Host {
  about(): Promise<Result<About, HostError>>;
  recentGardens(): Promise<Result<readonly RecentFile[], HostError>>;
  /** `id` null: ask the person (native dialog; in a browser window this answers `cancelled`, the page has its own picker) */
  openGarden(request: { id: string | null }): Promise<Result<OpenedFile, HostError>>;
  /** `id` null: save as. Native: a dialog asks where. Browser window: `name` in the gardens folder; `replace` must be true to overwrite. */
  saveGarden(request: {
    id: string | null;
    name: string;
    text: string;
    replace: boolean;
  }): Promise<Result<{ id: string; name: string }, HostError>>;
  /** keeps the work in hand outside the document, written whole within seconds */
  keepDraft(request: {
    id: string | null;
    name: string;
    text: string;
  }): Promise<Result<null, HostError>>;
  /** the kept work, if any survived */
  restoreDraft(): Promise<Result<Restored | null, HostError>>;
  discardDraft(): Promise<Result<null, HostError>>;
  /**
   * Writes something that was made of the garden (a drawing, a picture, a table) to a file of its own,
   * never to a garden's. Native: a dialog asks where. Browser window: `name` in the gardens folder;
   * `replace` must be true to overwrite. The answer's `folder` is to be shown; '' where the person chose it.
   */
  exportFile(request: {
    name: string;
    ending: ExportEnding;
    base64: string;
    replace: boolean;
  }): Promise<Result<{ name: string; folder: string }, HostError>>;
  /**
   * Asks the weather service for the days of a place, once a day at most. Only ever at the person's
   * own word: the program asks by itself nothing of anybody.
   */
  askWeather(request: WeatherQuestion): Promise<Result<WeatherGiven, WeatherError>>;
  /** gives up the question that is under way; its answer is then `cancelled` */
  callOffWeather(): Promise<Result<null, HostError>>;
  /** drops what is kept of the service's answers outside the garden */
  forgetWeather(): Promise<Result<null, WeatherError>>;
  /** keeps light or dark for every start from now on; the page's own tag says what is kept */
  chooseColourScheme(request: { scheme: ColourScheme }): Promise<Result<null, HostError>>;
  /** tells the shell what title, closing and menu show */
  describeWindow(request: WindowDescribed): Promise<Result<null, HostError>>;
}

/** One name per power, the same over Electron's IPC and over the loopback service. */
export const channels = {
  about: 'garden:about',
  recentGardens: 'garden:recent',
  openGarden: 'garden:open',
  saveGarden: 'garden:save',
  keepDraft: 'garden:keep-draft',
  restoreDraft: 'garden:restore-draft',
  discardDraft: 'garden:discard-draft',
  exportFile: 'garden:export',
  askWeather: 'weather:ask',
  callOffWeather: 'weather:call-off',
  forgetWeather: 'weather:forget',
  chooseColourScheme: 'window:choose-colour-scheme',
  describeWindow: 'garden:describe-window',
} as const satisfies Record<keyof Host, string>;

/** What the shell sends to the page of its own accord, over Electron's IPC. */
export const pushes = { menu: 'shell:menu', openFile: 'shell:open-file' } as const;

/** Menu commands the shell may send to the page (Electron's menu); the page binds the same keys itself elsewhere. */
export const menuCommands = [
  'new',
  'open',
  'save',
  'save-as',
  'print',
  'undo',
  'redo',
  'find',
  'colour-scheme',
  'tour',
  'about',
  'guide',
] as const;
export type MenuCommand = (typeof menuCommands)[number];

/** What the Electron preload exposes as `window.mowingsShell`, and nothing else. */
export interface ShellBridge {
  readonly host: Host;
  onMenu(listener: (command: MenuCommand) => void): void;
  /** A file named at start, double-clicked, or handed over by a second start: the id to open with `openGarden`. */
  onOpenFile(listener: (id: string) => void): void;
}
