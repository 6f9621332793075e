import { kilogramsPerPound, squareMetresPerAcre } from '../conversions';
import { mgPerKgFromGramsPerM2 } from '../units';

/** Units a soil laboratory gives nitrate in. ppm is mg/kg. */
export const nitrateUnits = ['mg/kg', 'lb/acre', 'kg/ha', 'g/m2'] as const;
export type NitrateUnit = (typeof nitrateUnits)[number];

/**
 * What was weighed: the nitrogen in the nitrate, as American laboratories say it, or the whole
 * nitrate, 4.43 times as heavy.
 */
export type NitrateForm = 'nitrogen' | 'nitrate';

/** Nitrogen in nitrate by mass: 14.007 of 62.005 (atomic masses, a definition). */
export const nitrogenInNitrate = 14.007 / 62.005;

/** g/m2 in one kg/ha and in one lb/acre (definitions). */
export const gramsPerM2PerKilogramPerHectare = 0.1;
export const gramsPerM2PerPoundPerAcre = (kilogramsPerPound * 1000) / squareMetresPerAcre;

const gramsPerM2: Readonly<Record<Exclude<NitrateUnit, 'mg/kg'>, number>> = {
  'lb/acre': gramsPerM2PerPoundPerAcre,
  'kg/ha': gramsPerM2PerKilogramPerHectare,
  'g/m2': 1,
};

/**
 * Nitrate-N of a soil test as mg per kg of dry soil, the mean of the depth that was sampled.
 *
 *     mg/kg = 100 A / (rho d)        A g/m2, rho kg/L, d cm
 *
 * @param depthCentimetres what the sample was taken to; an amount for an area is of all of it
 * @param bulkDensityKgPerL of the bed's own soil
 * @source arithmetic; the same as mg/kg x density x depth / 10 = kg/ha
 * @example nitrateFromTest(78, 'kg/ha', 30, 1.3) // 20
 */
export function nitrateFromTest(
  value: number,
  unit: NitrateUnit,
  depthCentimetres: number,
  bulkDensityKgPerL: number,
  form: NitrateForm = 'nitrogen',
): number {
  const nitrogen = form === 'nitrate' ? value * nitrogenInNitrate : value;
  if (unit === 'mg/kg') return nitrogen;
  return mgPerKgFromGramsPerM2(nitrogen * gramsPerM2[unit], bulkDensityKgPerL, depthCentimetres);
}

/** The same reading in another unit, for showing what a laboratory would print. */
export function nitrateAsTest(
  mgPerKg: number,
  unit: NitrateUnit,
  depthCentimetres: number,
  bulkDensityKgPerL: number,
): number {
  if (unit === 'mg/kg') return mgPerKg;
  return (mgPerKg * bulkDensityKgPerL * depthCentimetres) / 100 / gramsPerM2[unit];
}
