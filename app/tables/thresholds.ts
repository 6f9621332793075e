import {
  type FactId,
  factIds,
  type LineId,
  lineIds,
  type Limits,
  type Lines,
  type NumberId,
  numberIds,
  type RowId,
  type ThresholdBasis,
  type ThresholdRow,
} from '../core/season/limits';
import type { Caution, Weight } from '../core/season/verdict';
import { bedRows } from './thresholds/bedRows';
import { layerRows } from './thresholds/layerRows';
import { sourceRows } from './thresholds/sourceRows';
import { stateRows } from './thresholds/stateRows';
import { shortSource, type SourceKey } from './sources';

/** The one table behind states and cautions: every line with its number, basis and remedy. */
export const thresholdRows: readonly ThresholdRow[] = [
  ...stateRows,
  ...layerRows,
  ...bedRows,
  ...sourceRows,
];

const byId = new Map<string, ThresholdRow>(thresholdRows.map((row) => [row.id, row]));

/** Row of a caution's `row` key; throws for a key that no row has. */
export function thresholdRow(id: string): ThresholdRow {
  const row = byId.get(id);
  if (!row) throw new Error(`No threshold row ${id}`);
  return row;
}

const linesOf = (id: LineId): Lines => {
  const row = thresholdRow(id);
  return {
    note: row.note?.typical ?? Infinity,
    caution: row.caution?.typical ?? Infinity,
    stop: row.stop?.typical ?? Infinity,
  };
};

const numberOf = (id: NumberId): number => {
  const cell = thresholdRow(id).number;
  if (!cell) throw new Error(`Threshold row ${id} has no number`);
  return cell.typical;
};

const weightOf = (id: FactId): Weight => {
  const { fact } = thresholdRow(id);
  if (!fact) throw new Error(`Threshold row ${id} has no weight`);
  return fact.weight;
};

const keyed = <Key extends RowId, Value>(
  ids: readonly Key[],
  of: (id: Key) => Value,
): Readonly<Record<Key, Value>> =>
  Object.fromEntries(ids.map((id) => [id, of(id)])) as Record<Key, Value>;

/** The bare numbers of the table, as core takes them. */
export const limits: Limits = {
  lines: keyed(lineIds, linesOf),
  numbers: keyed(numberIds, numberOf),
  facts: keyed(factIds, weightOf),
};

/** Where the line of a caution comes from, how it stands, and what to do instead. */
export function basisOf(caution: Pick<Caution, 'row' | 'weight'>): ThresholdBasis {
  const row = thresholdRow(caution.row);
  const basis =
    row[caution.weight] ?? row.number ?? row.fact ?? row.caution ?? row.note ?? row.stop;
  if (!basis) throw new Error(`Threshold row ${row.id} has nothing to stand on`);
  return {
    // Cells are made by functions that take no other key than one of the source table.
    source: shortSource(basis.source as SourceKey),
    place: basis.place,
    standing: basis.standing,
    judged: basis.judged,
    instead: row.instead,
  };
}
