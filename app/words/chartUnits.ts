import { kilogramsPerPound, litresPerCubicFoot } from '../core/conversions';
import { twoFigures } from './figures';

/** How one quantity is shown: inside unit x `perInside` = shown unit. */
export interface ChartUnit {
  readonly short: string;
  /** spelled out, for screen readers and titles */
  readonly long: string;
  readonly perInside: number;
  /** shown values are a whole number of steps of 10^-decimals */
  readonly decimals: number;
  /** words say halves, quarters, eighths, as on a ruler in inches; scales keep decimals */
  readonly onRuler?: true;
}

/** What charts need to know of a person's units and dates: plain data, chosen by the caller. */
export interface ChartUnits {
  /** from g N per m2 */
  readonly nitrogen: ChartUnit;
  /** from g N, on the whole bed */
  readonly nitrogenOnBed: ChartUnit;
  /** from mm of material */
  readonly depth: ChartUnit;
  /** from mm of rain */
  readonly rain: ChartUnit;
  /** from °C: a value is shown as `celsius * perInside + zero` */
  readonly warmth: ChartUnit & { readonly zero: number };
  /** how deep the soil is that a laboratory's sample stands for: 0-30 cm */
  readonly topSoil: string;
  readonly dayFirst: boolean;
}

export const metricChartUnits: ChartUnits = {
  nitrogen: { short: 'g/m²', long: 'grams per square metre', perInside: 1, decimals: 1 },
  nitrogenOnBed: { short: 'g', long: 'grams', perInside: 1, decimals: 0 },
  depth: { short: 'mm', long: 'millimetres', perInside: 1, decimals: 0 },
  rain: { short: 'mm', long: 'millimetres', perInside: 1, decimals: 0 },
  warmth: { short: '°C', long: 'degrees Celsius', perInside: 1, zero: 0, decimals: 0 },
  topSoil: '30 cm',
  dayFirst: true,
};

// an inch is 25.4 mm, a foot 0.3048 m, a pound 453.59237 g: exact by definition
const squareMetresPerThousandSquareFeet = 1000 * 0.3048 ** 2;
const ouncesPerGram = 16 / 453.592_37;

export const usChartUnits: ChartUnits = {
  nitrogen: {
    short: 'lb/1,000 sq ft',
    long: 'pounds per thousand square feet',
    perInside: squareMetresPerThousandSquareFeet / 453.592_37,
    decimals: 2,
  },
  nitrogenOnBed: { short: 'oz', long: 'ounces', perInside: ouncesPerGram, decimals: 1 },
  depth: { short: 'in', long: 'inches', perInside: 1 / 25.4, decimals: 2, onRuler: true },
  rain: { short: 'in', long: 'inches', perInside: 1 / 25.4, decimals: 2 },
  // exact by definition
  warmth: { short: '°F', long: 'degrees Fahrenheit', perInside: 1.8, zero: 32, decimals: 0 },
  // 11.8 in
  topSoil: '12 in',
  dayFirst: false,
};

/** The units of a garden's own setting. */
export const chartUnits = (shown: 'metric' | 'us'): ChartUnits =>
  shown === 'us' ? usChartUnits : metricChartUnits;

/** What dry soil weighs, for reading: "1.3 kg a litre", "81 lb a cubic foot". */
export const soilWeightWords = (kilogramsPerLitre: number, units: ChartUnits): string =>
  units.dayFirst
    ? `${twoFigures(kilogramsPerLitre)} kg a litre`
    : `${twoFigures((kilogramsPerLitre * litresPerCubicFoot) / kilogramsPerPound)} lb a cubic foot`;
