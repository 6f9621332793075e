import { kilogramsPerPound, squareMetresPerAcre } from '../../../app/core/conversions';
import { soilOrganicNitrogen } from '../../../app/core/soil/organicMatter';
import { gramsPerM2FromMgPerKg } from '../../../app/core/units';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { usualBulkDensity } from '../../../app/tables/soils';

const gramsPerM2PerPoundAnAcre = (1000 * kilogramsPerPound) / squareMetresPerAcre;

/** Organic nitrogen of 10 cm of soil, t/ha, from its carbon in per cent. */
export function organicNitrogenOf10Centimetres(
  carbonPercent: number,
  kilogramsPerLitre: number,
  carbonToNitrogen: number,
): number {
  const c = { ...typicalCoefficients(), soilCarbonToNitrogen: carbonToNitrogen };
  const matterPercent = carbonPercent * c.organicMatterPerCarbon;
  return soilOrganicNitrogen(matterPercent, kilogramsPerLitre, c) / 3 / 100;
}

/** Pounds of nitrate-N an acre from a laboratory's mg/kg. */
export const poundsAnAcre = (
  mgPerKg: number,
  depthCentimetres: number,
  kilogramsPerLitre: number = usualBulkDensity.typical,
): number =>
  gramsPerM2FromMgPerKg(mgPerKg, kilogramsPerLitre, depthCentimetres) / gramsPerM2PerPoundAnAcre;

/** What the program answers, in the order of the table. */
export const ours: readonly number[] = [
  organicNitrogenOf10Centimetres(1.3, 1.5, 10) * 10,
  organicNitrogenOf10Centimetres(1.3, 1.5, 10),
  poundsAnAcre(1, 6 * 2.54),
  poundsAnAcre(8, 12 * 2.54),
  poundsAnAcre(8, 12 * 2.54),
];
