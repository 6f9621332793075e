import { basename, extname } from 'node:path';

/** The ending of garden files. */
export const ending = '.mowings';

/** Names that Windows keeps for devices, whatever their ending. */
const reserved = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\..*)?$/i;
/** A file name may have 255 bytes on common systems; the rest is room for the ending. */
const longestBytes = 200;

/**
 * A name as a person types it, turned into one that every system takes: no path, no signs that a
 * system forbids, nothing invisible, not too long.
 *
 * @returns the name without the ending, or null when nothing usable is left
 */
export function cleanName(typed: string): string | null {
  const signs = typed
    .normalize('NFC')
    // Control signs, and those that turn the direction of writing and can disguise an ending.
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '')
    .replace(/[<>:"/\\|?*]/g, '-');
  const bare = trimmed(withoutEnding(signs));
  const short = trimmed(cutToBytes(bare, longestBytes));
  if (short.replaceAll('-', '') === '') return null;
  return reserved.test(short) ? `${short}-` : short;
}

/** What a garden is called whose file has this path. */
export const nameOfPath = (path: string): string => withoutEnding(basename(path));

/** What a file that is no garden is called, its ending included. */
export const nameOfExport = (path: string): string => basename(path);

/** The path with an ending, that of garden files if none is named, added only where it is missing. */
export const withEnding = (path: string, wanted: string = ending): string =>
  extname(path).toLowerCase() === wanted ? path : path + wanted;

const withoutEnding = (name: string): string =>
  name.toLowerCase().endsWith(ending) ? name.slice(0, -ending.length) : name;

/** Windows drops dots and spaces at the end; a dot in front hides a file elsewhere. */
const trimmed = (name: string): string => name.replace(/^[\s.]+|[\s.]+$/gu, '');

function cutToBytes(text: string, limit: number): string {
  let bytes = 0;
  let kept = '';
  for (const sign of text) {
    bytes += Buffer.byteLength(sign);
    if (bytes > limit) break;
    kept += sign;
  }
  return kept;
}
