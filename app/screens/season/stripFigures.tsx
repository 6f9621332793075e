import type { ChartFigures, ChartSayingProps } from '../../charts/ChartSays';
import { Figured } from '../../controls/Figured';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { readyFigure } from '../why/stripWhys';

/** The reading of a strip opens what stands behind it. */
export const stripFigures: ChartFigures = { Says: Reading, LedgerRow: null };

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
