import { browns } from './materials/browns';
import { clippings } from './materials/clippings';
import { composts } from './materials/composts';
import { greens } from './materials/greens';
import { leaves } from './materials/leaves';
import { manures } from './materials/manures';
import { meals } from './materials/meals';
import { wood } from './materials/wood';
import type { MaterialRow } from './shapes';

/** What can be laid, hoed or dug in, by id. */
export const materials = {
  ...clippings,
  ...greens,
  ...browns,
  ...leaves,
  ...wood,
  ...composts,
  ...manures,
  ...meals,
} as const satisfies Record<string, MaterialRow>;

export type MaterialId = keyof typeof materials;

/** Every material, in the order of the tables. */
export const materialRows: readonly MaterialRow[] = Object.values(materials);

/** The material of that id; undefined when the tables do not have it. */
export const materialOf = (id: string): MaterialRow | undefined =>
  Object.hasOwn(materials, id) ? materials[id as MaterialId] : undefined;

/**
 * Carbon a kind of material can hold, in per cent of dry matter. A printed pair of nitrogen and
 * C:N outside keeps its nitrogen and takes a C:N worked out from a believable carbon. Manures and
 * meals are little rotted: they hold what plants hold. Trimmings bring earth with them.
 */
export const carbonBounds = {
  plant: { low: 35, high: 55 },
  'wood and paper': { low: 40, high: 60 },
  'compost and leaf mould': { low: 18, high: 36 },
  'seaweed and earthy trimmings': { low: 25, high: 45 },
} as const;

export type CarbonKind = keyof typeof carbonBounds;

const paper: readonly string[] = ['paper-office', 'newspaper', 'cardboard'];
const earthy: readonly string[] = ['seaweed', 'yard-trimmings-mixed'];

/** Which bounds hold for a material. */
export function carbonKindOf({ id }: Pick<MaterialRow, 'id'>): CarbonKind {
  if (Object.hasOwn(composts, id)) return 'compost and leaf mould';
  if (Object.hasOwn(wood, id) || paper.includes(id)) return 'wood and paper';
  return earthy.includes(id) ? 'seaweed and earthy trimmings' : 'plant';
}
