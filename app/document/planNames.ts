import { mowingMark, type MowingMark } from './mowingMarks';
import { bagOf } from './planMeasure';
import type { Garden } from './schema';

/** What things of a garden are called, by id; the id itself where there is no such thing any more. */
export interface GardenNames {
  readonly bed: (bedId: string) => string;
  readonly lawn: (lawnId: string) => string;
  readonly stock: (stockId: string) => string;
  readonly lawnOfMowing: (mowingId: string) => string;
  /** what tells it from others of that lawn */
  readonly markOfMowing: (mowingId: string) => MowingMark;
  readonly container: (
    containerId: string,
  ) => { readonly name: string; readonly plural: string } | null;
  /** its smallest bag or box, where it has no bucket to count in */
  readonly bag: {
    readonly name: string;
    readonly plural: string;
    readonly litres: number;
  } | null;
}

const nameIn =
  (things: readonly { readonly id: string; readonly name: string }[]) =>
  (id: string): string =>
    things.find((one) => one.id === id)?.name ?? id;

/** @param units goes through untouched, for sentences that need both */
export function planNamesOf<Units>(
  garden: Garden,
  units: Units,
): GardenNames & { readonly units: Units } {
  const lawn = nameIn(garden.lawns);
  return {
    units,
    bed: nameIn(garden.beds),
    lawn,
    stock: nameIn(garden.stock),
    lawnOfMowing: (mowingId) =>
      lawn(garden.mowings.find(({ id }) => id === mowingId)?.lawnId ?? mowingId),
    markOfMowing: (mowingId) => mowingMark(garden, mowingId),
    bag: bagOf(garden),
    container: (containerId) => garden.containers.find(({ id }) => id === containerId) ?? null,
  };
}
