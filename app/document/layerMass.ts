import { dryMassPerCentimetre, moistureRow } from '../tables/lawns';
import type { MaterialValues } from './materialValues';
import type { Container, Garden, Quantity, Wetness } from './schema';

export type Condition = 'just cut' | 'limp' | 'crisp';

/** What an amount weighs and fills, at likely values. */
export interface Mass {
  readonly dryKilograms: number;
  readonly freshKilograms: number;
  /** as it is handled and laid, before it settles */
  readonly litres: number;
}

/** How a lot of a material is: what its weight depends on. */
export interface Handling {
  readonly condition: Condition;
  readonly wetness: Wetness;
}

/** Share of a fresh weight that is dry matter. Wetness and wilting change the weight, not the dry matter. */
function dryShare(material: MaterialValues, { condition, wetness }: Handling): number {
  const base = { ...material.row.moisturePercent, typical: material.moisture * 100 };
  const row = { materialClass: material.row.materialClass, moisturePercent: base };
  return 1 - moistureRow(row, condition, wetness).typical / 100;
}

const isClippings = (material: MaterialValues): boolean => material.row.id.startsWith('grass-');

/** A weighed container says something of this material: clippings of any kind, or the very same stuff. */
function weighedFor(container: Container, material: MaterialValues): boolean {
  if (!container.weighed) return false;
  const { of } = container.weighed;
  return of === undefined ? isClippings(material) : of === material.id || of === material.row.id;
}

function weighedDryPerLitre(container: Container, material: MaterialValues): number | null {
  const { weighed, litres } = container;
  if (!weighed || !weighedFor(container, material)) return null;
  return (
    (weighed.kilograms / litres) *
    dryShare(material, { condition: 'just cut', wetness: weighed.wetness })
  );
}

const tableDryPerLitre = (material: MaterialValues): number =>
  (material.densityKgPerM3 / 1000) * (1 - material.moisture);

/**
 * Dry matter in a litre as it is handled [kg/L]: the weighed container's own, else for clippings
 * that of the container weighed last (the same grass in a bucket), else the table's density.
 */
export function dryKilogramsPerLitre(
  garden: Pick<Garden, 'containers'>,
  material: MaterialValues,
  container: Container | null,
): number {
  const own = container ? weighedDryPerLitre(container, material) : null;
  if (own !== null) return own;
  const [latest] = garden.containers
    .filter((one) => weighedFor(one, material))
    .sort((one, other) => ((one.weighed?.date ?? '') < (other.weighed?.date ?? '') ? 1 : -1));
  const borrowed = latest && isClippings(material) ? weighedDryPerLitre(latest, material) : null;
  return borrowed ?? tableDryPerLitre(material);
}

/**
 * Likely mass of an amount of a material.
 *
 * - containers and volumes: litres x dry matter per litre
 * - weight: less the water it holds in its condition and wetness
 * - area mown x height off x dry matter per cm
 * - depth: 1 mm on 1 m2 is 1 L
 *
 * What is packed in a container spreads out on the bed, so no material but clippings lies denser
 * than the table says it is handled.
 *
 * @param bedAreaM2 for a depth; throws when a depth comes without a bed
 */
export function massOf(
  garden: Pick<Garden, 'containers'>,
  quantity: Quantity,
  material: MaterialValues,
  handling: Handling,
  bedAreaM2: number | null,
): Mass {
  const container =
    quantity.kind === 'containers'
      ? (garden.containers.find(({ id }) => id === quantity.containerId) ?? null)
      : null;
  const perLitre = dryKilogramsPerLitre(garden, material, container);
  const share = dryShare(material, handling);
  const dryKilograms = ((): number => {
    switch (quantity.kind) {
      case 'volume':
        return quantity.litres * perLitre;
      case 'mass':
        return quantity.kilograms * share;
      case 'containers':
        if (!container) throw new Error(`No container ${quantity.containerId}`);
        return quantity.count * container.litres * perLitre;
      case 'mown':
        return (
          (quantity.areaM2 * (quantity.heightMillimetres / 10) * dryMassPerCentimetre.typical) /
          1000
        );
      case 'depth':
        if (bedAreaM2 === null) throw new Error('A depth is of a bed');
        return quantity.millimetres * bedAreaM2 * perLitre;
    }
  })();
  const loose = isClippings(material) ? perLitre : Math.min(perLitre, tableDryPerLitre(material));
  return {
    dryKilograms,
    freshKilograms: dryKilograms / share,
    litres: loose > 0 ? dryKilograms / loose : 0,
  };
}
