import { useId, useRef, useState } from 'react';
import { ChartSays, ChartValues } from '../ChartSays';
import type { ChartUnits } from '../../words/chartUnits';
import { dayShort } from '../../words/chartFormat';
import {
  growthText,
  lawnChartWords as words,
  lawnFinding,
  type GrowthUnit,
} from '../../words/lawnChartWords';
import { Scroller } from '../Scroller';
import { calendarStretches } from '../season/calendar';
import { TableButton } from '../TableButton';
import { useWidth } from '../useWidth';
import { hasGrowth, lawnGeometry, type LawnChartData } from './geometry';
import { growthTold } from './growthTold';
import { drawnOfLawn, LawnKey } from './LawnKey';
import { LawnMarks } from './LawnMarks';

export interface LawnChartProps extends LawnChartData {
  readonly name: string;
  readonly unit: GrowthUnit;
  readonly units: Pick<ChartUnits, 'dayFirst'>;
  /** measured against its kind; 1 is as usual */
  readonly ratio: number;
  readonly learntFrom: number;
}

const columns = (['expected', 'likely', 'usual', 'mown'] as const).map((key) => ({
  key,
  text: { expected: 'Expected', likely: 'Likely', usual: 'As its kind', mown: 'Mown, a week' }[key],
  of: 'the column',
}));

/** Both ends of a week's range, once where they are written alike. */
const likelyText = (low: number, high: number, unit: GrowthUnit): string => {
  const [from, to] = [growthText(low, unit), growthText(high, unit)];
  return from === to ? from : `${from} to ${to}`;
};

const lawnSaying = { of: 'lawn' } as const;

/** The yield of a lawn through the season as blades of grass, with what was really mown over it. */
export function LawnChart(props: LawnChartProps) {
  const { unit, units, weeks } = props;
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = Math.max(280, useWidth(box, 900));
  const [isTable, setTable] = useState(false);
  const drawing = lawnGeometry(props, width);
  const { best, rest } = growthTold(props);
  const pxPerDay = (drawing.right - drawing.left) / (props.lastDay - props.firstDay + 1);
  const months = calendarStretches(
    'season',
    { from: props.firstDay, to: props.lastDay },
    units,
    pxPerDay,
  );
  const { floor, top, left, right, todayX } = drawing;
  return (
    <figure className="chart lawn-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>{words.title}</h3>
        <ChartSays
          saying={lawnSaying}
          says={lawnFinding(
            {
              best: best && { amount: best.typical, when: dayShort(best.from + 3, units) },
              mowings: props.learntFrom,
              ratio: props.ratio,
              rest,
            },
            unit,
          )}
        />
      </figcaption>
      {!hasGrowth(props) && <p>{words.nothing}</p>}
      <Scroller box={box} className="chart-scroll" label={`${words.title}: ${props.name}`}>
        <svg
          className="chart-drawing"
          viewBox={`0 0 ${width} ${drawing.height}`}
          width={width}
          height={drawing.height}
          aria-hidden="true"
          focusable="false"
        >
          <text className="chart-title-small" x={left} y={14}>
            {unit.aWeek}
          </text>
          <LawnMarks drawing={drawing} />
          <path className="chart-axis" d={`M${left} ${floor} H${right}`} />
          <path className="lawn-today" d={`M${todayX} ${top - 8} V${floor}`} />
          <text className="chart-label chart-label-strong lawn-today-word" x={todayX + 4} y={top}>
            {words.today}
          </text>
          {months.map(({ from, to, label }) => (
            <text
              key={from}
              className="chart-number lawn-month"
              x={(drawing.x(from) + drawing.x(to + 1)) / 2}
              y={floor + 18}
            >
              {label}
            </text>
          ))}
        </svg>
      </Scroller>
      <LawnKey drawn={drawnOfLawn(props)} />
      <div className="chart-tools">
        <TableButton tableId={`${id}-table`} isShown={isTable} onShow={setTable} words={words} />
      </div>
      {isTable && (
        <ChartValues values={{ of: 'lawn weeks' }} written={columns}>
          {(button) => (
            <Scroller id={`${id}-table`} className="chart-table" label={`Weeks of ${props.name}`}>
              <table>
                <thead>
                  <tr>
                    <th scope="col" className="chart-table-words">
                      Week from
                    </th>
                    {columns.map(({ key, text }) => (
                      <th key={key} scope="col">
                        {button(key) ?? text}
                      </th>
                    ))}
                  </tr>
                </thead>
                <tbody>
                  {weeks.map(({ from, low, typical, high, usual }) => {
                    const cut = props.cuts.find(
                      (one) => one.from !== null && one.from <= from + 6 && one.day >= from,
                    );
                    return (
                      <tr key={from}>
                        <th scope="row">{dayShort(from, units)}</th>
                        <td>{growthText(typical, unit)}</td>
                        <td>{likelyText(low, high, unit)}</td>
                        <td>{growthText(usual, unit)}</td>
                        <td>{cut?.aWeek == null ? '–' : growthText(cut.aWeek, unit)}</td>
                      </tr>
                    );
                  })}
                </tbody>
              </table>
            </Scroller>
          )}
        </ChartValues>
      )}
    </figure>
  );
}
