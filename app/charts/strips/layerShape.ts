import type { Stuff } from '../cover/data';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Outlines in a box of 1 by 1, its top at 0: each touches top and foot, so that height stays depth. */
const outlines: Readonly<Record<Stuff, readonly (readonly (readonly [number, number])[])[]>> = {
  greens: [
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
  ],
  leaves: [
    [
      [0.5, 0],
      [1, 1],
      [0, 1],
    ],
  ],
  straw: [
    [
      [0, 0],
      [0.36, 0],
      [0.36, 1],
      [0, 1],
    ],
    [
      [0.64, 0],
      [1, 0],
      [1, 1],
      [0.64, 1],
    ],
  ],
  compost: [
    [
      [0, 0],
      [1, 0],
      [0.7, 1],
      [0.3, 1],
    ],
  ],
  other: [
    [
      [0.3, 0],
      [0.7, 0],
      [0.7, 1],
      [0.3, 1],
    ],
  ],
};

/** A layer on a strip, by shape as well as by colour: as wide and tall as its box. */
export const layerShape = (stuff: Stuff, { x, y, width, height }: Box): string =>
  outlines[stuff]
    .map(
      (outline) =>
        `M${outline.map(([across, down]) => `${x + across * width} ${y + down * height}`).join('L')}Z`,
    )
    .join('');
