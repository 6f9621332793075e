import type { Row } from '../tables/shapes';

/** Spread of a measured value around itself (assumed, as for a soil sample). */
const measuredSpread = 0.1;

/**
 * The row, or what was measured in its place with a sample's spread: of a share, of the lesser of what
 * is there and what is not, so that stuff of nearly all water never holds more than that.
 */
export function rowOrMeasured(row: Row, value: number): Row {
  if (Math.abs(value - row.typical) <= 1e-9 * Math.abs(row.typical)) return row;
  const whole = row.unit.startsWith('%') ? Math.min(value, 100 - value) : value;
  return {
    ...row,
    low: value - measuredSpread * whole,
    typical: value,
    high: value + measuredSpread * whole,
    source: 'Assumed',
    place: 'own value; spread of a sample assumed',
    standing: 'measured',
  };
}
