import { seeded, seedFrom } from '../../random';

/**
 * Latin hypercube by name: for every named quantity `count` shares of 0-1, one in each of `count`
 * equal strata, in an order of the name's own. The same name, seed and count always give the same
 * column, so beds that share a quantity (the garden's soil rate, a mowing's mass) share its draw
 * without knowing of each other.
 *
 * @source McKay, Beckman & Conover 1979 (recalled)
 */
export function stratifiedShares(name: string, seed: number, count: number): Float64Array {
  const random = seeded(seedFrom(seed, ...Array.from(name, (letter) => letter.codePointAt(0)!)));
  const order = Float64Array.from({ length: count }, (_, index) => index);
  for (let index = count - 1; index > 0; index--) {
    const other = Math.floor(random() * (index + 1));
    const kept = order[index]!;
    order[index] = order[other]!;
    order[other] = kept;
  }
  // never 0 or 1, where a quantile is without end
  return order.map((stratum) => (stratum + Math.min(Math.max(random(), 1e-6), 1 - 1e-6)) / count);
}
