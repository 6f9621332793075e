/** How a number to compare with was come by. */
export type Standing = 'printed' | 'second-hand' | 'recalled' | 'computed apart';

/** One number of a publication, or of a sum done apart from the program, beside ours. */
export interface Comparison {
  readonly source: string;
  /** table, example, page or page of a site */
  readonly place: string;
  readonly quantity: string;
  /** as printed, with its digits */
  readonly printed: string;
  readonly ours: number;
  /** a whole unit of the last digit where the reading of the source found the print rounded so */
  readonly within: 'digits' | 'unit';
  readonly standing: Standing;
}

/** A function of the program by which numbers were got, and the file that holds it. */
export interface Equation {
  readonly name: string;
  /** path from the top of the repository, without its ending */
  readonly file: string;
}

/** Comparisons that stand or fall with the same equations. */
export interface ComparisonGroup {
  readonly title: string;
  /** every one of them has to be used by the program, else the group does not count */
  readonly equations: readonly Equation[];
  /** counted apart where numbers pass through without a sum being made of them */
  readonly passesThrough?: boolean;
  readonly comparisons: readonly Comparison[];
}

/** Two half units off at most, one where the print is to its digits. */
export const allowedHalfUnits = (comparison: Comparison): number =>
  comparison.within === 'unit' ? 2 : 1;
