import type { BedResults } from '../../store/contract';

/** Depth of the strip that stands for 30 cm of soil, and how the cover above it is enlarged. */
const soilShare = 0.62;
const millimetresAbove = 160;

export interface BedStripGeometry {
  /** y of the ground */
  readonly surface: number;
  /** height of the cover */
  readonly cover: number;
  /** share of the ground that is hidden, 0-1 */
  readonly hidden: number;
  /** one for each gram of ready nitrogen in the top 30 cm of a m2, filled row by row */
  readonly dots: readonly { readonly x: number; readonly y: number }[];
}

/** Where things stand in the little cut through a bed, in the drawing's own units. */
export function coverGeometryOf(
  { season }: BedResults,
  width: number,
  height: number,
): BedStripGeometry {
  const at = (series: Float64Array): number => series[season.today - season.firstDay] ?? 0;
  const surface = Math.round(height * (1 - soilShare));
  const grams = Math.round(at(season.pools.mineralTop));
  const step = 9;
  const perRow = Math.floor((width - 8) / step);
  const rows = Math.floor((height - surface - 6) / step);
  const dots = Array.from({ length: Math.min(grams, perRow * rows) }, (_, index) => ({
    x: 8 + (index % perRow) * step,
    y: surface + 9 + Math.floor(index / perRow) * step,
  }));
  return {
    surface,
    cover: Math.min(surface - 2, (at(season.coverDepth) / millimetresAbove) * surface),
    hidden: Math.min(1, at(season.coverFraction)),
    dots,
  };
}
