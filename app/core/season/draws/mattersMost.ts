import type { Draws } from './columns';
import type { Drawn, SeasonSpread } from './spread';

/** A drawn quantity and how its draws go with an outcome's, by rank. */
export interface Influence {
  readonly name: string;
  /** Spearman's rank correlation, -1 to 1 */
  readonly correlation: number;
}

/** Rank of each draw among all, equals sharing theirs: one wild draw cannot make a correlation. */
function ranksOf(values: Float64Array): Float64Array {
  const order = Uint32Array.from(values.keys()).sort((one, other) => values[one]! - values[other]!);
  const ranks = new Float64Array(values.length);
  for (let first = 0; first < order.length;) {
    let end = first + 1;
    while (end < order.length && values[order[end]!] === values[order[first]!]) end++;
    for (let place = first; place < end; place++) ranks[order[place]!] = (first + end - 1) / 2;
    first = end;
  }
  return ranks;
}

/** Pearson's correlation of two columns, each draw counting by its weight. */
function correlation(one: Float64Array, other: Float64Array, weights: Float64Array): number {
  let weight = 0;
  let oneSum = 0;
  let otherSum = 0;
  for (let draw = 0; draw < weights.length; draw++) {
    weight += weights[draw]!;
    oneSum += weights[draw]! * one[draw]!;
    otherSum += weights[draw]! * other[draw]!;
  }
  const [oneMiddle, otherMiddle] = [oneSum / weight, otherSum / weight];
  let both = 0;
  let oneSquare = 0;
  let otherSquare = 0;
  for (let draw = 0; draw < weights.length; draw++) {
    const [a, b] = [one[draw]! - oneMiddle, other[draw]! - otherMiddle];
    both += weights[draw]! * a * b;
    oneSquare += weights[draw]! * a * a;
    otherSquare += weights[draw]! * b * b;
  }
  return oneSquare > 0 && otherSquare > 0 ? both / Math.sqrt(oneSquare * otherSquare) : 0;
}

const isDrawn = ({ low, typical, high }: Drawn): boolean => high > low && typical > 0;

/** A quantity's ranks in all blocks, one after the other; each block spans its whole range. */
function ranksIn(blocks: readonly Draws[], name: string): Float64Array {
  const [first, ...others] = blocks;
  if (!first || others.length === 0) return first?.ranks(name) ?? new Float64Array(0);
  const all = new Float64Array(blocks.length * first.count);
  blocks.forEach((block, at) => all.set(block.ranks(name), at * first.count));
  return all;
}

/** Outcomes that lie no further apart differ by less than is ever shown: their ranks mean nothing (ours). */
const alike = 1e-6;

/**
 * The three quantities whose draws go with an outcome most, strongest first.
 *
 * @param blocks the hypercubes the outcome was drawn in
 * @param outcome of all draws, block after block
 * @param weights of all draws: what no longer fits what was found counts no more
 * @returns nothing where all draws come out alike
 */
export function mattersMost(
  spread: SeasonSpread,
  blocks: readonly Draws[],
  outcome: Float64Array,
  weights: Float64Array,
): readonly Influence[] {
  const [first = 0] = outcome;
  if (outcome.every((value) => Math.abs(value - first) <= alike * Math.max(1, Math.abs(first))))
    return [];
  const quantities = [
    ...spread.coefficients,
    ...Object.values(spread.layers).flatMap(({ mass, nitrogen, acting, ready, slow }) =>
      [mass, nitrogen, acting, ready, slow].filter((drawn) => drawn !== undefined),
    ),
    ...Object.values(spread.needs),
    ...Object.values(spread.fixing ?? {}).flatMap(({ usual, limit }) => [usual, limit]),
    ...(spread.organicMatter ? [spread.organicMatter] : []),
  ];
  const outcomeRanks = ranksOf(outcome);
  return [...new Set(quantities.filter(isDrawn).map(({ name }) => name))]
    .map((name) => ({
      name,
      correlation: correlation(ranksIn(blocks, name), outcomeRanks, weights),
    }))
    .sort((one, other) => Math.abs(other.correlation) - Math.abs(one.correlation))
    .slice(0, 3);
}
