import type { SourceKey } from '../sources';

/** Monthly means of one station, January first. */
export interface Climate {
  readonly id: string;
  readonly name: string;
  readonly country: string;
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
  /** years averaged, or null when the source does not say */
  readonly period: string | null;
  /** mean daily highest and lowest */
  readonly maximumCelsius: readonly number[];
  readonly minimumCelsius: readonly number[];
  readonly rainMillimetres: readonly number[];
  /** days of at least 1 mm */
  readonly wetDays: readonly number[];
  /**
   * `counted`: the service counts from 1 mm. `converted`: from a lower threshold, see
   * `wetDayFactors`. `of a neighbour`: another station's count. `estimated`: from the rain alone.
   */
  readonly wetDaysKnown: 'counted' | 'converted' | 'of a neighbour' | 'estimated';
  /** month and day at which half the years have had their last or first frost, or null */
  readonly lastSpringFrost: string | null;
  readonly firstAutumnFrost: string | null;
  readonly frostKnown: 'published' | 'reported' | 'estimated' | 'none expected';
  readonly source: SourceKey;
}
