import type { Coefficients } from '../season/coefficients';

/** Water a cover can hold [mm]: 3 g per g of dry matter, at most 8 mm (model 2). */
export const coverWaterCapacity = (dryKgPerM2: number, c: Coefficients): number =>
  Math.min(c.coverWaterLimit, c.coverWaterPerDryMatter * dryKgPerM2);

/** How full a cover is 0-1; one that shrank can hold more than it should. */
export const fillOf = (waterMillimetres: number, capacityMillimetres: number): number =>
  capacityMillimetres > 0 ? Math.min(1, waterMillimetres / capacityMillimetres) : 0;

/**
 * Factor on surface decay, w0 + (1 - w0) x wetness: never quite 0, for dew.
 *
 * @param wetness how full of water the cover is over the day 0-1
 */
export const wetnessFactor = (wetness: number, c: Coefficients): number =>
  c.coverDryWetness + (1 - c.coverDryWetness) * wetness;

/** Share of ground hidden, 1 - exp(-5 kg/m2) (memory). */
export const coverFraction = (dryKgPerM2: number, c: Coefficients): number =>
  -Math.expm1(-c.coverFractionPerKilogram * dryKgPerM2);
