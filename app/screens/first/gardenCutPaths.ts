/*
 * Shapes of the drawing that greets one, each from its own foot on the ground (0 0), up is minus.
 */

/** a push mower with its bag, seen from the side, going left */
export const mower = {
  at: 296,
  filled: 'M14 -30 C24 -62 62 -62 72 -44 L76 -14 L22 -12 Z',
  drawn:
    'M-2 -18 A17 17 0 1 0 -2 -17.9 M-9 -18 A10 10 0 1 0 -9 -17.9 M-38 -18 H-56 M-19 -18 L14 -30 M14 -30 C24 -62 62 -62 72 -44 L76 -14 L22 -12 Z M-19 -18 L92 -104 H108 M26 -12 L24 -4 M70 -14 L72 -4 M14 -30 L72 -44',
};

/** a full barrow, going right */
export const barrow = {
  at: 560,
  filled: 'M-34 -38 C-28 -60 -6 -66 10 -64 C28 -64 42 -54 46 -38 Z',
  drawn:
    'M-42 -38 H54 L36 -12 H-20 Z M-70 -30 L-24 -16 M36 -12 L52 -9 M-16 -12 L-24 0 M52 -20 A10 10 0 1 0 52 0 A10 10 0 1 0 52 -20 M-34 -38 C-28 -60 -6 -66 10 -64 C28 -64 42 -54 46 -38',
};

const leafAt = (x: number, y: number, long: number, turn: number, wide: number): string => {
  const [c, s] = [Math.cos(turn) * long, Math.sin(turn) * long];
  const [px, py] = [-s * wide, c * wide];
  const to = (dx: number, dy: number) => `${(x + dx).toFixed(1)} ${(y + dy).toFixed(1)}`;
  return `M${to(0, 0)} Q${to(c * 0.45 + px, s * 0.45 + py)} ${to(c, s)} Q${to(c * 0.45 - px, s * 0.45 - py)} ${to(0, 0)} Z`;
};
type Leaves = readonly (readonly [x: number, y: number, long: number, turn: number])[];
const leavesAt = (leaves: Leaves, wide: number, size = 1): string =>
  leaves.map(([x, y, long, turn]) => leafAt(x, y, long * size, turn, wide)).join('');

/** climbing beans on four poles */
export const beans = {
  at: 778,
  pen: 'M-46 0 L4 -128 M46 0 L-4 -128 M-18 0 L1 -128 M18 0 L-1 -128',
  leaves: leavesAt(
    [
      [-44, -12, 20, 3.6],
      [-40, -26, 18, 5.9],
      [-34, -40, 20, 3.4],
      [-28, -56, 18, 6.1],
      [-22, -72, 17, 3.3],
      [-15, -88, 15, 5.8],
      [-8, -104, 14, 3.5],
      [44, -10, 20, 5.8],
      [40, -24, 18, 3.5],
      [34, -40, 20, 6],
      [28, -56, 18, 3.3],
      [22, -70, 17, 6.1],
      [15, -88, 15, 3.5],
      [8, -104, 14, 5.8],
      [-14, -28, 16, 4.4],
      [13, -34, 16, 5],
      [-9, -58, 15, 5.2],
      [8, -66, 15, 4.2],
      [0, -122, 13, 4.7],
    ],
    0.5,
    1.2,
  ),
  roots:
    'M-46 0 q-3 16 3 28 M-18 0 q4 20 -2 40 M-18 12 q-8 8 -9 18 M18 0 q-4 18 3 38 M18 14 q9 6 10 18 M46 0 q3 14 -2 30',
};

/** squash: large leaves close to the ground */
export const squash = {
  at: 944,
  pen: 'M0 -12 C-10 -34 -30 -38 -46 -30 M0 -12 C4 -44 14 -52 24 -58 M0 -12 C16 -34 34 -36 50 -28 M0 -12 C-4 -40 -14 -50 -22 -56',
  leaves: leavesAt(
    [
      [-40, -32, 30, 3.5],
      [-38, -34, 28, 2.6],
      [-18, -52, 32, 4.1],
      [-20, -54, 28, 3.2],
      [20, -54, 32, 5.4],
      [22, -56, 28, 6.1],
      [44, -30, 30, 5.9],
      [42, -30, 28, 0.4],
      [0, -30, 28, 4.7],
    ],
    0.5,
    1.1,
  ),
  roots: 'M0 0 q-2 22 2 46 M0 10 q-18 8 -26 26 M0 16 q18 6 28 24 M0 26 q-10 6 -12 18',
};

/** three maize plants that stay small */
export const corn = {
  at: 1092,
  pen: 'M-34 0 V-44 M0 0 V-52 M34 0 V-40',
  leaves: leavesAt(
    [
      [-34, -12, 24, 5.6],
      [-34, -20, 24, 3.9],
      [-34, -36, 20, 5.1],
      [0, -12, 26, 3.8],
      [0, -22, 26, 5.6],
      [0, -40, 22, 4.4],
      [34, -10, 22, 5.6],
      [34, -18, 22, 3.9],
      [34, -32, 18, 5],
    ],
    0.16,
    1.3,
  ),
  roots: 'M-34 0 q-2 14 2 26 M-34 6 q-6 6 -8 14 M0 0 q2 16 -2 30 M0 8 q7 6 8 14 M34 0 q-2 12 2 24',
};

/** blown straw, over its own bed */
export const strawTufts =
  'M8 -12 l18 -4 M34 -9 l20 2 M60 -14 l16 -5 M84 -10 l20 1 M108 -14 l14 -4 M18 -5 l16 3 M48 -4 l18 -3 M78 -4 l16 3 M104 -5 l18 -2';

/** a heap that steams */
export const heap = {
  at: 1208,
  filled: 'M-52 0 C-42 -34 -22 -58 0 -58 C22 -58 42 -34 52 0 Z',
  layers:
    'M-44 -17 C-20 -24 20 -10 45 -17 M-33 -34 C-14 -41 16 -27 34 -34 M-16 -50 C-6 -53 8 -46 18 -50',
  steam: 'M-16 -68 c-7 -8 7 -14 0 -24 M2 -70 c-7 -9 7 -15 0 -26 M20 -66 c-7 -8 7 -14 0 -24',
};
