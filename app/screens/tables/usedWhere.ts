import type { Garden, Mowing } from '../../document/schema';
import { isClippings } from '../../tables/lawns';
import { clippingsOf } from '../../document/materialValues';

/** A place in the garden where a row is in use, to go to. */
export type UsedPlace =
  | {
      readonly at: 'bed';
      readonly bedId: string;
      readonly name: string;
      /** of layers or plantings there, the latest first */
      readonly entries: readonly string[];
    }
  | { readonly at: 'store'; readonly id: string; readonly name: string }
  | { readonly at: 'mowings'; readonly count: number };

interface Entry {
  readonly id: string;
  readonly bedId: string;
  readonly date: string;
}

function bedsOf(garden: Garden, entries: readonly Entry[]): UsedPlace[] {
  const ofBed = new Map<string, string[]>();
  const latestFirst = [...entries].sort((one, other) => (one.date < other.date ? 1 : -1));
  for (const { bedId, id } of latestFirst) ofBed.set(bedId, [...(ofBed.get(bedId) ?? []), id]);
  return garden.beds.flatMap(({ id, name }) => {
    const own = ofBed.get(id);
    return own ? [{ at: 'bed' as const, bedId: id, name, entries: own }] : [];
  });
}

/** Mowings whose clippings are counted by a row of the tables or of one's own. */
export const mowingsCountedAs = (garden: Garden, id: string): readonly Mowing[] =>
  isClippings(garden.materials.find((own) => own.id === id)?.basedOn ?? id)
    ? garden.mowings.filter((mowing) => clippingsOf(garden, mowing).id === id)
    : [];

/** Where a material is in use: beds with layers of it, stores, mowings that count as it. */
export function placesOfMaterial(garden: Garden, id: string): readonly UsedPlace[] {
  const stores = garden.stock.filter(({ materialId }) => materialId === id);
  const storeIds = new Set(stores.map((stock) => stock.id));
  const mowings = mowingsCountedAs(garden, id);
  const layers = garden.applications.filter(({ from }) =>
    from.source === 'elsewhere'
      ? from.materialId === id
      : from.source === 'stock' && storeIds.has(from.stockId),
  );
  return [
    ...bedsOf(garden, layers),
    ...stores.map((stock) => ({ at: 'store' as const, id: stock.id, name: stock.name })),
    ...(mowings.length > 0 ? [{ at: 'mowings' as const, count: mowings.length }] : []),
  ];
}

/** Beds with plantings of a crop. */
export const placesOfCrop = (garden: Garden, id: string): readonly UsedPlace[] =>
  bedsOf(
    garden,
    garden.plantings
      .filter(({ cropId }) => cropId === id)
      .map((planting) => ({ id: planting.id, bedId: planting.bedId, date: planting.started })),
  );
