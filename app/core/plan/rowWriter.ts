import type { LinearProgramme } from './linearProgramme';

/** Gathers columns and rows of a programme one by one. */
export class ProgrammeWriter {
  private readonly cost: number[] = [];
  private readonly columnLower: number[] = [];
  private readonly columnUpper: number[] = [];
  private readonly isWhole: number[] = [];
  private readonly starts: number[] = [0];
  private readonly columns: number[] = [];
  private readonly values: number[] = [];
  private readonly rowLower: number[] = [];
  private readonly rowUpper: number[] = [];

  column(cost: number, upper: number, isWhole = false, lower = 0): number {
    this.cost.push(cost);
    this.columnLower.push(lower);
    this.columnUpper.push(upper);
    this.isWhole.push(isWhole ? 1 : 0);
    return this.cost.length - 1;
  }

  /** lower <= sum of value x column <= upper; a row without columns is left out */
  row(
    terms: readonly { readonly column: number; readonly value: number }[],
    lower: number,
    upper: number,
  ): number | null {
    const wanted = terms.filter(({ value }) => value !== 0);
    if (wanted.length === 0) return null;
    for (const { column, value } of wanted) {
      this.columns.push(column);
      this.values.push(value);
    }
    this.starts.push(this.columns.length);
    this.rowLower.push(lower);
    this.rowUpper.push(upper);
    return this.rowLower.length - 1;
  }

  programme(constant: number): LinearProgramme {
    return {
      cost: Float64Array.from(this.cost),
      constant,
      columnLower: Float64Array.from(this.columnLower),
      columnUpper: Float64Array.from(this.columnUpper),
      isWhole: Uint8Array.from(this.isWhole),
      rows: {
        starts: Int32Array.from(this.starts),
        columns: Int32Array.from(this.columns),
        values: Float64Array.from(this.values),
      },
      rowLower: Float64Array.from(this.rowLower),
      rowUpper: Float64Array.from(this.rowUpper),
    };
  }
}
