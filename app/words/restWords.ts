import type { RestChoice } from '../core/plan/answer';
import { listed } from './chartFormat';
import { countOf, estimateWithUnit } from './figures';
import type { PlanNames } from './planWords';

const notWords: Readonly<Record<NonNullable<RestChoice['not']>, string>> = {
  'already collected': 'it is already in the bag',
  soaked: 'soaked grass cannot be dried: wait for a dry day',
  'no heap': 'this garden has no heap',
  treated: 'it is held back',
};

/**
 * Where what is left over may go, best first.
 *
 * @param goesLitres leaves that go there with it, where the plan has counted them out [L]
 */
export function restWords(
  { place, not }: RestChoice,
  names: PlanNames,
  goesLitres: number | null = null,
): string {
  const unless = not === null ? '' : ` (not now: ${notWords[not]})`;
  switch (place.to) {
    case 'lawn':
      return not === 'already collected'
        ? 'Spread it back on the lawn, thinly. It is in the bag: too late to leave it lying.'
        : `Leave it on the lawn, or spread it back thinly${unless}.`;
    case 'heap': {
      const heap = place.stockId === null ? 'a heap' : names.stock(place.stockId);
      const { leaves } = place;
      if (leaves === null)
        return `Onto ${heap}, with dry leaves or straw if you find some${unless}.`;
      const wanted = estimateWithUnit(leaves.litres, names.units.volume);
      if (goesLitres !== null) {
        if (goesLitres <= 0)
          return `Onto ${heap}${unless}. ${wanted} of leaves would be right with it; none are left.`;
        const goes = estimateWithUnit(goesLitres, names.units.volume);
        const missing = goes === wanted ? '' : `; ${wanted} would be right, and no more are left`;
        return `Onto ${heap}, with ${goes} of leaves so that it neither stinks nor sits still${missing}${unless}.`;
      }
      const much =
        leaves.bags === null
          ? estimateWithUnit(leaves.litres, names.units.volume)
          : countOf(leaves.bags, 'bag', 'bags');
      const there =
        leaves.litresOnHand >= leaves.litres
          ? ''
          : `; ${estimateWithUnit(leaves.litresOnHand, names.units.volume)} are there`;
      return `Onto ${heap}, with ${much} of leaves so that it neither stinks nor sits still${there}${unless}.`;
    }
    case 'dry and store':
      return `Spread it ${estimateWithUnit(place.millimetresSpread, names.units.depth)} thin until it rustles, then keep it dry for later${unless}.`;
  }
}

/** A home as it is written down, with the leaves that go there too [L]. */
export interface RestTold {
  readonly choice: RestChoice;
  readonly leavesLitres: number;
}

/** ", with 79 L of Chopped leaves" */
const withLeaves = ({ choice: { place }, leavesLitres }: RestTold, names: PlanNames): string =>
  leavesLitres > 0 && place.to === 'heap' && place.leaves?.sourceId
    ? ` with ${estimateWithUnit(leavesLitres, names.units.volume)} of ${names.stock(place.leaves.sourceId.replace(/^stock /, ''))}`
    : '';

/** The same as a button: it is written down as done. */
export function restActWords(told: RestTold, names: PlanNames): string {
  const { place } = told.choice;
  switch (place.to) {
    case 'lawn':
      return 'Spread back on the lawn';
    case 'heap':
      return `Put on ${place.stockId === null ? 'a heap' : names.stock(place.stockId)}${withLeaves(told, names)}`;
    case 'dry and store':
      return 'Dried and kept';
  }
}

/** What one press writes down besides the layers: where the rest of each mowing goes. */
export const restsWords = (rests: readonly RestTold[], names: PlanNames): string => {
  const heapOf = ({ choice: { place } }: RestTold): string | null =>
    place.to === 'heap' ? place.stockId : null;
  const homes = rests.map((told) => {
    const heap = heapOf(told);
    if (heap === null) return told.choice.place.to === 'lawn' ? 'on the lawn' : 'dried and kept';
    // several mowings on one heap: their leaves are told together
    const together = rests.filter((other) => heapOf(other) === heap);
    const leavesLitres = together.reduce((sum, one) => sum + one.leavesLitres, 0);
    const withStore = together.find((one) => one.leavesLitres > 0) ?? told;
    return `on ${names.stock(heap)}${withLeaves({ ...withStore, leavesLitres }, names)}`;
  });
  return homes.length === 0 ? '' : `the rest ${listed([...new Set(homes)])}`;
};
