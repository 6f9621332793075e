import { spread } from '../spread';

/** A layer that is to be drawn, as thick as it would lie. */
export interface HeapLayer {
  readonly millimetres: number;
}

export interface DrawnHeapLayer {
  /** px from the top of the drawing; both in proportion to the layers' thickness */
  readonly top: number;
  readonly bottom: number;
  /** middle of its label, moved apart from the others' */
  readonly label: number;
}

export interface HeapGeometry {
  readonly layers: readonly DrawnHeapLayer[];
  /** px to a mm, the same for all layers */
  readonly perMillimetre: number;
  readonly height: number;
}

/** So much of a drawing a metre takes at most [px]: small heaps are not blown up. */
const mostPerMillimetre = 0.5;

/**
 * Layers one on the other, the first at the bottom, all to one scale.
 *
 * @param layers thickness in mm, 0 or more
 * @param high px that all of them may take at most
 * @param gap px between the middles of two labels
 */
export function heapGeometry(
  layers: readonly HeapLayer[],
  high: number,
  gap: number,
): HeapGeometry {
  const total = layers.reduce((sum, { millimetres }) => sum + millimetres, 0);
  const perMillimetre = total > 0 ? Math.min(mostPerMillimetre, high / total) : mostPerMillimetre;
  const height = Math.max(total * perMillimetre, layers.length * gap);
  let under = height;
  const spans = layers.map(({ millimetres }) => {
    const bottom = under;
    under -= millimetres * perMillimetre;
    return { top: under, bottom };
  });
  const labels = spread(
    spans.map(({ top, bottom }) => (top + bottom) / 2).toReversed(),
    gap,
    gap / 2,
    height - gap / 2,
  ).toReversed();
  return {
    layers: spans.map((span, at) => ({ ...span, label: labels[at] ?? span.top })),
    perMillimetre,
    height,
  };
}
