/** What a byte order mark at the beginning says of the rest. */
function marked(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : null;
}

/**
 * The text of a file as spreadsheets save it: UTF-8; UTF-16 where a mark says so ("Unicode text");
 * what is no UTF-8 as the Windows code page of western Europe, so that ° and ² stay what they are.
 * Anything is text of some sort; whether it makes sense is for the reader to say.
 *
 * @source the WHATWG Encoding Standard names these as "utf-8", "utf-16le", "utf-16be", "windows-1252"
 */
export function textOfBytes(bytes: Uint8Array): string {
  const mark = marked(bytes);
  if (mark) return new TextDecoder(mark).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
