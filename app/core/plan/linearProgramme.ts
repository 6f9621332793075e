import type { Result } from '../result';
import type { PlanTrouble } from './answer';

/** Rows of a sparse matrix, one after the other. */
export interface SparseRows {
  /** row r is `columns` and `values` from `starts[r]` up to `starts[r + 1]` */
  readonly starts: Int32Array;
  readonly columns: Int32Array;
  readonly values: Float64Array;
}

/**
 * A linear programme with some whole-numbered columns, in no solver's own form:
 *
 *     least cost . x + constant,  columnLower <= x <= columnUpper,  rowLower <= rows x <= rowUpper
 */
export interface LinearProgramme {
  readonly cost: Float64Array;
  readonly constant: number;
  readonly columnLower: Float64Array;
  readonly columnUpper: Float64Array;
  readonly isWhole: Uint8Array;
  readonly rows: SparseRows;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
}

export interface Solution {
  /** constant included */
  readonly objective: number;
  readonly values: Float64Array;
}

/** Whoever can solve a programme; never rejects. The same programme always gives the same solution. */
export type Solver = (programme: LinearProgramme) => Result<Solution, PlanTrouble>;
