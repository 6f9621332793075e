import type { Coefficients } from '../coefficients';
import { normalQuantile } from './normalQuantile';

/** A row as percentiles: low the 5th, typical the 50th, high the 95th. */
export interface Points {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

/** One uncertain quantity. What shares a name shares its draw. */
export interface Drawn extends Points {
  readonly name: string;
  /** `share` stays between 0 and 1 */
  readonly shape: 'amount' | 'share';
}

export interface LayerSpread {
  /** factor on its mass */
  readonly mass: Drawn;
  /** nitrogen as a fraction of dry matter */
  readonly nitrogen: Drawn;
  /** factor on the C:N it rots by: materials of one C:N differ; absent for compost and the like */
  readonly acting?: Drawn;
  /** shares of the nitrogen of compost and the like that are ready, and that come slowly */
  readonly ready?: Drawn;
  readonly slow?: Drawn;
}

/** What is not known of a legume's nodules. */
export interface FixingSpread {
  /** share of the day's need that they give where the soil has little nitrate */
  readonly usual: Drawn;
  /** factor on the nitrate at which they stop, in leaf and in pod alike */
  readonly limit: Drawn;
}

/** What of a bed's season is uncertain. Everything not named stays at its typical value. */
export interface SeasonSpread {
  readonly coefficients: readonly (Drawn & { readonly key: keyof Coefficients })[];
  /** by layer id */
  readonly layers: Readonly<Record<string, LayerSpread>>;
  /** by planting id: factor on its need */
  readonly needs: Readonly<Record<string, Drawn>>;
  /** by planting id; legumes alone */
  readonly fixing?: Readonly<Record<string, FixingSpread>>;
  /** factor on the soil's organic matter; null when a laboratory measured it */
  readonly organicMatter: Drawn | null;
}

const normalAt95 = 1.6448536269514722;

const stretched = (z: number, low: number, middle: number, high: number): number =>
  middle + (z < 0 ? ((middle - low) / normalAt95) * z : ((high - middle) / normalAt95) * z);

const logit = (share: number): number => Math.log(share / (1 - share));

/**
 * The value of an uncertain quantity at a share of its distribution: two-piece log-normal, or
 * two-piece logit-normal for shares (model "Low, typical, high").
 *
 * A quantity whose low end is 0 is drawn linearly below its median; one without a range keeps its
 * typical value.
 */
export function valueAt(drawn: Points & Pick<Drawn, 'shape'>, share: number): number {
  const { low, typical, high, shape } = drawn;
  if (!(high > low) || !(typical > 0)) return typical;
  const z = normalQuantile(share);
  if (shape === 'share' && high < 1 && low > 0)
    return 1 / (1 + Math.exp(-stretched(z, logit(low), logit(typical), logit(high))));
  if (low <= 0 && z < 0) return Math.max(0, stretched(z, low, typical, high));
  const bottom = low > 0 ? Math.log(low) : Math.log(typical);
  return Math.exp(stretched(z, bottom, Math.log(typical), Math.log(high)));
}
