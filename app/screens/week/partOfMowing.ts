import { clippingsOf } from '../../document/materialValues';
import { massOf } from '../../document/layerMass';
import { mowingMass } from '../../document/accounts';
import type { Garden, Mowing, Quantity } from '../../document/schema';
import { countOf } from '../../words/figures';
import type { Shown } from '../shown';

/** A part of a mowing in the words it was logged in: "1 1/2 bags", "4 kg". */
export function partOfMowing(
  garden: Garden,
  mowing: Mowing,
  dryKilograms: number,
  shown: Shown,
): string {
  const whole = mowingMass(garden, mowing);
  const share = whole.dryKilograms > 0 ? dryKilograms / whole.dryKilograms : 0;
  const { quantity } = mowing.amount;
  if (quantity.kind === 'containers') {
    const container = garden.containers.find(({ id }) => id === quantity.containerId);
    if (container) return countOf(share * quantity.count, container.name, container.plural);
  }
  if (quantity.kind === 'volume')
    return shown.estimate(share * quantity.litres, shown.units.volume);
  return shown.estimate(share * whole.freshKilograms, shown.units.mass);
}

/** The same part as a quantity in the kind of measure the mowing was logged in. */
export function quantityOfPart(garden: Garden, mowing: Mowing, dryKilograms: number): Quantity {
  const whole = mowingMass(garden, mowing);
  const share = whole.dryKilograms > 0 ? dryKilograms / whole.dryKilograms : 0;
  const { quantity } = mowing.amount;
  if (quantity.kind === 'containers') return { ...quantity, count: share * quantity.count };
  if (quantity.kind === 'volume') return { ...quantity, litres: share * quantity.litres };
  return { kind: 'mass', kilograms: share * whole.freshKilograms };
}

/** Fresh weight of a dry amount of a mowing's clippings, as wet as they came off [kg]. */
export function freshOf(garden: Garden, mowing: Mowing, dryKilograms: number): number {
  const material = clippingsOf(garden, mowing);
  const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
  const one = massOf(garden, { kind: 'mass', kilograms: 1 }, material, handling, null);
  return one.dryKilograms > 0 ? dryKilograms / one.dryKilograms : 0;
}
