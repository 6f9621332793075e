import { partnerForRatio } from '../core/cover/mix';
import { dayFromParts, dayOf, yearOf, type DayNumber } from '../core/days';
import { heapOn, type HeapEntry, type HeapNow } from '../core/heap/heap';
import type { LikelyRange } from '../core/lawn/clippings';
import { heapRows } from '../tables/heap';
import { planWeights } from '../tables/planning';
import { dryOfRaked, leavesWith, mowingAccount, mowingMass, stockAccount } from './accounts';
import { lawnHeldBack } from './lawnHeldBack';
import { lawnOutlook } from './lawnOutlook';
import { massOf } from './layerMass';
import { clippingsOf, materialById } from './materialValues';
import type { Garden, Stock } from './schema';

const asKept = { condition: 'just cut', wetness: 'dry' } as const;

/** Something that was put on a heap. */
export interface HeapAccountEntry extends HeapEntry {
  /** of the mowing or the raking it came from */
  readonly from: string;
  readonly what: 'clippings' | 'leaves' | 'raked off';
}

/** What was raked off beds and put on a heap, from the day the heap was written down to `today`. */
function rakedOnto(garden: Garden, heap: Stock, today: DayNumber): readonly HeapAccountEntry[] {
  return garden.events.flatMap((event): HeapAccountEntry[] => {
    if (event.kind !== 'rake off' || event.toHeap?.stockId !== heap.id) return [];
    const day = dayOf(event.date);
    if (day < dayOf(heap.date) || day > today) return [];
    const dryKilograms = dryOfRaked(garden, event.toHeap);
    return [
      {
        from: event.id,
        what: 'raked off',
        day,
        dryKilograms,
        nitrogenGrams: dryKilograms * 10 * event.toHeap.nitrogenPercent,
      },
    ];
  });
}

/** A heap's books: what went on it, what is left of that, and what was taken off as compost. */
export interface HeapAccount {
  readonly entries: readonly HeapAccountEntry[];
  /** what lay there when it was written down; what it is called it is, and does not shrink */
  readonly start: { readonly dryKilograms: number; readonly nitrogenGrams: number };
  /** since then */
  readonly putOn: { readonly dryKilograms: number; readonly nitrogenGrams: number };
  /** the start, and what is left of all that was put on, before anything was taken off */
  readonly left: HeapNow;
  readonly takenDryKilograms: number;
}

const raised = ({ low, typical, high }: LikelyRange, by: number): LikelyRange => ({
  low: low + by,
  typical: typical + by,
  high: high + by,
});

export function heapAccount(garden: Garden, heap: Stock, today: DayNumber): HeapAccount {
  const material = materialById(garden, heap.materialId);
  const start = heap.amount
    ? massOf(garden, heap.amount.quantity, material, asKept, null).dryKilograms
    : 0;
  const ofMowings = garden.mowings.flatMap((mowing): HeapAccountEntry[] => {
    const day = dayOf(mowing.date);
    const isHere = mowing.rest.to === 'heap' && mowing.rest.stockId === heap.id;
    if (!isHere || day < dayOf(heap.date) || day > today) return [];
    const dry = Math.max(0, mowingAccount(garden, mowing).leftDryKilograms);
    const whole = mowingMass(garden, mowing);
    const { id: from, rest } = mowing;
    const leaves = leavesWith(garden, mowing);
    const store =
      rest.to === 'heap' ? garden.stock.find(({ id }) => id === rest.leaves?.stockId) : undefined;
    return [
      ...(dry > 0 && whole.dryKilograms > 0
        ? [
            {
              from,
              what: 'clippings' as const,
              day,
              dryKilograms: dry,
              nitrogenGrams: (whole.nitrogenGrams * dry) / whole.dryKilograms,
            },
          ]
        : []),
      ...(leaves > 0 && store
        ? [
            {
              from,
              what: 'leaves' as const,
              day,
              dryKilograms: leaves,
              nitrogenGrams: leaves * 1000 * materialById(garden, store.materialId).nitrogen,
            },
          ]
        : []),
    ];
  });
  const entries = [...ofMowings, ...rakedOnto(garden, heap, today)];
  const grams = start * 1000 * material.nitrogen;
  const rotting = heapOn(entries, today, heapRows);
  return {
    entries,
    start: { dryKilograms: start, nitrogenGrams: grams },
    putOn: {
      dryKilograms: entries.reduce((sum, one) => sum + one.dryKilograms, 0),
      nitrogenGrams: entries.reduce((sum, one) => sum + one.nitrogenGrams, 0),
    },
    left: {
      dryKilograms: raised(rotting.dryKilograms, start),
      nitrogenGrams: raised(rotting.nitrogenGrams, grams),
    },
    takenDryKilograms: stockAccount(garden, heap.id).takenDryKilograms,
  };
}

/** Leaves to keep over winter for the month in which grass grows most. */
export interface LeavesToKeep {
  readonly monthFirst: DayNumber;
  /** clippings expected in that month from lawns that may be used, all of it collected */
  readonly clippingsLitres: number;
  /** leaves that would go with all of it on a heap */
  readonly leavesLitres: number;
  readonly onHandLitres: number;
}

/**
 * How much of a store of leaves next June's grass (December's in the south) would want on the heap.
 *
 * @returns null where no lawn may be used, or the ratio cannot be reached with these leaves
 * @source C:N of a heap: `planningRows.heapCarbonToNitrogen`; yields: `lawnOutlook`
 */
export function leavesToKeep(garden: Garden, leaves: Stock, today: DayNumber): LeavesToKeep | null {
  const month = garden.garden.latitudeDegrees >= 0 ? 6 : 12;
  const thisYear = dayFromParts(yearOf(today), month, 1);
  const first = thisYear > today ? thisYear : dayFromParts(yearOf(today) + 1, month, 1);
  const last = first + 29;
  const material = materialById(garden, leaves.materialId);
  let clippingsLitres = 0;
  let leavesKilograms = 0;
  for (const lawn of garden.lawns) {
    if (lawnHeldBack(garden, lawn, today)) continue;
    const { weeks } = lawnOutlook(garden, lawn.id, last, today);
    const grams = weeks
      .filter(({ from }) => from >= first - 3 && from + 3 <= last)
      .reduce((sum, { expected }) => sum + expected.typical, 0);
    const dry = (grams * lawn.areaM2) / 1000;
    const mowing = {
      id: 'to come',
      date: leaves.date,
      lawnId: lawn.id,
      amount: { text: '', quantity: { kind: 'volume', litres: 1 }, certainty: 'plain' },
      wetness: 'dry',
      kind: lawn.kind,
      rest: { to: 'undecided' },
    } as const;
    const grass = clippingsOf(garden, mowing);
    const litre = massOf(garden, mowing.amount.quantity, grass, asKept, null);
    if (!(dry > 0) || !(litre.dryKilograms > 0)) continue;
    const litres = dry / litre.dryKilograms;
    clippingsLitres += litres;
    const wanted = partnerForRatio(
      {
        freshKilograms: litres * litre.freshKilograms,
        moistureFraction: 1 - litre.dryKilograms / litre.freshKilograms,
        carbonFraction: grass.carbon,
        nitrogenFraction: grass.nitrogen,
      },
      {
        moistureFraction: material.moisture,
        carbonFraction: material.carbon,
        nitrogenFraction: material.nitrogen,
      },
      planWeights.heapCarbonToNitrogen,
    );
    if (!wanted.ok) return null;
    leavesKilograms += wanted.value;
  }
  if (clippingsLitres <= 0) return null;
  const perLitre = massOf(garden, { kind: 'volume', litres: 1 }, material, asKept, null);
  const left = Math.max(0, stockAccount(garden, leaves.id).leftDryKilograms);
  return {
    monthFirst: first,
    clippingsLitres,
    leavesLitres: leavesKilograms / perLitre.freshKilograms,
    onHandLitres: left / perLitre.dryKilograms,
  };
}
