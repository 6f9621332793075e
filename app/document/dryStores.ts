import { materialById } from './materialValues';
import type { Garden, Stock } from './schema';

/** The table's row that grass spread out to dry becomes. */
export const dryGrass = 'grass-dried';

/** Stores of clippings that were dried. */
export const dryStores = (garden: Garden): readonly Stock[] =>
  garden.stock.filter(
    ({ role, materialId }) =>
      role === 'store' && materialById(garden, materialId).row.id === dryGrass,
  );
