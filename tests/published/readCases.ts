import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Cases {
  readonly header: string;
  readonly rows: readonly string[][];
}

/** The table beside a published test, as text: no number is read before the test says how. */
export function readCases(folder: string, file = 'cases.csv'): Cases {
  const [header = '', ...lines] = readFileSync(join(folder, file), 'utf8').trimEnd().split('\n');
  return { header, rows: lines.map((line) => line.split(',')) };
}

/** Half of what the last printed digit counts, with room for binary rounding of the tie. */
export function halfUnit(printed: string): number {
  const decimals = printed.includes('.') ? printed.length - printed.indexOf('.') - 1 : 0;
  return 0.5 * 10 ** -decimals + 1e-9;
}

/** How far a value is from a printed number, in halves of a unit of its last digit: 1 or less agrees. */
export const halfUnitsOff = (value: number, printed: string): number =>
  Math.abs(value - Number(printed)) / halfUnit(printed);
