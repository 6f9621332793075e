import type { Coefficients } from '../season/coefficients';

/** Water a cover can hold [mm]: 3 g per g of dry matter, at most 8 mm (model 2). */
export const coverWaterCapacity = (dryKgPerM2: number, c: Coefficients): number =>
  Math.min(c.coverWaterLimit, c.coverWaterPerDryMatter * dryKgPerM2);

/** Factor on surface decay: never quite 0, for dew. */
export const wetnessFactor = (fill: number, c: Coefficients): number =>
  c.coverDryWetness + (1 - c.coverDryWetness) * fill;

/** Share of ground hidden, 1 - exp(-5 kg/m2) (memory). */
export const coverFraction = (dryKgPerM2: number, c: Coefficients): number =>
  -Math.expm1(-c.coverFractionPerKilogram * dryKgPerM2);
