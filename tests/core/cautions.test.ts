import { describe, expect, test } from 'vitest';
import { bedCautions, layerCautions } from '../../app/core/season/cautions/cautions';
import type {
  CautionFacts,
  LayerFacts,
  Run,
  SourceFacts,
} from '../../app/core/season/cautions/facts';
import type { BedSeason, LayerInput, PlantingInput } from '../../app/core/season/input';
import type { SeasonResult } from '../../app/core/season/result';
import { bedVerdict } from '../../app/core/season/state';
import { type Caution, cautionKinds, type CautionKind } from '../../app/core/season/verdict';
import { limits, thresholdRow } from '../../app/tables/thresholds';
import {
  between,
  dayIn,
  days,
  dugGives,
  dugTakes,
  firstDay,
  legumeInput,
  makeBed,
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  soilRelease,
  stepping,
  today,
} from './madeBed';

/*
 * One case that raises each caution and one just below its line that does not. Lines are those of
 * the threshold table; the beds are made by hand.
 */

const clearing = dayIn(8, 23);
const all = (value: number): Float64Array => new Float64Array(days).fill(value);

const openFacts: CautionFacts = {
  roof: 'open',
  lastSpringFrost: dayIn(4, 15),
  ownWell: false,
  dogs: true,
  layers: {},
  plantings: {},
};

const cleanLawn: SourceFacts = {
  kind: 'lawn',
  name: 'Back',
  mayCarryWeedkiller: true,
  treatment: {
    answer: 'nothing',
    product: '',
    date: null,
    label: null,
    intervalDays: null,
    beanTestPassed: null,
  },
  mowingDays: [],
  creepingGrass: false,
  seedHeadsSeen: null,
};

const layerFacts = (changes: Partial<LayerFacts> = {}): LayerFacts => ({
  source: cleanLawn,
  materialName: 'Grass clippings',
  cutOn: today,
  seedHeaded: false,
  isRawManure: false,
  isCompost: false,
  hazards: [],
  ...changes,
});

interface Case {
  readonly plantings?: readonly PlantingInput[];
  readonly need?: number;
  readonly uptake?: number;
  readonly fixed?: number;
  readonly layers?: readonly LayerInput[];
  readonly bed?: Partial<BedSeason>;
  readonly result?: Parameters<typeof makeResult>[0];
}

function runOf(made: Case): Run {
  const plantings = made.plantings ?? [makePlanting()];
  const input = makeBed({ plantings, layers: made.layers ?? [], ...made.bed });
  const result: SeasonResult = makeResult({
    plantings: plantings.map((planting) =>
      makePlantingResult(planting, {
        need: made.need ?? 0.1,
        uptake: made.uptake ?? 0.1,
        fixed: made.fixed ?? 0,
      }),
    ),
    layers: (made.layers ?? []).map((layer) => ({
      id: layer.id,
      left: stepping(0, layer.day - 1, 1),
      depth: all(layer.laidDepth),
    })),
    ...made.result,
  });
  return { input, result, verdict: bedVerdict(input, result, input.today, limits) };
}

/** Cautions of one proposed layer; `after` changes what the run with it shows. */
function ofLayer(
  layer: LayerInput,
  before: Case = {},
  after: Case = before,
  facts: Partial<CautionFacts> = {},
): readonly Caution[] {
  return layerCautions(
    runOf(before),
    runOf({ ...after, layers: [...(after.layers ?? before.layers ?? []), layer] }),
    [layer.id],
    { ...openFacts, ...facts },
    limits,
  );
}

const ofBed = (made: Case, facts: Partial<CautionFacts> = {}): readonly Caution[] =>
  bedCautions(runOf(made), { ...openFacts, ...facts }, limits);

/** Weight and row of the first caution of a kind, or "none". */
function said(cautions: readonly Caution[], kind: CautionKind): string {
  const found = cautions.find((caution) => caution.kind === kind);
  return found ? `${found.weight}: ${found.row}` : 'none';
}

/** A bed whose ratio is the wanted one: 3.2 g in the crop, the rest to come. */
const withRatio = (ratio: number, made: Case = {}): Case => ({
  ...made,
  result: {
    ...made.result,
    flows: {
      [soilRelease]: between((ratio * 10.1 - 3.2) / (clearing - today), today + 1, clearing),
    },
  },
});

const tall = makePlanting();

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

describe('short', () => {
  const hungry = (uptake: number): readonly Caution[] =>
    ofBed({ uptake, result: { pools: { mineralTop: all(1) } } });
  test('when the state is, with the day and what is missing', () => {
    const found = hungry(0.03).find((caution) => caution.kind === 'short');
    expect(found).toMatchObject({ weight: 'caution', date: today + 7, unit: 'g/m2' });
    expect(found?.number).toBeCloseTo(0.07 * (clearing - today), 6);
    expect(said(hungry(0.086), 'short')).toBe('none');
  });
  test('names what is on hand: one thin layer at most, no more than there is room for', () => {
    const made: Case = { uptake: 0.03, result: { pools: { mineralTop: all(1) } } };
    const bag = { one: 'bag', many: 'bags', litres: 45 };
    const mends = (litres: number, nitrogenGrams: number): Caution['detail'] | undefined =>
      ofBed(made, { onHand: [{ name: 'clippings', litres, nitrogenGrams, container: bag }] }).find(
        (caution) => caution.kind === 'short',
      )?.detail;
    expect(mends(135, 230)).toMatchObject({ mendLitres: 8 * 6, mendCount: 1, mendOne: 'bag' });
    expect(mends(20, 34)?.['mendLitres']).toBe(20);
    // less than half a millimetre is not worth carrying
    expect(mends(2, 3.4)?.['mendLitres']).toBeUndefined();
    // very rich: the room of the bed decides
    const room = runOf(made).verdict.room ?? NaN;
    expect(mends(135, 6_750)?.['mendLitres']).toBeCloseTo((room * 6) / 50, 9);
  });
});

describe('tied up', () => {
  const flows = (perDay: number): Record<number, Float64Array> => ({
    [dugTakes]: between(perDay, today - 28, today + 10),
    [dugGives]: between(0.02, today + 11, clearing),
  });
  test('more than half a gram taken by what was dug in and not given back, until it is', () => {
    // 29 days of tie-up to today, ten more to come; 0.02 g a day given back afterwards
    const line = 0.5 / 39;
    const found = ofBed({ result: { flows: flows(line * 1.01) } }).find(
      (caution) => caution.kind === 'tied up',
    );
    expect(found?.weight).toBe('caution');
    expect(found?.date).toBe(today + 10 + Math.ceil((39 * line * 1.01 - 0.5) / 0.02));
    expect(said(ofBed({ result: { flows: flows(line * 0.99) } }), 'tied up')).toBe('none');
    // with nothing planted and nothing planned nobody minds
    const empty: Case = { plantings: [], result: { flows: flows(line * 1.01) } };
    expect(said(ofBed(empty), 'tied up')).toBe('none');
  });
  test('of a layer that is to be dug in, by the two runs', () => {
    const layer = makeLayer({ placement: 'dug', materialClass: 'mature', isGreens: false });
    const held = (grams: number): string =>
      said(
        ofLayer(
          layer,
          {},
          { result: { flows: { [dugTakes]: between(grams / 10, today, today + 9) } } },
        ),
        'tied up',
      );
    expect(held(0.505)).toBe('caution: tied up');
    expect(held(0.495)).toBe('none');
  });
});

describe('washing out', () => {
  const leftAtClearing = (grams: number, next: readonly PlantingInput[] = []): string =>
    said(
      ofBed({
        plantings: [tall, ...next],
        result: { pools: { mineralTop: stepping(1, dayIn(8, 1), grams) } },
      }),
      'washing out',
    );
  test('over 5 g left when the bed is cleared, unless something follows within three weeks', () => {
    expect(leftAtClearing(5.1)).toBe('caution: washing out at clearing');
    expect(leftAtClearing(4.9)).toBe('none');
    const next = makePlanting({ id: 'next', startDay: clearing + 14, clearingDay: null });
    expect(leftAtClearing(5.1, [next])).toBe('none');
  });
  test('over 5 g in an empty bed with nothing sown within three weeks', () => {
    const empty = (grams: number, plantings: readonly PlantingInput[] = []): string =>
      said(ofBed({ plantings, result: { pools: { mineralTop: all(grams) } } }), 'washing out');
    expect(empty(5.1)).toBe('caution: washing out in an empty bed');
    expect(empty(4.9)).toBe('none');
    const soon = makePlanting({ startDay: today + 21 });
    const late = makePlanting({ startDay: today + 23 });
    expect(empty(5.1, [soon])).toBe('none');
    expect(empty(5.1, [late])).toBe('caution: washing out in an empty bed');
  });
  test('50 mm due within the week on more than 30 mg/kg', () => {
    const due = (rain: number, mgPerKg: number): boolean =>
      ofBed({
        result: {
          rain: between(rain / 5, today + 1, today + 5),
          pools: { mineralTop: stepping((mgPerKg * 1.3 * 30) / 100, today, 1) },
        },
      }).some((caution) => caution.row === 'rain on nitrate');
    expect(due(50, 30.1)).toBe(true);
    expect(due(49.9, 30.1)).toBe(false);
    expect(due(50, 29.9)).toBe(false);
  });
  test('names the well when there is one', () => {
    const made: Case = { plantings: [], result: { pools: { mineralTop: all(6) } } };
    expect(said(ofBed(made, { ownWell: true }), 'safety')).toBe('caution: own well');
    expect(said(ofBed(made), 'safety')).toBe('none');
  });
});

describe('seedlings and stems', () => {
  const sown = (progress: number): string => {
    const planting = makePlanting({ sown: true }, { excessClass: 'fruit' });
    const own = makePlantingResult(
      planting,
      { need: 0.1, uptake: 0.1 },
      { progress: all(progress) },
    );
    return said(
      ofLayer(makeLayer(), { plantings: [planting], result: { plantings: [own] } }),
      'seedlings',
    );
  };
  test('caution under a hand high, note under two hands', () => {
    expect(sown(0.119)).toBe('caution: cover over seedlings');
    expect(sown(0.121)).toBe('note: stems');
    expect(sown(0.239)).toBe('note: stems');
    expect(sown(0.241)).toBe('none');
  });
  test('seed about to go in', () => {
    const before = (lead: number): string =>
      said(
        ofLayer(makeLayer(), {
          plantings: [makePlanting({ sown: true, startDay: today + lead })],
        }),
        'seedlings',
      );
    expect(before(7)).toBe('note: stems');
    expect(before(8)).toBe('none');
  });
  test('stays on the bed while the seedlings under it are small', () => {
    const planting = makePlanting({ sown: true, startDay: today - 10 });
    expect(
      said(ofBed({ plantings: [planting], layers: [makeLayer({ day: today - 2 })] }), 'seedlings'),
    ).toBe('caution: cover over seedlings');
    expect(
      said(ofBed({ plantings: [planting], layers: [makeLayer({ day: today - 20 })] }), 'seedlings'),
    ).toBe('none');
  });
});

describe('soil', () => {
  const corn = makePlanting(
    { sown: true, startDay: today + 10 },
    {
      warmSoilCelsius: 15,
      seedFlyRisk: true,
    },
  );
  test('cold soil: cover before 15 C under a warm crop', () => {
    const at = (celsius: number): string =>
      said(
        ofLayer(makeLayer(), {
          plantings: [corn],
          result: { soilTemperature: stepping(celsius, today + 3, 20) },
        }),
        'cold soil',
      );
    expect(at(14.9)).toBe('caution: cold soil');
    expect(at(15)).toBe('none');
    const onBed = (fraction: number): string =>
      said(
        ofBed({
          plantings: [corn],
          result: { soilTemperature: all(14), coverFraction: all(fraction) },
        }),
        'cold soil',
      );
    expect(onBed(0.31)).toBe('caution: cold soil');
    expect(onBed(0.29)).toBe('none');
  });
  test('seed fly: greens laid fresh up to 21 days ahead of sowing, where it is cold and wet', () => {
    const before = (
      lead: number,
      celsius = 12,
      wet = 0.8,
      condition: 'limp' | 'crisp' = 'limp',
    ): string =>
      said(
        ofLayer(makeLayer({ condition, placement: 'dug' }), {
          plantings: [{ ...corn, startDay: today + lead }],
          result: { soilTemperature: all(celsius), availableWaterTop: all(wet) },
        }),
        'seed fly',
      );
    expect(before(21)).toBe('caution: seed fly');
    expect(before(22)).toBe('none');
    expect(before(10, 15.1)).toBe('none');
    expect(before(10, 12, 0.69)).toBe('none');
    expect(before(10, 12, 0.8, 'crisp')).toBe('none');
  });
  test('seed fly: also when the sowing is planned after the greens', () => {
    const made: Case = {
      plantings: [{ ...corn, startDay: today + 5 }],
      layers: [makeLayer({ day: today - 10 })],
      result: { soilTemperature: all(12) },
    };
    expect(said(ofBed(made), 'seed fly')).toBe('caution: seed fly');
  });
  test('dry soil: under 30 % of its water', () => {
    const on = (left: number): string =>
      said(ofLayer(makeLayer(), { result: { availableWaterTop: all(left) } }), 'dry soil');
    expect(on(0.29)).toBe('note: dry soil first');
    expect(on(0.31)).toBe('none');
  });
});

describe('weather', () => {
  const lettuce = makePlanting({}, { excessClass: 'leaf' });
  interface Wet {
    readonly rain: Float64Array;
    readonly night: number;
    readonly fraction?: number;
    readonly plantings?: readonly PlantingInput[];
  }
  const slugs = ({ rain, night, fraction = 0.5, plantings = [lettuce] }: Wet): string =>
    said(
      ofBed({ plantings, result: { rain, airMinimum: all(night), coverFraction: all(fraction) } }),
      'slugs',
    );
  test('slugs: a week of 25 mm or 5 days of rain, nights above 8 C, leaves or seedlings', () => {
    expect(slugs({ rain: between(25, today - 6, today - 6), night: 8.1 })).toBe(
      'note: slug weather',
    );
    expect(slugs({ rain: between(24.9, today - 6, today - 6), night: 8.1 })).toBe('none');
    expect(slugs({ rain: between(25, today - 7, today - 7), night: 8.1 })).toBe('none');
    expect(slugs({ rain: between(1, today - 4, today), night: 8.1 })).toBe('note: slug weather');
    expect(slugs({ rain: between(1, today - 3, today), night: 8.1 })).toBe('none');
    expect(slugs({ rain: between(9, today - 4, today), night: 8 })).toBe('none');
    expect(slugs({ rain: between(9, today - 4, today), night: 9, fraction: 0.29 })).toBe('none');
    expect(slugs({ rain: between(9, today - 4, today), night: 9, plantings: [tall] })).toBe('none');
  });
  describe('what nose and board have found', () => {
    const looked = (
      kind: 'sour mat' | 'slugs',
      looks: CautionFacts['looks'] & object,
      { fraction = 0.5, plantings = [lettuce], events = [] as BedSeason['events'] } = {},
    ): string =>
      said(
        ofBed({ plantings, bed: { events }, result: { coverFraction: all(fraction) } }, { looks }),
        kind,
      );
    test('slugs under a board, whatever the weather: leaves or seedlings under a cover', () => {
      const seen = [{ day: today - 3, slugsUnderBoard: true }];
      expect(looked('slugs', seen)).toBe('caution: slugs seen');
      expect(looked('slugs', seen, { fraction: 0.29 })).toBe('none');
      expect(looked('slugs', seen, { plantings: [tall] })).toBe('none');
      expect(looked('slugs', [{ day: today - 14, slugsUnderBoard: true }])).toBe(
        'caution: slugs seen',
      );
      expect(looked('slugs', [{ day: today - 15, slugsUnderBoard: true }])).toBe('none');
      expect(looked('slugs', [{ day: today + 1, slugsUnderBoard: true }])).toBe('none');
      expect(looked('slugs', [...seen, { day: today - 1, slugsUnderBoard: false }])).toBe('none');
      expect(looked('slugs', [...seen, { day: today - 1, leaves: 'yellow' }])).toBe(
        'caution: slugs seen',
      );
      const cautions = ofBed(
        {
          plantings: [lettuce],
          result: {
            rain: between(25, today - 6, today - 6),
            airMinimum: all(9),
            coverFraction: all(0.5),
          },
        },
        { looks: seen },
      );
      expect(cautions.filter(({ kind }) => kind === 'slugs').map(({ row }) => row)).toEqual([
        'slugs seen',
      ]);
    });
    test('a sour mat, till it is raked off, dug in, gone or two weeks past', () => {
      const smelt = [{ day: today - 3, smellsSour: true }];
      const mended = (day: number): BedSeason['events'] => [{ kind: 'rake off', day, share: 1 }];
      expect(looked('sour mat', smelt)).toBe('caution: sour mat');
      expect(looked('sour mat', [{ day: today - 15, smellsSour: true }])).toBe('none');
      expect(looked('sour mat', [{ day: today - 3, smellsSour: false }])).toBe('none');
      expect(looked('sour mat', smelt, { fraction: 0 })).toBe('none');
      expect(looked('sour mat', smelt, { events: mended(today - 4) })).toBe('caution: sour mat');
      expect(looked('sour mat', smelt, { events: mended(today - 2) })).toBe('none');
    });
  });
  test('frost: tender plants over cover up to the last frost', () => {
    const tender = makePlanting({}, { frostTender: true });
    const on = (lastSpringFrost: number, planting = tender): string =>
      said(
        ofBed({ plantings: [planting], result: { coverFraction: all(0.5) } }, { lastSpringFrost }),
        'frost',
      );
    expect(on(today)).toBe('note: frost over cover');
    expect(on(today - 1)).toBe('none');
    expect(on(today, tall)).toBe('none');
  });
  test('frost kill: a measured night at what kills it, not cleared since', () => {
    const on = (
      night: number,
      kind = 0,
      planting = tall,
      roof: CautionFacts['roof'] = 'open',
    ): string =>
      said(
        ofBed(
          {
            plantings: [planting],
            result: { airMinimum: all(night), kind: new Uint8Array(all(0).length).fill(kind) },
          },
          {
            roof,
            plantings: {
              [planting.id]: { cropName: 'Beans', weedkillerSensitive: true, killedAtCelsius: -1 },
            },
          },
        ),
        'frost kill',
      );
    expect(on(-1)).toBe('note: killed by frost');
    expect(on(-0.9)).toBe('none');
    expect(on(-9, 1)).toBe('note: killed by frost');
    expect(on(-9, 2)).toBe('none');
    expect(on(-9, 0, tall, 'glass or film')).toBe('none');
    expect(on(-9, 0, makePlanting({ clearingDay: today, cleared: true }))).toBe('none');
    expect(on(-9, 0, makePlanting({ seasons: [] }))).toBe('none');
  });
  test('ammonia: fresh greens under glass or film, for 30 days', () => {
    const on = (age: number, condition: 'just cut' | 'crisp', roof: CautionFacts['roof']): string =>
      said(
        ofBed({ layers: [makeLayer({ condition, day: today - age })] }, { roof }),
        'ammonia under glass',
      );
    expect(on(0, 'just cut', 'glass or film')).toBe('caution: fresh greens under glass');
    expect(on(29, 'just cut', 'glass or film')).toBe('caution: fresh greens under glass');
    expect(on(30, 'just cut', 'glass or film')).toBe('none');
    expect(on(0, 'crisp', 'glass or film')).toBe('none');
    expect(on(0, 'just cut', 'open')).toBe('none');
  });
});

describe('where it came from', () => {
  const from = (source: Partial<SourceFacts>, changes: Partial<LayerFacts> = {}): LayerFacts =>
    layerFacts({ source: { ...cleanLawn, ...source }, ...changes });
  const lay = (of: LayerFacts, layer: Partial<LayerInput> = {}): readonly Caution[] =>
    ofLayer(makeLayer(layer), {}, {}, { layers: { layer: of } });

  test('runners: creeping grass until crisp', () => {
    expect(said(lay(from({ creepingGrass: true })), 'runners')).toBe('caution: creeping grass');
    expect(said(lay(from({ creepingGrass: true }), { condition: 'crisp' }), 'runners')).toBe(
      'none',
    );
  });
  test('seed heads: for 14 days after they were seen, or when the mowing was full of them', () => {
    expect(said(lay(from({ seedHeadsSeen: today - 14 })), 'seed heads')).toBe(
      'caution: seed heads',
    );
    expect(said(lay(from({ seedHeadsSeen: today - 15 })), 'seed heads')).toBe('none');
    expect(said(lay(from({ seedHeadsSeen: today + 1 })), 'seed heads')).toBe('none');
    expect(said(lay(from({}, { seedHeaded: true })), 'seed heads')).toBe('caution: seed heads');
  });
  test('fouled grass: stop where the food is eaten raw and touches the ground', () => {
    const on = (planting: PlantingInput): string =>
      said(
        ofLayer(makeLayer(), { plantings: [planting] }, undefined, {
          layers: { layer: from({}, { hazards: ['fouled grass'] }) },
        }),
        'fouled',
      );
    expect(on(makePlanting({}, { eatenFromSoil: true }))).toBe('stop: fouled grass');
    expect(on(makePlanting({}, { excessClass: 'leaf' }))).toBe('stop: fouled grass');
    expect(on(makePlanting({}, { excessClass: 'fruit' }))).toBe('none');
  });
  test('safety rows come with the material; some only where dogs go', () => {
    const on = (hazard: LayerFacts['hazards'][number], dogs = true): string =>
      said(
        ofLayer(makeLayer(), {}, undefined, {
          dogs,
          layers: { layer: from({}, { hazards: [hazard] }) },
        }),
        'safety',
      );
    expect(on('dog poison')).toBe('stop: dog poison');
    expect(on('dog poison', false)).toBe('none');
    expect(on('poisonous plants')).toBe('stop: poisonous plants');
    expect(on('painted wood')).toBe('caution: painted wood');
    expect(on('walnut')).toBe('note: walnut');
  });
  test('compost: note past 10 mm in the season', () => {
    const laid = (depth: number): string => {
      const layer = makeLayer({ materialClass: 'slow', isGreens: false, laidDepth: depth });
      return said(
        ofBed({ layers: [layer] }, { layers: { layer: layerFacts({ isCompost: true }) } }),
        'compost phosphorus',
      );
    };
    expect(laid(10.1)).toBe('note: compost depth');
    expect(laid(10)).toBe('none');
  });
});

describe('raw manure', () => {
  const wait = (
    lead: number,
    eatenFromSoil: boolean,
    excessClass: PlantingInput['crop']['excessClass'] = 'storage',
  ): readonly Caution[] => {
    const planting = makePlanting(
      { firstHarvestDay: today + lead, clearingDay: dayIn(12, 20), usualEndDay: dayIn(12, 20) },
      { eatenFromSoil, excessClass },
    );
    const layer = makeLayer({ materialClass: 'slow', isGreens: false });
    return ofLayer(layer, { plantings: [planting] }, undefined, {
      layers: { layer: layerFacts({ isRawManure: true }) },
    });
  };
  test('120 days where food touches soil, 90 elsewhere (7 CFR 205.203), close within a week', () => {
    expect(said(wait(119, true), 'raw manure')).toBe('stop: manure splashed');
    expect(said(wait(120, true), 'raw manure')).toBe('caution: manure splashed');
    expect(said(wait(127, true), 'raw manure')).toBe('none');
    expect(said(wait(89, false), 'raw manure')).toBe('stop: manure off the ground');
    expect(said(wait(90, false), 'raw manure')).toBe('caution: manure off the ground');
    expect(said(wait(97, false), 'raw manure')).toBe('none');
    expect(said(wait(10, false, 'flower'), 'raw manure')).toBe('none');
  });
  test('names the last day on which it would have been in time', () => {
    const found = wait(100, true).find((caution) => caution.kind === 'raw manure');
    expect(found).toMatchObject({ number: 100, threshold: 120, date: today - 20 });
  });
  test('also when the planting came after the manure', () => {
    const layer = makeLayer({ materialClass: 'slow', isGreens: false, day: today - 60 });
    const facts = { layers: { layer: layerFacts({ isRawManure: true }) } };
    const later = makePlanting(
      { startDay: today - 1, firstHarvestDay: today + 50 },
      { eatenFromSoil: true },
    );
    expect(said(ofBed({ layers: [layer], plantings: [] }, facts), 'raw manure')).toBe('none');
    expect(said(ofBed({ layers: [layer], plantings: [later] }, facts), 'raw manure')).toBe(
      'stop: manure splashed',
    );
  });
});

describe('leaf crops', () => {
  test('greens up to four weeks before picking: a note', () => {
    const before = (lead: number): string =>
      said(
        ofLayer(makeLayer(), {
          plantings: [makePlanting({ clearingDay: today + lead }, { excessClass: 'leaf' })],
        }),
        'salad nitrate',
      );
    expect(before(28)).toBe('note: greens before a salad');
    expect(before(29)).toBe('none');
  });
  test('over 30 mg/kg under leaf or head crops: a caution, not a state', () => {
    const on = (mgPerKg: number): string =>
      said(
        ofBed({
          plantings: [makePlanting({}, { excessClass: 'head' })],
          result: { pools: { mineralTop: all((mgPerKg * 1.3 * 30) / 100) } },
        }),
        'salad nitrate',
      );
    expect(on(30.1)).toBe('caution: leaf nitrate');
    expect(on(29.9)).toBe('none');
  });
});

test('shares over one, and a planting past its time', () => {
  const shares = (share: number): string =>
    said(ofBed({ plantings: [tall, makePlanting({ id: 'second', share })] }), 'share over one');
  expect(shares(0.01)).toBe('note: share of the bed');
  expect(said(ofBed({}), 'share over one')).toBe('none');
  const past = (end: number): string =>
    said(ofBed({ plantings: [makePlanting({ clearingDay: null, usualEndDay: end })] }), 'overdue');
  expect(past(today - 1)).toBe('note: overdue');
  expect(past(today)).toBe('none');
});

test('materials outside what the model of rotting was tested on', () => {
  const of = (carbonToNitrogen: number, materialClass: 'green' | 'mature'): string =>
    said(
      ofLayer(makeLayer({ nitrogen: 10, carbon: 10 * carbonToNitrogen, materialClass })),
      'outside validity',
    );
  expect(of(7.9, 'green')).toBe('note: outside what was tested');
  expect(of(8, 'green')).toBe('none');
  expect(of(40, 'green')).toBe('none');
  expect(of(40.1, 'green')).toBe('note: outside what was tested');
  expect(of(9.9, 'mature')).toBe('note: outside what was tested');
  expect(of(150, 'mature')).toBe('none');
  expect(of(151, 'mature')).toBe('note: outside what was tested');
});

test('strongest first', () => {
  const ranks = ofLayer(
    makeLayer({ laidDepth: 30 }),
    { plantings: [makePlanting({ sown: true })] },
    {
      ...withRatio(1.4),
      plantings: [makePlanting({ sown: true })],
    },
  ).map((caution) => ['stop', 'caution', 'note'].indexOf(caution.weight));
  expect(ranks.length).toBeGreaterThan(2);
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
});

test('every caution of these tests names a row of the table', () => {
  const seen = ofBed({
    plantings: [makePlanting({ sown: true, share: 1.2 }, { excessClass: 'leaf' })],
    layers: [makeLayer({ laidDepth: 30, nitrogen: 90, carbon: 90 * 50 })],
    result: {
      coverDepth: all(160),
      coverFraction: all(1),
      rain: all(9),
      pools: { mineralTop: all(20) },
    },
  });
  expect(seen.length).toBeGreaterThan(6);
  for (const caution of seen) expect(thresholdRow(caution.row).id).toBe(caution.row);
  expect(cautionKinds).toEqual(expect.arrayContaining(seen.map((caution) => caution.kind)));
  expect(firstDay).toBeLessThan(today);
});
