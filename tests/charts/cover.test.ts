import { describe, expect, test } from 'vitest';
import type { CoverChartData } from '../../app/charts/cover/data';
import { coverFacts, coverGeometry } from '../../app/charts/cover/geometry';
import { pools } from '../../app/core/season/flows';
import type { SeasonResult } from '../../app/core/season/result';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import { seasonFromFlows } from './seasonFromFlows';

const days = 20;
const depths: Readonly<Record<string, number>> = { straw: 30, grass: 4, old: 0.02, later: 0 };

const result: SeasonResult = seasonFromFlows(
  Object.fromEntries(pools.map((pool) => [pool, 0])) as SeasonResult['start'],
  days,
  () => 0,
  {
    firstDay: 100,
    today: 115,
    coverDepth: new Float64Array(days).fill(34.02),
    coverFraction: new Float64Array(days).fill(0.9),
    layers: Object.entries(depths).map(([id, depth]) => ({
      id,
      depth: new Float64Array(days).fill(depth),
      left: new Float64Array(days).fill(0.5),
    })),
  },
);
const data: CoverChartData = {
  result,
  coverState: 'good',
  units: metricChartUnits,
  layers: [
    { id: 'grass', name: 'Clippings', stuff: 'greens', day: 112, laidDepth: 8 },
    { id: 'straw', name: 'Straw', stuff: 'straw', day: 105, laidDepth: 40 },
    { id: 'old', name: 'Clippings', stuff: 'greens', day: 101, laidDepth: 8 },
    { id: 'later', name: 'Leaves', stuff: 'leaves', day: 118, laidDepth: 8 },
  ],
};

describe('what lies on the bed', () => {
  test('oldest at the bottom; vanished layers told apart; nothing of days to come', () => {
    const facts = coverFacts(data);
    expect(facts.lying.map((layer) => layer.layer.id)).toEqual(['straw', 'grass']);
    expect(facts.vanished.map((layer) => layer.layer.id)).toEqual(['old']);
    expect(facts.lying.map((layer) => layer.daysOld)).toEqual([10, 3]);
    expect(facts.totalDepth).toBe(34.02);
  });

  test('a day outside the run is refused', () => {
    expect(() => coverFacts({ ...data, day: 99 })).toThrow(RangeError);
  });
});

describe('the cut is to scale', () => {
  test.each([
    [metricChartUnits, 760],
    [usChartUnits, 300],
  ])('heights are depths, layers touch, ruler and layers share one scale (%#)', (units, width) => {
    const facts = coverFacts(data);
    const drawing = coverGeometry(facts, width, units.depth);
    const [straw, grass] = drawing.layers;
    expect(straw?.bottom).toBe(drawing.surface);
    expect(grass?.bottom).toBe(straw?.top);
    for (const shape of drawing.layers)
      expect((shape.bottom - shape.top) / drawing.pxPerMillimetre).toBeCloseTo(
        shape.lying.depth,
        9,
      );
    for (const tick of drawing.ticks)
      expect((drawing.surface - tick.y) / drawing.pxPerMillimetre).toBeCloseTo(
        tick.value / units.depth.perInside,
        9,
      );
  });

  test('twenty thin layers: all words inside the drawing and apart', () => {
    const layers = Array.from({ length: 20 }, (_value, index) => ({
      id: `l${index}`,
      name: 'Clippings',
      stuff: 'greens' as const,
      day: 100 + Math.floor(index / 2),
      laidDepth: 6,
    }));
    const many = {
      ...data,
      layers,
      result: {
        ...result,
        layers: layers.map(({ id }) => ({
          id,
          depth: new Float64Array(days).fill(2),
          left: new Float64Array(days).fill(0.5),
        })),
      },
    };
    const drawing = coverGeometry(coverFacts(many), 960, metricChartUnits.depth);
    const places = drawing.layers.map((shape) => shape.labelY);
    expect(Math.max(...places)).toBeLessThanOrEqual(drawing.height);
    expect(Math.min(...places)).toBeGreaterThanOrEqual(0);
    places.forEach((place, index) => {
      if (index > 0) expect((places[index - 1] ?? 0) - place).toBeGreaterThanOrEqual(37.9);
    });
  });

  test('bare soil has no words beside it and lies across the whole drawing', () => {
    const bare = coverGeometry(coverFacts({ ...data, layers: [] }), 1200, metricChartUnits.depth);
    expect(bare.layers).toEqual([]);
    expect(bare.width - bare.right).toBeLessThan(10);
    expect(coverGeometry(coverFacts(data), 1200, metricChartUnits.depth).right).toBeLessThan(700);
  });
});
