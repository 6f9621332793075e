/** A number with its range, as read from a table. */
export interface RangeValue {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** The scale that all ranges of one column share, so that they can be compared down the page. */
export interface RangeScale {
  readonly from: number;
  readonly to: number;
  /** ratios span powers of ten: equal steps are equal factors */
  readonly isLogarithmic: boolean;
}

/** A scale that holds every range of a column; from 0 unless it goes by factors. */
export function scaleOf(values: readonly RangeValue[], isLogarithmic: boolean): RangeScale {
  const highest = Math.max(...values.map(({ high }) => high), isLogarithmic ? 10 : 0);
  if (!isLogarithmic) return { from: 0, to: highest || 1, isLogarithmic };
  const lowest = Math.min(...values.map(({ low }) => low), highest);
  return { from: Math.max(lowest, highest / 1e6), to: highest, isLogarithmic };
}

/** Where a value stands on the scale, 0-1; what lies outside stands at the end. */
export function placeOn(value: number, { from, to, isLogarithmic }: RangeScale): number {
  const share = isLogarithmic
    ? Math.log(Math.max(value, from) / from) / Math.log(to / from)
    : (value - from) / (to - from);
  return Math.min(1, Math.max(0, Number.isFinite(share) ? share : 0));
}

export interface RangeGeometry {
  /** left end, likely value, right end, in px */
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** Places of a range within a drawing that is `width` px wide, `inset` px left free at both ends. */
export function rangeGeometry(
  value: RangeValue,
  scale: RangeScale,
  width: number,
  inset: number,
): RangeGeometry {
  const at = (one: number) => inset + placeOn(one, scale) * (width - 2 * inset);
  return { low: at(value.low), typical: at(value.typical), high: at(value.high) };
}
