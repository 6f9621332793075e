import type { Draws } from './columns';
import type { Drawn, SeasonSpread } from './spread';

/** A drawn quantity and how its draws go with an outcome's, by rank. */
export interface Influence {
  readonly name: string;
  /** Spearman's rank correlation, -1 to 1 */
  readonly correlation: number;
}

/** Rank of each draw among all, for a correlation that one wild draw cannot make. */
function ranksOf(values: Float64Array): Float64Array {
  const order = Uint32Array.from(values.keys()).sort((one, other) => values[one]! - values[other]!);
  const ranks = new Float64Array(values.length);
  order.forEach((draw, place) => (ranks[draw] = place));
  return ranks;
}

/** Of two orders of the same draws: their sums of squares are equal. */
function correlation(one: Float64Array, other: Float64Array): number {
  const middle = (one.length - 1) / 2;
  let both = 0;
  let square = 0;
  for (let at = 0; at < one.length; at++) {
    both += (one[at]! - middle) * (other[at]! - middle);
    square += (one[at]! - middle) ** 2;
  }
  return square > 0 ? both / square : 0;
}

const isDrawn = ({ low, typical, high }: Drawn): boolean => high > low && typical > 0;

/** The three quantities whose draws go with an outcome most, strongest first. */
export function mattersMost(
  spread: SeasonSpread,
  draws: Draws,
  outcome: Float64Array,
): readonly Influence[] {
  const quantities = [
    ...spread.coefficients,
    ...Object.values(spread.layers).flatMap(({ mass, nitrogen }) => [mass, nitrogen]),
    ...Object.values(spread.needs),
    ...(spread.organicMatter ? [spread.organicMatter] : []),
  ];
  const outcomeRanks = ranksOf(outcome);
  return [...new Set(quantities.filter(isDrawn).map(({ name }) => name))]
    .map((name) => ({ name, correlation: correlation(draws.ranks(name), outcomeRanks) }))
    .sort((one, other) => Math.abs(other.correlation) - Math.abs(one.correlation))
    .slice(0, 3);
}
