import type { Coefficients } from '../season/coefficients';
import type { Condition } from '../season/input';
import { temperatureFactor } from '../soil/temperature';

/** Promises of ammonia, not nitrogen: what may leave once there is free nitrogen to leave. g N/m2. */
export interface AmmoniaStores {
  unripe: number;
  ripe: number;
  /** of manure left on top: part of what was ready in it, which needs no rotting first */
  manure: number;
}

/** Depth factor: 0.5 up to 6 mm, 1 at 10 mm, 3 from 25 mm of just-cut material, linear between (model 4). */
export function ammoniaDepthFactor(laidMillimetres: number): number {
  if (laidMillimetres <= 6) return 0.5;
  if (laidMillimetres <= 10) return 0.5 + (0.5 * (laidMillimetres - 6)) / 4;
  if (laidMillimetres <= 25) return 1 + (2 * (laidMillimetres - 10)) / 15;
  return 3;
}

/**
 * Share of a surface layer's nitrogen that may leave as ammonia.
 *
 *     P = min(45 %, max(0, 0.40 gN/kgDM - 5.08) % x m x u)
 *
 * m by laid depth for just-cut material, 0.3 limp, 0.1 crisp; u is 1 and drawn from 0.3 to 2,
 * because measured losses lie far apart.
 *
 * @param laidMillimetres depth as laid of all of one material laid on one day
 * @returns 0-0.45
 * @source slope and intercept recalled from de Ruijter & Huijsmans 2019; m and the limit bracket
 *   Larsson et al. 1998 and Whitehead et al. 1988 (published span 0.08-47 %)
 */
export function ammoniaPotential(
  gramsNitrogenPerKilogramDry: number,
  condition: Condition,
  laidMillimetres: number,
  c: Coefficients,
): number {
  const factor =
    condition === 'limp'
      ? c.ammoniaLimp
      : condition === 'crisp'
        ? c.ammoniaCrisp
        : ammoniaDepthFactor(laidMillimetres);
  const percent =
    Math.max(0, c.ammoniaSlope * gramsNitrogenPerKilogramDry - c.ammoniaIntercept) *
    factor *
    c.ammoniaFactor;
  return Math.min(c.ammoniaLimit, percent) / 100;
}

const at20 = temperatureFactor(20);

/**
 * A day of the two stores: 0.18 of the unripe ripens, 0.16 of the ripe leaves the store, and of
 * that the wetter and warmer the cover is the more goes to the air:
 *
 *     min(1, (0.1 + 1.8 x wetness) x min(1.5, fT(air)/fT(20)))
 *
 * Only the product is held at 1: a soaked cover makes up for cool air. Of manure's promise 0.27
 * leaves a day at 20 C, wet or dry.
 *
 * @param coverWetness 0-1, how full of water the cover is over the day
 * @param airFactor fT of the air, where it is known already
 * @returns the day's demand on the cover's free nitrogen [g/m2]; the caller limits it
 */
export function ammoniaDay(
  stores: AmmoniaStores,
  coverWetness: number,
  airCelsius: number,
  c: Coefficients,
  airFactor: number = temperatureFactor(airCelsius),
): number {
  const ripening = c.ammoniaRipening * stores.unripe;
  const leaving = c.ammoniaLeaving * stores.ripe;
  stores.unripe -= ripening;
  stores.ripe += ripening - leaving;
  const wet = c.ammoniaDryShare + c.ammoniaWetSlope * coverWetness;
  const warm = Math.min(1.5, airFactor / at20);
  const fromManure = c.manureAmmoniaRate * warm * stores.manure;
  stores.manure -= fromManure;
  return leaving * Math.min(1, wet * warm) + fromManure;
}
