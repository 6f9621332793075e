/** A Markdown table; the first column is words, the others are numbers. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const rule = head.map((_, column) => (column === 0 ? '---' : '--:'));
  return [line(head), line(rule), ...rows.map(line)].join('\n');
}

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((one, other) => one - other);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

/** Whether a number is within what is aimed at, within the limit, or over it. */
export const verdictOf = (value: number, limit: number, aim = limit): string =>
  value <= aim ? 'met' : value <= limit ? 'within the limit' : '**missed**';
