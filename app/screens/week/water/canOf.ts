import type { UnitSystem } from '../../../amounts/amount';
import { litresPerGallon } from '../../../core/conversions';
import type { Garden } from '../../../document/schema';
import type { Can } from '../../../words/waterWords';

const usual: Readonly<Record<UnitSystem, Can>> = {
  metric: { litres: 10, name: 'can', plural: 'cans', size: 'of 10 L' },
  us: { litres: 2 * litresPerGallon, name: 'can', plural: 'cans', size: 'of 2 gal' },
};

/** The garden's own watering can, by its name; else a usual one, its size said. */
export function canOf(garden: Pick<Garden, 'containers'>, system: UnitSystem): Can {
  const own = garden.containers.find(({ name }) => /\bcan\b/i.test(name));
  return own ? { litres: own.litres, name: own.name, plural: own.plural, size: '' } : usual[system];
}
