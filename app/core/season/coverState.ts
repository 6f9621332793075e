import type { DayNumber } from '../days';
import type { Limits } from './limits';
import type { SeasonResult } from './result';
import { at } from './seasonAccount';
import type { CoverState } from './verdict';

/**
 * How well the ground is covered on the evening of a day.
 *
 * @returns bare while less than 30 % of the ground is hidden, thin up to 70 %, too deep past the line of all cover
 * @source limits: growers' practice and our own judgement, see the threshold table
 */
export function coverStateOn(result: SeasonResult, day: DayNumber, limits: Limits): CoverState {
  if (at(result.coverDepth, result, day) > limits.numbers['cover too deep']) return 'too deep';
  const hidden = at(result.coverFraction, result, day);
  if (hidden < limits.numbers['cover bare']) return 'bare';
  return hidden < limits.numbers['cover thin'] ? 'thin' : 'good';
}
