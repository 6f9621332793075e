import type { DayNumber } from '../../days';

/** A nitrate test of 0-30 cm; on its day the draws are weighed by it, and keep their weights. */
export interface TestedNitrate {
  readonly day: DayNumber;
  readonly mgPerKg: number;
  /** standard deviation of the test as a share of its value */
  readonly spread: number;
}
