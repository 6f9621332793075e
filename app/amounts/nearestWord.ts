/** Slips between two words: letters left out, put in, changed, or two changed about (Damerau). */
export function slips(one: string, other: string): number {
  let older: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row++) {
    const line = [row];
    for (let column = 1; column <= other.length; column++) {
      const same = one[row - 1] === other[column - 1];
      let least = Math.min(
        (last[column] ?? 0) + 1,
        (line[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (row > 1 && column > 1 && swapped) least = Math.min(least, (older[column - 2] ?? 0) + 1);
      line.push(least);
    }
    older = last;
    last = line;
  }
  return last[other.length] ?? one.length;
}

/** The word of the list that was probably meant, the earlier of equals; null when none is near. */
export function nearestWord(word: string, list: readonly string[]): string | null {
  const wanted = word.toLowerCase();
  const allowance = wanted.length <= 2 ? 1 : wanted.length <= 5 ? 1 : 2;
  let best: string | null = null;
  let fewest = allowance + 1;
  for (const candidate of list) {
    if (Math.abs(candidate.length - wanted.length) > allowance) continue;
    const count = slips(wanted, candidate.toLowerCase());
    if (count < fewest && count < candidate.length) {
      fewest = count;
      best = candidate;
    }
  }
  return best;
}
