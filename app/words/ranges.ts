import type { ShownUnit } from '../core/shownUnit';
import { estimate, estimateWithUnit } from './figures';

/** An estimate with the ends between which it lies 8 times in 10 (10 and 90 per cent points). */
export interface ShownRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** What a range means, said once beside the first: part of the line, never in a tooltip. */
export const rangeOdds = '8 times in 10';

export interface RangeWords {
  /** "77 g" */
  readonly likely: string;
  /** "55 to 110 g", or null when the ends do not differ in what is shown */
  readonly between: string | null;
}

export function rangeWords(range: ShownRange, unit: ShownUnit): RangeWords {
  const low = estimate(range.low, unit);
  const high = estimate(range.high, unit);
  return {
    likely: estimateWithUnit(range.typical, unit),
    between: low === high ? null : `${low} to ${high} ${unit.symbol}`,
  };
}

/**
 * An estimate in the line itself, with its range and how often it holds:
 * "about 77 g, likely 55 to 110 g (8 times in 10)". What is certain is said plainly: "6 kg".
 */
export function withRange(range: ShownRange, unit: ShownUnit): string {
  const { likely, between } = rangeWords(range, unit);
  if (range.low === range.high) return likely;
  return between === null ? `about ${likely}` : `about ${likely}, likely ${between} (${rangeOdds})`;
}
