import { materialById } from './materialValues';
import type { Garden } from './schema';

/** Bag that leaves are counted in: the one a store of browns was written down in; null where none was [L]. */
export function leafBagOf(garden: Garden): number | null {
  for (const { amount, materialId } of garden.stock) {
    if (amount?.quantity.kind !== 'containers') continue;
    if (!materialById(garden, materialId).row.id.startsWith('leaves-')) continue;
    const { containerId } = amount.quantity;
    const container = garden.containers.find(({ id }) => id === containerId);
    if (container) return container.litres;
  }
  return null;
}
