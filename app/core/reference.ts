/**
 * How a number is known. `read`: seen in the source named. `reported`: seen only
 * where somebody else repeats it. `derived`: reckoned from read values. `mixed`: some of it read,
 * some recalled. `memory`: recalled, not verified. `assumed`: our own judgement. `common practice`: what growers
 * do. `definition`: exact by definition. `measured`: the gardener's own measurement.
 */
export type Standing =
  | 'read'
  | 'reported'
  | 'derived'
  | 'mixed'
  | 'memory'
  | 'assumed'
  | 'common practice'
  | 'definition'
  | 'measured';

/** What shares one drawn value when uncertainty is drawn (model: low = 5 %, typical = median, high = 95 %). */
export type DrawnPer = 'garden' | 'material' | 'mowing' | 'crop' | 'nothing';

/** One number from a book, with its range and where it stands. */
export interface Cited<SourceKey extends string = string> {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
  readonly unit: string;
  readonly source: SourceKey;
  /** table, page or section it was taken from */
  readonly place: string;
  readonly standing: Standing;
  readonly drawnPer?: DrawnPer;
  readonly note?: string;
}
