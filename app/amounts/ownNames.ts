import type { KnownContainer, KnownLawn, ReadingContext } from './amount';
import { readerWords } from './readerWords';
import { unitFor } from './unitWords';

/** What one private character in the text stands for. */
export type OwnName =
  | { readonly kind: 'container'; readonly container: KnownContainer }
  | { readonly kind: 'lawn'; readonly lawn: KnownLawn }
  | { readonly kind: 'place'; readonly placeId: string };

export interface Marked {
  readonly text: string;
  /** by character: U+E000 is the first */
  readonly names: readonly OwnName[];
}

const firstMark = 0xe000;
export const isMark = (character: string): boolean => /^[\ue000-\uf8ff]$/u.test(character);
export const nameAt = (character: string, names: readonly OwnName[]): OwnName | undefined =>
  names[character.charCodeAt(0) - firstMark];

/** "tomato" is also said as "tomatoes", "Far bed" as "Far". */
function waysOfSaying(name: string): string[] {
  const said = plain(name);
  const short = said.replace(/ (?:bed|lawn)$/, '');
  const one = short.replace(/(?<=[^s]{3})e?s$/, '');
  const many = short.replace(/y$/, 'ie');
  return [...new Set([said, short, one, `${short}s`, `${short}es`, `${many}s`])];
}

/** A barrow is a wheelbarrow, and what it carries a barrowload. */
function otherWords(said: string): string[] {
  const other = said.includes('wheelbarrow')
    ? said.replace('wheelbarrow', 'barrow')
    : said.replace(/\bbarrow/, 'wheelbarrow');
  return other === said ? [] : [other, ...loads(other), ...loads(said)];
}
const loads = (said: string): string[] => [said.replace(/barrow(s?)$/, 'barrowload$1')];

const plain = (name: string): string =>
  name.normalize('NFC').toLowerCase().replace(/[‘’]/g, "'").replace(/\s+/g, ' ').trim();
const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');

const afterPreposition = '(?<=\\b(?:on|onto|from|off|under|bed|lawn) (?:the )?)';
const isPlainWord = (said: string): boolean =>
  said.length < 3 ||
  /^[\d.,/ ]+$/.test(said) ||
  unitFor(said) !== undefined ||
  readerWords.has(said);

/**
 * Puts one private character in place of each name of the gardener's own, longest name first, so
 * that a bag called "45 L bag", a lawn called "Back" or a bed called "Dry corner" is never taken
 * for a number or a word of the language.
 */
export function markOwnNames(text: string, context: ReadingContext): Marked {
  const wanted: { said: string; name: OwnName }[] = [];
  for (const container of context.containers)
    for (const said of [container.name, container.plural])
      wanted.push({ said: plain(said), name: { kind: 'container', container } });
  const own = new Set(wanted.map(({ said }) => said));
  for (const { said, name } of [...wanted])
    for (const other of otherWords(said)) if (!own.has(other)) wanted.push({ said: other, name });
  for (const lawn of context.lawns ?? []) {
    const said = plain(lawn.name).replace(/ lawn$/, '');
    wanted.push({ said: `${said} lawn`, name: { kind: 'lawn', lawn } });
    wanted.push({ said, name: { kind: 'lawn', lawn } });
  }
  for (const place of context.places ?? [])
    for (const name of place.names) {
      const entry: OwnName = { kind: 'place', placeId: place.id };
      for (const said of waysOfSaying(name)) {
        wanted.push({ said: `${said} bed`, name: entry });
        wanted.push({ said, name: entry });
      }
    }

  const names: OwnName[] = [];
  let marked = text;
  const longestFirst = wanted
    .filter((entry) => entry.said !== '')
    .sort((one, other) => other.said.length - one.said.length);
  for (const { said, name } of longestFirst) {
    if (!marked.includes(said)) continue;
    // a bed called "A" or a lawn called "2" is meant only where a place can stand
    const guard = name.kind !== 'container' && isPlainWord(said) ? afterPreposition : '(?<!\\p{L})';
    const pattern = new RegExp(`${guard}${escape(said)}(?![\\p{L}\\d])`, 'gu');
    const mark = String.fromCharCode(firstMark + names.length);
    const replaced = marked.replace(pattern, mark);
    if (replaced === marked) continue;
    marked = replaced;
    names.push(name);
  }
  return { text: marked, names };
}
