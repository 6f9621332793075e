import type { Comparison } from './comparison';

/** A difference that is understood, and why it stays. */
export interface KnownDifference {
  readonly source: string;
  readonly place: string;
  readonly quantity: string;
  readonly printed: string;
  readonly reason: string;
}

const cellsOf = (line: string): string[] =>
  line
    .split('|')
    .slice(1, -1)
    .map((cell) => cell.trim());

/** Reads the table of `known.md`: source, place, quantity, printed, reason. */
export function readKnown(markdown: string): readonly KnownDifference[] {
  return markdown
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .map(cellsOf)
    .filter((cells) => cells.length === 5 && cells[0] !== 'source' && !/^-+$/.test(cells[0] ?? ''))
    .map(([source = '', place = '', quantity = '', printed = '', reason = '']) => ({
      source,
      place,
      quantity,
      printed,
      reason,
    }));
}

/** The known difference that speaks of a comparison. A line without a reason speaks of nothing. */
export const knownOf = (
  known: readonly KnownDifference[],
  { source, place, quantity, printed }: Comparison,
): KnownDifference | undefined =>
  known.find(
    (line) =>
      line.source === source &&
      line.place === place &&
      line.quantity === quantity &&
      line.printed === printed &&
      line.reason !== '',
  );
