import type { UnitSet } from '../amounts/unitSystem';
import { percent } from '../words/chartFormat';
import { estimateWithUnit, timesWords, twoFigures } from '../words/figures';

/** A number of a caution in the units the person reads. */
export function cautionFigure(value: number, unit: string, units: UnitSet): string {
  switch (unit) {
    case 'ratio':
      return `${timesWords(value)} what the crop can use`;
    case 'share':
      return percent(value);
    case 'mm':
      return estimateWithUnit(value, units.depth);
    case 'g/m2':
      return estimateWithUnit(value, units.nitrogenPerArea);
    case 'deg C':
      return estimateWithUnit(value, units.temperature);
    case 'C:N':
      return `${twoFigures(value)} of carbon to one of nitrogen`;
    default:
      return `${twoFigures(value)} ${unit}`.trim();
  }
}
