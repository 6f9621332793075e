import { clippingsMinerals } from './lawns';
import { mineralsOf, type MineralRows } from './offerMinerals';

/** Phosphorus and potassium of a material of the tables, clippings among them, % of dry matter. */
export const materialMinerals = (
  materialId: string,
): Pick<MineralRows, 'phosphorusPercent' | 'potassiumPercent'> =>
  materialId.startsWith('grass-') ? clippingsMinerals : mineralsOf(materialId);
