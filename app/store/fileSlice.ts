import { failure, success, type Result } from '../core/result';
import type { ParseFailure } from '../document/failures';
import { parseGarden } from '../document/parse';
import type { Garden } from '../document/schema';
import { serializeGarden } from '../document/serialize';
import type { HostError } from '../host/contract';
import type { FileMessage, FileSlice } from './contract';
import type { GardenDoor, Read, Write } from './gardenSlice';
import {
  draftLatestMilliseconds,
  draftPauseMilliseconds,
  todayEveryMilliseconds,
  type Surroundings,
} from './surroundings';

export interface FileDoor {
  readonly slice: FileSlice;
  /** the garden on screen is another one than before: keep it within seconds */
  gardenChanged(): void;
  /** a garden that comes from no file: the sample or one's own */
  begin(garden: Garden, name: string, isWorthKeeping: boolean): void;
}

type Failing = Extract<FileMessage, { kind: 'failed' }>['doing'];

/** Where the garden lives: opening, saving, and the work in hand that is kept outside the document. */
export function fileDoor(
  read: Read,
  write: Write,
  { host, later }: Surroundings,
  garden: GardenDoor,
): FileDoor {
  const tell = (message: FileMessage): void => write({ message });
  const tellFailure = (doing: Failing, error: HostError): void => {
    if (error.kind !== 'cancelled') tell({ kind: 'failed', doing, error });
  };

  /** The text of the file: the units shown are written along, though they are no change of the garden. */
  const textOf = (whole: Garden): string => {
    const { shownUnits } = read();
    return serializeGarden({ ...whole, garden: { ...whole.garden, shownUnits } });
  };

  // ---- kept work. Requests go one after another, so that an old text never lands on a newer one.
  let requests: Promise<unknown> = Promise.resolve();
  let callOff: (() => void) | null = null;
  let latestCallOff: (() => void) | null = null;

  const inTurn = <Value>(request: () => Promise<Value>): Promise<Value> => {
    const next = requests.then(request);
    requests = next.catch(() => undefined);
    return next;
  };
  const callOffKeeping = (): void => {
    callOff?.();
    latestCallOff?.();
    callOff = latestCallOff = null;
  };
  const keep = async (): Promise<void> => {
    callOffKeeping();
    await inTurn(async () => {
      const { garden: whole, fileId: id, fileName: name, unsaved } = read();
      if (!whole || !unsaved) return;
      const kept = await host.keepDraft({ id, name, text: textOf(whole) });
      if (!kept.ok) {
        write({ draft: 'failed' });
        tellFailure('keep-draft', kept.error);
      } else if (read().garden === whole) write({ draft: 'kept' });
    });
  };
  const discard = async (): Promise<void> => {
    callOffKeeping();
    write({ draft: 'none' });
    await inTurn(() => host.discardDraft());
  };
  const keepSoon = (): void => {
    write({ draft: 'waiting' });
    callOff?.();
    callOff = later(draftPauseMilliseconds, () => void keep());
    latestCallOff ??= later(draftLatestMilliseconds, () => void keep());
  };

  // ---- opening
  const show = (
    opened: Garden | null,
    file: { id: string | null; name: string; isSaved: boolean },
    message: FileMessage | null,
  ): void => {
    callOffKeeping();
    garden.replace(opened, file.isSaved, {
      fileId: file.id,
      fileName: file.name,
      openings: read().openings + 1,
      message,
      draft: 'none',
      place: 'this week',
      openBedId: null,
      dialog: null,
      bedResults: {},
      preview: null,
      history: null,
      shownUnits: opened?.garden.shownUnits ?? read().shownUnits,
    });
  };

  const openText = (text: string, name: string, id: string | null): Result<null, ParseFailure> => {
    const parsed = parseGarden(text);
    if (!parsed.ok) {
      tell({ kind: 'refused', name, failure: parsed.error });
      return failure(parsed.error);
    }
    show(parsed.value, { id, name, isSaved: id !== null }, { kind: 'opened', name });
    return success(null);
  };

  const refreshRecent = async (): Promise<void> => {
    const recent = await host.recentGardens();
    if (recent.ok) write({ recent: recent.value });
    else tellFailure('recent', recent.error);
  };

  // ---- saving
  let saving: Promise<unknown> = Promise.resolve();
  const saveTo = (
    id: string | null,
    name: string,
    replace: boolean,
  ): Promise<Result<{ readonly name: string }, HostError>> => {
    const next = saving.then(async (): Promise<Result<{ readonly name: string }, HostError>> => {
      const { garden: sent, openings: openingsBefore } = read();
      if (!sent) return failure({ kind: 'refused', reason: 'no garden is open' });
      write({ saving: true });
      const answer = await host
        .saveGarden({ id, name, text: textOf(sent), replace })
        .finally(() => write({ saving: false }));
      if (!answer.ok) {
        // a name that will not do is said beside the field it was typed in
        const { kind } = answer.error;
        if (kind !== 'name-taken' && kind !== 'bad-name') tellFailure('save', answer.error);
        return answer;
      }
      // Another garden may have been opened while the disk was busy.
      if (read().openings === openingsBefore) {
        write({ fileId: answer.value.id, fileName: answer.value.name });
        garden.wasSaved(sent);
      }
      tell({ kind: 'saved', name: answer.value.name });
      if (!read().unsaved) await discard();
      await refreshRecent();
      return success({ name: answer.value.name });
    });
    saving = next.catch(() => undefined);
    return next;
  };

  const askAbout = async (): Promise<void> => {
    const about = await host.about();
    if (about.ok) write({ about: about.value });
    else tellFailure('about', about.error);
  };
  const watchToday = (): void => {
    later(todayEveryMilliseconds, () => {
      watchToday();
      void askAbout();
    });
  };

  const restore = async (): Promise<void> => {
    const restored = await host.restoreDraft();
    if (!restored.ok) return tellFailure('restore', restored.error);
    const { value: draft } = restored;
    if (!draft) return;
    const parsed = parseGarden(draft.text);
    if (!parsed.ok) return tell({ kind: 'draft-refused', name: draft.name, failure: parsed.error });
    const { id, name, savedAt } = draft;
    show(parsed.value, { id, name, isSaved: false }, { kind: 'restored', name, savedAt });
    write({ draft: 'kept' });
  };

  const slice: FileSlice = {
    fileId: null,
    fileName: '',
    unsaved: false,
    saving: false,
    draft: 'none',
    recent: [],
    about: null,
    message: null,
    started: false,
    openings: 0,

    start: async () => {
      await Promise.all([askAbout(), restore(), refreshRecent()]);
      write({ started: true });
      watchToday();
    },

    openFile: async (id) => {
      const opened = await host.openGarden({ id });
      if (!opened.ok) {
        tellFailure('open', opened.error);
        return opened;
      }
      const result = openText(opened.value.text, opened.value.name, opened.value.id);
      if (result.ok) {
        await discard();
        await refreshRecent();
      }
      return result;
    },

    openText: (text, name) => openText(text, name, null),

    save: async () => {
      const { fileId, fileName, about } = read();
      if (fileId === null && !about?.native) return failure({ kind: 'cancelled' });
      return saveTo(fileId, fileName, false);
    },

    saveAs: (name, replace) => saveTo(null, name, replace),
    exportFile: (request) => host.exportFile(request),
    askWeather: (request) => host.askWeather(request),
    callOffWeather: () => host.callOffWeather(),
    forgetWeather: () => host.forgetWeather(),
    chooseColourScheme: (request) => host.chooseColourScheme(request),

    closeGarden: async () => {
      show(null, { id: null, name: '', isSaved: true }, null);
      await discard();
      await refreshRecent();
    },

    refreshRecent,
    dismissMessage: () => write({ message: null }),
    keepDraftNow: keep,
  };

  return {
    slice,
    gardenChanged: () => {
      const { garden: whole, unsaved, draft } = read();
      if (whole && unsaved) keepSoon();
      else if (draft !== 'none') void discard();
    },
    begin: (begun, name, isWorthKeeping) => {
      show(begun, { id: null, name, isSaved: !isWorthKeeping }, null);
    },
  };
}
