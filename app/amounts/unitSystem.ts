import {
  gramsPerM2PerPoundPer1000SquareFeet,
  kilogramsPerOunce,
  kilogramsPerPound,
  litresPerGallon,
  millimetresPerFoot,
  millimetresPerInch,
  squareMetresPerSquareFoot,
} from '../core/conversions';
import type { ShownUnit } from '../core/shownUnit';
import type { TypedUnit, UnitSystem } from './amount';

/** What each quantity is shown in. Sizes are in the inside unit of `core/units.ts`; grams for nitrogen. */
export interface UnitSet {
  readonly system: UnitSystem;
  /** of kg */
  readonly mass: ShownUnit;
  /** of L */
  readonly volume: ShownUnit;
  /** of mm: layers, cover, cutting height; on a ruler, so fractions of an inch */
  readonly depth: ShownUnit;
  /** of mm: rain and watering; in a gauge, so decimals of an inch */
  readonly rain: ShownUnit;
  /** of m */
  readonly length: ShownUnit;
  /** of m2 */
  readonly area: ShownUnit;
  /** of deg C */
  readonly temperature: ShownUnit;
  /** of g: nitrogen in a mowing or a layer */
  readonly nitrogen: ShownUnit;
  /** of g/m2: nitrogen on a bed */
  readonly nitrogenPerArea: ShownUnit;
  /** of kg/m2: harvest */
  readonly yieldPerArea: ShownUnit;
}

const unit = (
  symbol: string,
  size: number,
  one: string,
  many: string,
  more: Partial<ShownUnit> = {},
): ShownUnit => ({ symbol, size, zero: 0, style: 'decimal', one, many, ...more });

export const metricUnits: UnitSet = {
  system: 'metric',
  mass: unit('kg', 1, 'kilogram', 'kilograms'),
  volume: unit('L', 1, 'litre', 'litres'),
  depth: unit('mm', 1, 'millimetre', 'millimetres'),
  rain: unit('mm', 1, 'millimetre', 'millimetres'),
  length: unit('m', 1, 'metre', 'metres'),
  area: unit('m2', 1, 'square metre', 'square metres'),
  temperature: unit('°C', 1, 'degree Celsius', 'degrees Celsius', { style: 'whole' }),
  nitrogen: unit('g', 1, 'gram', 'grams'),
  nitrogenPerArea: unit('g/m2', 1, 'gram a square metre', 'grams a square metre'),
  yieldPerArea: unit('kg/m2', 1, 'kilogram a square metre', 'kilograms a square metre'),
};

export const usUnits: UnitSet = {
  system: 'us',
  mass: unit('lb', kilogramsPerPound, 'pound', 'pounds'),
  volume: unit('gal', litresPerGallon, 'gallon', 'gallons'),
  depth: unit('in', millimetresPerInch, 'inch', 'inches', { style: 'fraction' }),
  rain: unit('in', millimetresPerInch, 'inch', 'inches'),
  length: unit('ft', millimetresPerFoot / 1000, 'foot', 'feet'),
  area: unit('sq ft', squareMetresPerSquareFoot, 'square foot', 'square feet'),
  temperature: unit('°F', 5 / 9, 'degree Fahrenheit', 'degrees Fahrenheit', {
    zero: 32,
    style: 'whole',
  }),
  nitrogen: unit('oz', kilogramsPerOunce * 1000, 'ounce', 'ounces'),
  nitrogenPerArea: unit(
    'lb/1,000 sq ft',
    gramsPerM2PerPoundPer1000SquareFeet,
    'pound per thousand square feet',
    'pounds per thousand square feet',
  ),
  yieldPerArea: unit(
    'lb per sq ft',
    kilogramsPerPound / squareMetresPerSquareFoot,
    'pound a square foot',
    'pounds a square foot',
  ),
};

/** The units a garden is shown in. */
export const unitsOf = (system: UnitSystem): UnitSet => (system === 'us' ? usUnits : metricUnits);

/**
 * The garden's units, except that an answer goes back in the unit that came in: a weight typed in
 * pounds is answered in pounds, a volume typed in bushels in bushels.
 *
 * @param typed  `unit` of a reading; null leaves the garden's units as they are
 */
export function unitsAnswering(system: UnitSystem, typed: TypedUnit | null): UnitSet {
  const units = unitsOf(system);
  if (!typed) return units;
  const quantity = typed.dimension === 'length' ? 'depth' : typed.dimension;
  return { ...units, [quantity]: typed.shown };
}
