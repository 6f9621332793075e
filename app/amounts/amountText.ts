import type { Quantity } from '../core/lawn/quantity';
import { toShown, type ShownUnit } from '../core/shownUnit';
import type { KnownContainer, UnitSystem } from './amount';
import { unitsOf, type UnitSet } from './unitSystem';

const bottoms = [2, 3, 4, 8, 16];

/** 2.5 as "2 1/2" where it is a simple fraction, else as a decimal with at most six figures. */
export function numberText(value: number, fractions: boolean): string {
  const whole = Math.floor(value + 1e-9);
  const part = value - whole;
  if (fractions && Math.abs(part) > 1e-9)
    for (const bottom of bottoms) {
      const top = Math.round(part * bottom);
      if (top === 0 || Math.abs(part * bottom - top) > 1e-9 * bottom * Math.max(1, value)) continue;
      return whole > 0 ? `${whole} ${top}/${bottom}` : `${top}/${bottom}`;
    }
  return decimalText(value, 6);
}

/** A decimal without powers of ten: what is too small to be typed is nought. */
export const decimalText = (value: number, figures: number): string =>
  Math.abs(value) < 1e-6 ? '0' : String(Number(value.toPrecision(figures)));

const withUnit = (inside: number, unit: ShownUnit): string =>
  `${numberText(toShown(inside, unit), unit.style === 'fraction')} ${unit.symbol}`;

/** "1/2 bag", "1 bag", "2 1/2 bags". */
export function containersText(count: number, container: KnownContainer): string {
  return `${numberText(count, true)} ${count <= 1 ? container.name : container.plural}`;
}

/**
 * A quantity as it would be typed: `readAmount` gives the same quantity back, to six figures.
 * For a field whose value was changed otherwise than by typing; what was typed is kept as it is.
 *
 * @param units  the garden's system, or a whole set where one unit is to stay as it came in
 * @returns the text, or null when the container is not known
 */
export function amountText(
  quantity: Quantity,
  units: UnitSystem | UnitSet,
  containers: readonly KnownContainer[],
): string | null {
  const set = typeof units === 'string' ? unitsOf(units) : units;
  switch (quantity.kind) {
    case 'containers': {
      const container = containers.find((known) => known.id === quantity.containerId);
      return container ? containersText(quantity.count, container) : null;
    }
    case 'volume':
      return withUnit(quantity.litres, set.volume);
    case 'mass':
      return withUnit(quantity.kilograms, set.mass);
    case 'depth':
      return withUnit(quantity.millimetres, set.depth);
    case 'mown':
      return `${withUnit(quantity.areaM2, set.area)}, ${withUnit(quantity.heightMillimetres, set.depth)} off`;
  }
}
