import { nearestWord } from '../../amounts/nearestWord';

/** What can be found by its words. */
export interface Named {
  readonly words: string;
  /** other words somebody may look for it by */
  readonly also: readonly string[];
}

export interface Matched<Thing> {
  readonly things: readonly Thing[];
  /** nothing begins as it was typed; these are near it */
  readonly isNear: boolean;
}

/** Words without capitals and accents. */
const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{Mark}/gu, '')
    .split(/[^\p{Letter}\p{Number}]+/u)
    .filter(Boolean);

/** Shorter words are near too many others. */
const shortestSlip = 4;

/** Places of a typed word among those of a name, less is better; null where it begins none. */
function placeOf(typed: string, own: readonly string[], also: readonly string[]): number | null {
  const at = own.findIndex((word) => word.startsWith(typed));
  // the first word of its own name, then any of its own, then what it is called otherwise
  if (at >= 0) return (at === 0 ? 0 : 1) + (own[at] === typed ? 0 : 0.5);
  return also.some((word) => word.startsWith(typed)) ? 3 : null;
}

/**
 * The things that every typed word begins a word of, best first: "lay ga" finds "Lay on Gate bed".
 * Where there is none, those whose words are a slip or two away. Of equals the earlier stays first;
 * nothing typed leaves all as they are.
 */
export function matchWords<Thing extends Named>(
  things: readonly Thing[],
  typed: string,
): Matched<Thing> {
  const wanted = wordsOf(typed);
  if (wanted.length === 0) return { things, isNear: false };
  const ranked = (parts: readonly string[]): readonly Thing[] =>
    things
      .flatMap((thing, order) => {
        const own = wordsOf(thing.words);
        const also = thing.also.flatMap(wordsOf);
        const places = parts.map((part) => placeOf(part, own, also));
        if (places.some((place) => place === null)) return [];
        return [{ thing, order, place: places.reduce<number>((sum, one) => sum + (one ?? 0), 0) }];
      })
      .sort((one, other) => one.place - other.place || one.order - other.order)
      .map(({ thing }) => thing);
  const begun = ranked(wanted);
  if (begun.length > 0) return { things: begun, isNear: false };
  const known = [
    ...new Set(things.flatMap(({ words, also }) => [words, ...also].flatMap(wordsOf))),
  ];
  const meant = wanted.map((word) => {
    if (known.some((one) => one.startsWith(word)) || word.length < shortestSlip) return word;
    return nearestWord(word, known) ?? word;
  });
  return { things: ranked(meant), isNear: true };
}
