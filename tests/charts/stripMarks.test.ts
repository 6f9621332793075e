import { describe, expect, test } from 'vitest';
import type { BedStrip, StripTrouble } from '../../app/charts/strips/data';
import { bedStripGeometry } from '../../app/charts/strips/geometry';
import { stripExtremes, stripLayout, stripScale } from '../../app/charts/strips/layout';
import { dayFromParts } from '../../app/core/days';
import { metricChartUnits } from '../../app/words/chartUnits';

const span = { from: dayFromParts(2013, 1, 1), to: dayFromParts(2013, 12, 31) };
const trouble = (id: string, day: number): StripTrouble => ({ id, day, weight: 'note', says: id });
const layer = (id: string, day: number, laidDepth: number, inSoil = false) => ({
  id,
  name: id,
  day,
  laidDepth,
  inSoil,
});
const bed: BedStrip = {
  bedId: 'bed',
  name: 'Bed',
  run: null,
  bulkDensityKgPerL: 1.3,
  plantings: [],
  layers: [
    layer('before', span.from - 1, 30),
    layer('first day', span.from, 40),
    layer('half', dayFromParts(2013, 6, 1), 20),
    layer('dug in', dayFromParts(2013, 6, 8), 40, true),
    layer('last day', span.to, 10),
    layer('after', span.to + 1, 30),
  ],
  crowded: [],
  troubles: [
    trouble('before', span.from - 1),
    trouble('first day', span.from),
    trouble('midsummer', dayFromParts(2013, 7, 1)),
    trouble('last day', span.to),
    trouble('after', span.to + 1),
  ],
};
const layout = stripLayout(1200, span, false);
const scale = stripScale(stripExtremes([bed], span), metricChartUnits.nitrogen, false);
const drawn = bedStripGeometry(bed, layout, scale);
const of = (id: string) => drawn.layers.find(({ layer: one }) => one.id === id)!;

describe('layers on a strip', () => {
  test('are those of the season, each in the middle of its day', () => {
    expect(drawn.layers.map(({ layer: one }) => one.id)).toEqual([
      'first day',
      'half',
      'dug in',
      'last day',
    ]);
    for (const { layer: one, x, width } of drawn.layers)
      expect(x + width / 2).toBeCloseTo(layout.x(one.day + 0.5), 9);
  });

  test('stand on the surface as tall as they were deep, on one scale', () => {
    const { height, y } = of('first day');
    expect(y + height).toBe(drawn.surface);
    expect(of('half').height / height).toBeCloseTo(20 / 40, 9);
    expect(of('last day').height / height).toBeCloseTo(10 / 40, 9);
    // the tallest of all beds fills the room there is for layers and no more
    expect(height).toBeLessThanOrEqual(scale.layerHeight);
    expect(height / scale.pxPerMillimetre).toBeCloseTo(40, 9);
  });

  test('lie in the soil where they were dug or hoed in, whatever their depth', () => {
    const { y, height } = of('dug in');
    expect(y).toBeGreaterThan(drawn.surface);
    expect(y + height).toBeLessThan(drawn.foot);
  });
});

test('what does not go together has its mark at its day, within the drawing', () => {
  expect(drawn.troubles.map(({ id }) => id)).toEqual(['first day', 'midsummer', 'last day']);
  for (const { day, x } of drawn.troubles) {
    expect(Math.abs(x - layout.x(day + 0.5))).toBeLessThanOrEqual(8);
    expect(x).toBeGreaterThanOrEqual(8);
    expect(x).toBeLessThanOrEqual(layout.width - 8);
  }
  expect(drawn.troubles[1]!.x).toBeCloseTo(layout.x(dayFromParts(2013, 7, 1) + 0.5), 9);
  const bare = bedStripGeometry({ ...bed, troubles: [] }, layout, scale);
  expect(bare.surface).toBeLessThan(drawn.surface);
});
