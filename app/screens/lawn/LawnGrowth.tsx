import { useMemo } from 'react';
import { LawnChart } from '../../charts/lawn/Chart';
import { lawnTable } from '../../charts/lawn/tableData';
import type { Lawn } from '../../document/schema';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { TakeAway } from '../takeAway/TakeAway';
import { useToday } from '../useReadingContext';
import { growthIn, growthShown } from './growthShown';
import { keptLawnCurve } from './keptLawnCurve';

/** The yield curve of a lawn in the bags its mowings are counted in, or by weight where there are none. */
export function LawnGrowth({ lawn }: { readonly lawn: Lawn }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const curve = useMemo(() => keptLawnCurve(garden, lawn, today), [garden, lawn, today]);
  const { outlook, inAWeek } = curve;
  const { size, unit } = growthIn(garden, inAWeek, shown);
  const first = curve.weeks[0];
  if (!first) return null;
  const grown = growthShown(curve, size);
  return (
    <TakeAway
      name={`Growth of ${lawn.name}`}
      table={() => lawnTable({ ...grown, today }, unit.aWeek)}
    >
      <LawnChart
        name={lawn.name}
        unit={unit}
        units={shown.chart}
        firstDay={first.from}
        lastDay={curve.lastDay}
        today={today}
        ratio={outlook.ratio.typical}
        learntFrom={outlook.learntFrom}
        {...grown}
      />
    </TakeAway>
  );
}
