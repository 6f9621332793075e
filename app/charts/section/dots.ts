import { type NitrogenKind, nitrogenKinds, type SoilLayerFacts } from './facts';
import { cellsAcross, cellsDown, dotsIn } from './scale';

export interface Dot {
  readonly kind: NitrogenKind;
  readonly x: number;
  readonly y: number;
}

export interface Band {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where up to five dots stand in a square, as on dice: a person counts them in fives. */
const faces: readonly (readonly (readonly [number, number])[])[] = [
  [[0, 0]],
  [
    [-1, -1],
    [1, 1],
  ],
  [
    [-1, -1],
    [0, 0],
    [1, 1],
  ],
  [
    [-1, -1],
    [1, -1],
    [-1, 1],
    [1, 1],
  ],
  [
    [-1, -1],
    [1, -1],
    [0, 0],
    [-1, 1],
    [1, 1],
  ],
];

/** The dots of a soil layer, in squares of five spread evenly over it, each kind in squares of its own. */
export function placeDots(
  layer: SoilLayerFacts,
  { left, right, top, bottom }: Band,
  gramsPerDot: number,
  cell: number,
): readonly Dot[] {
  const squares = nitrogenKinds.flatMap((kind) => {
    const count = dotsIn(layer.nitrogen[kind], gramsPerDot);
    return Array.from({ length: Math.ceil(count / 5) }, (_unused, at) => ({
      kind,
      count: Math.min(5, count - 5 * at),
    }));
  });
  if (squares.length === 0) return [];
  const width = right - left;
  const height = bottom - top;
  const fewest = Math.ceil(squares.length / cellsAcross(width, cell));
  const rows = Math.max(
    fewest,
    Math.min(
      cellsDown(height, cell),
      squares.length,
      Math.round(Math.sqrt((squares.length * height) / width)),
    ),
  );
  const perRow = Math.ceil(squares.length / rows);
  const step = cell * 0.26;
  return squares.flatMap(({ kind, count }, at) => {
    const row = Math.floor(at / perRow);
    const inRow = Math.min(perRow, squares.length - row * perRow);
    const x = left + (width * ((at % perRow) + 0.5)) / inRow;
    const y = top + (height * (row + 0.5)) / rows;
    return (faces[count - 1] ?? []).map(([across, down]): Dot => ({
      kind,
      x: x + across * step,
      y: y + down * step,
    }));
  });
}

const rounded = (value: number): number => Math.round(value * 10) / 10;

/** All dots of a kind as one path: discs, rings or squares. */
export function dotPath(dots: readonly Dot[], kind: NitrogenKind, cell: number): string {
  const r = rounded(cell * (kind === 'unrotted' ? 0.115 : 0.14));
  return dots
    .filter((dot) => dot.kind === kind)
    .map(({ x, y }) =>
      kind === 'unrotted'
        ? `M${rounded(x - r)} ${rounded(y - r)}h${2 * r}v${2 * r}h${-2 * r}Z`
        : `M${rounded(x - r)} ${rounded(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`,
    )
    .join('');
}
