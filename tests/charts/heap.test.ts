import { describe, expect, it } from 'vitest';
import { heapGeometry } from '../../app/charts/heap/geometry';

describe('layers of a heap', () => {
  it('are as thick to each other as they are in the model, whatever their sum', () => {
    for (const layers of [
      [40, 50],
      [3, 900, 220],
      [9000, 12_000, 1],
    ]) {
      const { layers: drawn, perMillimetre } = heapGeometry(
        layers.map((millimetres) => ({ millimetres })),
        230,
        40,
      );
      drawn.forEach(({ top, bottom }, at) =>
        expect(bottom - top).toBeCloseTo((layers[at] ?? 0) * perMillimetre, 9),
      );
      const thickest = Math.max(...drawn.map(({ top, bottom }) => bottom - top));
      expect(thickest).toBeLessThanOrEqual(230);
    }
  });

  it('lie on one another without a gap, the first on the ground', () => {
    const { layers, height } = heapGeometry(
      [10, 20, 30].map((millimetres) => ({ millimetres })),
      230,
      40,
    );
    expect(layers[0]?.bottom).toBe(height);
    expect(layers[1]?.bottom).toBe(layers[0]?.top);
    expect(layers[2]?.bottom).toBe(layers[1]?.top);
  });

  it('keep their names apart and in their order', () => {
    const { layers, height } = heapGeometry(
      [1, 1, 1, 500].map((millimetres) => ({ millimetres })),
      230,
      40,
    );
    const labels = layers.map(({ label }) => label);
    labels
      .slice(1)
      .forEach((label, at) => expect((labels[at] ?? 0) - label).toBeGreaterThanOrEqual(40 - 1e-9));
    expect(Math.min(...labels)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...labels)).toBeLessThanOrEqual(height);
  });
});
