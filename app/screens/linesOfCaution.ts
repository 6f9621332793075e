import type { LineId } from '../core/season/limits';
import type { Caution, Weight } from '../core/season/verdict';
import { limits } from '../tables/thresholds';

const weights: readonly Weight[] = ['note', 'caution', 'stop'];
const isLine = (row: string): row is LineId => row in limits.lines;

/**
 * The numbers past which a caution's rule is a note, a caution and a stop, lowest first. Where
 * several classes share a bed their lines were mixed and the table's would be others: then none.
 */
export function linesOfCaution(
  caution: Pick<Caution, 'row' | 'weight' | 'threshold'>,
): readonly { readonly weight: Weight; readonly at: number }[] {
  if (!isLine(caution.row)) return [];
  const lines = limits.lines[caution.row];
  const own = lines[caution.weight];
  if (caution.threshold === null || Math.abs(own - caution.threshold) > 1e-9) return [];
  return weights.flatMap((weight) =>
    Number.isFinite(lines[weight]) ? [{ weight, at: lines[weight] }] : [],
  );
}
