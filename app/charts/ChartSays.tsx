import { createContext, useContext, type ComponentType, type ReactNode } from 'react';
import type { DayNumber } from '../core/days';
import type { BedLedger } from '../core/season/ledger';
import type { SeasonMore } from '../words/seasonChart';
import type { BedStrip } from './strips/data';

/** What a chart says in words, and of what. */
export type ChartSaying =
  | { readonly of: 'season' | 'cover' | 'lawn' }
  | { readonly of: 'season more'; readonly more: SeasonMore }
  | { readonly of: 'section'; readonly day: DayNumber }
  | { readonly of: 'strip'; readonly bed: BedStrip; readonly day: DayNumber }
  | { readonly of: 'ledger'; readonly ledger: BedLedger };

/** A line of the ledger's table: which it is, its words, and its figures as they are written. */
export interface LedgerRowProps {
  readonly ledger: BedLedger;
  /** a side's heading or the line's own key */
  readonly line: string;
  readonly words: string;
  readonly figures: readonly [perArea: string, onBed: string];
  readonly className?: string;
}

export interface ChartSayingProps {
  readonly saying: ChartSaying;
  readonly says: string;
  readonly className: string;
}

/**
 * Charts write figures and do not know what stands behind them; whoever shows a chart does. What is
 * given here draws their sentences and lines in its place.
 */
export interface ChartFigures {
  readonly Says: ComponentType<ChartSayingProps>;
  readonly LedgerRow: ComponentType<LedgerRowProps> | null;
}

const Given = createContext<ChartFigures | null>(null);

export const ChartFiguresIn = Given.Provider;

/** The finding of a chart. */
export function ChartSays({
  saying,
  says,
  className = 'chart-finding',
}: Omit<ChartSayingProps, 'className'> & { readonly className?: string }): ReactNode {
  const given = useContext(Given);
  if (given) return <given.Says saying={saying} says={says} className={className} />;
  return <p className={className}>{says}</p>;
}

/** A line of the ledger's table. */
export function LedgerRow(props: LedgerRowProps): ReactNode {
  const given = useContext(Given);
  if (given?.LedgerRow) return <given.LedgerRow {...props} />;
  return (
    <tr className={props.className}>
      <th scope="row">{props.words}</th>
      {props.figures.map((figure, at) => (
        <td key={at}>{figure}</td>
      ))}
    </tr>
  );
}
