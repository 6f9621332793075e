import type { ReadingContext } from '../amounts/amount';
import { amountText } from '../amounts/amountText';
import { readAmount } from '../amounts/readAmount';
import { readShare } from '../amounts/readShare';
import { unitsAnswering } from '../amounts/unitSystem';
import type { Amount, Garden } from '../document/schema';
import { countOf } from '../words/figures';
import type { Shown } from './shown';

/**
 * An amount in tidy words: "about 2 bags" for "2 bags roughly, last Saturday, dry". In the unit it
 * was typed in; what was typed besides (day, lawn, wetness) stands in fields of its own.
 */
export function amountWords(
  { text, quantity, certainty }: Amount,
  garden: Pick<Garden, 'containers'>,
  context: ReadingContext,
  shown: Pick<Shown, 'system' | 'estimate' | 'units'>,
): string {
  const about = certainty === 'plain' ? '' : 'about ';
  const reading = readAmount(text, quantity.kind === 'depth' ? 'layer' : 'mowing', {
    ...context,
    bareNumber: true,
  });
  const isAsTyped =
    reading.ok && readShare(text) === null && reading.value.amount.quantity.kind === quantity.kind;
  if (quantity.kind === 'containers' && !isAsTyped) {
    const container = garden.containers.find(({ id }) => id === quantity.containerId);
    return about + (container ? countOf(quantity.count, container.name, container.plural) : text);
  }
  const typed = isAsTyped ? reading.value.unit : null;
  if (typed !== null || quantity.kind === 'containers')
    return (
      about + (amountText(quantity, unitsAnswering(shown.system, typed), garden.containers) ?? text)
    );
  const { estimate, units } = shown;
  switch (quantity.kind) {
    case 'volume':
      return about + estimate(quantity.litres, units.volume);
    case 'mass':
      return about + estimate(quantity.kilograms, units.mass);
    case 'depth':
      return about + estimate(quantity.millimetres, units.depth);
    case 'mown':
      return `${about}${estimate(quantity.areaM2, units.area)}, ${estimate(quantity.heightMillimetres, units.depth)} off`;
  }
}
