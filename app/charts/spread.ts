/**
 * Moves labels apart so that no two stand closer than `gap`, keeping their order and staying
 * between `low` and `high` as long as they fit; each stays as near its own place as its
 * neighbours let it.
 *
 * @param wanted places in ascending order
 * @returns places in ascending order, at least `gap` apart; when they cannot fit they start at `low` and run past `high`
 */
export function spread(
  wanted: readonly number[],
  gap: number,
  low: number,
  high: number,
): readonly number[] {
  // runs of touching labels move as one block around the middle of what they want
  interface Block {
    readonly count: number;
    readonly sum: number;
    readonly top: number;
  }
  const room = (count: number) => (count - 1) * gap;
  const placed = (count: number, sum: number): Block => {
    const middle = sum / count;
    const top = Math.max(low, Math.min(middle - room(count) / 2, high - room(count)));
    return { count, sum, top };
  };
  const blocks: Block[] = [];
  for (const place of wanted) {
    let block = placed(1, place);
    for (;;) {
      const last = blocks.at(-1);
      if (last === undefined || last.top + room(last.count) + gap <= block.top) break;
      blocks.pop();
      block = placed(last.count + block.count, last.sum + block.sum);
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) =>
    Array.from({ length: block.count }, (_value, index) => block.top + index * gap),
  );
}
