import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { poolWidth, waterway, type Waterway } from '../../app/charts/ledger/geometry';
import { leastShown } from '../../app/charts/ledger/places';
import { leastWidth, type StreamShape } from '../../app/charts/ledger/streamShape';
import type { Holding } from '../../app/core/season/ledger';
import { ledgerWay } from '../../app/core/season/ledgerStreams';
import { textWidth } from '../../app/charts/textWidth';
import { metricChartUnits } from '../../app/words/chartUnits';
import { placeSentence, streamSentence } from '../../app/words/ledgerWords';
import { realRuns } from './realRuns';

const runs = realRuns();
const unit = metricChartUnits.nitrogen;
const anyDrawing = fc
  .tuple(
    fc.nat(runs.length - 1),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.integer({ min: 5, max: 400 }),
    fc.integer({ min: 200, max: 1600 }),
  )
  .map(([index, share, length, width]) => {
    const { result } = runs[index]!;
    const first = result.firstDay + Math.floor(share * (result.days - 1));
    const last = Math.min(result.firstDay + result.days - 1, first + length);
    const way = ledgerWay(result, first, last);
    return { way, drawing: waterway(way, width, unit) };
  });

/** px of streams that touch a place at its left or its right, and the stretches they take there */
function touching(drawing: Waterway, holding: Holding, side: 'left' | 'right') {
  const shape = drawing.places.find(({ place }) => place.holding === holding)!;
  const x = side === 'left' ? shape.x : shape.x + poolWidth;
  return drawing.streams.flatMap((stream: StreamShape) => {
    const end = side === 'left' ? stream.course.at(-1) : stream.course[0];
    const isOurs = side === 'left' ? stream.stream.to === holding : stream.stream.from === holding;
    return isOurs && end && Math.abs(end.x - x) < 1e-9
      ? [{ top: end.y - stream.width / 2, bottom: end.y + stream.width / 2 }]
      : [];
  });
}

describe('law: the drawing of a ledger', () => {
  test('every stream is as wide as its grams, at one scale', () => {
    fc.assert(
      fc.property(anyDrawing, ({ drawing }) => {
        for (const { width, stream, thread } of drawing.streams) {
          expect(width).toBeCloseTo(stream.gM2 * drawing.pxPerGram, 9);
          expect(thread !== null).toBe(width < leastWidth);
          expect(stream.gM2 < drawing.threadBelow).toBe(thread !== null);
        }
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  test('at every place the widths add up to its height, at both sides, one below the other', () => {
    fc.assert(
      fc.property(anyDrawing, ({ drawing }) => {
        for (const { place, top, height } of drawing.places)
          for (const side of ['left', 'right'] as const) {
            const ports = touching(drawing, place.holding, side).toSorted(
              (a, b) => a.top + a.bottom - b.top - b.bottom,
            );
            let y = top;
            for (const port of ports) {
              expect(port.top).toBeCloseTo(y, 6);
              y = port.bottom;
            }
            const there = (side === 'left' ? place.opening : place.end) * drawing.pxPerGram;
            // streams of less than is shown are drawn nowhere; a place has at most six at a side
            const leftOut = leastShown * 6 * drawing.pxPerGram;
            expect(Math.abs(y + there - top - height)).toBeLessThan(1e-6 + leftOut);
          }
      }),
      { numRuns: 60, seed: 13 },
    );
  });

  test('no stream runs through a place it does not touch', () => {
    fc.assert(
      fc.property(anyDrawing, ({ drawing }) => {
        for (const { course, stream, width } of drawing.streams)
          for (const { place, x, top, height } of drawing.places) {
            if (stream.from === place.holding || stream.to === place.holding) continue;
            const level = course.flatMap((point, index) => {
              const next = course[index + 1];
              return next && point.y === next.y && point.x < x + poolWidth && next.x > x
                ? [point.y]
                : [];
            });
            for (const y of level)
              expect(y + width / 2 <= top + 1e-6 || y - width / 2 >= top + height - 1e-6).toBe(
                true,
              );
          }
      }),
      { numRuns: 60, seed: 14 },
    );
  });

  test('words at an edge never stand on each other, and all lies within the sheet', () => {
    fc.assert(
      fc.property(anyDrawing, ({ drawing }) => {
        for (const side of ['left', 'right'] as const) {
          const ys = drawing.ends
            .filter((end) => end.side === side)
            .map(({ y }) => y)
            .toSorted((a, b) => a - b);
          ys.forEach((y, index) => {
            if (index > 0) expect(y - ys[index - 1]!).toBeGreaterThanOrEqual(18);
            expect(y).toBeGreaterThan(0);
            expect(y).toBeLessThan(drawing.height);
          });
        }
        for (const { top, height } of drawing.places) {
          expect(top).toBeGreaterThan(0);
          expect(top + height).toBeLessThan(drawing.height);
        }
      }),
      { numRuns: 100, seed: 15 },
    );
  });

  test('everything turns up as a sentence with its amount', () => {
    fc.assert(
      fc.property(anyDrawing, ({ way }) => {
        for (const stream of way.streams)
          expect(streamSentence(stream, 10, metricChartUnits, 10)).toMatch(
            /^[A-Z].*\d+(\.\d+)? g\/m².*%.*\.$/,
          );
        for (const place of way.places)
          expect(placeSentence(place, metricChartUnits)).toMatch(/^[A-Z].*\d g\/m².*\.$/);
      }),
      { numRuns: 30, seed: 16 },
    );
  });
});

describe('law: names in the drawing of a ledger', () => {
  test('none stands on another or leaves the sheet, and nothing is not written out', () => {
    fc.assert(
      fc.property(anyDrawing, ({ drawing }) => {
        const boxes = drawing.places.map(({ label, words, amounts }) => ({
          left: label.x,
          right: label.x + textWidth(words, true) + (amounts === '' ? 0 : 6 + textWidth(amounts)),
          y: label.y,
        }));
        boxes.forEach((one, index) => {
          expect(one.left).toBeGreaterThanOrEqual(0);
          expect(one.right).toBeLessThanOrEqual(drawing.width);
          expect(one.y).toBeLessThan(drawing.height);
          for (const other of boxes.slice(index + 1))
            expect(
              one.right <= other.left || other.right <= one.left || Math.abs(one.y - other.y) >= 14,
            ).toBe(true);
        });
        for (const { amounts } of drawing.places) expect(amounts).not.toBe('0.0 → 0.0');
      }),
      { numRuns: 60, seed: 17 },
    );
  });
});
