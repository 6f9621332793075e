import type { Field, ReadingContext, UnitSystem } from './amount';
import { containersText } from './amountText';

const examples: Readonly<Record<Field, Readonly<Record<UnitSystem, string>>>> = {
  mowing: { metric: '45 L', us: '12 gal' },
  layer: { metric: '6 mm', us: '1/4 in' },
  stock: { metric: '60 L', us: '15 gal' },
  water: { metric: '20 L', us: '5 gal' },
  rain: { metric: '12 mm', us: '1/2 in' },
  area: { metric: '9 m2', us: '100 sq ft' },
  length: { metric: '2 m', us: '6 ft' },
  depth: { metric: '6 mm', us: '1/4 in' },
  volume: { metric: '45 L', us: '12 gal' },
  weight: { metric: '11 kg', us: '25 lb' },
  temperature: { metric: '18 °C', us: '65 °F' },
};

/** An entry that the field takes: with the gardener's usual container where it counts stuff. */
export function exampleFor(field: Field, context: ReadingContext): string {
  const [usual] = context.containers;
  if (field === 'mowing' && usual) return containersText(2, usual);
  return examples[field][context.units];
}

/** The unit word alone of the example. */
export const exampleUnit = (field: Field, units: UnitSystem): string =>
  examples[field][units].replace(/^[\d/ ]+/, '');
