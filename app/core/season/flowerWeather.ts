import type { DayNumber } from '../days';
import type { Limits } from './limits';
import type { SeasonResult } from './result';
import { at } from './seasonAccount';

/** Days of the last fortnight on which something else than feeding kept flowers from setting. */
export interface FlowerWeather {
  readonly hotDays: number;
  /** deg C past which a day counts as hot */
  readonly hotAbove: number;
  readonly hotNights: number;
  readonly coldNights: number;
  readonly dryDays: number;
}

const fortnight = 14;

/**
 * Leaves without fruit come from heat, cold or warm nights and dry roots as well. Only days up to
 * `today`: imagined weather explains nothing.
 *
 * @returns days of each kind in the fortnight up to `today`; fewer than the table's least count as 0
 */
export function flowerWeather(
  result: SeasonResult,
  today: DayNumber,
  limits: Limits,
): FlowerWeather {
  const { numbers } = limits;
  const count = (isSo: (day: DayNumber) => boolean): number => {
    let days = 0;
    for (let day = Math.max(result.firstDay, today - fortnight + 1); day <= today; day += 1)
      if (isSo(day)) days += 1;
    return days >= numbers['weather days'] ? days : 0;
  };
  return {
    hotAbove: numbers['hot day'],
    hotDays: count((day) => at(result.airMaximum, result, day) > numbers['hot day']),
    hotNights: count((day) => at(result.airMinimum, result, day) > numbers['hot night']),
    coldNights: count((day) => at(result.airMinimum, result, day) < numbers['cold night']),
    dryDays: count((day) => at(result.dryness, result, day) > numbers['dry soil']),
  };
}
