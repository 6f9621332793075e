import { useMemo } from 'react';
import { LawnChart } from '../../charts/lawn/Chart';
import { lawnCurve } from '../../document/lawnCurve';
import type { Lawn } from '../../document/schema';
import type { GrowthUnit } from '../../words/lawnChartWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';

/** The yield curve of a lawn in the bags its mowings are counted in, or by weight where there are none. */
export function LawnGrowth({ lawn }: { readonly lawn: Lawn }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const curve = useMemo(() => lawnCurve(garden, lawn.id, today), [garden, lawn.id, today]);
  const { outlook, inAWeek } = curve;
  const container = garden.containers.find(({ id }) => id === inAWeek.containers?.containerId);
  const dry = inAWeek.dryKilograms.typical;
  const counted = container && inAWeek.containers && dry > 0;
  // one kilogram dry in what is shown: bags, or weight as it is cut
  const size = counted
    ? (inAWeek.containers?.count.typical ?? 0) / dry
    : (dry > 0 ? inAWeek.freshKilograms.typical / dry : 5) / shown.units.mass.size;
  const unit: GrowthUnit = counted
    ? {
        one: container.name,
        many: container.plural,
        aWeek: `${container.plural} a week`,
        isCounted: true,
      }
    : {
        one: shown.units.mass.symbol,
        many: shown.units.mass.symbol,
        aWeek: `${shown.units.mass.symbol} a week, as cut`,
        isCounted: false,
      };
  const first = curve.weeks[0];
  if (!first) return null;
  return (
    <LawnChart
      name={lawn.name}
      unit={unit}
      units={shown.chart}
      firstDay={first.from}
      lastDay={curve.lastDay}
      today={today}
      ratio={outlook.ratio.typical}
      learntFrom={outlook.learntFrom}
      weeks={curve.weeks.map(({ from, expected, usual }) => ({
        from,
        low: expected.low * size,
        typical: expected.typical * size,
        high: expected.high * size,
        usual: usual * size,
      }))}
      cuts={curve.cuts.map(({ from, day, aWeek }) => ({
        from,
        day,
        aWeek: aWeek === null ? null : aWeek * size,
      }))}
    />
  );
}
