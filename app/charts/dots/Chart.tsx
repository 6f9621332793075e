import '../../style/charts/dots.css';
import { type KeyboardEvent, type MouseEvent, useEffect, useId, useRef, useState } from 'react';
import { timesWords } from '../../words/figures';
import { dotsSay, dotsWords as words } from '../../words/dotsWords';
import { useWidth } from '../useWidth';
import { dotRadius, dotsGeometry, dotsPast } from './geometry';

const steps: Readonly<Record<string, number>> = {
  ArrowLeft: -0.1,
  ArrowDown: -0.1,
  ArrowRight: 0.1,
  ArrowUp: 0.1,
  PageDown: -0.5,
  PageUp: 0.5,
};
const tenth = (value: number): number => Math.round(10 * value) / 10;
const shown = (value: number): string => String(Math.round(100 * value) / 100);

export interface DotsChartProps {
  /** rising */
  readonly values: readonly number[];
  /** from where on the crop has too much; null where there is no such line */
  readonly overFedLine: number | null;
}

/**
 * What is uncertain as dots that can be counted, with a line that is moved over them by a press, by
 * keys or by a typed number. Those past it are open, so that it is seen without colour what is counted.
 */
export function DotsChart({ values, overFedLine }: DotsChartProps) {
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = Math.max(260, Math.min(560, useWidth(box, 560)));
  const [line, setLine] = useState(overFedLine ?? 1);
  const [typed, setTyped] = useState<string | null>(null);
  // only what one's own hand did is said: the dots come and change by themselves
  const [movedOver, setMovedOver] = useState<readonly number[] | null>(null);
  const [isTable, setTable] = useState(false);
  useEffect(() => setLine(overFedLine ?? 1), [overFedLine]);
  const drawing = dotsGeometry(values, overFedLine ?? 1, width);
  const { floor, top } = drawing;
  const past = dotsPast(values, line);
  const says = dotsSay(past, values.length, line, overFedLine);
  const move = (to: number) => {
    setTyped(null);
    setMovedOver(values);
    setLine(Math.min(top, Math.max(0, tenth(to))));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const by = steps[event.key];
    if (by !== undefined) move(line + by);
    else if (event.key === 'Home') move(0);
    else if (event.key === 'End') move(top);
    else return;
    event.preventDefault();
  };
  const onPress = (event: MouseEvent<HTMLElement>) =>
    move(drawing.valueAt(event.clientX - event.currentTarget.getBoundingClientRect().left));
  const meant = Number(
    (typed ?? '')
      .replace(/times\s*$/, '')
      .trim()
      .replace(',', '.'),
  );
  const isWrong = !(meant >= 0);
  /** nothing typed leaves the line where it is */
  const settle = () => {
    if (typed === null || isWrong) return;
    setTyped(null);
    setMovedOver(values);
    if (typed.trim() !== '') setLine(Math.min(top, meant));
  };
  const x = drawing.x(line);
  return (
    <figure className="chart dots-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>{words.title}</h3>
        <p className="chart-reading" id={`${id}-says`}>
          {says}
        </p>
        <div className="only-heard" aria-live="polite">
          {movedOver === values && says}
        </div>
      </figcaption>
      <div ref={box} className="dots-box">
        {/* oxlint-disable-next-line jsx-a11y/click-events-have-key-events -- its keys are those of a slider */}
        <div
          className="dots-reader"
          role="slider"
          tabIndex={0}
          aria-label={words.slider}
          aria-describedby={`${id}-says`}
          aria-valuemin={0}
          aria-valuemax={top}
          aria-valuenow={line}
          aria-valuetext={timesWords(line)}
          onKeyDown={onKeyDown}
          onClick={onPress}
        >
          <svg
            className="chart-drawing"
            viewBox={`0 0 ${width} ${drawing.height}`}
            width={width}
            height={drawing.height}
            aria-hidden="true"
            focusable="false"
          >
            <path className="chart-base" d={`M0 ${floor} H${width}`} />
            {drawing.ticks.map((tick) => (
              <g key={tick.value}>
                <path className="chart-tick" d={`M${tick.x} ${floor} v5`} />
                <text className="chart-number chart-number-middle" x={tick.x} y={floor + 18}>
                  {tick.value}
                </text>
              </g>
            ))}
            {drawing.dots.map((dot, at) => (
              <circle
                // oxlint-disable-next-line react/no-array-index-key -- a dot is its place in the order
                key={at}
                className={dot.value > line ? 'dots-dot dots-past' : 'dots-dot'}
                cx={dot.x}
                cy={dot.y}
                r={dotRadius - (dot.value > line ? 1 : 0)}
              />
            ))}
            <path className="dots-line" d={`M${x} 18 V${floor + 5}`} />
            <path className="dots-grip" d={`M${x - 6} 6 h12 v6 l-6 6 l-6 -6 Z`} />
          </svg>
        </div>
      </div>
      <div className="dots-tools">
        <label className="dots-typed">
          {words.field}{' '}
          <input
            type="text"
            inputMode="decimal"
            value={typed ?? shown(line)}
            aria-invalid={isWrong ? true : undefined}
            aria-describedby={isWrong ? `${id}-wrong` : undefined}
            onChange={({ target }) => setTyped(target.value)}
            onBlur={settle}
            onKeyDown={({ key }) => key === 'Enter' && settle()}
          />
        </label>
        <button
          type="button"
          className="button-small"
          aria-expanded={isTable}
          aria-controls={`${id}-list`}
          onClick={() => setTable(!isTable)}
        >
          {isTable ? words.hideTable : words.asTable}
        </button>
      </div>
      {isWrong && (
        <p className="field-trouble" id={`${id}-wrong`} role="alert">
          <span aria-hidden="true" className="field-trouble-mark" />
          {words.unreadable}
        </p>
      )}
      <p className="small soft dots-how">{words.how}</p>
      {isTable && (
        <ol id={`${id}-list`} className="dots-list chart-table small">
          {values.map((value, at) => (
            // oxlint-disable-next-line react/no-array-index-key -- a dot is its place in the order
            <li key={at}>{timesWords(value)}</li>
          ))}
        </ol>
      )}
    </figure>
  );
}
