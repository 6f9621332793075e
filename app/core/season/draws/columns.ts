import { stratifiedShares } from './hypercube';
import { valueAt, type Drawn } from './spread';

/** Draws of one garden: columns by name, made when first asked for. */
export interface Draws {
  readonly seed: number;
  readonly count: number;
  /** a quantity in all draws, 0 - count-1 */
  column(drawn: Drawn): Float64Array;
  /** the same in one draw */
  value(drawn: Drawn, draw: number): number;
  /** the place of each draw among all for what bears this name, lowest value first */
  ranks(name: string): Float64Array;
}

/** A pure function of seed and count: the same quantity gets the same value in the same draw, on every bed. */
export function makeDraws(seed: number, count: number): Draws {
  const shares = new Map<string, Float64Array>();
  const columns = new Map<string, Float64Array>();
  const sharesOf = (name: string): Float64Array => {
    let column = shares.get(name);
    if (!column) {
      column = stratifiedShares(name, seed, count);
      shares.set(name, column);
    }
    return column;
  };
  const columnOf = (drawn: Drawn): Float64Array => {
    // beds may read one name by different points: a lot weighs on each what was laid there
    const { name, low, typical, high, shape } = drawn;
    const key = JSON.stringify([name, low, typical, high, shape]);
    let column = columns.get(key);
    if (!column) {
      column = sharesOf(name).map((share) => valueAt(drawn, share));
      columns.set(key, column);
    }
    return column;
  };
  return {
    seed,
    count,
    column: columnOf,
    value: (drawn, draw) => columnOf(drawn)[draw]!,
    // a share lies in a stratum of its own, and values rise with their share
    ranks: (name) => sharesOf(name).map((share) => Math.floor(share * count)),
  };
}
