import type { Coefficients } from '../season/coefficients';
import { setClocks, setCrumb, stepAtYield, type DecayDay } from './decay';
import type { ResidueClass } from './residueClass';

/**
 * Residue [g C/m2] that is eaten whole on the day it is met. It holds under 1e-13 g of nitrogen, a
 * ten-thousandth of what the balance is held to, and a class without residue costs a day next to
 * nothing: a bed of ten years has many.
 */
const crumb = 1e-12;

/**
 * What a class would do with all the nitrogen it wants.
 *
 * @param turned e^-(lam tb), the same for all classes of a kind
 * @returns the class's own `today`, written anew
 */
export function freeStep(
  item: ResidueClass,
  residueDays: number,
  turnoverDays: number,
  coefficients: Coefficients,
  turned: number = Math.exp(-item.parameters.turnover * turnoverDays),
): DecayDay {
  const { today, parameters } = item;
  if (item.residue > crumb) setClocks(today, parameters, residueDays, turnoverDays, turned);
  else setCrumb(today, residueDays > 0 && parameters.decay > 0, turned);
  stepAtYield(today, item, parameters, coefficients.assimilation);
  return today;
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
 * @returns the class's own `today`, with -released <= supply (to rounding)
 * @source model section 3; the least share 0.3 is assumed
 */
export function starvedStep(
  item: ResidueClass,
  residueDays: number,
  turnoverDays: number,
  wanted: number,
  supply: number,
  coefficients: Coefficients,
  turned: number = Math.exp(-item.parameters.turnover * turnoverDays),
): DecayDay {
  const { parameters } = item;
  const slowed = residueDays * Math.max(supply / wanted, coefficients.leastDecayWhenStarved);
  const step = freeStep(item, slowed, turnoverDays, coefficients, turned);
  const atFullYield = step.released;
  if (-atFullYield <= supply) return step;
  stepAtYield(step, item, parameters, 0);
  const atNoYield = step.released;
  const yieldLeft = Math.max(
    0,
    (coefficients.assimilation * (atNoYield + supply)) / (atNoYield - atFullYield),
  );
  stepAtYield(step, item, parameters, yieldLeft);
  return step;
}
