import { failure, success, type Result } from '../result';

/** One part of a mixture. Fractions 0-1: water of fresh mass, carbon and nitrogen of dry matter. */
export interface MixtureShare {
  readonly freshKilograms: number;
  readonly moistureFraction: number;
  readonly carbonFraction: number;
  readonly nitrogenFraction: number;
}

export type MixtureFailure =
  /** nothing in it */
  | { readonly kind: 'empty-mixture' }
  /** a mass below nought or not a number */
  | { readonly kind: 'not-a-mass'; readonly share: number }
  /** a content outside 0-1, most often because per cent were given; `share` counts from 0 */
  | { readonly kind: 'not-a-fraction'; readonly share: number }
  /** nothing but water, or no nitrogen: there is nothing to divide by */
  | { readonly kind: 'no-nitrogen' }
  /** no amount of the second material brings the mixture there */
  | { readonly kind: 'out-of-reach' };

const isFraction = (value: number): boolean => value >= 0 && value <= 1;

function check(shares: readonly MixtureShare[]): MixtureFailure | null {
  for (const [index, share] of shares.entries()) {
    if (!(share.freshKilograms >= 0 && share.freshKilograms < Infinity))
      return { kind: 'not-a-mass', share: index };
    const { moistureFraction, carbonFraction, nitrogenFraction } = share;
    if (![moistureFraction, carbonFraction, nitrogenFraction].every(isFraction))
      return { kind: 'not-a-fraction', share: index };
  }
  return shares.some((share) => share.freshKilograms > 0) ? null : { kind: 'empty-mixture' };
}

const dry = (share: MixtureShare): number => share.freshKilograms * (1 - share.moistureFraction);

const total = (shares: readonly MixtureShare[], of: (share: MixtureShare) => number): number =>
  shares.reduce((sum, share) => sum + of(share), 0);

/**
 * Carbon to nitrogen of a mixture.
 *
 *     C:N = sum m d c / sum m d n
 *
 * Carbon and nitrogen are summed first and divided last. A mean of the parts' own ratios would
 * count a part by its wet weight, whatever it holds.
 *
 * @param shares  m `freshKilograms`, d = 1 - `moistureFraction`, c `carbonFraction`, n `nitrogenFraction`
 * @returns kg carbon per kg nitrogen; fails as `empty-mixture`, `not-a-mass`, `not-a-fraction`, `no-nitrogen`
 * @validity whatever can be weighed; contents 0-1
 * @source conservation of mass alone
 * @example 10 kg of clippings (77 % water, C 45 %, N 2.4 %) with 3.4741 kg of leaves (35 %, 50 %, 0.75 %): 30
 */
export function mixCarbonToNitrogen(
  shares: readonly MixtureShare[],
): Result<number, MixtureFailure> {
  const wrong = check(shares);
  if (wrong) return failure(wrong);
  const nitrogen = total(shares, (share) => dry(share) * share.nitrogenFraction);
  if (nitrogen === 0) return failure({ kind: 'no-nitrogen' });
  return success(total(shares, (share) => dry(share) * share.carbonFraction) / nitrogen);
}

/**
 * Water of a mixture as a share of its fresh mass: sum m w / sum m.
 * Fails as `empty-mixture`, `not-a-mass`, `not-a-fraction`. Conservation of mass alone.
 */
export function mixMoisture(shares: readonly MixtureShare[]): Result<number, MixtureFailure> {
  const wrong = check(shares);
  if (wrong) return failure(wrong);
  const water = total(shares, (share) => share.freshKilograms * share.moistureFraction);
  return success(water / total(shares, (share) => share.freshKilograms));
}

/** A material without its mass. */
export type Mixable = Omit<MixtureShare, 'freshKilograms'>;

/**
 * How much of a second material brings the mixture to a ratio.
 *
 *     m2 = m1 d1 (c1 - R n1) / (d2 (R n2 - c2))
 *
 * @param ratio  R, kg carbon per kg nitrogen
 * @returns kg fresh of the second, 0 or more; fails as `mixCarbonToNitrogen` and as `out-of-reach`
 *   where R does not lie between the two, so that no amount would do
 * @source the ratio of `mixCarbonToNitrogen`, solved for m2 (derived)
 */
export function partnerForRatio(
  first: MixtureShare,
  second: Mixable,
  ratio: number,
): Result<number, MixtureFailure> {
  const wrong = check([first, { ...second, freshKilograms: 0 }]);
  if (wrong) return failure(wrong);
  const lacking = dry(first) * (first.carbonFraction - ratio * first.nitrogenFraction);
  const brings =
    (1 - second.moistureFraction) * (ratio * second.nitrogenFraction - second.carbonFraction);
  if (lacking === 0) return success(0);
  const kilograms = lacking / brings;
  return kilograms > 0 && kilograms < Infinity
    ? success(kilograms)
    : failure({ kind: 'out-of-reach' });
}

/**
 * How much of a second material brings the mixture to a share of water.
 *
 *     m2 = m1 (G - w1) / (w2 - G)
 *
 * @param moisture  G, 0-1 of fresh mass
 * @returns kg fresh of the second; fails as `mixMoisture` and as `out-of-reach`
 */
export function partnerForMoisture(
  first: MixtureShare,
  second: Mixable,
  moisture: number,
): Result<number, MixtureFailure> {
  const wrong = check([first, { ...second, freshKilograms: 0 }]);
  if (wrong) return failure(wrong);
  const lacking = first.freshKilograms * (moisture - first.moistureFraction);
  if (lacking === 0) return success(0);
  const kilograms = lacking / (second.moistureFraction - moisture);
  return kilograms > 0 && kilograms < Infinity
    ? success(kilograms)
    : failure({ kind: 'out-of-reach' });
}

/** A second material and water to add; water below 0 means that the mixture is wetter than wanted. */
export interface Partners {
  readonly secondKilograms: number;
  readonly waterKilograms: number;
}

/**
 * How much of a second material and of water reach both a ratio and a share of water.
 * The ratio settles the second material, what is left of the water sum settles the water.
 *
 *     water = (sum m (w_i - G)) / (G - 1)
 *
 * @returns kg; fails as `partnerForRatio`, and as `not-a-fraction` for a wanted share of 1 or more
 */
export function partnersForBoth(
  first: MixtureShare,
  second: Mixable,
  ratio: number,
  moisture: number,
): Result<Partners, MixtureFailure> {
  if (!(moisture >= 0 && moisture < 1)) return failure({ kind: 'not-a-fraction', share: 2 });
  const partner = partnerForRatio(first, second, ratio);
  if (!partner.ok) return partner;
  const surplus =
    first.freshKilograms * (first.moistureFraction - moisture) +
    partner.value * (second.moistureFraction - moisture);
  return success({ secondKilograms: partner.value, waterKilograms: surplus / (moisture - 1) });
}
