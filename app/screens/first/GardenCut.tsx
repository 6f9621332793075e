import { barrow, beans, corn, heap, mower, squash, strawTufts } from './gardenCutPaths';

const ground = 150;
const width = 1280;
const height = 236;

/** A number between 0 and 1 that belongs to `index`: uneven, and the same every time. */
const uneven = (index: number): number => (Math.sin(index * 12.9898) * 43758.5453 + 1e6) % 1;

/** Blades of grass side by side, as one path. */
function blades(from: number, to: number, tall: number, lean: number): string {
  const count = Math.round((to - from) / 4.6);
  return Array.from({ length: count }, (_, index) => {
    const x = from + ((to - from) * (index + 0.5)) / count;
    const up = tall * (0.62 + 0.5 * uneven(index + from));
    const over = (uneven(index * 3 + from) - 0.4) * lean;
    return `M${x.toFixed(1)} ${ground} q${(over * 0.2).toFixed(1)} ${(-up * 0.6).toFixed(1)} ${over.toFixed(1)} ${(-up).toFixed(1)}`;
  }).join('');
}

/** Dots of nitrogen in the soil of a bed, in rows. */
function dots(from: number, to: number, count: number): readonly (readonly [number, number])[] {
  const perRow = Math.floor((to - from) / 15);
  return Array.from({ length: count }, (_, index) => [
    from + 7 + (index % perRow) * 15 + uneven(index + from) * 5,
    ground + 19 + Math.floor(index / perRow) * 15 + uneven(index * 5 + from) * 5,
  ]);
}

/** Stretches of the ground that are beds, and how many dots lie in each. */
const bedsInIt = [
  { from: 706, to: 850, dots: 9 },
  { from: 878, to: 1010, dots: 22 },
  { from: 1038, to: 1146, dots: 2 },
] as const;

/**
 * A garden cut through: long grass, the mower, the mown lawn, a barrow on its way, three beds that
 * have some, much and little, the heap. Decoration: not to scale, and not read out.
 */
export function GardenCut() {
  return (
    <svg
      className="garden-cut"
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="xMidYMax meet"
      aria-hidden="true"
      focusable="false"
    >
      <rect
        className="cut-under"
        x={-width}
        y={ground}
        width={3 * width}
        height={height - ground}
      />
      <path
        className="cut-soil"
        d={`M${-width} ${ground} H${2 * width} V${ground + 44} H${-width} Z`}
      />
      {bedsInIt.map((bed) => (
        <path
          key={bed.from}
          className="cut-bed"
          d={`M${bed.from} ${ground} H${bed.to} V${ground + 58} H${bed.from} Z`}
        />
      ))}
      {bedsInIt.flatMap((bed) =>
        dots(bed.from, bed.to, bed.dots).map(([x, y]) => (
          <circle key={`${x} ${y}`} className="cut-dot" cx={x} cy={y} r="3" />
        )),
      )}
      <path className="cut-grass-behind" d={blades(-600, 248, 50, 26)} />
      <path className="cut-grass" d={blades(-600, 244, 36, 22)} />
      <path className="cut-grass-behind" d={blades(274, 690, 9, 5)} />
      <path className="cut-grass" d={blades(274, 690, 7, 4)} />
      <path className="cut-grass" d={blades(1262, 1900, 7, 4)} />
      {[mower, barrow].map(({ at, filled, drawn }) => (
        <g key={at} transform={`translate(${at} ${ground})`}>
          <path className="cut-greens" d={filled} />
          <path className="cut-pen" d={drawn} />
        </g>
      ))}
      <path className="cut-greens" d={`M706 ${ground} v-9 q18 -5 36 0 t36 0 t36 0 t36 0 v9 Z`} />
      <path className="cut-straw" d={`M878 ${ground} v-15 q16 -8 33 0 t33 0 t33 0 t33 0 v15 Z`} />
      <path className="cut-straw-pen" transform={`translate(878 ${ground})`} d={strawTufts} />
      {[beans, squash, corn].map(({ at, pen, leaves, roots }) => (
        <g key={at} transform={`translate(${at} ${ground})`}>
          <path className="cut-root" d={roots} />
          <path className="cut-stem" d={pen} />
          <path className="cut-leaf" d={leaves} />
        </g>
      ))}
      <g transform={`translate(${heap.at} ${ground})`}>
        <path className="cut-heap" d={heap.filled} />
        <path className="cut-heap-pen" d={heap.layers} />
        <path className="cut-steam" d={heap.steam} />
      </g>
    </svg>
  );
}
