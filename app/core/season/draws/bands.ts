/** Ends of what is shown: 10, 50 and 90 % of the draws, weighted. */
export interface Band {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

const shares = { low: 0.1, middle: 0.5, high: 0.9 } as const;

/**
 * Weighted quantiles of draws, by selection: nothing is sorted further than the three places ask.
 *
 * @param values one per draw; stays as it is
 * @param weights one per draw, any scale; a draw of weight 0 does not count
 * @returns NaN in all three when nothing has weight
 */
export const bandOf = (values: Float64Array, weights: Float64Array): Band =>
  bandReader(weights)(values);

/** `bandOf` for many series under the same weights, without taking them up anew. */
export function bandReader(weights: Float64Array): (values: Float64Array) => Band {
  const places = Array.from(weights.keys()).filter((draw) => weights[draw]! > 0);
  const count = places.length;
  const inUse = Float64Array.from(places, (draw) => weights[draw]!);
  const total = inUse.reduce((sum, weight) => sum + weight, 0);
  const sorted = new Float64Array(count);
  const own = new Float64Array(count);
  return (values) => {
    if (count === 0) return { low: Number.NaN, middle: Number.NaN, high: Number.NaN };
    for (let at = 0; at < count; at++) sorted[at] = values[places[at]!]!;
    own.set(inUse);
    const middle = select(sorted, own, 0, count, 0, shares.middle * total);
    const { from, to, before, upTo } = middle;
    const low = shares.low * total;
    const high = shares.high * total;
    // each end lies among the values beside the middle's own, or is one of these
    return {
      low: before >= low ? select(sorted, own, 0, from, 0, low).value : middle.value,
      middle: middle.value,
      high:
        upTo < high && to < count ? select(sorted, own, to, count, upTo, high).value : middle.value,
    };
  };
}

/** A value that was selected, and the stretch in which all are equal to it. */
interface Selected {
  readonly value: number;
  readonly from: number;
  readonly to: number;
  /** weight of all that is less, and of all that is not more */
  readonly before: number;
  readonly upTo: number;
}

/**
 * The least value of a stretch at which the weight of all values up to it reaches `target`. The
 * stretch is put in order as far as that needs.
 *
 * @param first the stretch from here to before `end`; not empty
 * @param weightBefore weight of all values that are less than those of the stretch, under `target`
 */
function select(
  values: Float64Array,
  weights: Float64Array,
  first: number,
  end: number,
  weightBefore: number,
  target: number,
): Selected {
  let from = first;
  let to = end;
  let before = weightBefore;
  for (;;) {
    const pivot = middleOf(values[from]!, values[(from + to) >> 1]!, values[to - 1]!);
    // less than the pivot | equal to it | not looked at yet | more
    let equal = from;
    let more = to;
    let weightLess = 0;
    let weightEqual = 0;
    for (let at = from; at < more;) {
      const value = values[at]!;
      if (value < pivot) {
        weightLess += weights[at]!;
        swap(values, weights, at++, equal++);
      } else if (value > pivot) swap(values, weights, at, --more);
      else weightEqual += weights[at++]!;
    }
    const less = before + weightLess;
    const upTo = less + weightEqual;
    if (equal > from && less >= target) to = equal;
    else if (more < to && upTo < target) {
      before = upTo;
      from = more;
    } else return { value: pivot, from: equal, to: more, before: less, upTo };
  }
}

const middleOf = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));

function swap(values: Float64Array, weights: Float64Array, one: number, other: number): void {
  const value = values[one]!;
  values[one] = values[other]!;
  values[other] = value;
  const weight = weights[one]!;
  weights[one] = weights[other]!;
  weights[other] = weight;
}

/** How many equally weighted draws the weighted ones are worth (Kish): (sum w)^2 / sum w^2. */
export function effectiveCount(weights: Float64Array): number {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const squares = weights.reduce((all, weight) => all + weight * weight, 0);
  return squares > 0 ? (sum * sum) / squares : 0;
}
