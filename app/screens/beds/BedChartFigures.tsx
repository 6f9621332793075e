import { useMemo, type ReactNode } from 'react';
import {
  ChartFiguresIn,
  type ChartFigures,
  type ChartSayingProps,
  type ChartValuesProps,
  type LedgerRowProps,
} from '../../charts/ChartSays';
import { Figured } from '../../controls/Figured';
import { FiguredPlaces } from '../../controls/FiguredPlaces';
import { FigureRow } from '../../controls/FigureRow';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import type { BedWhyFacts } from '../why/bedWhys';
import { findingFigures } from '../why/findingWhys';
import { ledgerLineWhy } from '../why/ledgerWhys';
import { valueWhy } from '../why/valueWhys';

const figuresOfBed = (bedId: string): ChartFigures => ({
  Says: (props) => <Saying bedId={bedId} {...props} />,
  LedgerRow: Line,
  Values: (props) => <Values bedId={bedId} {...props} />,
});

/** Within it the charts of a bed say their findings with figures that open what stands behind them. */
export function BedChartFigures(props: { readonly bedId: string; readonly children: ReactNode }) {
  const { bedId } = props;
  const given = useMemo(() => figuresOfBed(bedId), [bedId]);
  return <ChartFiguresIn value={given}>{props.children}</ChartFiguresIn>;
}

function useFacts(bedId: string): BedWhyFacts | null {
  const garden = useGarden();
  const shown = useShown();
  const results = useMowings((state) => state.bedResults[bedId]);
  const draws = useMowings((state) => state.draws[bedId]);
  return results ? { garden, results, draws, shown } : null;
}

function Saying(props: ChartSayingProps & { readonly bedId: string }) {
  const { saying, says } = props;
  const facts = useFacts(props.bedId);
  return (
    <Figured
      className={props.className}
      says={says}
      figures={facts ? findingFigures(facts, saying, says) : []}
    />
  );
}

/** Values of a chart's key, or the heads of its table's columns. */
function Values({
  bedId,
  values,
  written,
  children,
}: ChartValuesProps & { readonly bedId: string }) {
  const facts = useFacts(bedId);
  return (
    <FiguredPlaces
      figures={facts ? written : []}
      whyOf={(key) => facts && valueWhy(facts, values, key)}
    >
      {children}
    </FiguredPlaces>
  );
}

/** A line of the ledger: its figure opens the why of both, the second is the same on the whole bed. */
function Line({ ledger, line, words, figures, className }: LedgerRowProps) {
  const { chart: units } = useShown();
  const why = ledgerLineWhy(ledger, line, words, figures, units);
  return (
    <FigureRow
      words={words}
      className={className}
      cells={figures.map((text, at) => ({
        key: at,
        figure: at === 0 ? { text, why } : null,
        before: at === 0 ? null : text,
        of: units.nitrogen.short,
      }))}
    />
  );
}
