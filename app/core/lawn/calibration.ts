/** Standard normal at 95 and at 90 %; definitions. */
const normalAt95 = 1.6448536269514722;
const normalAt90 = 1.2815515655446004;

/**
 * What a lawn yields against what its kind was expected to: a ratio known as a log-normal, so that
 * twice and half are equally far off.
 */
export interface Calibration {
  /** middle of the logarithm of measured over expected */
  readonly logRatio: number;
  /** its standard deviation: how little is known of it */
  readonly spread: number;
  /** mowings it has learnt from */
  readonly mowings: number;
}

/** Standard deviation of a logarithm whose 5 and 95 % points are a row's ends. */
export const logSpreadOfRow = ({ low, high }: { low: number; high: number }): number =>
  low > 0 && high > low ? Math.log(high / low) / (2 * normalAt95) : 0;

/** The same from a range as it is shown (10 to 90 %). */
export const logSpreadOfRange = ({ low, high }: { low: number; high: number }): number =>
  low > 0 && high > low ? Math.log(high / low) / (2 * normalAt90) : 0;

/** Before any mowing was logged: the kind's own row, its typical value being 1. */
export const startCalibration = (
  yearlyYield: { readonly low: number; readonly typical: number; readonly high: number },
  logRatio = 0,
): Calibration => ({ logRatio, spread: logSpreadOfRow(yearlyYield), mowings: 0 });

/**
 * What is known after one more mowing: the mean of what was known and what was measured, each
 * weighed by how sure it is.
 *
 *     1/s'^2 = 1/s^2 + 1/e^2      r' = s'^2 (r/s^2 + ln(measured/expected)/e^2)
 *
 * The spread only ever falls. Nothing is learnt where nothing could be expected.
 *
 * @param error e, standard deviation of the logarithm of one such measurement
 * @source Bayes' rule for normal numbers (mathematics)
 */
export function learn(
  known: Calibration,
  measured: number,
  expected: number,
  error: number,
): Calibration {
  if (!(measured > 0) || !(expected > 0) || !(error > 0)) return known;
  if (known.spread === 0) return { ...known, mowings: known.mowings + 1 };
  const before = 1 / known.spread ** 2;
  const now = 1 / error ** 2;
  return {
    logRatio: (known.logRatio * before + Math.log(measured / expected) * now) / (before + now),
    spread: Math.sqrt(1 / (before + now)),
    mowings: known.mowings + 1,
  };
}

/** Where a log-normal number lies 8 times in 10, around its median. */
export function likelyAround(
  median: number,
  spread: number,
): { readonly low: number; readonly typical: number; readonly high: number } {
  const factor = Math.exp(normalAt90 * spread);
  return { low: median / factor, typical: median, high: median * factor };
}

/** Spreads of independent factors on one number: their squares add. */
export const joinedSpread = (...spreads: readonly number[]): number => Math.hypot(...spreads);

/**
 * Spread of a sum of independent log-normal numbers, as that of one log-normal with the same
 * variance (Fenton and Wilkinson's matching of moments).
 */
export function spreadOfSum(
  parts: readonly { readonly median: number; readonly spread: number }[],
): number {
  let [mean, variance] = [0, 0];
  for (const { median, spread } of parts) {
    const own = median * Math.exp(spread ** 2 / 2);
    mean += own;
    variance += own ** 2 * Math.expm1(spread ** 2);
  }
  return mean > 0 ? Math.sqrt(Math.log1p(variance / mean ** 2)) : 0;
}
