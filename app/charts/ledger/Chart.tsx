import { useId, useRef } from 'react';
import type { BedLedger } from '../../core/season/ledger';
import { amount, amountWithUnit, dayWord } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { Scroller } from '../Scroller';
import { useWidth } from '../useWidth';
import { Weaves, weaveId } from '../weaves/Weaves';
import { type FlowEnd, flowDrawing, type RibbonKind } from './geometry';
import { LedgerTable } from './LedgerTable';

export interface LedgerChartProps {
  readonly ledger: BedLedger;
  readonly bedName: string;
  readonly areaM2: number;
  readonly units: ChartUnits;
}

const classOf = (kind: RibbonKind): string => `source-${kind.replaceAll(' ', '-')}`;

const woven = {
  start: true,
  soil: true,
  'last year': true,
  compost: true,
  'dug in': true,
  cover: true,
  rain: true,
  air: true,
} as const;
const isWoven = (kind: RibbonKind): kind is keyof typeof woven => kind in woven;

/** A bed's ledger: the way of its nitrogen as a drawing, and every gram of it as a table that balances. */
export function LedgerChart(props: LedgerChartProps) {
  const { ledger, units } = props;
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box, 900);
  const drawing = flowDrawing(ledger, width);
  const { trunk } = drawing;
  const block = (end: FlowEnd, x: number) => (
    <rect
      className="flow-block"
      x={x}
      y={end.top}
      width="12"
      height={Math.max(1, end.height)}
      fill={isWoven(end.kind) ? `url(#${weaveId(id, end.kind)})` : 'currentColor'}
    />
  );
  const words = (end: FlowEnd) => `${end.words} ${amount(end.gM2, units.nitrogen)}`;
  return (
    <figure className="chart ledger-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>Ledger of {props.bedName}</h3>
        <p className="chart-finding">
          {amountWithUnit(ledger.totals.opening, units.nitrogen)} was on hand on{' '}
          {dayWord(ledger.fromDay, units)} and{' '}
          {amountWithUnit(ledger.totals.cameIn, units.nitrogen)} came in; by{' '}
          {dayWord(ledger.toDay, units)} {amountWithUnit(ledger.totals.wentOut, units.nitrogen)} had
          gone out.
        </p>
      </figcaption>
      <Scroller
        box={box}
        className="chart-scroll"
        label={`Drawing of the ledger of ${props.bedName}; the table below has its numbers`}
      >
        <svg
          className="chart-drawing"
          viewBox={`0 0 ${drawing.width} ${drawing.height}`}
          width={drawing.width}
          height={drawing.height}
          aria-hidden="true"
          focusable="false"
        >
          <Weaves prefix={id} />
          {drawing.into.map((end) => (
            <g key={end.key} className={classOf(end.kind)}>
              <path className="flow-ribbon" d={end.ribbon} />
              {block(end, drawing.leftBlock)}
              <text
                className="chart-label chart-label-end"
                x={drawing.leftBlock - 7}
                y={end.top + end.height / 2}
                dy="0.35em"
              >
                {words(end)}
              </text>
            </g>
          ))}
          {drawing.outOf.map((end) => (
            <g key={end.key} className={classOf(end.kind)}>
              <path className="flow-ribbon" d={end.ribbon} />
              {block(end, drawing.rightBlock)}
              <text
                className="chart-label"
                x={drawing.rightBlock + 19}
                y={end.top + end.height / 2}
                dy="0.35em"
              >
                {words(end)}
              </text>
            </g>
          ))}
          <rect
            className="flow-trunk"
            x={trunk.x}
            y={trunk.top}
            width={trunk.width}
            height={trunk.height}
          />
          <text
            className="flow-trunk-words"
            transform={`translate(${trunk.x + trunk.width / 2} ${trunk.top + trunk.height / 2}) rotate(-90)`}
            dy="0.35em"
          >
            {props.bedName}
          </text>
        </svg>
      </Scroller>
      <LedgerTable ledger={ledger} areaM2={props.areaM2} units={units} />
    </figure>
  );
}
