import { existsSync, statSync } from 'node:fs';
import { resolve } from 'node:path';

/**
 * @typedef {'any' | 'browser' | 'none'} Wish  which window: whichever can be had, a browser's, or none
 * @typedef {{ wish: Wish, file: string | null }} Request
 */

/**
 * Reads what stands after `npm start --`.
 *
 * @param {string[]} words
 * @param {string} folder  the caller's folder, against which a file name is resolved
 * @returns {{ request: Request } | { complaint: string }}
 */
export function readArguments(words, folder) {
  /** @type {Request} */
  const request = { wish: 'any', file: null };
  for (const word of words) {
    if (word === '--no-open') request.wish = 'none';
    else if (word === '--browser') request.wish = 'browser';
    else if (word.startsWith('-'))
      return {
        complaint: `"${word}" is not an option here. Options are --no-open (no window, only the address) and --browser (a browser window even where Electron is installed).`,
      };
    else if (request.file !== null)
      return { complaint: 'Name one garden file only; a window holds one garden.' };
    else {
      request.file = resolve(folder, word);
      if (!existsSync(request.file) || !statSync(request.file).isFile())
        return { complaint: `There is no file ${request.file}. Check the name and the folder.` };
    }
  }
  return { request };
}
