export type Separator = ',' | ';' | '\t';

/** Columns of the widest table that is read. */
const mostCells = 400;

/**
 * The cells of one line. A cell may stand in double quotes, a quote in it is doubled; blanks
 * around a cell do not count. Linear in the line.
 */
export function cellsOf(line: string, separator: Separator): string[] {
  if (!line.includes('"')) return line.split(separator, mostCells).map((cell) => cell.trim());
  const cells: string[] = [];
  let cell = '';
  let isQuoted = false;
  for (let at = 0; at < line.length && cells.length < mostCells; at++) {
    const sign = line[at];
    if (isQuoted) {
      if (sign !== '"') cell += sign;
      else if (line[at + 1] === '"') {
        cell += '"';
        at++;
      } else isQuoted = false;
    } else if (sign === '"' && cell.trim() === '') {
      isQuoted = true;
      cell = '';
    } else if (sign === separator) {
      cells.push(cell.trim());
      cell = '';
    } else cell += sign;
  }
  if (cells.length < mostCells) cells.push(cell.trim());
  return cells;
}

const separators: readonly Separator[] = ['\t', ';', ','];

/**
 * The separator that cuts the lines into most equal rows: the count of cells that most lines
 * share, at least two. Semicolon and tab win over a comma, which may be a decimal mark.
 */
export function separatorOf(lines: readonly string[]): Separator | null {
  let best: { separator: Separator; worth: number } | null = null;
  for (const separator of separators) {
    const counts = new Map<number, number>();
    for (const line of lines) {
      const { length } = cellsOf(line, separator);
      counts.set(length, (counts.get(length) ?? 0) + 1);
    }
    const [cells, share] = [...counts].sort((one, other) => other[1] - one[1])[0] ?? [0, 0];
    if (cells < 2) continue;
    const worth = share + (separator === ',' ? 0 : 0.5);
    if (!best || worth > best.worth) best = { separator, worth };
  }
  return best?.separator ?? null;
}

export type CellNumber =
  | { readonly kind: 'number'; readonly value: number; readonly decimals: number }
  | { readonly kind: 'trace' }
  | { readonly kind: 'missing' }
  | { readonly kind: 'no number' };

const missingWords = new Set(['', '-', '--', '.', 'm', 'na', 'n/a', 'nan', 'null', 'none']);
const missingNumbers = new Set([-9999, -999, -999.9, -99999]);
const numberPattern = /^[-+\u2212]?(?:\d{1,9}(?:[.,]\d{0,9})?|[.,]\d{1,9})$/;

/**
 * A measured value. Empty, "NA", "M", -9999 and the like are missing, never nought; "T" is a
 * trace, too little to measure.
 */
export function numberOf(cell: string, decimalMark: '.' | ','): CellNumber {
  const text = cell.trim();
  if (missingWords.has(text.toLowerCase())) return { kind: 'missing' };
  if (/^(?:t|trace)$/i.test(text)) return { kind: 'trace' };
  if (!numberPattern.test(text)) return { kind: 'no number' };
  if (text.includes(decimalMark === '.' ? ',' : '.')) return { kind: 'no number' };
  const plain = text.replace('\u2212', '-').replace(',', '.');
  const value = Number(plain);
  if (!Number.isFinite(value)) return { kind: 'no number' };
  if (missingNumbers.has(value)) return { kind: 'missing' };
  const point = plain.indexOf('.');
  return { kind: 'number', value, decimals: point < 0 ? 0 : plain.length - point - 1 };
}
