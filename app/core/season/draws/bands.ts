/** Ends of what is shown: 10, 50 and 90 % of the draws, weighted. */
export interface Band {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * Weighted quantiles of draws.
 *
 * @param values one per draw
 * @param weights one per draw, any scale; a draw of weight 0 does not count
 * @returns NaN in all three when nothing has weight
 */
export function bandOf(values: Float64Array, weights: Float64Array): Band {
  const order = Array.from(values.keys())
    .filter((index) => weights[index]! > 0)
    .sort((one, other) => values[one]! - values[other]!);
  const total = order.reduce((sum, index) => sum + weights[index]!, 0);
  const at = (share: number): number => {
    let passed = 0;
    for (const index of order) {
      passed += weights[index]!;
      if (passed >= share * total) return values[index]!;
    }
    return order.length > 0 ? values[order.at(-1)!]! : Number.NaN;
  };
  return { low: at(0.1), middle: at(0.5), high: at(0.9) };
}

/** How many equally weighted draws the weighted ones are worth (Kish): (sum w)^2 / sum w^2. */
export function effectiveCount(weights: Float64Array): number {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const squares = weights.reduce((all, weight) => all + weight * weight, 0);
  return squares > 0 ? (sum * sum) / squares : 0;
}
