/** A chart's numbers as a table: plain data, with units in its heads. */
export interface TableData {
  readonly head: readonly string[];
  /** numbers as numbers, so that they stay numbers wherever they are read */
  readonly rows: readonly (readonly (string | number | null)[])[];
}
