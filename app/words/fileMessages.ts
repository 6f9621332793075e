import { assertNever } from '../core/result';
import type { ParseFailure } from '../document/failures';
import type { HostError } from '../host/contract';

/** What was being done when the shell could not do it. */
export type HostTask =
  | 'open'
  | 'save'
  | 'write'
  | 'keep-draft'
  | 'restore'
  | 'recent'
  | 'about'
  | 'take away'
  | 'colour scheme';

const unchanged = 'Nothing was changed.';

/** What stands after a failure: which work is safe, and where. */
const safety: Readonly<Record<HostTask, string>> = {
  open: unchanged,
  save: 'Your work is still open here, and an earlier file is as it was.',
  write: 'The file is as it was.',
  'keep-draft': 'Your work is still open here; save it to a file soon.',
  restore: 'No file was changed.',
  recent: 'Your gardens are where they were; open one by its file.',
  about: unchanged,
  'take away': 'Nothing was written, and the garden is as it was.',
  'colour scheme': 'This window shows it, the next start will not.',
};

const task: Readonly<Record<HostTask, string>> = {
  open: 'The garden could not be opened',
  save: 'The garden was not saved',
  write: 'The garden was not written',
  'keep-draft': 'The safety copy could not be kept',
  restore: 'The kept work could not be brought back',
  recent: 'The list of recent gardens could not be read',
  about: 'The program could not learn about this computer',
  'take away': 'It was not written',
  'colour scheme': 'The choice of light or dark could not be kept',
};

/** Sizes for a person: "20 MB". */
function size(bytes: number): string {
  if (bytes >= 1_000_000) return `${Math.round(bytes / 1_000_000)} MB`;
  if (bytes >= 1000) return `${Math.round(bytes / 1000)} kB`;
  return `${bytes} bytes`;
}

function reasonOf(error: HostError): string {
  switch (error.kind) {
    case 'cancelled':
      return 'it was called off.';
    case 'not-found':
      return `“${error.name}” is no longer there. Look for it where it was last, or pick another file.`;
    case 'no-permission':
      return `this computer does not allow it for “${error.name}”. Choose another folder, or change its permissions.`;
    case 'disk-full':
      return `there is no room for “${error.name}”. Free some space, or save it on another disk.`;
    case 'read-only':
      return `“${error.name}” may only be read. Save under another name or in another folder.`;
    case 'too-large':
      return `“${error.name}” is larger than ${size(error.limitBytes)}, which no garden reaches. Check that it is the right file.`;
    case 'name-taken':
      return `there is already a garden called “${error.name}”. Choose another name, or say that it may be replaced.`;
    case 'bad-name':
      return `“${error.name}” cannot be the name of a file. Use letters, numbers and spaces.`;
    case 'refused':
      return `the request was turned down (${error.reason}). Close the program and start it again.`;
    case 'unreachable':
      return 'the part of the program that keeps files does not answer. Start the program again; the safety copy comes back.';
    case 'failed':
      return `this computer answered: ${error.reason}. Try again, or use another folder.`;
    default:
      return assertNever(error);
  }
}

/** What the shell could not do, why, what is safe and what to do next. */
export function hostSentence(doing: HostTask, error: HostError): string {
  if (error.kind === 'cancelled') return `${task[doing]}: ${reasonOf(error)} ${unchanged}`;
  return `${task[doing]}: ${reasonOf(error)} ${safety[doing]}`;
}

/** What is wrong at a place of a garden, in words: the same in its file and in the window. */
export const faultPhrase = (
  fault: Extract<ParseFailure, { kind: 'broken' | 'dangling' }>,
): string =>
  fault.kind === 'dangling' ? `it names a ${fault.what} that is not there` : fault.what;

/** Why a text was not taken as a garden, where the fault is, and that nothing was changed. */
export function parseSentence(failure: ParseFailure): string {
  switch (failure.kind) {
    case 'not-json':
      // a damaged garden begins with {"format" at least; a shopping list or a picture does not
      if (failure.line === 1 && failure.column < '{"format"'.length)
        return parseSentence({ kind: 'not-a-garden' });
      return `The file cannot be read from line ${failure.line}, character ${failure.column} on. It may be cut short or damaged; try a backup. ${unchanged}`;
    case 'not-a-garden':
      return `This file is not a garden of Mowings. Choose one whose name ends in .mowings. ${unchanged}`;
    case 'newer':
      return `This garden was saved by a newer Mowings (version ${failure.version} of the file; this one reads up to ${failure.known}). Update the program to open it. ${unchanged}`;
    case 'broken':
      return `The garden cannot be opened: at ${failure.where}: ${faultPhrase(failure)}. Mend it in a text editor, or try a backup. ${unchanged}`;
    case 'too-large':
      return `The file holds more than ${failure.limit.toLocaleString('en')} ${failure.unit}, which no garden reaches. Check that it is the right file. ${unchanged}`;
    case 'dangling':
      return `The garden cannot be opened: at ${failure.where}: ${faultPhrase(failure)}. Put that back or take this out in a text editor, or try a backup. ${unchanged}`;
    default:
      return assertNever(failure);
  }
}

/** The last thing worth telling about the file, as the store keeps it. */
export type FileNews =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'opened'; readonly name: string }
  | { readonly kind: 'restored'; readonly name: string }
  | { readonly kind: 'refused'; readonly name: string; readonly failure: ParseFailure }
  | { readonly kind: 'draft-refused'; readonly name: string; readonly failure: ParseFailure }
  | { readonly kind: 'failed'; readonly doing: HostTask; readonly error: HostError };

export function fileMessageSentence(news: FileNews): string {
  switch (news.kind) {
    case 'saved':
      return `Saved as “${news.name}”.`;
    case 'opened':
      return `Opened “${news.name}”.`;
    case 'restored':
      return `Your last unsaved work on “${news.name}” has been brought back. Save it to keep it.`;
    case 'refused':
      return `“${news.name}” was not opened. ${parseSentence(news.failure)}`;
    case 'draft-refused':
      return `The kept work on “${news.name}” could not be brought back. ${parseSentence(news.failure)}`;
    case 'failed':
      return hostSentence(news.doing, news.error);
    default:
      return assertNever(news);
  }
}
