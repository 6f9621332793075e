import { failure, success, type Result } from '../result';
import {
  mixCarbonToNitrogen,
  mixMoisture,
  type Mixable,
  type MixtureFailure,
  type MixtureShare,
} from './mix';

/** One part of a mixture that is being put together; null where the sum is to say how much. */
export interface BlendPart extends Mixable {
  readonly freshKilograms: number | null;
}

/** What the mixture should be; null where any will do. */
export interface BlendWish {
  /** kg carbon per kg nitrogen */
  readonly ratio: number | null;
  /** water as a share of fresh mass, 0 to less than 1 */
  readonly moisture: number | null;
}

/** What of a wish no amount could meet; `part` counts from 0. */
export type Unmet =
  /** even that part alone does not lie beyond the wish: `ratio` is its own */
  | { readonly kind: 'part-falls-short'; readonly part: number; readonly ratio: number }
  /** more of that part leads away from the wish, so none of it is taken */
  | { readonly kind: 'part-leads-away'; readonly part: number }
  /** every amount was given and they make another ratio */
  | { readonly kind: 'ratio-as-given' }
  /** wetter than wished by that much water, which can only dry off or be soaked up */
  | { readonly kind: 'too-wet'; readonly waterKilograms: number };

export interface Blend {
  /** fresh, in the order of the parts, those that were given among them */
  readonly kilograms: readonly number[];
  /** to be added, 0 or more */
  readonly waterKilograms: number;
  /** of the mixture as it then is */
  readonly ratio: number;
  readonly moisture: number;
  readonly unmet: readonly Unmet[];
}

export type BlendFailure =
  | MixtureFailure
  /** more amounts to be found than there are wishes to find them by */
  | { readonly kind: 'too-many-unknown'; readonly may: number };

/** Ratios nearer than this to the wish count as met: far below what can be weighed in a garden. */
const near = 1e-6;

/** Carbon that a kilogram of a part has beyond what the wish gives its nitrogen. */
const surplusCarbon = (part: Mixable, ratio: number): number =>
  (1 - part.moistureFraction) * (part.carbonFraction - ratio * part.nitrogenFraction);

const filled = (parts: readonly BlendPart[], found: ReadonlyMap<number, number>): MixtureShare[] =>
  parts.map((part, index) => ({
    ...part,
    freshKilograms: part.freshKilograms ?? found.get(index) ?? 0,
  }));

/** Water to add, below 0 where there is too much: sum m (G - w) / (1 - G). */
const waterWanted = (shares: readonly MixtureShare[], moisture: number): number =>
  shares.reduce(
    (sum, share) => sum + share.freshKilograms * (moisture - share.moistureFraction),
    0,
  ) /
  (1 - moisture);

function finish(
  parts: readonly BlendPart[],
  wish: BlendWish,
  found: ReadonlyMap<number, number>,
  unmet: readonly Unmet[],
): Result<Blend, BlendFailure> {
  const shares = filled(parts, found);
  const ratio = mixCarbonToNitrogen(shares);
  if (!ratio.ok) return ratio;
  const wanted = wish.moisture === null ? 0 : waterWanted(shares, wish.moisture);
  const water: MixtureShare = {
    freshKilograms: Math.max(0, wanted),
    moistureFraction: 1,
    carbonFraction: 0,
    nitrogenFraction: 0,
  };
  const moisture = mixMoisture([...shares, water]);
  if (!moisture.ok) return moisture;
  const mass = shares.reduce((sum, share) => sum + share.freshKilograms, 0);
  const missed =
    wish.ratio !== null && unmet.length === 0 && Math.abs(ratio.value / wish.ratio - 1) > near;
  return success({
    kilograms: shares.map((share) => share.freshKilograms),
    waterKilograms: water.freshKilograms,
    ratio: ratio.value,
    moisture: moisture.value,
    unmet: [
      ...unmet,
      ...(missed ? [{ kind: 'ratio-as-given' } as const] : []),
      ...(wanted < -near * mass ? [{ kind: 'too-wet', waterKilograms: -wanted } as const] : []),
    ],
  });
}

/** How much of one part brings the ratio to the wish, all others being known. */
function oneForRatio(
  parts: readonly BlendPart[],
  known: readonly MixtureShare[],
  index: number,
  ratio: number,
): { readonly kilograms: number; readonly unmet: readonly Unmet[] } {
  const part = parts[index] as BlendPart;
  const there = known.reduce(
    (sum, share) => sum + share.freshKilograms * surplusCarbon(share, ratio),
    0,
  );
  const each = surplusCarbon(part, ratio);
  if (there === 0) return { kilograms: 0, unmet: [] };
  if (there * each < 0) return { kilograms: -there / each, unmet: [] };
  const own = part.carbonFraction / part.nitrogenFraction;
  const mixed = mixCarbonToNitrogen(known);
  const leadsNearer = mixed.ok && Math.abs(own - ratio) < Math.abs(mixed.value - ratio);
  return {
    kilograms: 0,
    unmet: [
      leadsNearer
        ? { kind: 'part-falls-short', part: index, ratio: own }
        : { kind: 'part-leads-away', part: index },
    ],
  };
}

/** How much of one part brings the water to the wish without adding any; 0 where none would. */
function oneForMoisture(known: readonly MixtureShare[], part: Mixable, moisture: number): number {
  const lacking = known.reduce(
    (sum, share) => sum + share.freshKilograms * (moisture - share.moistureFraction),
    0,
  );
  const kilograms = lacking / (part.moistureFraction - moisture);
  return kilograms > 0 && Number.isFinite(kilograms) ? kilograms : 0;
}

/** Both wishes by two parts, without added water; null where an amount would be below nought. */
function twoForBoth(
  known: readonly MixtureShare[],
  first: Mixable,
  second: Mixable,
  ratio: number,
  moisture: number,
): readonly [number, number] | null {
  const carbonThere = known.reduce(
    (sum, share) => sum + share.freshKilograms * surplusCarbon(share, ratio),
    0,
  );
  const waterThere = known.reduce(
    (sum, share) => sum + share.freshKilograms * (share.moistureFraction - moisture),
    0,
  );
  const [a, b] = [surplusCarbon(first, ratio), surplusCarbon(second, ratio)];
  const [c, d] = [first.moistureFraction - moisture, second.moistureFraction - moisture];
  const determinant = a * d - b * c;
  const one = (-carbonThere * d + b * waterThere) / determinant;
  const other = (-a * waterThere + c * carbonThere) / determinant;
  return one >= 0 && other >= 0 && Number.isFinite(one) && Number.isFinite(other)
    ? [one, other]
    : null;
}

/**
 * Puts a mixture together: the amounts that are not given are found so that carbon to nitrogen
 * and water come out as wished, water being added where it is too dry. Sums of carbon, nitrogen and
 * water are taken and divided last; ratios of the parts are never averaged.
 *
 *     sum m d (c - R n) = 0        sum m (w - G) = (1 - G) water
 *
 * One amount can be found for each wish. Where no amount of 0 or more meets a wish, none of that part is
 * taken and `unmet` says which part fails and how: a wish that cannot be met is told, not bent.
 *
 * @param parts  contents as fractions 0-1 (water of fresh mass, carbon and nitrogen of dry matter)
 * @returns fresh kilograms; fails as `mixCarbonToNitrogen` and as `too-many-unknown`
 * @validity anything that can be weighed; wished water below 1
 * @source conservation of mass alone (the equations are solved by hand; derived)
 */
export function blend(parts: readonly BlendPart[], wish: BlendWish): Result<Blend, BlendFailure> {
  const unknown = parts.flatMap((part, index) => (part.freshKilograms === null ? [index] : []));
  const wishes = [wish.ratio, wish.moisture].filter((one) => one !== null).length;
  if (unknown.length > wishes) return failure({ kind: 'too-many-unknown', may: wishes });
  const empty = filled(parts, new Map());
  const known = empty.filter((share) => share.freshKilograms > 0);
  const checked = mixCarbonToNitrogen(empty);
  if (!checked.ok) return checked;
  const [first, second] = unknown;
  if (first === undefined) return finish(parts, wish, new Map(), []);
  const partAt = (index: number): BlendPart => parts[index] as BlendPart;
  if (second === undefined) {
    if (wish.ratio === null) {
      const kilograms = oneForMoisture(known, partAt(first), wish.moisture ?? 0);
      return finish(parts, wish, new Map([[first, kilograms]]), []);
    }
    const { kilograms, unmet } = oneForRatio(parts, known, first, wish.ratio);
    return finish(parts, wish, new Map([[first, kilograms]]), unmet);
  }
  const ratio = wish.ratio ?? 1;
  const both = twoForBoth(known, partAt(first), partAt(second), ratio, wish.moisture ?? 0);
  if (both)
    return finish(
      parts,
      wish,
      new Map([
        [first, both[0]],
        [second, both[1]],
      ]),
      [],
    );
  // the two together cannot: one of them meets the ratio, and water is added if it lacks
  const tries = unknown.map((index) => {
    const { kilograms, unmet } = oneForRatio(parts, known, index, ratio);
    return finish(parts, wish, new Map([[index, kilograms]]), unmet);
  });
  const misses = (one: Result<Blend, BlendFailure>): number =>
    one.ok ? one.value.unmet.length : 9;
  const [one, other] = tries as [Result<Blend, BlendFailure>, Result<Blend, BlendFailure>];
  return misses(other) < misses(one) ? other : one;
}
