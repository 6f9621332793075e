/** Of all that there is no entry of. */
const none: readonly never[] = [];

/**
 * Finds the entries of a list that go under a word, in their order. Of a list that nobody can change
 * any more, as all are that the store holds, the entries are sorted once: every bed and every mowing
 * asks for its own at every edit, and a log of ten years would be read through a hundred times. Any
 * other list is read through.
 *
 * @param wordOf what an entry goes under; undefined where it goes under nothing
 */
export function sortedOnce<Entry extends object>(
  wordOf: (entry: Entry) => string | undefined,
): (list: readonly Entry[], word: string) => readonly Entry[] {
  const sorted = new WeakMap<readonly Entry[], ReadonlyMap<string, readonly Entry[]>>();
  const sort = (list: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> => {
    const words = new Map<string, Entry[]>();
    for (const entry of list) {
      const word = wordOf(entry);
      if (word === undefined) continue;
      const known = words.get(word);
      if (known) known.push(entry);
      else words.set(word, [entry]);
    }
    sorted.set(list, words);
    return words;
  };
  return (list, word) =>
    Object.isFrozen(list)
      ? ((sorted.get(list) ?? sort(list)).get(word) ?? none)
      : list.filter((entry) => wordOf(entry) === word);
}
