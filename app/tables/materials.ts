import { browns } from './materials/browns';
import { clippings } from './materials/clippings';
import { composts } from './materials/composts';
import { greens } from './materials/greens';
import type { MaterialRow } from './shapes';

/** What can be laid, hoed or dug in, by id. */
export const materials = {
  ...clippings,
  ...greens,
  ...browns,
  ...composts,
} as const satisfies Record<string, MaterialRow>;

export type MaterialId = keyof typeof materials;

/** Every material, in the order of the tables. */
export const materialRows: readonly MaterialRow[] = Object.values(materials);

/** The material of that id; undefined when the tables do not have it. */
export const materialOf = (id: string): MaterialRow | undefined =>
  Object.hasOwn(materials, id) ? materials[id as MaterialId] : undefined;

/**
 * Carbon a kind of material can hold, in per cent of dry matter. A printed pair of nitrogen and
 * C:N outside keeps its nitrogen and takes a C:N worked out from a believable carbon.
 */
export const carbonBounds = {
  plant: { low: 35, high: 55 },
  'wood and paper': { low: 40, high: 60 },
  'compost and leaf mould': { low: 18, high: 36 },
} as const;

export type CarbonKind = keyof typeof carbonBounds;

const paper: readonly string[] = ['paper-office', 'newspaper', 'cardboard'];

/** Which bounds hold for a material. */
export const carbonKindOf = (material: MaterialRow): CarbonKind =>
  material.materialClass === 'slow'
    ? 'compost and leaf mould'
    : paper.includes(material.id) || material.materialClass === 'inert'
      ? 'wood and paper'
      : 'plant';
