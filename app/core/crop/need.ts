import type { Coefficients } from '../season/coefficients';
import type { CropInput } from '../season/input';

/** The curve of a crop's need, with what does not change from day to day. */
export interface NeedCurve {
  readonly middle: number;
  readonly steepness: number;
  /** g(0) and g(1) - g(0) */
  readonly start: number;
  readonly rise: number;
}

const logistic = (steepness: number, middle: number, at: number): number =>
  1 / (1 + Math.exp(-steepness * (at - middle)));

export function needCurve(crop: Pick<CropInput, 'curveMiddle' | 'curveSteepness'>): NeedCurve {
  const { curveMiddle: middle, curveSteepness: steepness } = crop;
  const start = logistic(steepness, middle, 0);
  return { middle, steepness, start, rise: logistic(steepness, middle, 1) - start };
}

/** `wantedShare` on a curve that is at hand. */
export function wantedOn(curve: NeedCurve, progress: number): number {
  const x = Math.min(1, Math.max(0, progress));
  return (logistic(curve.steepness, curve.middle, x) - curve.start) / curve.rise;
}

/**
 * Share of the season's nitrogen a crop has wanted by a progress of its clock.
 *
 *     f(x) = [g(x) - g(0)]/[g(1) - g(0)],  g(x) = 1/(1 + exp(-k (x - x50)))
 *
 * @param progress x, degree-days so far / degree-days to the usual end, cut to 0-1
 * @source a logistic made to start at 0 and end at 1 (derived); its two parameters are fits through read anchors, not published
 */
export const wantedShare = (
  crop: Pick<CropInput, 'curveMiddle' | 'curveSteepness'>,
  progress: number,
): number => wantedOn(needCurve(crop), progress);

/** Need left unmet on each of the last days, oldest first; what is older than its length is lost. */
export type Arrears = number[];

/** Adds a day's unmet need and drops what is too old. */
export function carryArrears(arrears: Arrears, unmet: number, c: Coefficients): void {
  arrears.push(unmet);
  while (arrears.length > c.arrearsDays) arrears.shift();
}

/** Pays arrears, oldest first; returns what is left of the payment. */
export function payArrears(arrears: Arrears, payment: number): number {
  let left = payment;
  for (let day = 0; day < arrears.length && left > 0; day++) {
    const paid = Math.min(arrears[day] ?? 0, left);
    arrears[day] = (arrears[day] ?? 0) - paid;
    left -= paid;
  }
  return left;
}

/** Nitrogen within roots that a day may take, per layer: 10 % of what is above 0.4 g/m2 (model 7). */
export const uptakeLimit = (mineral: number, reached: number, c: Coefficients): number =>
  c.uptakeShare * reached * Math.max(0, mineral - c.uptakeFloor);

/** Luxury uptake wanted today: the day's need x 0.3, ramping with top nitrate from 4 to 10 g/m2. */
export const luxuryWanted = (need: number, mineralTop: number, c: Coefficients): number =>
  need *
  c.luxuryShare *
  Math.min(1, Math.max(0, (mineralTop - c.luxuryStart) / (c.luxuryFull - c.luxuryStart)));
