import { likelyDryKilogramsPerLitre, likelyLot } from '../core/lawn/clippings';
import type { LotInput, WeighedContainer } from '../core/lawn/lotInput';
import { certaintyFactors, fullness } from '../tables/certainty';
import {
  depthDensityFactor,
  dryMassPerCentimetre,
  moistureRow,
  outsideWater,
} from '../tables/lawns';
import type { MaterialValues } from './materialValues';
import { rowOrMeasured } from './measuredRow';
import type { Amount, Container, Garden, Quantity, Wetness } from './schema';

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

const isClippings = (material: MaterialValues): boolean => material.row.id.startsWith('grass-');

/** A weighed container says something of this material: clippings of any kind, or the very same stuff. */
function weighedFor(container: Container, material: MaterialValues): boolean {
  if (!container.weighed) return false;
  const { of } = container.weighed;
  return of === undefined ? isClippings(material) : of === material.id || of === material.row.id;
}

/**
 * The container whose weight gives the dry matter of a litre: the one counted in if it was weighed
 * with this, else for clippings the one weighed last (the same grass in a bucket), else none.
 */
export function weighedContainerOf(
  garden: Pick<Garden, 'containers'>,
  material: MaterialValues,
  quantity: Quantity,
): Container | null {
  const weighed = garden.containers.filter((one) => weighedFor(one, material));
  const own =
    quantity.kind === 'containers'
      ? weighed.find(({ id }) => id === quantity.containerId)
      : undefined;
  if (own) return own;
  if (!isClippings(material)) return null;
  const [latest] = [...weighed].sort((one, other) =>
    (one.weighed?.date ?? '') < (other.weighed?.date ?? '') ? 1 : -1,
  );
  return latest ?? null;
}

/** Everything the sum of a lot needs, as rows: for its likely mass and for its ranges alike. */
export function lotInputOf(
  garden: Pick<Garden, 'containers'>,
  { quantity, certainty }: Pick<Amount, 'quantity' | 'certainty'>,
  material: MaterialValues,
  { condition, wetness }: Handling,
  bedAreaM2: number | null,
): LotInput {
  const { row } = material;
  const moisturePercent = rowOrMeasured(row.moisturePercent, material.moisture * 100);
  const container = weighedContainerOf(garden, material, quantity);
  const weighed: WeighedContainer | null = container?.weighed
    ? {
        litres: container.litres,
        kilograms: container.weighed.kilograms,
        outsideWater: outsideWater[container.weighed.wetness],
      }
    : null;
  const counted =
    quantity.kind === 'containers'
      ? garden.containers.find(({ id }) => id === quantity.containerId)
      : undefined;
  return {
    quantity,
    stuff: {
      nitrogenPercent: rowOrMeasured(row.nitrogenPercent, material.nitrogen * 100),
      carbonFraction: material.carbon,
      moisturePercent,
      densityKgPerM3: rowOrMeasured(row.densityKgPerM3, material.densityKgPerM3),
    },
    containerLitres: counted?.litres ?? null,
    weighed,
    moistureNowPercent: moistureRow(
      { materialClass: row.materialClass, moisturePercent },
      condition,
      'dry',
    ),
    outsideWater: outsideWater[wetness],
    certainty: certaintyFactors[certainty],
    fullness,
    dryMassPerCentimetre,
    depthFactor: depthDensityFactor,
    areaM2: bedAreaM2,
  };
}

/**
 * Likely mass of an amount of a material (`likelyLot` has the sums).
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
  const input = lotInputOf(garden, { quantity, certainty: 'plain' }, material, handling, bedAreaM2);
  const { dryKilograms, freshKilograms, litres } = likelyLot(input);
  if (isClippings(material) || !input.weighed) return { dryKilograms, freshKilograms, litres };
  const loose = likelyDryKilogramsPerLitre(input.stuff, null);
  return {
    dryKilograms,
    freshKilograms,
    litres: loose > 0 ? Math.max(litres, dryKilograms / loose) : litres,
  };
}
