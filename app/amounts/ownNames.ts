import type { KnownContainer, KnownLawn, ReadingContext } from './amount';

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

const plain = (name: string): string =>
  name.normalize('NFC').toLowerCase().replace(/[‘’]/g, "'").replace(/\s+/g, ' ').trim();
const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');

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
  for (const lawn of context.lawns ?? []) {
    const said = plain(lawn.name).replace(/ lawn$/, '');
    wanted.push({ said, name: { kind: 'lawn', lawn } });
    wanted.push({ said: `${said} lawn`, name: { kind: 'lawn', lawn } });
  }
  for (const place of context.places ?? [])
    for (const said of place.names)
      wanted.push({ said: plain(said), name: { kind: 'place', placeId: place.id } });

  const names: OwnName[] = [];
  let marked = text;
  const longestFirst = wanted
    .filter((entry) => entry.said !== '')
    .sort((one, other) => other.said.length - one.said.length);
  for (const { said, name } of longestFirst) {
    const pattern = new RegExp(`(?<!\\p{L})${escape(said)}(?![\\p{L}\\d])`, 'gu');
    const mark = String.fromCharCode(firstMark + names.length);
    const replaced = marked.replace(pattern, mark);
    if (replaced === marked) continue;
    marked = replaced;
    names.push(name);
  }
  return { text: marked, names };
}
