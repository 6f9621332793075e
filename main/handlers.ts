import { access, mkdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { dayFromParts, textFromDay } from '../app/core/days';
import { failure, success, type Result } from '../app/core/result';
import type {
  About,
  ExportEnding,
  Host,
  HostError,
  ColourScheme,
  WindowDescribed,
} from '../app/host/contract';
import { createDrafts } from './drafts';
import { cleanName, ending, nameOfExport, nameOfPath } from './fileNames';
import { readWhole, writeBytes, writeWhole } from './files';
import { hostErrorOf } from './hostErrors';
import { createKnownGardens } from './knownGardens';
import { keepColourScheme } from './colourScheme';
import { isPower, requests, textLimitBytes } from './requests';
import { createWeatherDesk } from './weather/weatherDesk';
import { weatherService, type AskWeather } from './weather/weatherService';

/** The few things in which Electron and the browser window differ. */
export interface Shell {
  readonly version: string;
  /** where gardens go unless the person says otherwise */
  readonly gardensFolder: string;
  /** the program's own keeping: recent list, drafts */
  readonly dataFolder: string;
  /** the system's dialogs, each null when cancelled; null in a browser window, whose page has its own */
  readonly dialogs: null | {
    chooseFile(): Promise<string | null>;
    /** `suggested` is a whole path; the answer ends as garden files do, and replacing was agreed to */
    choosePlace(suggested: string): Promise<string | null>;
    /** the same for a file that ends otherwise */
    chooseExportPlace(suggested: string, ending: ExportEnding): Promise<string | null>;
  };
  /** who brings the weather of a place; the service itself unless a test says another */
  readonly askWeather?: AskWeather;
  describe(window: WindowDescribed): void;
  /** what the shell itself draws takes it at once: dialogs, menu, frame */
  wear(scheme: ColourScheme): void;
  /** told of every garden opened or saved, for the system's own list of recent files */
  used(path: string): void;
}

export interface Handlers {
  /** Never throws: a request of the wrong shape and an unknown power are answered with `refused`. */
  answer(power: string, request: unknown): Promise<Result<unknown, HostError>>;
  /** Gives a file that the system handed over an id for the page to open. */
  adopt(path: string): Promise<string>;
  /** Resolves when nothing is being read or written; a question to the weather service is given up. */
  settled(): Promise<void>;
}

const refused = (reason: string) => failure<HostError>({ kind: 'refused', reason });

export function createHandlers(shell: Shell): Handlers {
  const { gardensFolder, dataFolder, dialogs } = shell;
  const known = createKnownGardens(dataFolder);
  const drafts = createDrafts(dataFolder);
  const weather = createWeatherDesk(dataFolder, shell.askWeather ?? weatherService(), () =>
    todayHere(new Date()),
  );
  const inTurn = createTurns();
  let ready: Promise<unknown> | null = null;
  const prepared = () => (ready ??= mkdir(dataFolder, { recursive: true, mode: 0o700 }));

  async function placeFor(name: string, replace: boolean): Promise<Result<string, HostError>> {
    const clean = cleanName(name);
    if (dialogs) {
      await mkdir(gardensFolder, { recursive: true }).catch(() => undefined);
      const chosen = await dialogs.choosePlace(
        join(gardensFolder, `${clean ?? 'Garden'}${ending}`),
      );
      return chosen ? success(chosen) : failure({ kind: 'cancelled' });
    }
    if (!clean) return failure({ kind: 'bad-name', name });
    const path = join(gardensFolder, clean + ending);
    if (!replace && (await exists(path))) return failure({ kind: 'name-taken', name: clean });
    return success(path);
  }

  async function exportPlace(
    name: string,
    exportEnding: ExportEnding,
    replace: boolean,
  ): Promise<Result<string, HostError>> {
    const clean = cleanName(name);
    const whole = `${clean ?? 'Drawing'}.${exportEnding}`;
    if (dialogs) {
      await mkdir(gardensFolder, { recursive: true }).catch(() => undefined);
      const chosen = await dialogs.chooseExportPlace(join(gardensFolder, whole), exportEnding);
      return chosen ? success(chosen) : failure({ kind: 'cancelled' });
    }
    if (!clean) return failure({ kind: 'bad-name', name });
    const path = join(gardensFolder, whole);
    if (!replace && (await exists(path))) return failure({ kind: 'name-taken', name: clean });
    return success(path);
  }

  const host: Host = {
    async about() {
      const about: About = {
        native: dialogs !== null,
        version: shell.version,
        folder: gardensFolder,
        today: todayHere(new Date()),
      };
      return success(about);
    },
    recentGardens: async () => success(await known.recent()),
    async openGarden({ id }) {
      const path = id ? await known.pathOf(id) : ((await dialogs?.chooseFile()) ?? null);
      if (!path) return failure(id ? { kind: 'not-found', name: '' } : { kind: 'cancelled' });
      return inTurn(async () => {
        const name = nameOfPath(path);
        const read = await readWhole(path, name, textLimitBytes);
        if (!read.ok) return read;
        shell.used(path);
        const given = await known.remember(path, read.value.savedAt);
        return success({ id: given, name, text: read.value.text });
      });
    },
    async saveGarden({ id, name, text, replace }) {
      if (Buffer.byteLength(text) > textLimitBytes) return tooLarge(name);
      const listed = id ? await known.pathOf(id) : null;
      if (id && !listed) return failure({ kind: 'not-found', name });
      const place = listed ? success(listed) : await placeFor(name, replace);
      if (!place.ok) return place;
      const path = place.value;
      return inTurn(async () => {
        if (dirname(path) === gardensFolder) await mkdir(gardensFolder, { recursive: true });
        const written = await writeWhole(path, text, nameOfPath(path));
        if (!written.ok) return written;
        shell.used(path);
        return success({ id: await known.remember(path, Date.now()), name: nameOfPath(path) });
      });
    },
    async exportFile({ name, ending: exportEnding, base64, replace }) {
      if (base64.length > textLimitBytes) return tooLarge(name);
      const place = await exportPlace(name, exportEnding, replace);
      if (!place.ok) return place;
      const path = place.value;
      return inTurn(async () => {
        const isOurs = dirname(path) === gardensFolder;
        if (isOurs) await mkdir(gardensFolder, { recursive: true });
        const written = await writeBytes(path, Buffer.from(base64, 'base64'), nameOfExport(path));
        if (!written.ok) return written;
        return success({ name: nameOfExport(path), folder: isOurs ? gardensFolder : '' });
      });
    },
    async keepDraft(draft) {
      if (Buffer.byteLength(draft.text) > textLimitBytes) return tooLarge(draft.name);
      return inTurn(() => drafts.keep(draft));
    },
    restoreDraft: () => inTurn(async () => success(await drafts.restore())),
    discardDraft: () =>
      inTurn(async () => {
        await drafts.discard();
        return success(null);
      }),
    askWeather: (question) => weather.ask(question),
    async callOffWeather() {
      weather.callOff();
      return success(null);
    },
    forgetWeather: () => weather.forget(),
    chooseColourScheme({ scheme }) {
      shell.wear(scheme);
      return inTurn(() => keepColourScheme(dataFolder, scheme));
    },
    async describeWindow(window) {
      shell.describe(window);
      return success(null);
    },
  };

  return {
    async answer(power, request) {
      if (!isPower(power)) return refused('There is no such request.');
      const parsed = requests[power].safeParse(request ?? null);
      if (!parsed.success) return refused(`The request "${power}" has an unexpected shape.`);
      try {
        await prepared();
        const ask = host[power] as (checked: unknown) => Promise<Result<unknown, HostError>>;
        return await ask(parsed.data);
      } catch (error) {
        ready = null;
        return failure(hostErrorOf(error, nameIn(parsed.data)));
      }
    },
    adopt: (path) => known.adopt(path),
    settled() {
      weather.callOff();
      return inTurn(async () => undefined);
    },
  };
}

const tooLarge = (name: string) =>
  failure<HostError>({ kind: 'too-large', name, limitBytes: textLimitBytes });

const nameIn = (request: unknown): string =>
  typeof request === 'object' && request !== null && 'name' in request ? String(request.name) : '';

/** One change at a time: two saves in flight must not mix up the recent list. Dialogs wait outside. */
function createTurns(): <Value>(task: () => Promise<Value>) => Promise<Value> {
  let last: Promise<unknown> = Promise.resolve();
  return (task) => {
    const answer = last.then(task);
    last = answer.catch(() => undefined);
    return answer;
  };
}

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/** The civil day of this computer's clock and zone. */
export const todayHere = (now: Date): string =>
  textFromDay(dayFromParts(now.getFullYear(), now.getMonth() + 1, now.getDate()));
