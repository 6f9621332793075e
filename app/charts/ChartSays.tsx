import { createContext, useContext, type ComponentType, type ReactNode } from 'react';
import type { DayNumber } from '../core/days';
import type { BedLedger } from '../core/season/ledger';
import type { SeasonMore } from '../words/seasonChart';
import type { SeasonDay } from './season/reading';
import type { SectionPartKind } from './section/parts';
import type { BedStrip } from './strips/data';

/** What a chart says in words, and of what. */
export type ChartSaying =
  | { readonly of: 'season' | 'cover' | 'cover layer' | 'lawn' }
  | { readonly of: 'season more'; readonly more: SeasonMore }
  | { readonly of: 'section'; readonly day: DayNumber }
  | { readonly of: 'strip'; readonly bed: BedStrip; readonly day: DayNumber }
  | { readonly of: 'ledger'; readonly ledger: BedLedger }
  /** a place of the ledger's drawing, or a stream: "from > to" */
  | { readonly of: 'way'; readonly key: string };

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

/** What values in a chart's key, or the columns of its table, are of. */
export type ChartValuesOf =
  /** one evening of a bed's season, added up from the first day shown */
  | { readonly of: 'season day'; readonly day: SeasonDay }
  /** the columns of its table, whatever the day */
  | { readonly of: 'season weeks'; readonly day: SeasonDay }
  /** columns of the list of layers: 'laid depth', 'depth', 'left' */
  | { readonly of: 'cover layers' }
  /** parts of a section by their keys */
  | { readonly of: 'section parts'; readonly kinds: ReadonlyMap<string, SectionPartKind> }
  /** beds, by their ids, on the chosen day */
  | { readonly of: 'strips'; readonly beds: readonly BedStrip[]; readonly day: DayNumber }
  /** columns of a lawn's weeks: 'expected', 'likely', 'usual', 'mown' */
  | { readonly of: 'lawn weeks' };

/** A value beside a drawing, or the head of a column: its name, what it is, and how it is written. */
export interface ChartValue {
  readonly key: string;
  readonly of: string;
  readonly text: string;
}

/** The button of a value; null where nothing is known to stand behind it. `isOver`: the value is drawn, and the button lies over it. */
export type ButtonOfValue = (key: string, isOver?: boolean) => ReactNode | null;

export interface ChartValuesProps {
  readonly values: ChartValuesOf;
  readonly written: readonly ChartValue[];
  /** draws what holds the values, with the button of each */
  readonly children: (button: ButtonOfValue) => ReactNode;
}

/**
 * Charts write figures and do not know what stands behind them; whoever shows a chart does. What is
 * given here draws their sentences, lines and values in its place.
 */
export interface ChartFigures {
  readonly Says: ComponentType<ChartSayingProps>;
  readonly LedgerRow?: ComponentType<LedgerRowProps>;
  readonly Values?: ComponentType<ChartValuesProps>;
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

/** Values that stand where a chart puts them. */
export function ChartValues(props: ChartValuesProps): ReactNode {
  const given = useContext(Given);
  if (given?.Values) return <given.Values {...props} />;
  return props.children(() => null);
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
