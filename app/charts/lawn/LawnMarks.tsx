import { twoFigures } from '../../words/figures';
import type { LawnGeometry } from './geometry';

/** room that a number takes beside a torn mowing [px] */
const numberRoom = 46;
const teeth = 4;

/** An edge in teeth, from left to right. */
const tornEdge = (x: number, y: number, width: number): string => {
  const step = width / (2 * teeth);
  return `M${x} ${y} ${Array.from({ length: teeth }, () => `l${step} -4 l${step} 4`).join(' ')}`;
};

/** Growth and mowings themselves, without axis and words. */
export function LawnMarks({ drawing }: { readonly drawing: LawnGeometry }) {
  const { floor, left, right } = drawing;
  return (
    <g>
      {drawing.ticks.map(({ value, y }) => (
        <g key={value}>
          <path className="chart-grid" d={`M${left} ${y} H${right}`} />
          <text className="chart-number chart-number-left" x={left - 8} y={y} dy="0.35em">
            {value}
          </text>
        </g>
      ))}
      <path className="lawn-band" d={drawing.band} />
      {drawing.blades.map(({ path, isAhead, from }) => (
        <path
          key={from}
          className={isAhead ? 'lawn-blade lawn-blade-ahead' : 'lawn-blade'}
          d={path}
        />
      ))}
      <path className="lawn-usual" d={drawing.usual} />
      {drawing.cuts.map((cut) => (
        <g key={cut.day}>
          <path
            className="lawn-cut-side"
            d={`M${cut.x} ${cut.y} V${floor} M${cut.x + cut.width} ${cut.y} V${floor}`}
          />
          <path className="lawn-cut" d={`M${cut.x} ${cut.y} h${cut.width}`} />
        </g>
      ))}
      {drawing.torn.map(({ x, y, width, day, aWeek }) => {
        const isLeft = x - left > numberRoom;
        return (
          <g key={day}>
            <path
              className="lawn-cut-side"
              d={`M${x} ${y} V${floor} M${x + width} ${y} V${floor}`}
            />
            <path className="lawn-cut" d={tornEdge(x, y, width)} />
            <text
              className={isLeft ? 'chart-number chart-number-left' : 'chart-number'}
              x={isLeft ? x - 4 : x + width + 4}
              y={y + 8}
            >
              {twoFigures(aWeek)}
            </text>
          </g>
        );
      })}
      {drawing.marks.map(({ x, day }) => (
        <path key={day} className="lawn-cut" d={`M${x - 5} ${floor - 10} l5 8 l5 -8`} />
      ))}
    </g>
  );
}
