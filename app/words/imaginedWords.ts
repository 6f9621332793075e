import type { NitrogenState } from '../core/season/verdict';
import { percent } from './chartFormat';
import { twoFigures } from './figures';

/** How often something happens, counted on ten fingers: "in 7 of 10 imagined seasons". */
export function oddsWords(share: number): string {
  const tenths = Math.round(share * 10);
  if (share > 0.995) return 'in all imagined seasons';
  if (share < 0.005) return 'in no imagined season';
  if (tenths === 10) return 'in nearly all imagined seasons';
  if (tenths === 0) return 'in hardly any imagined season';
  return `in ${String(tenths)} of 10 imagined seasons`;
}

/** rarer than this a state is not worth a word beside the others */
const leastTold = 0.05;

/** Shares as whole parts that add up to `of`: the largest remainders are rounded up. */
export function wholeParts(shares: readonly number[], of: number): readonly number[] {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const exact = shares.map((share) => (of * share) / whole);
  const parts = exact.map(Math.floor);
  const byRemainder = [...exact.keys()].toSorted(
    (one, other) => exact[other]! - parts[other]! - (exact[one]! - parts[one]!),
  );
  const missing = of - parts.reduce((sum, count) => sum + count, 0);
  for (const at of byRemainder.slice(0, missing)) parts[at]! += 1;
  return parts;
}

type StateOdds = Readonly<Record<NitrogenState, number>>;

/** States that are worth a word, commonest first, with their whole tenths. */
function toldStates(states: StateOdds, shown: NitrogenState) {
  const told = (Object.entries(states) as [NitrogenState, number][])
    .filter(([state, share]) => share >= leastTold || (state === shown && share > 0))
    .toSorted(([, one], [, other]) => other - one);
  const tenths = wholeParts(
    told.map(([, share]) => share),
    10,
  );
  return told.map(([state, share], at) => ({ state, share, tenths: tenths[at] ?? 0 }));
}

/**
 * Whether the state of the likely values is another than most imagined seasons have: no fault. Where
 * its lines lie close together, seasons to both sides of the likely values miss it.
 */
export function isSeldom(states: StateOdds, shown: NitrogenState): boolean {
  const told = toldStates(states, shown);
  const own = told.find(({ state }) => state === shown)?.tenths ?? 0;
  return told.some(({ tenths }) => tenths > own);
}

/**
 * The states a bed has over its imagined seasons, the one it is said to have first, the others
 * commonest first: "Over-fed in 7 of 10 imagined seasons, enough to the end in 2, short in 1".
 * Where another is commoner it is said what the one above rests on, and the commonest leads:
 * "Enough to the end by the likely values, but of 10 imagined seasons about right in 5, ...".
 */
export function stateOddsWords(states: StateOdds, shown: NitrogenState): string {
  const told = toldStates(states, shown);
  const line = isSeldom(states, shown)
    ? `${shown} by the likely values, but ${seldomWords(told)}`
    : oftenWords(told, shown);
  return line.charAt(0).toUpperCase() + line.slice(1);
}

/** Why a state may be rare among imagined seasons, see `isSeldom`. */
export const seldomReason =
  'The state is the one the likely values lead to. Where the lines of a state lie close together, seasons a little richer or poorer than the likely one miss it, and most then have another.';

type ToldStates = ReturnType<typeof toldStates>;

function seldomWords(told: ToldStates): string {
  const counted = told.filter(({ tenths }) => tenths > 0);
  const [only, ...others] = counted;
  if (only && others.length === 0) return `${only.state} ${oddsWords(only.share)}`;
  const list = counted.map(({ state, tenths }) => `${state} in ${String(tenths)}`).join(', ');
  return `of 10 imagined seasons ${list}`;
}

function oftenWords(told: ToldStates, shown: NitrogenState): string {
  const first = told.find(({ state }) => state === shown);
  if (!first) return '';
  // by its own share it could be told a tenth more than the count leaves to the others
  const own = first.tenths === 10 ? first.share : first.tenths / 10;
  return [
    `${shown} ${oddsWords(own)}`,
    ...told
      .filter(({ state, tenths }) => state !== shown && tenths > 0)
      .map(({ state, tenths }) => `${state} in ${String(tenths)}`),
  ].join(', ');
}

/** Ends of what 8 imagined seasons of 10 bring. */
export interface LikelyEnds {
  readonly low: number;
  readonly high: number;
}

/** "1.2 to 1.9 times", or "1.2 times" where both ends read alike. */
export function likelyTimes({ low, high }: LikelyEnds): string {
  const [from, to] = [twoFigures(low), twoFigures(high)];
  return from === to ? `${from} times` : `${from} to ${to} times`;
}

/** "62 to 84 %" */
export function likelyPercent({ low, high }: LikelyEnds): string {
  const [from, to] = [percent(low), percent(high)];
  return from === to ? from : `${from.replace(' %', '')} to ${to}`;
}

/** What the draws rest on. */
export interface DrawsWorth {
  readonly count: number;
  readonly effectiveCount: number;
}

const thousands = (count: number): string =>
  String(Math.round(count)).replace(/\B(?=(\d{3})+$)/g, ',');

/** fewer than this say where the middle is, not where the ends are */
const leastWorth = 50;

/**
 * What a test or a look at the bed has left of the imagined seasons; empty while all still count
 * alike.
 */
export function restingWords({ count, effectiveCount }: DrawsWorth): string {
  if (effectiveCount >= 0.95 * count) return '';
  if (effectiveCount <= 0)
    return 'None came near what was measured, so the test is left out of these ranges. Look at its number and its day again.';
  const worth = Math.max(1, Number(effectiveCount.toPrecision(2)));
  const line = `Weighed by what was measured and seen: they rest on about ${thousands(worth)} of ${thousands(count)}.`;
  return effectiveCount < leastWorth ? `${line} Take the ends as rough.` : line;
}

/** What imagined seasons do not vary, beside their ranges: rows that are `drawnPer: 'nothing'`. */
export const keptLikelyWords =
  'The water and the weight of the soil, what runs off a slope, and sun and wind that nobody measured stay at their likely values in all of them: what is washed out is less sure than its range says.';

/** How far the work on the imagined seasons has got, for the line at the head of a page. */
export function imaginedProgress(done: number, of: number): string {
  return `Imagining seasons: ${thousands(done)} of ${thousands(of)}`;
}

/** What stands where nothing is under way. */
export function imaginedReady(counts: readonly number[]): string {
  if (counts.length === 0) return 'No season has been imagined yet.';
  return `Odds and ranges come from ${manyWords(counts)} imagined seasons of each bed.`;
}

/** "100 to 1,000", of at least one count */
export function manyWords(counts: readonly number[]): string {
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  return least === most ? thousands(most) : `${thousands(least)} to ${thousands(most)}`;
}

/** Said of figures that were reckoned before the last change. */
export const behindWords = 'from before the last change';

/** How far ranges can be trusted beyond the seasons they are drawn from. */
export const heldAgainstWords = (inside: number, of: number): string =>
  `Of ${String(of)} numbers that others measured, ${String(inside)} lay within such ranges of ours: nature strays further than we can imagine.`;
