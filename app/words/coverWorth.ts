import type { UnitSet } from '../amounts/unitSystem';
import { percent } from './chartFormat';
import { estimateWithUnit } from './figures';

/** Depths [mm] from which a cover holds weeds down. */
export interface WeedDepths {
  readonly smallSeeds: number;
  readonly annuals: number;
}

/**
 * What a cover does besides feeding, in a sentence.
 *
 * @param millimetres depth that lies
 * @param dryingLeft share of bare ground's drying that goes on under it 0-1
 * @returns '' where hardly anything lies
 */
export function coverWorth(
  millimetres: number,
  dryingLeft: number,
  weeds: WeedDepths,
  units: UnitSet,
): string {
  if (millimetres < 1) return '';
  const held =
    millimetres >= weeds.annuals
      ? 'keeps down most weeds that come from seed'
      : millimetres >= weeds.smallSeeds
        ? 'keeps small weed seeds down while it is topped up'
        : 'is too thin to keep weeds down';
  return `At ${estimateWithUnit(millimetres, units.depth)} deep it ${held}, and wet ground under it dries at roughly ${percent(dryingLeft)} of the pace of bare ground.`;
}
