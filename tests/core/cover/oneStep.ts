import {
  newDecayDay,
  setClocks,
  stepAtYield,
  type DecayCarbon,
  type DecayDay,
  type DecayParameters,
} from '../../../app/core/cover/decay';
import type { ResidueClass } from '../../../app/core/cover/residueClass';
import { stepFreely, stepStarved } from '../../../app/core/cover/tieUp';
import type { Coefficients } from '../../../app/core/season/coefficients';

/*
 * The parts of the program's day of decomposition by themselves, with clocks of the test's own. The
 * day sets the clocks of a class as `setDays` does and calls the same functions.
 */
function setDays(
  day: DecayDay,
  p: DecayParameters,
  residueDays: number,
  turnoverDays: number,
): void {
  day.residueDays = residueDays;
  day.turnoverDays = turnoverDays;
  day.lost = -Math.expm1(-p.turnover * turnoverDays);
  day.turned = 1 - day.lost;
}

/** The three pools after some normalised days of the residue (ta) and of the soil (tb), at a yield. */
export function decayStep(
  carbon: DecayCarbon,
  p: DecayParameters,
  residueDays: number,
  turnoverDays: number,
  assimilation: number,
): DecayCarbon {
  const day = newDecayDay();
  setDays(day, p, residueDays, turnoverDays);
  setClocks(day, p);
  stepAtYield(day, carbon, p, assimilation);
  return day.after;
}

/** Nitrogen set free between two states by what they hold, g/m2; negative when it was tied up. */
export const nitrogenReleased = (
  before: DecayCarbon,
  after: DecayCarbon,
  p: DecayParameters,
): number =>
  (before.residue - after.residue) / p.carbonToNitrogen -
  (after.microbes - before.microbes) / p.microbeCarbonToNitrogen -
  (after.humus - before.humus) / p.humusCarbonToNitrogen;

/** What a class would do with all the nitrogen it wants; its own `today`. */
export function freeStep(
  item: ResidueClass,
  residueDays: number,
  turnoverDays: number,
  c: Coefficients,
): DecayDay {
  setDays(item.today, item.parameters, residueDays, turnoverDays);
  stepFreely(item, c);
  return item.today;
}

/** What a class does that wants more than it can have; its own `today`. */
export function starvedStep(
  item: ResidueClass,
  residueDays: number,
  turnoverDays: number,
  wanted: number,
  supply: number,
  c: Coefficients,
): DecayDay {
  setDays(item.today, item.parameters, residueDays, turnoverDays);
  item.wanted = wanted;
  stepStarved(item, supply, c);
  return item.today;
}
