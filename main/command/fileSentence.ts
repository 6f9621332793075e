import { assertNever } from '../../app/core/result';
import { parseSentence } from '../../app/words/messages';
import type { FileFailure } from './gardenFile';

/** Why a garden could not be read, on one line. */
export function fileSentence(error: FileFailure): string {
  switch (error.kind) {
    case 'not-found':
      return `There is no file "${error.name}" there. Check the name and the folder.`;
    case 'a-folder':
      return `"${error.name}" is a folder. Name the garden's file, which ends in .mowings.`;
    case 'no-permission':
      return `This computer does not allow reading "${error.name}". Change its permissions, or copy it elsewhere.`;
    case 'unreadable':
      return `"${error.name}" could not be read (${error.reason}). Check the disk it is on, then try again.`;
    case 'refused':
      return `"${error.name}": ${parseSentence(error.why)}`;
    default:
      return assertNever(error);
  }
}
