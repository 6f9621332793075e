/** Beds of the drawing: x, y, width, height, and what lies on them. Decoration, no measure. */
const beds = [
  { x: 262, y: 24, width: 62, height: 30, cover: 'greens' },
  { x: 262, y: 66, width: 62, height: 22, cover: 'straw' },
  { x: 262, y: 100, width: 62, height: 42, cover: 'bare' },
  { x: 262, y: 154, width: 62, height: 26, cover: 'leaves' },
  { x: 346, y: 24, width: 50, height: 64, cover: 'bare' },
  { x: 346, y: 100, width: 50, height: 80, cover: 'greens' },
] as const;

/** A lawn half mown and beds beside it, seen from above. Says nothing, so it is not read out. */
export function LawnAndBeds() {
  const stripes = Array.from({ length: 8 }, (_, index) => index);
  return (
    <svg
      className="lawn-and-beds"
      viewBox="0 0 420 204"
      width="420"
      height="204"
      aria-hidden="true"
      focusable="false"
    >
      <rect className="drawn-ground" x="0" y="0" width="420" height="204" />
      {stripes.map((index) => (
        <path
          key={index}
          className={index % 2 === 0 ? 'drawn-mown' : 'drawn-mown-back'}
          d={`M${12 + index * 28} 12 h28 V192 h-28 Z`}
        />
      ))}
      <path className="drawn-long" d="M180 12 h56 V192 h-28 v-64 h-28 Z" />
      {Array.from({ length: 34 }, (_, index) => {
        const x = 184 + (index % 9) * 5.6;
        const y = 24 + Math.floor(index / 9) * 26 + ((index * 7) % 5);
        return <path key={index} className="drawn-blade" d={`M${x} ${y + 9} l2.4 -9 l2.4 9`} />;
      })}
      {beds.map((bed) => (
        <g key={`${bed.x} ${bed.y}`}>
          <rect className="drawn-bed" x={bed.x} y={bed.y} width={bed.width} height={bed.height} />
          {bed.cover !== 'bare' && (
            <rect
              className={`drawn-${bed.cover}`}
              x={bed.x + 4}
              y={bed.y + 4}
              width={bed.width - 8}
              height={bed.height - 8}
            />
          )}
          {Array.from({ length: Math.floor((bed.width - 12) / 11) }, (_, index) => (
            <circle
              key={index}
              className="drawn-plant"
              cx={bed.x + 11 + index * 11}
              cy={bed.y + bed.height / 2}
              r={3.2}
            />
          ))}
        </g>
      ))}
      <path className="drawn-mower" d="M186 136 h16 v20 h-16 Z M194 156 v16 M188 172 h12" />
    </svg>
  );
}
