/** So many dots a person counts without losing the thread. */
export const dotsDrawn = 20;

/**
 * A distribution as dots that stand for equal shares of the weight: the weighted quantiles in the
 * middle of each share, the least first.
 *
 * @param values one per draw
 * @param weights one per draw, any scale; a draw of weight 0 does not count
 * @param count how many dots
 * @returns `count` values in rising order; none when nothing has weight
 * @source twenty to fifty dots to be counted: Kay and others 2016, Fernandes and others 2018
 */
export function quantileDots(
  values: Float64Array,
  weights: Float64Array,
  count: number = dotsDrawn,
): readonly number[] {
  const order = Array.from(weights.keys())
    .filter((draw) => weights[draw]! > 0)
    .sort((one, other) => values[one]! - values[other]!);
  const total = order.reduce((sum, draw) => sum + weights[draw]!, 0);
  const dots: number[] = [];
  let upTo = 0;
  for (const draw of order) {
    upTo += weights[draw]!;
    while (dots.length < count && upTo >= ((dots.length + 0.5) / count) * total * (1 - 1e-12))
      dots.push(values[draw]!);
  }
  return dots;
}
