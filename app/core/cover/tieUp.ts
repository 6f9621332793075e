import type { Coefficients } from '../season/coefficients';
import { setClocks, setCrumb, stepAtYield } from './decay';
import type { ResidueClass } from './residueClass';

/**
 * Residue [g C/m2] that is eaten whole on the day it is met. It holds under 1e-13 g of nitrogen, a
 * ten-thousandth of what the balance is held to, and a class without residue costs a day next to
 * nothing: a bed of ten years has many.
 */
const crumb = 1e-12;

/** The step of a class with all the nitrogen it wants, by the clocks in its `today`. */
export function stepFreely(item: ResidueClass, c: Coefficients): void {
  const { today, parameters } = item;
  if (item.residue > crumb) setClocks(today, parameters);
  else setCrumb(today, parameters);
  stepAtYield(today, item, parameters, c.assimilation);
}

/**
 * The step of a class that wants to tie up more than it can have, by the clocks in its `today`.
 *
 * With `s` the share that can be had, the day's clock runs at max(s, 0.3) of its speed; what is still
 * wanting lowers the yield of the microbes,
 *
 *     Y' = max(0, Y (n0 + supply)/(n0 - n1))
 *
 * n0, n1 the day's net nitrogen at yields 0 and Y. So there is always some decay.
 *
 * @param supply g N/m2 this class may tie up today; after it -released <= supply (to rounding)
 * @source model 3; the least share 0.3 is assumed
 */
export function stepStarved(item: ResidueClass, supply: number, c: Coefficients): void {
  const { parameters, today } = item;
  today.residueDays *= Math.max(supply / item.wanted, c.leastDecayWhenStarved);
  stepFreely(item, c);
  const atFullYield = today.released;
  if (-atFullYield <= supply) return;
  stepAtYield(today, item, parameters, 0);
  const atNoYield = today.released;
  const yieldLeft = Math.max(
    0,
    (c.assimilation * (atNoYield + supply)) / (atNoYield - atFullYield),
  );
  stepAtYield(today, item, parameters, yieldLeft);
}
