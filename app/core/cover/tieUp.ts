import type { Coefficients } from '../season/coefficients';
import { setClocks, setCrumb, setReleaseLine, stepAtYield, stepSpent } from './decay';
import type { ResidueClass } from './residueClass';

function setDay(item: ResidueClass): void {
  if (item.residue > item.crumb) setClocks(item.today, item.parameters);
  else setCrumb(item.today, item.parameters);
}

/** The step of a class with all the nitrogen it wants, by the clocks in its `today`. */
export function stepFreely(item: ResidueClass, c: Coefficients): void {
  const { today, parameters } = item;
  if (item.residue === 0) return stepSpent(today, item, parameters);
  setDay(item);
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
  const { assimilation } = c;
  today.residueDays *= Math.max(supply / item.wanted, c.leastDecayWhenStarved);
  setDay(item);
  setReleaseLine(today, item, parameters);
  const { atNoYield, perYield } = today;
  const isMet = atNoYield + perYield * assimilation >= -supply;
  const yieldLeft = isMet ? assimilation : Math.max(0, (atNoYield + supply) / -perYield);
  stepAtYield(today, item, parameters, yieldLeft);
}
