import { stuffs } from '../../app/charts/cover/data';
import { layerShape } from '../../app/charts/strips/layerShape';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BedStrip, StripPlanting } from '../../app/charts/strips/data';
import {
  bedStripGeometry,
  inOrder,
  readyOn,
  uprightPieces,
} from '../../app/charts/strips/geometry';
import { knownSpan, stripExtremes, stripLayout, stripScale } from '../../app/charts/strips/layout';
import { stripsTable } from '../../app/charts/strips/tableData';
import { dayFromParts, seasonEnd, seasonStart, textFromDay } from '../../app/core/days';
import { dayKinds } from '../../app/core/season/input';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import { realRuns } from './realRuns';

const stripOf = (run: ReturnType<typeof realRuns>[number]): BedStrip => ({
  bedId: run.name,
  name: run.name,
  run: run.result,
  bulkDensityKgPerL: run.input.soil.bulkDensityKgPerL,
  plantings: run.input.plantings.map((planting): StripPlanting => ({
    id: planting.id,
    name: planting.crop.id,
    sown: planting.sown,
    share: planting.share,
    start: planting.startDay,
    flower: null,
    pick: planting.firstHarvestDay,
    end: planting.clearingDay,
    isEndTyped: false,
  })),
  layers: run.input.layers.map(({ id, day, laidDepth, placement }) => ({
    id,
    name: id,
    day,
    laidDepth,
    inSoil: placement !== 'laid',
  })),
  crowded: [],
  troubles: [],
});
const runs = realRuns();
const strips = runs.map(stripOf);
/** The season of each run's today, as its garden counts seasons: from January north, from July south. */
const spanOf = ({ input }: (typeof runs)[number]) => {
  const month = input.latitudeDegrees < 0 ? 7 : 1;
  return { from: seasonStart(input.today, month), to: seasonEnd(input.today, month) };
};

describe.each([
  ['few beds', false],
  ['many beds', true],
] as const)('a strip, %s', (_name, isCompact) => {
  test.each(runs.map((run, index) => [run.name, run, strips[index]!] as const))(
    '%s: as thick as the nitrogen ready, on every evening',
    (_run, run, bed) => {
      const span = spanOf(run);
      const layout = stripLayout(1200, span, isCompact);
      const scale = stripScale(stripExtremes([bed], span), metricChartUnits.nitrogen, isCompact);
      const drawn = bedStripGeometry(bed, layout, scale);
      const known = knownSpan(run.result, span)!;
      expect(drawn.known).toEqual(known);
      expect(drawn.thickness).toHaveLength(known.to - known.from + 2);
      for (let day = known.from; day <= known.to; day += 1) {
        const grams = run.result.pools.mineralTop[day - run.result.firstDay]!;
        expect(drawn.thickness[day - known.from + 1]! / scale.pxPerGram).toBeCloseTo(grams, 9);
        expect(readyOn(bed, day)).toBe(grams);
      }
      // the outline is drawn at those places and no others
      const ends = [
        ...drawn.soil
          .map(({ path }) => path)
          .join(' ')
          .matchAll(/(-?[\d.]+),(-?[\d.]+)/g),
      ]
        .map(([, x, y]) => [Number(x), Number(y)] as const)
        .filter(([, y]) => y > drawn.surface);
      for (const [x, y] of ends) {
        const edge = Math.round(
          ((x - layout.left) / (layout.right - layout.left)) * (span.to + 1 - span.from),
        );
        const at = span.from + edge - known.from;
        expect(Math.abs(y - drawn.surface - drawn.thickness[at]!)).toBeLessThan(0.01);
      }
      expect(ends.length).toBeGreaterThan(30);
      expect(Math.max(...drawn.thickness)).toBeLessThanOrEqual(scale.soilHeight + 1e-9);
    },
  );
});

test('measured and imagined days are drawn apart, and cover the days known without a gap', () => {
  const imagined = dayKinds.indexOf('imagined');
  runs.forEach((run, index) => {
    const span = spanOf(run);
    const layout = stripLayout(900, span, false);
    const bed = strips[index]!;
    const { soil, known } = bedStripGeometry(
      bed,
      layout,
      stripScale(stripExtremes([bed], span), metricChartUnits.nitrogen, false),
    );
    let next = known!.from;
    for (const piece of soil) {
      expect(piece.from).toBe(next);
      for (let day = piece.from; day <= piece.to; day += 1)
        expect(run.result.kind[day - run.result.firstDay] === imagined).toBe(piece.isImagined);
      next = piece.to + 1;
    }
    expect(next).toBe(known!.to + 1);
  });
});

test('one scale for all beds: a gram is as thick on the poorest as on the richest', () => {
  const ofSample = runs.flatMap((run, index) =>
    run.name.startsWith('sample') ? [strips[index]!] : [],
  );
  const span = spanOf(runs.find(({ name }) => name.startsWith('sample'))!);
  const scale = stripScale(stripExtremes(ofSample, span), metricChartUnits.nitrogen, false);
  const most = ofSample.map(
    (bed) =>
      Math.max(...bedStripGeometry(bed, stripLayout(900, span, false), scale).thickness) /
      scale.pxPerGram,
  );
  // the thickest of all fills its room, no other is blown up to it
  expect(Math.max(...most) * scale.pxPerGram).toBeCloseTo(scale.soilHeight, 9);
  expect(Math.min(...most) * scale.pxPerGram).toBeLessThan(scale.soilHeight / 2);
  for (const unit of [metricChartUnits.nitrogen, usChartUnits.nitrogen])
    for (const { value, depth } of stripScale(stripExtremes(ofSample, span), unit, false).ticks)
      expect(depth / scale.pxPerGram).toBeCloseTo(value / unit.perInside, 9);
});

test('positions are dates: plantings, stages and layers stand on their days', () => {
  runs.forEach((run, index) => {
    const span = spanOf(run);
    const layout = stripLayout(1000, span, false);
    const bed = strips[index]!;
    const drawn = bedStripGeometry(
      bed,
      layout,
      stripScale(stripExtremes([bed], span), metricChartUnits.nitrogen, false),
    );
    for (const bar of drawn.bars) {
      const planting = bed.plantings.find(({ id }) => id === bar.id)!;
      expect(bar.x).toBeCloseTo(layout.x(Math.max(span.from, planting.start)), 9);
      expect(bar.x + bar.width).toBeCloseTo(
        layout.x(Math.min(span.to + 1, planting.end ?? span.to + 1)),
        9,
      );
      for (const mark of bar.marks) expect(mark.x).toBeCloseTo(layout.x(mark.day), 9);
    }
    for (const { layer, x, width, height } of drawn.layers) {
      expect(x + width / 2).toBeCloseTo(layout.x(layer.day + 0.5), 9);
      expect(height).toBeGreaterThanOrEqual(3);
    }
  });
  const span = { from: dayFromParts(2021, 7, 1), to: dayFromParts(2022, 6, 30) };
  fc.assert(
    fc.property(
      fc.integer({ min: 260, max: 2000 }),
      fc.integer({ min: span.from, max: span.to }),
      (width, day) => {
        const layout = stripLayout(width, span, false);
        expect(layout.dayAt(layout.x(day) + 1e-6)).toBe(day);
        expect(layout.x(day + 1)).toBeGreaterThan(layout.x(day));
      },
    ),
  );
});

test('no planting lies on another, at any width, and each can be pressed', () => {
  const from = dayFromParts(2021, 1, 1);
  const span = { from, to: dayFromParts(2021, 12, 31) };
  const planting = fc.record({
    start: fc.integer({ min: -100, max: 364 }),
    length: fc.option(fc.integer({ min: 1, max: 250 }), { nil: null }),
    name: fc.constantFrom('Kale', 'Climbing beans', 'Red or white clover, first cut'),
  });
  fc.assert(
    fc.property(
      fc.array(planting, { maxLength: 9 }),
      fc.integer({ min: 260, max: 1400 }),
      fc.boolean(),
      (drafts, width, isCompact) => {
        const bed: BedStrip = {
          ...strips[0]!,
          run: null,
          layers: [],
          plantings: drafts.map(({ start, length, name }, index) => ({
            id: `p${index}`,
            name,
            sown: true,
            share: 1,
            start: from + start,
            flower: null,
            pick: null,
            end: length === null ? null : from + start + length,
            isEndTyped: true,
          })),
        };
        const layout = stripLayout(width, span, isCompact);
        const drawn = bedStripGeometry(
          bed,
          layout,
          stripScale(stripExtremes([bed], span), metricChartUnits.nitrogen, isCompact),
        );
        expect(drawn.places.map((place) => place.planting.id)).toEqual(
          inOrder(bed.plantings, span).map(({ id }) => id),
        );
        drawn.places.forEach((one, at) => {
          expect(one.width).toBeGreaterThanOrEqual(24);
          expect(one.height).toBeGreaterThanOrEqual(24);
          expect(one.x).toBeGreaterThanOrEqual(0);
          expect(one.x + one.width).toBeLessThanOrEqual(layout.width + 1e-9);
          for (const other of drawn.places.slice(at + 1)) {
            const apart =
              one.x + one.width <= other.x + 1e-9 || other.x + other.width <= one.x + 1e-9;
            expect(apart || one.top !== other.top).toBe(true);
          }
        });
      },
    ),
  );
});

test('as a table: a row a day, a column a bed, in the unit that is read', () => {
  const index = runs.findIndex(({ name }) => name.endsWith('South wall'));
  const run = runs[index]!;
  const span = spanOf(run);
  const { head, rows } = stripsTable([strips[index]!], span, usChartUnits);
  expect(head[2]).toMatch(/\[lb\/1,000 sq ft\]$/);
  expect(rows).toHaveLength(span.to - span.from + 1);
  expect(rows[0]![0]).toBe(textFromDay(span.from));
  const last = run.result.pools.mineralTop[run.result.days - 1]!;
  // 1 g/m2 is 0.2048 lb/1,000 sq ft: 453.592 g a pound, 92.903 m2 a thousand square feet
  expect(Number(rows.at(-1)![2])).toBeCloseTo((last * 92.903_04) / 453.592_37, 6);
});

describe('upright lines', () => {
  test.each(runs.map((run, index) => [run.name, run, strips[index]!] as const))(
    '%s: on no day do they run through a name or a mark, and they miss nothing else',
    (_name, run, bed) => {
      const span = spanOf(run);
      const layout = stripLayout(420, span, false);
      const scale = stripScale(stripExtremes([bed], span), metricChartUnits.nitrogen, false);
      const geometry = bedStripGeometry(bed, layout, scale);
      for (let day = span.from; day <= span.to; day += 1) {
        const x = layout.x(day + 0.5);
        const pieces = uprightPieces(x, geometry);
        const under = geometry.words.filter(({ from, to }) => from < x && x < to);
        for (const word of under)
          expect(pieces.every(({ top, bottom }) => bottom <= word.top || top >= word.bottom)).toBe(
            true,
          );
        const drawn = pieces.reduce((sum, { top, bottom }) => sum + bottom - top, 0);
        const left = under.reduce((sum, { top, bottom }) => sum + bottom - top, 0);
        expect(drawn).toBeGreaterThanOrEqual(geometry.foot - left);
        if (under.length === 0) expect(pieces).toEqual([{ top: 0, bottom: geometry.foot }]);
      }
    },
  );
});

describe('a layer’s shape on a strip', () => {
  const box = { x: 10, y: 20, width: 8, height: 12 };
  const pointsOf = (path: string) =>
    [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

  test('is another for each kind of stuff', () => {
    expect(new Set(stuffs.map((stuff) => layerShape(stuff, box))).size).toBe(stuffs.length);
  });

  test.each(stuffs)(
    'of %s is as tall as the layer was deep, and no wider than its box',
    (stuff) => {
      const points = pointsOf(layerShape(stuff, box));
      const [across, down] = [points.map(([x]) => x), points.map(([, y]) => y)];
      expect([Math.min(...down), Math.max(...down)]).toEqual([20, 32]);
      expect(Math.min(...across)).toBeGreaterThanOrEqual(10);
      expect(Math.max(...across)).toBeLessThanOrEqual(18);
    },
  );
});
