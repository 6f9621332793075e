import { describe, expect, test } from 'vitest';
import { neighbour, panelsOf } from '../../app/charts/section/Chart';
import { habits } from '../../app/charts/section/data';
import { nitrogenKinds, sectionFacts } from '../../app/charts/section/facts';
import { hiddenSpans } from '../../app/charts/section/geometry';
import { drawPlant } from '../../app/charts/section/plants/draw';
import { drawRoots } from '../../app/charts/section/plants/roots';
import { coverTicks, rulerTicks } from '../../app/charts/section/ruler';
import { coverHeight } from '../../app/charts/section/scale';
import { smallShared } from '../../app/charts/section/Small';
import type { Pool } from '../../app/core/season/flows';
import { plantsOnDay, plantStages } from '../../app/core/season/plantStage';
import { grownMillimetres } from '../../app/tables/cropHeights';
import { limits } from '../../app/tables/thresholds';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import { sectionBeds } from './sectionBeds';

const beds = sectionBeds();
/** today, four weeks on, and a day of spring, summer and autumn of the run */
const daysOf = (bed: (typeof beds)[number]): readonly number[] => {
  const { firstDay, days, today } = bed.results.season;
  return [today, today + 28, firstDay, today - 40, today + 90, firstDay + days - 1].filter(
    (day) => day >= firstDay && day < firstDay + days,
  );
};
const evenings = beds.flatMap((bed) =>
  daysOf(bed).map((day) => [bed.name, day, bed.on(day), bed.results] as const),
);
const widths = [288, 420, 960];
const panelsAt = (width: number, data: (typeof evenings)[number][2]) =>
  panelsOf([{ data, title: 'Today' }], width, metricChartUnits)[0]!;

/** Heights that the pen passes through: ends of strokes, curves sampled, discs by their poles. */
function heightsIn(path: string): readonly number[] {
  const heights: number[] = [];
  let y = 0;
  for (const [, command = '', rest = ''] of path.matchAll(/([MLQCVaZ])([^MLQCVaZ]*)/g)) {
    const numbers = [...rest.matchAll(/-?[\d.]+/g)].map(Number);
    if (command === 'a') {
      heights.push(y - numbers[1]!, y + numbers[1]!);
      continue;
    }
    const ys = numbers.filter((_number, at) => at % 2 === 1);
    const order = command === 'Q' ? 2 : command === 'C' ? 3 : 1;
    for (let from = 0; from + order <= ys.length; from += order) {
      const [one, two, three] = ys.slice(from, from + order);
      for (let at = 0; at <= 20; at += 1) {
        const t = at / 20;
        const u = 1 - t;
        if (order === 1) heights.push(one!);
        else if (order === 2) heights.push(u * u * y + 2 * u * t * one! + t * t * two!);
        else
          heights.push(u ** 3 * y + 3 * u * u * t * one! + 3 * u * t * t * two! + t ** 3 * three!);
      }
      y = ys[from + order - 1]!;
    }
  }
  return heights;
}

describe.each(evenings)('%s on day %i', (_name, day, data, results) => {
  const { season, input } = results;
  const index = day - season.firstDay;
  const facts = sectionFacts(data);
  const pool = (name: Pool) => season.pools[name][index]!;

  test('band heights add up to the depth of all cover, at one scale', () => {
    for (const width of widths) {
      const { drawing, scale } = panelsAt(width, data);
      const drawn = drawing.surface - drawing.coverTop;
      expect(drawn).toBeCloseTo(coverHeight(facts) * scale.coverPerMillimetre, 9);
      // layers thinner than a tenth of a millimetre are not drawn
      const gone = facts.vanished.reduce((sum, { depth }) => sum + depth, 0);
      expect(drawn / scale.coverPerMillimetre + gone).toBeCloseTo(season.coverDepth[index]!, 6);
      let under = drawing.surface;
      for (const layer of drawing.cover) {
        expect(layer.bottom).toBe(under);
        expect((layer.bottom - layer.top) / scale.coverPerMillimetre).toBeCloseTo(
          layer.lying.depth,
          9,
        );
        under = layer.top;
      }
    }
  });

  test('the cover’s own scale says how thick it is where it stands', () => {
    for (const units of [metricChartUnits, usChartUnits])
      for (const width of widths) {
        const { drawing, scale } = panelsAt(width, data);
        const ticks = coverTicks(drawing, scale, units);
        for (const { y, millimetres } of ticks) {
          expect((drawing.surface - y) / scale.coverPerMillimetre).toBeCloseTo(millimetres, 9);
          expect(millimetres).toBeLessThanOrEqual(coverHeight(facts) + 1e-6);
        }
        const highest = ticks.at(-1)?.millimetres ?? 0;
        const step = ticks[0]?.millimetres;
        if (step !== undefined) expect(coverHeight(facts) - highest).toBeLessThan(step);
      }
  });

  test('what is hidden of the bed is the share of ground hidden', () => {
    const { drawing } = panelsAt(420, data);
    const width = drawing.right - drawing.left;
    const hidden = drawing.spans.reduce((sum, [from, to]) => sum + to - from, 0);
    const expected = facts.cover.length > 0 ? season.coverFraction[index]! : 0;
    // gaps under a pixel are closed
    expect(Math.abs(hidden / width - expected)).toBeLessThan(0.05);
  });

  test('dots times what one stands for are the pools, within half a dot', () => {
    for (const width of widths) {
      const { drawing, scale } = panelsAt(width, data);
      const [top, lower] = drawing.soil;
      const drawn = (layer: typeof top, kind: (typeof nitrogenKinds)[number]) =>
        layer.dots.filter((dot) => dot.kind === kind).length * scale.gramsPerDot;
      const half = scale.gramsPerDot / 2 + 1e-9;
      const slow = data.layers.some(({ stuff }) => stuff === 'compost') ? 0 : pool('slow');
      expect(Math.abs(drawn(top, 'ready') - pool('mineralTop'))).toBeLessThanOrEqual(half);
      expect(
        Math.abs(drawn(top, 'held') - pool('dugMicrobes') - pool('dugHumus')),
      ).toBeLessThanOrEqual(half);
      expect(Math.abs(drawn(top, 'unrotted') - pool('dugResidue') - slow)).toBeLessThanOrEqual(
        half,
      );
      expect(Math.abs(drawn(lower, 'ready') - pool('mineralLower'))).toBeLessThanOrEqual(half);
      for (const layer of drawing.soil)
        for (const { x, y } of layer.dots) {
          expect(x).toBeGreaterThan(layer.left);
          expect(x).toBeLessThan(layer.right);
          expect(y).toBeGreaterThan(layer.top);
          expect(y).toBeLessThan(layer.bottom);
        }
    }
  });

  test('roots end where the model has them, tips and stage are the model’s', () => {
    const { drawing, scale } = panelsAt(960, data);
    const model = plantsOnDay({ input, result: season }, day, limits, grownMillimetres);
    expect(drawing.plants.map(({ plant }) => [plant.id, plant.stage])).toEqual(
      model.map(({ planting, stage }) => [planting.id, stage]),
    );
    for (const [at, one] of drawing.plants.entries()) {
      const own = season.plantings.find(({ id }) => id === one.plant.id)!;
      const depth = (one.rootEnd - drawing.surface) / scale.perMillimetre;
      expect(depth).toBeCloseTo(own.rootDepth[index]!, 9);
      expect(one.rootEnd).toBeLessThanOrEqual(drawing.soil[1].bottom + 1e-9);
      if (one.roots !== '') expect(Math.max(...heightsIn(one.roots))).toBeCloseTo(one.rootEnd, 0);
      expect((one.base - one.top) / scale.perMillimetre).toBeCloseTo(model[at]!.height, 9);
      expect(one.base).toBe(drawing.coverTop);
    }
  });

  test('water stands as high as the layers are full', () => {
    const { drawing } = panelsAt(420, data);
    const full = [season.availableWaterTop[index]!, season.availableWaterLower[index]!];
    drawing.soil.forEach(({ top, bottom, level }, at) =>
      expect((bottom - level) / (bottom - top)).toBeCloseTo(full[at]!, 9),
    );
  });

  test('every part has its own key and a sentence, inside the drawing', () => {
    for (const units of [metricChartUnits, usChartUnits]) {
      const [panel] = panelsOf([{ data, title: 'Today' }], 420, units);
      const { parts, width, height } = panel!;
      expect(new Set(parts.map(({ key }) => key)).size).toBe(parts.length);
      for (const { says, name, box } of parts) {
        expect(name).not.toBe('');
        expect(says).toMatch(/[.!]$/);
        expect(says).not.toMatch(/NaN|undefined|Infinity/);
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(width);
        expect(box.y).toBeGreaterThanOrEqual(0);
        expect(box.y + box.height).toBeLessThanOrEqual(height);
      }
    }
  });
});

describe('the drawing', () => {
  const [gate] = beds;
  const { today } = gate!.results.season;
  const both = panelsOf(
    [
      { data: gate!.on(today), title: 'Today' },
      { data: gate!.on(today + 28), title: 'In four weeks' },
    ],
    960,
    metricChartUnits,
  );

  test('both evenings have one scale', () => {
    expect(both).toHaveLength(2);
    expect(both[1]!.scale).toBe(both[0]!.scale);
    expect(both[1]!.drawing.surface).toBe(both[0]!.drawing.surface);
  });

  test('the ruler counts heights from what plants stand on and depths from the soil', () => {
    for (const units of [metricChartUnits, usChartUnits]) {
      const perUnit = units === metricChartUnits ? 10 : 25.4;
      const { drawing, scale } = both[0]!;
      for (const { y, label } of rulerTicks(drawing, scale, units)) {
        const from = y < drawing.surface ? drawing.coverTop - y : y - drawing.surface;
        expect(from / scale.perMillimetre / perUnit).toBeCloseTo(Number(label), 9);
      }
    }
  });

  test('gaps lie round the places and leave what is hidden', () => {
    const spans = hiddenSpans(0, 100, 0.6, 4);
    expect(spans).toEqual([
      [0, 7.5],
      [17.5, 32.5],
      [42.5, 57.5],
      [67.5, 82.5],
      [92.5, 100],
    ]);
    expect(hiddenSpans(0, 100, 0, 4)).toEqual([]);
    expect(hiddenSpans(0, 100, 1, 4)).toEqual([[0, 100]]);
  });

  test('every habit is drawn at every stage, no higher than it is', () => {
    const size = { height: 80, width: 60, grown: 0.8, under: 0 };
    for (const habit of habits)
      for (const stage of plantStages) {
        const paths = drawPlant(habit, stage, 100, 200, {
          ...size,
          isFlowering: stage === 'flowering',
          isBearing: stage === 'bearing',
        });
        const all = Object.values(paths).join('');
        expect(all).not.toMatch(/NaN|undefined/);
        if (stage === 'seed') expect(all).toBe('');
        else expect(all).not.toBe('');
        if (stage === 'leafy') {
          const above = [paths.stem, paths.leaf, paths.support].join('');
          expect(Math.min(...heightsIn(above)), habit).toBeGreaterThan(200 - 80 - 3);
          expect(Math.min(...heightsIn(above)), habit).toBeLessThan(200 - 80 + 6);
        }
      }
  });

  test('no root goes deeper than the depth, and one goes so deep', () => {
    for (const habit of habits) {
      const ends = heightsIn(drawRoots(habit, 50, 100, 120, 30));
      expect(Math.max(...ends)).toBeCloseTo(220, 1);
    }
    expect(drawRoots('bush', 50, 100, 0, 30)).toBe('');
  });

  test('arrow keys go through all parts, across to the same part, and nowhere beyond', () => {
    let at = { panel: 0, key: both[0]!.parts[0]!.key };
    const seen = [at.key];
    for (let step = 1; step < both[0]!.parts.length; step += 1) {
      at = neighbour(both, at, 'ArrowDown')!;
      seen.push(at.key);
    }
    expect(seen).toEqual(both[0]!.parts.map(({ key }) => key));
    expect(neighbour(both, at, 'ArrowDown')).toEqual(at);
    expect(neighbour(both, { panel: 0, key: 'top' }, 'ArrowRight')).toEqual({
      panel: 1,
      key: 'top',
    });
    expect(neighbour(both, { panel: 0, key: 'top' }, 'ArrowLeft')).toBeNull();
    expect(neighbour(both, { panel: 0, key: 'top' }, 'a')).toBeNull();
  });

  test('beds of a list share what a dot is and how thick covers are', () => {
    const facts = beds.map((bed) => sectionFacts(bed.on(bed.results.season.today)));
    const { gramsPerDot, coverPerMillimetre } = smallShared(facts);
    const most = Math.max(...facts.map(({ top }) => top.nitrogen.ready));
    expect(most / gramsPerDot).toBeLessThanOrEqual(60);
    expect(Math.max(...facts.map(coverHeight)) * coverPerMillimetre).toBeLessThanOrEqual(34 + 1e-9);
  });
});
