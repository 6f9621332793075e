import { mowingsCountedAs } from './usedWhere';
import type { Garden } from '../../document/schema';
import { usedByWords } from '../../words/tableWords';

/** What of a garden is of a material, by the id the garden uses. */
export interface MaterialUses {
  readonly stores: number;
  readonly layers: number;
  readonly mowings: number;
  readonly ownRows: number;
}

export function materialUses(garden: Garden, id: string): MaterialUses {
  const stores = garden.stock.filter(({ materialId }) => materialId === id);
  const storeIds = new Set(stores.map((stock) => stock.id));
  return {
    stores: stores.length,
    layers: garden.applications.filter(({ from }) =>
      from.source === 'elsewhere'
        ? from.materialId === id
        : from.source === 'stock' && storeIds.has(from.stockId),
    ).length,
    mowings: mowingsCountedAs(garden, id).length,
    ownRows: garden.materials.filter(({ basedOn }) => basedOn === id).length,
  };
}

export const materialUsesWords = (uses: MaterialUses): string =>
  usedByWords([
    [uses.mowings, 'mowing', 'mowings'],
    [uses.stores, 'store', 'stores'],
    [uses.layers, 'layer', 'layers'],
    [uses.ownRows, 'row of your own', 'rows of your own'],
  ]);

export const cropUsesWords = (garden: Garden, id: string): string =>
  usedByWords([
    [garden.plantings.filter(({ cropId }) => cropId === id).length, 'planting', 'plantings'],
  ]);
