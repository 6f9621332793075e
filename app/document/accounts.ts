import { anyBed, areaOn } from './bedPast';
import { dryingRows } from '../tables/heap';
import { layerInput } from './layerInput';
import { massOf, type Mass } from './layerMass';
import { clippingsOf, materialById } from './materialValues';
import type { Application, Garden, GardenEvent, Mowing } from './schema';
import { sortedOnce } from './sortedOnce';

const bedOf = (garden: Garden, id: string) => {
  const bed = anyBed(garden, id);
  if (!bed) throw new Error(`No bed ${id}`);
  return bed;
};

/** Likely mass of a whole mowing, as it came off the mower. */
export function mowingMass(
  garden: Garden,
  mowing: Mowing,
): Mass & { readonly nitrogenGrams: number } {
  const material = clippingsOf(garden, mowing);
  const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
  const mass = massOf(garden, mowing.amount.quantity, material, handling, null);
  return { ...mass, nitrogenGrams: mass.dryKilograms * 1000 * material.nitrogen };
}

const dryOfLayer = (garden: Garden, application: Application): number => {
  const bed = bedOf(garden, application.bedId);
  return layerInput(garden, bed, application).dryKgPerM2 * areaOn(bed, application.date);
};

const layersOfMowing = sortedOnce(({ from }: Application) =>
  from.source === 'mowing' ? from.mowingId : undefined,
);

/** Where a mowing went, by dry matter, which neither wetness nor wilting changes. */
export interface MowingAccount {
  readonly totalDryKilograms: number;
  readonly laidDryKilograms: number;
  /** what lay on beds that were deleted since, by the bed's name */
  readonly gone: readonly { readonly name: string; readonly dryKilograms: number }[];
  /** what is left for the rest; below 0 when more was laid than was mown */
  readonly leftDryKilograms: number;
  /** of the whole, 0-1; below 0 when more was laid than was mown */
  readonly leftShare: number;
  readonly layers: readonly Application[];
}

export function mowingAccount(garden: Garden, mowing: Mowing): MowingAccount {
  const totalDryKilograms = mowingMass(garden, mowing).dryKilograms;
  const layers = layersOfMowing(garden.applications, mowing.id);
  const laidDryKilograms = layers.reduce((sum, layer) => sum + dryOfLayer(garden, layer), 0);
  const gone = (mowing.onDeletedBeds ?? []).map(({ name, share }) => ({
    name,
    dryKilograms: share * totalDryKilograms,
  }));
  const goneDryKilograms = gone.reduce((sum, { dryKilograms }) => sum + dryKilograms, 0);
  const leftDryKilograms = totalDryKilograms - laidDryKilograms - goneDryKilograms;
  return {
    totalDryKilograms,
    laidDryKilograms,
    gone,
    leftDryKilograms,
    leftShare: totalDryKilograms > 0 ? leftDryKilograms / totalDryKilograms : 0,
    layers,
  };
}

/** What of clippings is still there once they are dry, of their dry matter 0-1. */
export const driedShare = 1 - dryingRows.dryLost.typical;

/** Dry matter of leaves that went on a heap with a mowing [kg]; 0 without any. */
export function leavesWith(garden: Garden, { rest }: Pick<Mowing, 'rest'>): number {
  if (rest.to !== 'heap' || !rest.leaves) return 0;
  const { stockId, amount } = rest.leaves;
  const store = garden.stock.find(({ id }) => id === stockId);
  if (!store) throw new Error(`No stock ${stockId}`);
  const handling = { condition: 'just cut', wetness: 'dry' } as const;
  const material = materialById(garden, store.materialId);
  return massOf(garden, amount.quantity, material, handling, null).dryKilograms;
}

/** Dry matter of what was raked off a bed and put on a heap [kg]. */
export function dryOfRaked(
  garden: Garden,
  { materialId, amount }: NonNullable<Extract<GardenEvent, { kind: 'rake off' }>['toHeap']>,
): number {
  const handling = { condition: 'crisp', wetness: 'dry' } as const;
  const material = materialById(garden, materialId);
  return massOf(garden, amount.quantity, material, handling, null).dryKilograms;
}

/** What a heap or store was given and gave, by dry matter; rotting in the heap is not reckoned. */
export interface StockAccount {
  readonly startDryKilograms: number;
  readonly addedDryKilograms: number;
  /** laid on beds, and of leaves what went on a heap with clippings */
  readonly takenDryKilograms: number;
  readonly leftDryKilograms: number;
  /** mowings whose rest went there */
  readonly mowings: readonly Mowing[];
  readonly layers: readonly Application[];
}

export function stockAccount(garden: Garden, stockId: string): StockAccount {
  const stock = garden.stock.find(({ id }) => id === stockId);
  if (!stock) throw new Error(`No stock ${stockId}`);
  const material = materialById(garden, stock.materialId);
  const handling = { condition: 'just cut', wetness: 'dry' } as const;
  const startDryKilograms = stock.amount
    ? massOf(garden, stock.amount.quantity, material, handling, null).dryKilograms
    : 0;
  const mowings = garden.mowings.filter(
    ({ rest }) => (rest.to === 'heap' || rest.to === 'store') && rest.stockId === stockId,
  );
  const layers = garden.applications.filter(
    ({ from, date }) => from.source === 'stock' && from.stockId === stockId && date >= stock.date,
  );
  const addedDryKilograms = mowings
    .filter(({ date }) => date >= stock.date)
    .reduce((sum, one) => {
      const rest = Math.max(0, mowingAccount(garden, one).leftDryKilograms);
      return sum + (one.rest.to === 'store' ? driedShare * rest : rest + leavesWith(garden, one));
    }, 0);
  const rakedDryKilograms = garden.events.reduce(
    (sum, event) =>
      event.kind === 'rake off' && event.toHeap?.stockId === stockId && event.date >= stock.date
        ? sum + dryOfRaked(garden, event.toHeap)
        : sum,
    0,
  );
  const leavesOnHeaps = garden.mowings
    .filter(
      ({ rest, date }) =>
        rest.to === 'heap' && rest.leaves?.stockId === stockId && date >= stock.date,
    )
    .reduce((sum, one) => sum + leavesWith(garden, one), 0);
  const takenDryKilograms =
    leavesOnHeaps + layers.reduce((sum, layer) => sum + dryOfLayer(garden, layer), 0);
  return {
    startDryKilograms,
    addedDryKilograms: addedDryKilograms + rakedDryKilograms,
    takenDryKilograms,
    leftDryKilograms: startDryKilograms + addedDryKilograms + rakedDryKilograms - takenDryKilograms,
    mowings,
    layers,
  };
}
