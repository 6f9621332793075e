import type { Coefficients } from '../season/coefficients';

/**
 * Organic nitrogen of 0-30 cm, g/m2 = OM/1.724/CN x bulk density x 0.30 m.
 *
 * @param organicMatterPercent per cent of dry soil
 * @source arithmetic; 1.724 and C:N 11 are recalled conventions
 */
export function soilOrganicNitrogen(
  organicMatterPercent: number,
  bulkDensityKgPerL: number,
  c: Coefficients,
): number {
  const soilGrams = bulkDensityKgPerL * 1000 * 0.3 * 1000;
  return (
    ((organicMatterPercent / 100) * soilGrams) / c.organicMatterPerCarbon / c.soilCarbonToNitrogen
  );
}

/** Factor on soil life by moisture: 0.2 at wilting point to 1 at field capacity (linear, recalled). */
export const moistureFactor = (relativeAvailableWater: number): number =>
  0.2 + 0.8 * Math.min(1, Math.max(0, relativeAvailableWater));
