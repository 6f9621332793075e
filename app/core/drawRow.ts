import { normal, type Random } from './random';

/** The three points of a row: 5 %, median, 95 %. */
interface Spread {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** Standard normal at 95 %; a definition. */
const normalAt95 = 1.6448536269514722;

/** A standard normal number stretched below and above nought so that 5 % and 95 % fall on the row's ends. */
const twoPiece = (z: number, low: number, middle: number, high: number): number =>
  middle + (z < 0 ? ((middle - low) / normalAt95) * z : ((high - middle) / normalAt95) * z);

/**
 * One value of a row, drawn from a two-piece log-normal with the row's low, typical and high as 5 %,
 * 50 % and 95 % points.
 *
 * @param spread all three above 0; otherwise the typical value comes back
 * @source reading of ranges: model 10 (assumed)
 */
export function drawAmount(spread: Spread, random: Random): number {
  const z = normal(random);
  if (!(spread.low > 0) || !(spread.typical > 0) || !(spread.high > 0)) return spread.typical;
  return Math.exp(
    twoPiece(z, Math.log(spread.low), Math.log(spread.typical), Math.log(spread.high)),
  );
}

const logit = (share: number): number => Math.log(share / (1 - share));

/**
 * As `drawAmount` for a share between 0 and 1 (two-piece logit-normal): never leaves that range.
 *
 * @param spread all three strictly between 0 and 1; otherwise the typical value comes back
 */
export function drawShare(spread: Spread, random: Random): number {
  const z = normal(random);
  if ([spread.low, spread.typical, spread.high].some((value) => !(value > 0 && value < 1)))
    return spread.typical;
  const value = twoPiece(z, logit(spread.low), logit(spread.typical), logit(spread.high));
  return 1 / (1 + Math.exp(-value));
}

/** The 10 %, 50 % and 90 % points of draws. Throws on an empty list. */
export function likelyRange(draws: readonly number[]): Spread {
  const sorted = [...draws].sort((one, other) => one - other);
  const at = (share: number): number => {
    const value = sorted[Math.round(share * (sorted.length - 1))];
    if (value === undefined) throw new Error('No draws');
    return value;
  };
  return { low: at(0.1), typical: at(0.5), high: at(0.9) };
}
