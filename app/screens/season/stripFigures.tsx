import type { ChartFigures, ChartSayingProps, ChartValuesProps } from '../../charts/ChartSays';
import { Figured } from '../../controls/Figured';
import { FiguredPlaces } from '../../controls/FiguredPlaces';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { readyFigure, readyOnDayWhy } from '../why/stripWhys';

/** The reading of a strip opens what stands behind it, and so does its line of the table. */
export const stripFigures: ChartFigures = { Says: Reading, Values: Lines };

function Lines({ values, written, children }: ChartValuesProps) {
  const garden = useGarden();
  const shown = useShown();
  const allDraws = useMowings((state) => state.draws);
  return (
    <FiguredPlaces
      figures={written}
      whyOf={(bedId) => {
        const bed = values.of === 'strips' && values.beds.find((one) => one.bedId === bedId);
        return bed
          ? readyOnDayWhy({ garden, draws: allDraws[bedId], shown }, bed, values.day)
          : null;
      }}
    >
      {children}
    </FiguredPlaces>
  );
}

function Reading({ saying, says, className }: ChartSayingProps) {
  const garden = useGarden();
  const shown = useShown();
  const bed = saying.of === 'strip' ? saying.bed : null;
  const draws = useMowings((state) => (bed ? state.draws[bed.bedId] : undefined));
  return (
    <Figured
      className={className}
      says={says}
      figures={
        saying.of === 'strip'
          ? readyFigure({ garden, draws, shown }, saying.bed, saying.day, says)
          : []
      }
      {...(bed ? { of: bed.name } : {})}
    />
  );
}
