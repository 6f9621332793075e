import type { PlanAmount } from '../core/plan/answer';
import { toShown } from '../core/shownUnit';
import { listed } from './chartFormat';
import { countOf, estimateWithUnit } from './figures';
import type { PlanNames } from './planWords';

const weekNumbers = ['no', 'one', 'two', 'three', 'four', 'five', 'six'] as const;

const weeksWord = (weeks: number): string =>
  `${weekNumbers[weeks] ?? String(weeks)} ${weeks === 1 ? 'week' : 'weeks'}`;

/** Where all leaves of one store go, in one unit, so that it can be added up. */
export interface LeavesSum {
  readonly there: string;
  readonly laid: string;
  readonly heap: string;
  readonly kept: string;
}

/**
 * The sum of a store's leaves as it is told, by volume to the whole litre or its like: it adds up as
 * it is read. Kept is what the others leave.
 *
 * @param heapLitres that go on a heap today, as it is written down
 */
export function leavesSum(
  { was, laid }: { readonly was: PlanAmount; readonly laid: PlanAmount },
  heapLitres: number,
  { units }: Pick<PlanNames, 'units'>,
): LeavesSum {
  const shown = (litres: number): number => Math.round(toShown(litres, units.volume));
  const there = shown(was.litres);
  const onBeds = shown(laid.litres);
  const heap = shown(heapLitres);
  const say = (count: number): string => `${String(count)} ${units.volume.symbol}`;
  return {
    there: say(there),
    laid: say(onBeds),
    heap: say(heap),
    kept: say(Math.max(0, there - onBeds - heap)),
  };
}

/** "Chopped leaves: 300 L = 80 L on beds + 79 L on the heap + 141 L kept." and what for. */
export const keptLeavesWords = (sum: LeavesSum, store: string, weeks: number): string =>
  `${store}: ${
    sum.kept === sum.there
      ? `${sum.there}, all of it kept`
      : `${sum.there} = ${sum.laid} on beds + ${sum.heap} on the heap + ${sum.kept} kept`
  }. ` +
  `Grass is wet and rich and stinks alone: leaves are held back from beds for the heap of ${weeksWord(weeks)}.`;

export interface LeavesForJune {
  /** "June 2014" */
  readonly month: string;
  readonly clippingsLitres: number;
  readonly leavesLitres: number;
  /** that stay in the store after today */
  readonly onHandLitres: number;
  readonly bagLitres: number | null;
}

/** Leaves in the bags they are counted in, or by volume. */
export const leafWords = (
  { bagLitres }: Pick<LeavesForJune, 'bagLitres'>,
  litres: number,
  { units }: Pick<PlanNames, 'units'>,
): string =>
  bagLitres === null
    ? estimateWithUnit(litres, units.volume)
    : countOf(litres / bagLitres, 'bag', 'bags');

/** How many leaves next early summer's grass would want; bags where leaves are counted in bags. */
export const leavesForJuneWords = (june: LeavesForJune, names: PlanNames): string => {
  const { month, clippingsLitres, leavesLitres, onHandLitres } = june;
  const { units } = names;
  const much = (litres: number): string => leafWords(june, litres, names);
  return (
    `To keep: the grass of ${month}, about ${estimateWithUnit(clippingsLitres, units.volume)}, would want ${much(leavesLitres)} of these leaves on the heap. ` +
    (onHandLitres >= leavesLitres
      ? `${much(onHandLitres)} are left after today: enough.`
      : `${much(onHandLitres)} are left after today: gather more, or leave some of the grass lying.`)
  );
};

/** What the plan's own part of the page says besides its lines. */
export const planSays = {
  nothing: 'Nothing. No bed gains by what is on hand; where it goes instead stands below.',
  nothingInHand: 'Nothing: there is nothing in hand to lay.',
  nothingYet: 'Nothing yet.',
  askFirst: (sources: readonly string[]): string =>
    `First say whether weedkiller or feed was put on ${listed(sources)}: till then no bed may have any of it.`,
  sayOf: (lawn: string): string => `Say what was put on ${lawn}`,
  addBed: 'Add a bed',
  noMoreWalks:
    'Nothing more today: that is enough walking for a day. Other beds would gain; they stand below.',
  behind: 'This plan is of before your last change.',
  stopped:
    'Stopped. Which lawn to collect from, which bed gets how many buckets and why, and where the rest goes: worked out once you ask for it.',
  failed: 'No plan came out; the beds below are as they were. Try again, or lay by hand.',
  weighing: (done: number | null, of: number | null): string =>
    `Weighing the beds against each other${done === null ? '' : `, ${done} of ${of ?? done} steps`}…`,
  all: (layers: number, rests: string): string =>
    `“I did all of this” writes down ${layers === 1 ? 'this layer' : 'these layers'}${rests === '' ? '' : `, and ${rests}`}. One undo takes it back.`,
  done: (what: string): string =>
    `${what.charAt(0).toUpperCase()}${what.slice(1)}. Undo takes it back.`,
  laidOn: (beds: string): string => `laid on ${beds}`,
  nothingOn: (beds: string): string => `Nothing laid on ${beds} this week. Undo takes it back.`,
  countedIn: (bed: string): string => `${bed} is counted in again.`,
  somethingElse: 'Something else is written down. Undo takes it back.',
  stops:
    'Something has changed since, and a stop speaks against it now. Lay it by hand, where the stop is told.',
  heldBack: 'These clippings are held back by what was put on their lawn.',
  engineFailed: 'The sums did not come out, so nobody can say what speaks against it.',
  keptHeading: 'Where the leaves go',
  effectHeading: 'What the plan is worth',
  mendHeading: (beds: readonly string[]): string => `To mend what has too much: ${listed(beds)}`,
  coming: 'It counts on mowings that are only expected, and is worked out anew each week.',
  otherwise:
    'The plan’s amounts stand here: change what was otherwise. A bed of the plan that gets nothing is left out for this week.',
  inHand: (what: string, was: string, laid: string, rest: string): string =>
    `${what.charAt(0).toUpperCase()}${what.slice(1)}: ${was} in hand. On beds ${laid}, left over ${rest}.`,
  toWrite: 'Room to write what was done',
  inPlan: (layers: string): string => `In today’s plan: ${layers}.`,
  asPlanned: 'Lay what today’s plan has for it, and look again in a week.',
  notToday: (why: string): string => `Today the plan lays none here: ${why}`,
  otherDay: (why: string): string => `The plan: ${why}`,
  goesOn: 'Written down. What comes next is being worked out.',
  restOf: (much: string, what: string): string => `the rest, ${much} of ${what}`,
  whyWas: 'What was mown, less what was laid of it already.',
  whyLaid: 'What the lines above lay of it today.',
  whyRest: 'What there was − what is laid: nothing is lost between them.',
  restAsks: 'Where the rest goes is told once that is said: a heap keeps what was put on a lawn.',
  forTheRest: (home: string): string =>
    `For the rest: ${home.charAt(0).toLowerCase()}${home.slice(1)}`,
} as const;

/** "Exactly this": the questions and what comes of them. */
export const exactWords = {
  title: (bed: string): string => `Exactly this on ${bed}`,
  about:
    'Say 3 buckets, 6 mm, half, or 0 for none. The plan keeps to it and fits all else to it. An empty line is left to the plan.',
  hint: (there: string): string => `${there} there`,
  thick: (depth: string, volume: string): string =>
    `About ${volume}, ${depth} thick as it is laid.`,
  keep: 'Keep to this',
  kept: (bed: string): string => `The plan keeps to your amounts on ${bed}.`,
  free: (bed: string): string => `The plan chooses again for ${bed}.`,
  none: 'Say an amount on at least one line, or close this.',
  tooMuch: (there: string): string => `That is more than there is: ${there}.`,
  heading: 'What you have set',
  unsaved:
    'For looking only: it is in no file and no undo, and gone when the garden is closed. What you lay is written down.',
  one: (bed: string, amount: string, what: string): string => `${bed}: ${amount} of ${what}.`,
  nothing: (bed: string, what: string): string => `${bed}: none of ${what}.`,
  choose: 'Let the plan choose',
} as const;
