import type { PlanAnswer, RestChoice, SourceAccount } from '../../../core/plan/answer';
import type { RestTold } from '../../../words/restWords';
import type { MowingRest, RestWish } from '../../../store/contract';

/** Litres under which nothing is worth sending anywhere (ours). */
const leastLitres = 0.5;

/** Leaves of one store that still are there, by the plan's id of it [L]. */
export type LeavesLeft = Map<string, number>;

/** As many figures as are told, so that what is written down is what was read. */
const asTold = (litres: number): number => Number(litres.toPrecision(2));

type Leaves = Extract<RestChoice['place'], { to: 'heap' }>['leaves'];

/** Leaves to go on the heap as they are written down; undefined where none are there. */
function leavesOf(
  leaves: Leaves,
  left: LeavesLeft | null,
): Extract<MowingRest, { to: 'heap' }>['leaves'] {
  const id = leaves?.sourceId;
  if (!leaves || !id?.startsWith('stock ')) return undefined;
  const there = Math.min(leaves.litresOnHand, left?.get(id) ?? Infinity);
  const litres = Math.min(asTold(leaves.litres), there);
  if (!(litres > leastLitres)) return undefined;
  left?.set(id, there - litres);
  return {
    stockId: id.slice('stock '.length),
    amount: {
      text: `${Number(litres.toPrecision(6))} L`,
      quantity: { kind: 'volume', litres },
      certainty: 'about',
    },
  };
}

/**
 * A choice as it is written down for a mowing; null where it cannot be.
 *
 * @param left what is left of the leaves, where several mowings share them; is brought up to date
 */
export function restOfChoice(
  { place, not }: RestChoice,
  left: LeavesLeft | null = null,
): RestWish | null {
  // what is in the bag can still be spread back
  if (place.to === 'lawn') return { to: 'lawn' };
  if (not !== null) return null;
  if (place.to === 'dry and store') return { to: 'dry' };
  if (place.stockId === null) return null;
  const leaves = leavesOf(place.leaves, left);
  return { to: 'heap', stockId: place.stockId, ...(leaves ? { leaves } : {}) };
}

/** Homes for what is left, those possible now first, else in the plan's own order. */
export const homesInOrder = (choices: readonly RestChoice[]): readonly RestChoice[] => [
  ...choices.filter(({ not }) => not === null),
  ...choices.filter(({ not }) => not !== null),
];

export interface PlannedRest {
  readonly mowingId: string;
  readonly rest: RestWish;
  readonly choice: RestChoice;
}

/** Leaves that go on the heap with it [L]; 0 without any. */
export const leavesLitres = ({ rest }: Pick<PlannedRest, 'rest'>): number =>
  rest.to === 'heap' && rest.leaves?.amount.quantity.kind === 'volume'
    ? rest.leaves.amount.quantity.litres
    : 0;

/** The same as they are told, each with the leaves that really go there. */
export const toldRests = (rests: readonly PlannedRest[]): readonly RestTold[] =>
  rests.map((one) => ({ choice: one.choice, leavesLitres: leavesLitres(one) }));

/**
 * Leaves for a heap on which all that is in hand of a mowing is put by hand: as many for each
 * kilogram as the plan wants with what its beds leave over, and no more than are there.
 *
 * @param leftDryKilograms dry weight in hand
 * @returns the wish as it is written down; null where the plan asks for none, or knows no heap
 */
export function heapByHand(
  { sources }: Pick<PlanAnswer, 'sources'>,
  mowingId: string,
  leftDryKilograms: number,
): Extract<RestWish, { to: 'heap' }> | null {
  const source = sources.find(({ ref }) => ref.source === 'mowing' && ref.mowingId === mowingId);
  const choice = source?.choices.find(({ place }) => place.to === 'heap');
  if (!source || choice?.place.to !== 'heap' || !(source.rest.dryKilograms > 0)) return null;
  const { place } = choice;
  const more = leftDryKilograms / source.rest.dryKilograms;
  const wish = restOfChoice({
    ...choice,
    place: {
      ...place,
      leaves: place.leaves && { ...place.leaves, litres: place.leaves.litres * more },
    },
  });
  return wish?.to === 'heap' && wish.leaves ? wish : null;
}

/** Clippings in hand of which the plan leaves something over. */
export const hasRest = ({ rest }: SourceAccount): boolean => rest.litres > leastLitres;

/**
 * Every way in which the rest of clippings in hand can be written down, best first.
 *
 * @param planned what the plan as a whole does with it: its leaves are those left by other mowings
 */
export const waysOfRest = (
  mowingId: string,
  choices: readonly RestChoice[],
  planned: PlannedRest | undefined,
): readonly PlannedRest[] =>
  homesInOrder(choices).flatMap((choice) => {
    if (planned?.choice === choice) return [planned];
    const rest = restOfChoice(choice);
    return rest ? [{ mowingId, rest, choice }] : [];
  });

/** Leaves of one store that the plan puts on a heap today with what no bed gets [L]. */
export const heapedLeaves = (rests: readonly PlannedRest[], stockId: string): number =>
  rests.reduce(
    (sum, one) =>
      one.rest.to === 'heap' && one.rest.leaves?.stockId === stockId
        ? sum + leavesLitres(one)
        : sum,
    0,
  );

/** What the plan says of clippings in hand that no bed gets: the best home that can be written down. */
export const plannedRests = ({ sources }: Pick<PlanAnswer, 'sources'>): readonly PlannedRest[] => {
  const left: LeavesLeft = new Map();
  return sources.flatMap((source): PlannedRest[] => {
    const { ref, choices } = source;
    if (ref.source !== 'mowing' || !hasRest(source)) return [];
    for (const choice of homesInOrder(choices)) {
      const rest = restOfChoice(choice, left);
      if (rest) return [{ mowingId: ref.mowingId, rest, choice }];
    }
    return [];
  });
};
