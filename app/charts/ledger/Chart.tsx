import { useId } from 'react';
import { ChartSays } from '../ChartSays';
import type { LedgerWay } from '../../core/season/ledgerStreams';
import { amountWithUnit, dayWord } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { LedgerTable } from './LedgerTable';
import { WayDrawing } from './WayDrawing';

/** Days whose account can be told: the season so far, all of it, one that is over. */
export interface LedgerPeriod {
  readonly key: string;
  readonly words: string;
  readonly way: LedgerWay;
  /** from here on its days are imagined; null: none are */
  readonly imaginedFrom: number | null;
}

export interface LedgerChartProps {
  /** at least one */
  readonly periods: readonly LedgerPeriod[];
  /** key of the one that is told */
  readonly shown: string;
  readonly onShow: (key: string) => void;
  readonly bedName: string;
  readonly areaM2: number;
  readonly units: ChartUnits;
}

/** A bed's ledger: the way of its nitrogen as a drawing, and every gram of it as a table that balances. */
export function LedgerChart(props: LedgerChartProps) {
  const { periods, units } = props;
  const id = useId();
  const period = periods.find(({ key }) => key === props.shown) ?? periods[0];
  if (!period) return null;
  const { ledger } = period.way;
  const isForetold = period.imaginedFrom !== null;
  return (
    <figure className="chart ledger-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>Ledger of {props.bedName}</h3>
        <ChartSays
          saying={{ of: 'ledger', ledger }}
          says={
            `${amountWithUnit(ledger.totals.opening, units.nitrogen)} was on hand on ${dayWord(ledger.fromDay, units)} and ` +
            `${amountWithUnit(ledger.totals.cameIn, units.nitrogen)} ${isForetold ? 'comes' : 'came'} in; by ${dayWord(ledger.toDay, units)} ` +
            `${amountWithUnit(ledger.totals.wentOut, units.nitrogen)} ${isForetold ? 'will have' : 'had'} gone out.${
              period.imaginedFrom === null
                ? ''
                : ` From ${dayWord(period.imaginedFrom, units)} on the weather is imagined.`
            }`
          }
        />
      </figcaption>
      {periods.length > 1 && (
        <div className="chart-tools">
          <div role="group" aria-label="Days of the ledger" className="chart-choices">
            {periods.map(({ key, words }) => (
              <button
                key={key}
                type="button"
                className="button-small"
                aria-pressed={key === period.key}
                onClick={() => props.onShow(key)}
              >
                {words}
              </button>
            ))}
          </div>
        </div>
      )}
      <WayDrawing key={period.key} way={period.way} bedName={props.bedName} units={units} />
      <LedgerTable ledger={ledger} areaM2={props.areaM2} units={units} />
    </figure>
  );
}
