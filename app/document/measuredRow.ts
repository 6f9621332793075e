import type { Row } from '../tables/shapes';

/** Spread of a measured value around itself (assumed, as for a soil sample). */
const measuredSpread = 0.1;

/** The row, or what was measured in its place with a sample's spread. */
export const rowOrMeasured = (row: Row, value: number): Row =>
  Math.abs(value - row.typical) <= 1e-9 * Math.abs(row.typical)
    ? row
    : {
        ...row,
        low: value * (1 - measuredSpread),
        typical: value,
        high: value * (1 + measuredSpread),
        source: 'Assumed',
        place: 'own value; spread of a sample assumed',
        standing: 'measured',
      };
