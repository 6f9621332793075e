import type { LotInput } from '../../../app/core/lawn/lotInput';
import type { Cited } from '../../../app/core/reference';

export const spread = (low: number, typical: number, high: number, unit = ''): Cited => ({
  low,
  typical,
  high,
  unit,
  source: 'Test2000',
  place: 'made for the test',
  standing: 'assumed',
});
export const exact = (value: number, unit = ''): Cited => spread(value, value, value, unit);

/** Ordinary clippings as the material table has them: 250 (150-400) kg/m3, 80 (70-88) % water, 3.4 (2-6) % N, 44 % C. */
export const ordinary: LotInput = {
  quantity: { kind: 'containers', count: 1, containerId: 'bag' },
  stuff: {
    nitrogenPercent: spread(2, 3.4, 6, '%'),
    carbonFraction: 0.44,
    moisturePercent: spread(70, 80, 88, '%'),
    densityKgPerM3: spread(150, 250, 400, 'kg/m3'),
  },
  containerLitres: 45,
  weighed: null,
  moistureNowPercent: spread(70, 80, 88, '%'),
  outsideWater: exact(0),
  certainty: exact(1),
  fullness: spread(0.85, 1, 1.15),
  dryMassPerCentimetre: spread(4, 8, 13, 'g/m2/cm'),
  depthFactor: spread(0.6, 1, 1.6),
  areaM2: 6,
};

/** Damp and soaked: water outside, kg per kg dry matter. */
export const damp = spread(0, 0.56, 1.5);
export const soaked = spread(1, 1.67, 4);

/** "Sorrel Lane": the 45 L bag weighed full at 11.3 kg, dry. */
export const weighedBag = { litres: 45, kilograms: 11.3, outsideWater: exact(0) };
