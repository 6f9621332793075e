import { useMemo } from 'react';
import {
  ChartFiguresIn,
  type ChartFigures,
  type ChartSayingProps,
  type ChartValuesProps,
} from '../../charts/ChartSays';
import { LawnChart } from '../../charts/lawn/Chart';
import { growthTold } from '../../charts/lawn/growthTold';
import { lawnTable } from '../../charts/lawn/tableData';
import { Figured } from '../../controls/Figured';
import { FiguredPlaces } from '../../controls/FiguredPlaces';
import type { Lawn } from '../../document/schema';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { TakeAway } from '../takeAway/TakeAway';
import { useToday } from '../useReadingContext';
import { growthFigures, lawnColumnWhy } from '../why/lawnWhys';
import { growthIn, growthShown } from './growthShown';
import { keptLawnCurve } from './keptLawnCurve';

function useGrowth(lawn: Lawn) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const curve = useMemo(() => keptLawnCurve(garden, lawn, today), [garden, lawn, today]);
  const { size, unit } = growthIn(garden, curve.inAWeek, shown);
  return { curve, unit, grown: { ...growthShown(curve, size), today } };
}

const figuresOfLawn = (lawnId: string): ChartFigures => ({
  Says: (props) => <Saying lawnId={lawnId} {...props} />,
  Values: (props) => <Columns lawnId={lawnId} {...props} />,
});

/** The yield curve of a lawn in the bags its mowings are counted in, or by weight where there are none. */
export function LawnGrowth({ lawn }: { readonly lawn: Lawn }) {
  const shown = useShown();
  const { curve, unit, grown } = useGrowth(lawn);
  const figures = useMemo(() => figuresOfLawn(lawn.id), [lawn.id]);
  const first = curve.weeks[0];
  if (!first) return null;
  return (
    <ChartFiguresIn value={figures}>
      <TakeAway name={`Growth of ${lawn.name}`} table={() => lawnTable(grown, unit.aWeek)}>
        <LawnChart
          name={lawn.name}
          unit={unit}
          units={shown.chart}
          firstDay={first.from}
          lastDay={curve.lastDay}
          ratio={curve.outlook.ratio.typical}
          learntFrom={curve.outlook.learntFrom}
          {...grown}
        />
      </TakeAway>
    </ChartFiguresIn>
  );
}

function Saying({ lawnId, ...props }: ChartSayingProps & { readonly lawnId: string }) {
  const lawn = useGarden().lawns.find(({ id }) => id === lawnId);
  return lawn ? <LawnSaying lawn={lawn} {...props} /> : null;
}

/** What the drawing comes to, its figures with what stands behind them. */
function LawnSaying({ lawn, says, className }: ChartSayingProps & { readonly lawn: Lawn }) {
  const { curve, unit, grown } = useGrowth(lawn);
  return (
    <Figured
      className={className}
      says={says}
      figures={growthFigures(curve.outlook, lawn, growthTold(grown), unit)}
    />
  );
}

/** The weeks' table, whose heads open how their columns are made. */
function Columns({ lawnId, written, children }: ChartValuesProps & { readonly lawnId: string }) {
  const lawn = useGarden().lawns.find(({ id }) => id === lawnId);
  return lawn ? (
    <LawnColumns lawn={lawn} written={written}>
      {children}
    </LawnColumns>
  ) : null;
}

function LawnColumns({
  lawn,
  written,
  children,
}: Pick<ChartValuesProps, 'written' | 'children'> & { readonly lawn: Lawn }) {
  const { curve } = useGrowth(lawn);
  return (
    <FiguredPlaces
      figures={written}
      whyOf={(key) =>
        lawnColumnWhy(key as 'expected' | 'likely' | 'usual' | 'mown', lawn, curve.outlook)
      }
    >
      {children}
    </FiguredPlaces>
  );
}
