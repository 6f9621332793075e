import type { RowId } from '../../../app/core/season/limits';
import type { Weight } from '../../../app/core/season/verdict';
import type { Asked, Told } from './asked';

/** Two gardens that differ by one typed value: one past a line, one just within it. */
export interface Pair {
  /** what is typed */
  readonly typed: string;
  readonly past: Asked;
  readonly within: Asked;
  /** the weight that is reached; of rows without one null */
  readonly weight: Weight | null;
  /** what is past the line; a caution of the row with that weight unless said otherwise */
  readonly sees: ((told: Told) => boolean) | null;
}

/** @param of the garden by what is typed in it */
export const pair = <Typed>(
  typed: string,
  of: (value: Typed) => Asked,
  past: Typed,
  within: Typed,
  rule: { readonly weight?: Weight; readonly sees?: (told: Told) => boolean },
): Pair => ({
  typed: `${typed}: ${JSON.stringify(past)}, not ${JSON.stringify(within)}`,
  past: of(past),
  within: of(within),
  weight: rule.weight ?? null,
  sees: rule.sees ?? null,
});

/** Whether anything of a row is said, whatever its weight. */
export const says =
  (row: RowId) =>
  ({ cautions }: Told): boolean =>
    cautions.some((caution) => caution.row === row);

export type Pairs = Partial<Readonly<Record<RowId, readonly Pair[]>>>;
