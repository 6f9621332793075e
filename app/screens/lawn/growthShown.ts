import type { LawnChartData } from '../../charts/lawn/geometry';
import type { LawnCurve } from '../../document/lawnCurve';
import type { LawnOutlook } from '../../document/lawnOutlook';
import type { Garden } from '../../document/schema';
import type { GrowthUnit } from '../../words/lawnChartWords';
import type { Shown } from '../shown';

/**
 * What a lawn's growth is shown in: the bags its mowings are counted in, or weight as it is cut
 * where there are none.
 *
 * @returns the unit, and how much of it one kilogram of dry matter is
 */
export function growthIn(
  garden: Garden,
  inAWeek: LawnOutlook,
  shown: Shown,
): { readonly size: number; readonly unit: GrowthUnit } {
  const container = garden.containers.find(({ id }) => id === inAWeek.containers?.containerId);
  const dry = inAWeek.dryKilograms.typical;
  if (container && inAWeek.containers && dry > 0)
    return {
      size: inAWeek.containers.count.typical / dry,
      unit: {
        one: container.name,
        many: container.plural,
        aWeek: `${container.plural} a week`,
        isCounted: true,
      },
    };
  const { symbol, size } = shown.units.mass;
  return {
    size: (dry > 0 ? inAWeek.freshKilograms.typical / dry : 5) / size,
    unit: { one: symbol, many: symbol, aWeek: `${symbol} a week, as cut`, isCounted: false },
  };
}

/** Weeks and mowings of a curve in that unit. */
export const growthShown = (
  { weeks, cuts }: Pick<LawnCurve, 'weeks' | 'cuts'>,
  size: number,
): Pick<LawnChartData, 'weeks' | 'cuts'> => ({
  weeks: weeks.map(({ from, expected, usual }) => ({
    from,
    low: expected.low * size,
    typical: expected.typical * size,
    high: expected.high * size,
    usual: usual * size,
  })),
  cuts: cuts.map(({ from, day, aWeek }) => ({
    from,
    day,
    aWeek: aWeek === null ? null : aWeek * size,
  })),
});
