import { toShown, type ShownUnit } from '../core/shownUnit';
import type { MeasureField, UnitSystem } from './amount';
import { decimalText, numberText } from './amountText';
import { unitsOf, type UnitSet } from './unitSystem';

export type SingleMeasure = Exclude<MeasureField, 'water'>;

/** The unit of the garden's system that a field is shown in, and that a number alone is taken in. */
export function measureUnit(measure: SingleMeasure, units: UnitSet): ShownUnit {
  switch (measure) {
    case 'weight':
      return units.mass;
    default:
      return units[measure];
  }
}

/**
 * A measure of the garden as it would be typed: `readMeasure` gives it back, to five figures.
 * @param inside  in the field's inside unit
 */
export function measureText(inside: number, measure: SingleMeasure, units: UnitSystem): string {
  const unit = measureUnit(measure, unitsOf(units));
  const shown = toShown(inside, unit);
  const fraction = unit.style === 'fraction' ? numberText(shown, true) : '';
  const isFraction = fraction.includes('/') || Number.isInteger(Number(fraction || 'none'));
  return `${isFraction ? fraction : decimalText(shown, 5)} ${unit.symbol}`;
}
