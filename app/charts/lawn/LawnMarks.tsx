import type { LawnGeometry } from './geometry';

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
      {drawing.marks.map(({ x, day }) => (
        <path key={day} className="lawn-cut" d={`M${x - 5} ${floor - 10} l5 8 l5 -8`} />
      ))}
    </g>
  );
}
