import type { UnitSystem } from '../../../amounts/amount';
import { amountText } from '../../../amounts/amountText';
import { kilogramsPerPound, litresPerGallon, millimetresPerInch } from '../../../core/conversions';
import type { Bed, Container, Quantity } from '../../../document/schema';

/** Amounts that a slider walks through: whole multiples of a step, in the person's own unit. */
export interface AmountSlide {
  /** steps from the left end, 1 - `most` */
  readonly at: number;
  readonly most: number;
  /** the amount as it would be typed */
  readonly textOf: (steps: number) => string;
}

/** The slider ends at a layer so deep, or a little past what was typed. */
const deepestMillimetres = 40;
/** ... and as heavy as fresh clippings of that depth */
const heaviestKgPerM2 = 6;
const fewestSteps = 8;

interface Steps {
  /** of `quantityOf`, for one step */
  readonly step: number;
  readonly value: number;
  readonly most: number;
  readonly quantityOf: (value: number) => Quantity;
}

const depthSteps = (system: UnitSystem, millimetres: number): Steps => ({
  step: system === 'us' ? millimetresPerInch / 4 : 2,
  value: millimetres,
  most: deepestMillimetres,
  quantityOf: (value) => ({ kind: 'depth', millimetres: value }),
});

function stepsOf(
  quantity: Quantity | null,
  containers: readonly Container[],
  bed: Bed,
  system: UnitSystem,
): Steps {
  const mostLitres = deepestMillimetres * bed.areaM2;
  switch (quantity?.kind) {
    case 'containers': {
      const container = containers.find(({ id }) => id === quantity.containerId);
      return {
        step: 0.5,
        value: quantity.count,
        most: mostLitres / (container?.litres ?? mostLitres),
        quantityOf: (count) => ({ ...quantity, count }),
      };
    }
    case 'volume':
      return {
        step: system === 'us' ? litresPerGallon : 5,
        value: quantity.litres,
        most: mostLitres,
        quantityOf: (litres) => ({ kind: 'volume', litres }),
      };
    case 'mass':
      return {
        step: system === 'us' ? kilogramsPerPound : 0.5,
        value: quantity.kilograms,
        most: heaviestKgPerM2 * bed.areaM2,
        quantityOf: (kilograms) => ({ kind: 'mass', kilograms }),
      };
    case 'depth':
      return depthSteps(system, quantity.millimetres);
    default:
      return depthSteps(system, 0);
  }
}

/**
 * The slider beside an amount that was typed: in its container, litres, weight or depth; in depth
 * while nothing that can be read is typed.
 */
export function amountSlide(
  quantity: Quantity | null,
  containers: readonly Container[],
  bed: Bed,
  system: UnitSystem,
): AmountSlide {
  const { step, value, most, quantityOf } = stepsOf(quantity, containers, bed, system);
  const at = Math.max(1, Math.round(value / step));
  return {
    at,
    most: Math.max(fewestSteps, Math.ceil(most / step), at),
    textOf: (steps) => amountText(quantityOf(step * steps), system, containers) ?? '',
  };
}
