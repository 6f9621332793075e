import type { PlanAnswer, RestChoice, SourceAccount } from '../../../core/plan/answer';
import type { MowingRest } from '../../../store/contract';

/** Litres under which nothing is worth sending anywhere (ours). */
const leastLitres = 0.5;

/** A choice as it is written down for a mowing; null where the garden has no word for it yet. */
export function restOfChoice({ place, not }: RestChoice): MowingRest | null {
  // what is in the bag can still be spread back
  if (place.to === 'lawn') return { to: 'lawn' };
  if (not !== null) return null;
  return place.to === 'heap' && place.stockId !== null
    ? { to: 'heap', stockId: place.stockId }
    : null;
}

/** Homes for what is left, those possible now first, else in the plan's own order. */
export const homesInOrder = (choices: readonly RestChoice[]): readonly RestChoice[] => [
  ...choices.filter(({ not }) => not === null),
  ...choices.filter(({ not }) => not !== null),
];

export interface PlannedRest {
  readonly mowingId: string;
  readonly rest: MowingRest;
  readonly choice: RestChoice;
}

/** Clippings in hand of which the plan leaves something over. */
export const hasRest = ({ rest }: SourceAccount): boolean => rest.litres > leastLitres;

/** What the plan says of clippings in hand that no bed gets: the best home that can be written down. */
export const plannedRests = ({ sources }: Pick<PlanAnswer, 'sources'>): readonly PlannedRest[] =>
  sources.flatMap((source): PlannedRest[] => {
    const { ref, choices } = source;
    if (ref.source !== 'mowing' || !hasRest(source)) return [];
    for (const choice of homesInOrder(choices)) {
      const rest = restOfChoice(choice);
      if (rest) return [{ mowingId: ref.mowingId, rest, choice }];
    }
    return [];
  });
