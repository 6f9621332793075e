import type { Coefficients } from '../season/coefficients';
import { decayStep, nitrogenReleased, type DecayCarbon } from './decay';
import type { ResidueClass } from './residueClass';

export interface ClassStep {
  readonly item: ResidueClass;
  readonly after: DecayCarbon;
  /** g N/m2 set free; negative: tied up */
  readonly released: number;
}

/** What a class would do with all the nitrogen it wants. */
export function freeStep(
  item: ResidueClass,
  residueDays: number,
  turnoverDays: number,
  coefficients: Coefficients,
): ClassStep {
  const after = decayStep(
    item,
    item.parameters,
    residueDays,
    turnoverDays,
    coefficients.assimilation,
  );
  return { item, after, released: nitrogenReleased(item, after, item.parameters) };
}

/**
 * The step of a class that wants to tie up more than it can have.
 *
 * With `s` the share that can be had, the day's decay falls to max(s, 0.3) of itself; what is still
 * wanting lowers the yield of the microbes,
 *
 *     Y' = max(0, Y (n0 + supply)/(n0 - n1))
 *
 * n0, n1 the day's net nitrogen at yields 0 and Y. Decay slows but never stops dead.
 *
 * @param supply g N/m2 this class may tie up today
 * @returns a step with -released <= supply (to rounding)
 * @source model section 3; the least share 0.3 is assumed
 */
export function starvedStep(
  item: ResidueClass,
  residueDays: number,
  turnoverDays: number,
  wanted: number,
  supply: number,
  coefficients: Coefficients,
): ClassStep {
  const slowed = residueDays * Math.max(supply / wanted, coefficients.leastDecayWhenStarved);
  const full = freeStep(item, slowed, turnoverDays, coefficients);
  if (-full.released <= supply) return full;
  const without = decayStep(item, item.parameters, slowed, turnoverDays, 0);
  const atNoYield = nitrogenReleased(item, without, item.parameters);
  const yieldLeft = Math.max(
    0,
    (coefficients.assimilation * (atNoYield + supply)) / (atNoYield - full.released),
  );
  const after = decayStep(item, item.parameters, slowed, turnoverDays, yieldLeft);
  return { item, after, released: nitrogenReleased(item, after, item.parameters) };
}
