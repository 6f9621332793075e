import type { Points } from '../../../app/core/season/draws/spread';
import type { Values } from '../drawn';

/** What the program says of a measured case, at likely values or at those of a draw. */
export type Ours = (values: Values) => number;

/** By the id of what was measured. */
export type Cases = Readonly<Record<string, Ours>>;

/** Between two ends, likeliest in their middle on the log scale. */
export const around = (low: number, high: number): Points => ({
  low,
  typical: Math.sqrt(low * high),
  high,
});
export const exactly = (value: number): Points => ({ low: value, typical: value, high: value });
