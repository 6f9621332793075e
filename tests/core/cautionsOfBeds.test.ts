import { describe, expect, test } from 'vitest';
import type { CautionFacts, LayerFacts, SourceFacts } from '../../app/core/season/cautions/facts';
import type { BedSeason, LayerInput, PlantingInput } from '../../app/core/season/input';
import { cautionKinds, type Caution } from '../../app/core/season/verdict';
import { thresholdRow } from '../../app/tables/thresholds';
import {
  between,
  dayIn,
  dugGives,
  dugTakes,
  firstDay,
  makeLayer,
  makePlanting,
  makePlantingResult,
  stepping,
  today,
} from './madeBed';
import {
  all,
  clearing,
  cleanLawn,
  layerFacts,
  ofBed,
  ofLayer,
  runOf,
  said,
  type Case,
} from './season/cautionRuns';

/* The bed as it stands, its plants, its soil, its weather and its sources: see cautions.test.ts. */

const tall = makePlanting();

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
