import { basisOf } from '../../tables/thresholds';
import type { Row } from '../../tables/shapes';
import { shortSource } from '../../tables/sources';
import type { RowId } from '../../core/season/limits';
import { rowUnit } from '../../words/rowUnit';
import { sourceLine } from '../../words/sourceLine';

const plain = (value: number): string => String(Number(value.toPrecision(2)));

/** A cited row in one line: what it is, its likely value with both ends, source and standing. */
export function rowSource(name: string, row: Row): string {
  const ends = row.low === row.high ? '' : ` (${plain(row.low)} to ${plain(row.high)})`;
  return `${name}, ${plain(row.typical)}${ends} ${rowUnit(row.unit)}: ${sourceLine({ ...row, source: shortSource(row.source), judged: false })}`;
}

/** Where a line of the table of thresholds comes from. */
export const lineSource = (name: string, row: RowId): string =>
  `${name}: ${sourceLine(basisOf({ row, weight: 'caution' }))}`;
