import type { MarkShape } from '../../app/words/markShapes';

type Point = readonly [x: number, y: number];

/** Points along a path of the commands our marks use: M L H V C A Z, and a. */
function outlines(path: string): readonly (readonly Point[])[] {
  const parts = path.match(/[A-Za-z]|-?[\d.]+/g) ?? [];
  const lines: Point[][] = [];
  let at: Point = [0, 0];
  let command = '';
  let next = 0;
  const number = (): number => Number(parts[next++]);
  const go = (to: Point) => {
    at = to;
    lines.at(-1)?.push(to);
  };
  while (next < parts.length) {
    if (/[A-Za-z]/.test(parts[next] ?? '')) command = parts[next++] ?? '';
    if (command === 'M') {
      at = [number(), number()];
      lines.push([at]);
      command = 'L';
    } else if (command === 'L') go([number(), number()]);
    else if (command === 'H') go([number(), at[1]]);
    else if (command === 'V') go([at[0], number()]);
    else if (command === 'Z') go(lines.at(-1)?.[0] ?? at);
    else if (command === 'C') {
      const [a, b, c, d, e, f] = [number(), number(), number(), number(), number(), number()];
      const from = at;
      for (let step = 1; step <= 12; step++) {
        const t = step / 12;
        const bend = (p0: number, p1: number, p2: number, p3: number) =>
          (1 - t) ** 3 * p0 + 3 * (1 - t) ** 2 * t * p1 + 3 * (1 - t) * t * t * p2 + t ** 3 * p3;
        go([bend(from[0], a, c, e), bend(from[1], b, d, f)]);
      }
    } else if (command === 'A' || command === 'a') {
      const radius = number();
      next += 2;
      const [large, sweep] = [number() === 1, number() === 1];
      const from = at;
      const given: Point = [number(), number()];
      const to: Point = command === 'a' ? [from[0] + given[0], from[1] + given[1]] : given;
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const chord = Math.hypot(dx, dy);
      const rise =
        Math.sqrt(Math.max(0, radius ** 2 - chord ** 2 / 4)) * (large === sweep ? -1 : 1);
      const middle: Point = [
        (from[0] + to[0]) / 2 - (dy / chord) * rise,
        (from[1] + to[1]) / 2 + (dx / chord) * rise,
      ];
      const start = Math.atan2(from[1] - middle[1], from[0] - middle[0]);
      let turn = Math.atan2(to[1] - middle[1], to[0] - middle[0]) - start;
      if (sweep && turn < 0) turn += 2 * Math.PI;
      if (!sweep && turn > 0) turn -= 2 * Math.PI;
      for (let step = 1; step <= 24; step++) {
        const angle = start + (turn * step) / 24;
        go([middle[0] + radius * Math.cos(angle), middle[1] + radius * Math.sin(angle)]);
      }
      at = to;
    } else throw new Error(`No such command in a mark: ${command}`);
  }
  return lines;
}

const isInside = ([x, y]: Point, lines: readonly (readonly Point[])[]): boolean =>
  lines
    .flatMap((line) => line.map((one, index) => [one, line[(index + 1) % line.length]!] as const))
    .filter(
      ([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax,
    ).length %
    2 ===
  1;

const isNear = ([x, y]: Point, lines: readonly (readonly Point[])[], reach: number): boolean =>
  lines.some((line) =>
    line.slice(1).some(([bx, by], index) => {
      const [ax, ay] = line[index]!;
      const long = (bx - ax) ** 2 + (by - ay) ** 2;
      const along =
        long === 0
          ? 0
          : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long));
      return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay)) <= reach;
    }),
  );

/** Cells of a 40 x 40 grid over the 20 x 20 box that a mark inks, drawn as `.mark` draws it. */
export function inkOf(shape: MarkShape): ReadonlySet<number> {
  const [solid, open] = [outlines(shape.solid), outlines(shape.open)];
  return new Set(
    Array.from({ length: 1600 }, (_, cell) => cell).filter((cell) => {
      const at: Point = [(cell % 40) / 2 + 0.25, Math.floor(cell / 40) / 2 + 0.25];
      return isInside(at, solid) || isNear(at, open, 1.2);
    }),
  );
}

/** Cells that both ink, over cells that either inks: 1 where two marks look the same. */
export function overlap(one: ReadonlySet<number>, other: ReadonlySet<number>): number {
  const both = [...one].filter((cell) => other.has(cell)).length;
  return both / (one.size + other.size - both);
}
