import { describe, expect, test } from 'vitest';
import type { LayerInput } from '../../app/core/season/input';
import { type Caution } from '../../app/core/season/verdict';
import { legumeInput, makeLayer, makePlanting, stepping, today } from './madeBed';
import { all, ofBed, ofLayer, said, withRatio, type Case } from './season/cautionRuns';

/* One case that raises each caution and one just below its line that does not, rule by rule; lines are those of the
 * threshold table, beds are made by hand. Whole gardens: tests/document/cautionTable. */

describe('depth of a layer', () => {
  const depth = (laidDepth: number, changes: Partial<LayerInput> = {}): string =>
    said(ofLayer(makeLayer({ laidDepth, ...changes })), 'layer depth');

  test.each([
    ['just cut', 8, 13, 25],
    ['limp', 20, 40, 75],
    ['crisp', 40, 75, 150],
  ] as const)(
    '%s: note past %i, caution past %i, stop past %i mm',
    (condition, note, caution, stop) => {
      const row = `layer ${condition}`;
      expect(depth(note, { condition })).toBe('none');
      expect(depth(note * 1.01, { condition })).toBe(`note: ${row}`);
      expect(depth(caution, { condition })).toBe(`note: ${row}`);
      expect(depth(caution * 1.01, { condition })).toBe(`caution: ${row}`);
      expect(depth(stop * 0.99, { condition })).toBe(`caution: ${row}`);
      expect(depth(stop * 1.01, { condition })).toBe(`stop: ${row}`);
    },
  );

  test('25 mm just cut is a stop, also when rounding took a hair off it', () => {
    expect(depth(25)).toBe('stop: layer just cut');
    expect(depth(25 - 1e-9)).toBe('stop: layer just cut');
    expect(depth(24.9)).toBe('caution: layer just cut');
  });

  test('two halves on one day are one layer', () => {
    const first = makeLayer({ id: 'first', laidDepth: 13 });
    const cautions = ofLayer(makeLayer({ id: 'second', laidDepth: 12 }), { layers: [first] });
    expect(said(cautions, 'layer depth')).toBe('stop: layer just cut');
  });

  test('browns lie loose whatever their condition is called; what is dug in has no depth', () => {
    expect(depth(60, { materialClass: 'mature', isGreens: false })).toBe('note: layer crisp');
    expect(depth(60, { placement: 'dug' })).toBe('none');
  });

  test('stays with the layer on the bed afterwards', () => {
    const made = { layers: [makeLayer({ day: today - 40, laidDepth: 26 })] };
    const found = ofBed(made).find((caution) => caution.kind === 'layer depth');
    expect(found).toMatchObject({ weight: 'stop', layerId: 'layer', number: 26, threshold: 25 });
  });
});

test('all cover: caution past 100 mm, stop past 150', () => {
  const cover = (depth: number): string =>
    said(ofBed({ result: { coverDepth: all(depth) } }), 'all cover');
  expect(cover(100)).toBe('none');
  expect(cover(101)).toBe('caution: all cover');
  expect(cover(150)).toBe('caution: all cover');
  expect(cover(151)).toBe('stop: all cover');
});

describe('too soon', () => {
  const earlier = makeLayer({ id: 'earlier', day: today - 5 });
  const soon = (fill: number, left: number): readonly Caution[] =>
    ofLayer(makeLayer(), {
      layers: [earlier],
      result: {
        coverFill: stepping(fill, today + 3, 0),
        layers: [{ id: 'earlier', left: all(left), depth: all(3) }],
      },
    });
  test('greens over 0.4 full of water and less than half gone', () => {
    expect(said(soon(0.41, 0.51), 'too soon')).toBe('caution: greens too soon');
    expect(said(soon(0.39, 0.51), 'too soon')).toBe('none');
    expect(said(soon(0.41, 0.49), 'too soon')).toBe('none');
    expect(soon(0.41, 0.51).find((one) => one.kind === 'too soon')?.date).toBe(today + 4);
  });
});

describe('room left', () => {
  const classes = [
    ['tender storage', 1.2, 1.5],
    ['storage', 1.3, 1.7],
    ['fruit', 1.3, 1.8],
    ['flower', 1.3, 2],
    ['leaf', 1.5, 2],
    ['head', 1.5, 2],
    ['perennial', 1.2, 1.7],
  ] as const;
  test.each(classes)(
    '%s after the layer: note 1.1, caution %f, stop %f',
    (excessClass, caution, stop) => {
      const plantings = [makePlanting({}, { excessClass })];
      const room = (ratio: number): string =>
        said(ofLayer(makeLayer(), { plantings }, withRatio(ratio, { plantings })), 'room');
      const row = `room ${excessClass}`;
      expect(room(1.09)).toBe('none');
      expect(room(1.11)).toBe(`note: ${row}`);
      expect(room(caution - 0.01)).toBe(`note: ${row}`);
      expect(room(caution + 0.01)).toBe(`caution: ${row}`);
      expect(room(stop - 0.01)).toBe(`caution: ${row}`);
      expect(room(stop + 0.01)).toBe(`stop: ${row}`);
    },
  );

  test('not for legumes, and browns have no room rule', () => {
    const plantings = [makePlanting({}, { excessClass: 'legume', legume: legumeInput })];
    expect(said(ofLayer(makeLayer(), { plantings }, withRatio(3, { plantings })), 'room')).toBe(
      'none',
    );
    expect(
      said(
        ofLayer(makeLayer({ materialClass: 'mature', isGreens: false }), {}, withRatio(3)),
        'room',
      ),
    ).toBe('none');
  });

  test('an empty bed: caution only, past 5 g ready with nobody to take it', () => {
    const empty = (ready: number): string =>
      said(
        ofLayer(
          makeLayer(),
          { plantings: [] },
          {
            plantings: [],
            result: { pools: { mineralTop: stepping(1, today + 20, ready) } },
          },
        ),
        'room',
      );
    expect(empty(4.9)).toBe('none');
    expect(empty(5.1)).toBe('caution: greens on an empty bed');
    expect(empty(50)).toBe('caution: greens on an empty bed');
  });

  test('an empty bed with a crop within three weeks is weighed on its first day, never a stop', () => {
    const next = makePlanting({
      startDay: today + 21,
      clearingDay: today + 121,
      usualEndDay: today + 121,
    });
    const made = (ready: number): Case => ({
      plantings: [next],
      result: { pools: { mineralTop: all(ready) } },
    });
    expect(said(ofLayer(makeLayer(), made(1), made(12)), 'room')).toBe('note: room storage');
    expect(said(ofLayer(makeLayer(), made(1), made(90)), 'room')).toBe('caution: room storage');
  });

  test('the bed as it stands carries the same lines', () => {
    expect(said(ofBed(withRatio(1.75)), 'room')).toBe('stop: room storage');
    expect(said(ofBed(withRatio(1.05)), 'room')).toBe('none');
  });
});

test('season total: note 72, caution 76, stop over 80 g laid', () => {
  const laid = (nitrogen: number): string =>
    said(
      ofBed({ layers: [makeLayer({ nitrogen, laidDepth: 1, day: today - 30 })] }),
      'season total',
    );
  expect(laid(71.9)).toBe('none');
  expect(laid(72.1)).toBe('note: season total');
  expect(laid(76.1)).toBe('caution: season total');
  expect(laid(80)).toBe('caution: season total');
  expect(laid(80.1)).toBe('stop: season total');
});

describe('greens on a bed with enough', () => {
  const enough = (before: number, after: number, layer = makeLayer()): string =>
    said(ofLayer(layer, withRatio(before), withRatio(after)), 'enough');
  test('to the end: caution; a stop when it carries past the over-fed line', () => {
    expect(enough(1.09, 1.25)).toBe('none');
    expect(enough(1.2, 1.25)).toBe('caution: greens on enough to the end');
    expect(enough(1.2, 1.29)).toBe('caution: greens on enough to the end');
    expect(enough(1.2, 1.31)).toBe('stop: greens past enough');
    expect(enough(1.5, 1.6)).toBe('stop: greens past enough');
  });
  test('just past the line of "enough" the stop is still a caution', () => {
    expect(enough(1.11, 1.4)).toBe('caution: greens on enough to the end');
    expect(enough(1.13, 1.4)).toBe('stop: greens past enough');
  });
  test('browns are welcome', () => {
    const straw = makeLayer({ materialClass: 'mature', isGreens: false });
    expect(enough(1.5, 1.6, straw)).toBe('none');
  });
  test('for now: caution from 20 mg/kg on', () => {
    const on = (mgPerKg: number): string => {
      const made: Case = {
        need: 0.2,
        uptake: 0.2,
        result: { pools: { mineralTop: stepping((mgPerKg * 1.3 * 30) / 100, today + 9, 1) } },
      };
      return said(ofLayer(makeLayer(), made), 'enough');
    };
    expect(on(20.1)).toBe('caution: greens on enough for now');
    expect(on(19.9)).toBe('none');
  });
});

describe('legumes', () => {
  const beans = makePlanting({ sown: true }, { excessClass: 'legume', legume: legumeInput });
  const fixed = (
    after: number,
    layer: Partial<LayerInput> = {},
    earlier: readonly LayerInput[] = [],
  ): readonly Caution[] => {
    const made = (daily: number): Case => ({
      plantings: [beans],
      uptake: 0.04,
      fixed: daily,
      layers: earlier,
    });
    return ofLayer(makeLayer(layer), made(0.06), made(0.06 * after));
  };
  const earlier = [makeLayer({ id: 'earlier', day: today - 20 })];

  test('note from 2 % lost, caution from a quarter, never a stop', () => {
    const lost = (loss: number): string => said(fixed(1 - loss, {}, earlier), 'legume');
    expect(lost(0.019)).toBe('none');
    expect(lost(0.021)).toBe('note: legume loss');
    expect(lost(0.249)).toBe('note: legume loss');
    expect(lost(0.251)).toBe('caution: legume loss');
    expect(lost(0.95)).toBe('caution: legume loss');
  });

  test('one thin layer, the first, is welcome once plants stand a hand high: no more than a note', () => {
    const first = fixed(0.5).find((caution) => caution.kind === 'legume');
    expect(first).toMatchObject({ weight: 'note', detail: { welcome: 1 } });
    expect(said(fixed(0.5, { laidDepth: 8 }), 'legume')).toBe('note: legume loss');
    expect(said(fixed(0.5, { laidDepth: 8.1 }), 'legume')).toBe('caution: legume loss');
  });

  test('a cover crop has no use for a first layer', () => {
    const clover = makePlanting({ sown: true }, { excessClass: 'cover', legume: legumeInput });
    const made = (daily: number): Case => ({ plantings: [clover], uptake: 0.04, fixed: daily });
    expect(said(ofLayer(makeLayer(), made(0.06), made(0.03)), 'legume')).toBe(
      'caution: legume loss',
    );
  });

  test('no nodules, nothing to lose', () => {
    const none = makePlanting(
      { nodulesSeen: false },
      { excessClass: 'legume', legume: legumeInput },
    );
    const made = (daily: number): Case => ({ plantings: [none], fixed: daily });
    expect(said(ofLayer(makeLayer(), made(0.06), made(0.01)), 'legume')).toBe('none');
  });
});
