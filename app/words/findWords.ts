/** What is told under the line one types in to find something. */
export function foundSentence(found: {
  /** how many are shown, and how many there are */
  readonly count: number;
  readonly all: number;
  readonly typed: string;
  /** none begins as it was typed; these are near it */
  readonly isNear: boolean;
}): string {
  const { count, all, typed, isNear } = found;
  const words = typed.trim();
  if (words === '') return 'Type the first letters of a word or two, or go along the list.';
  if (count === 0) return `Nothing is called “${words}”. Try another word for it.`;
  if (isNear)
    return `Nothing is called “${words}”. Near it: ${count === 1 ? 'one' : String(count)}.`;
  if (all > count) return `The first ${String(count)} of ${String(all)}. Type more letters.`;
  return count === 1 ? 'One found.' : `${String(count)} found.`;
}
