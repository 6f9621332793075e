import { cropOf } from '../tables/crops';
import { materialOf } from '../tables/materials';

/** Which ids of the tables a garden may point at. */
export interface KnownRows {
  hasCrop(id: string): boolean;
  hasMaterial(id: string): boolean;
}

export const knownRows: KnownRows = {
  hasCrop: (id) => cropOf(id) !== undefined,
  hasMaterial: (id) => materialOf(id) !== undefined,
};
