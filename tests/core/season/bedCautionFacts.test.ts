import { describe, expect, test } from 'vitest';
import type { PlantingInput } from '../../../app/core/season/input';
import { between, dayIn, dugTakes, makeLayer, makePlanting, today } from '../madeBed';
import {
  all,
  kindsOf,
  layerFacts,
  ofBed,
  ofLayers,
  only,
  withRatio,
  type Case,
} from './cautionRuns';

/*
 * What a caution carries is what its sentence says: number, line, unit, day, and what it is about.
 * Lines are those of the threshold table; the beds are made by hand, so every number can be reckoned
 * beside the test.
 */

describe('raw manure', () => {
  const manure = makeLayer({ materialClass: 'slow', isGreens: false });
  const facts = { layers: { layer: layerFacts({ isRawManure: true }) } };
  const lead = (days: number, changes: Partial<PlantingInput> = {}): PlantingInput =>
    makePlanting(
      {
        firstHarvestDay: today + days,
        clearingDay: dayIn(12, 20),
        usualEndDay: dayIn(12, 20),
        ...changes,
      },
      { eatenFromSoil: true },
    );

  test('says the days between, the days there should be, and from when picking is in order', () => {
    expect(
      only(ofLayers([manure], { plantings: [lead(100)] }, undefined, facts), 'raw manure'),
    ).toEqual({
      kind: 'raw manure',
      weight: 'stop',
      row: 'manure splashed',
      number: 100,
      threshold: 120,
      unit: 'days',
      date: today + 100 - 120,
      detail: { plantingId: 'planting', pickFrom: today + 120 },
      layerId: 'layer',
    });
  });

  test('picking that has begun counts from the day of the manure', () => {
    const found = only(
      ofLayers([manure], { plantings: [lead(-10)] }, undefined, facts),
      'raw manure',
    );
    expect(found).toMatchObject({ number: 0, weight: 'stop', date: today - 130 });
  });

  test('what is cleared by the day of the manure is never picked after it', () => {
    const kinds = (changes: Partial<PlantingInput>) =>
      kindsOf(ofLayers([manure], { plantings: [lead(-10, changes)] }, undefined, facts));
    expect(kinds({ clearingDay: today })).not.toContain('raw manure');
    expect(kinds({ clearingDay: today + 1 })).toContain('raw manure');
    expect(kinds({ clearingDay: null, usualEndDay: today })).not.toContain('raw manure');
    expect(kinds({ clearingDay: null, usualEndDay: today + 1 })).toContain('raw manure');
  });

  test('last season’s manure counts too, cover crops and other layers never', () => {
    const old = makeLayer({ ...manure, day: today - 60 });
    const bed = { seasonStarts: [today - 30] };
    const made: Case = { layers: [old], bed, plantings: [lead(30)] };
    expect(only(ofBed(made, facts), 'raw manure')).toMatchObject({ number: 90, threshold: 120 });
    expect(kindsOf(ofBed(made))).not.toContain('raw manure');
    const clover = makePlanting({ firstHarvestDay: today + 5 }, { excessClass: 'cover' });
    expect(kindsOf(ofBed({ ...made, plantings: [clover] }, facts))).not.toContain('raw manure');
  });

  test('each planting that is picked too soon is named', () => {
    const two = [lead(20), { ...lead(40), id: 'second' }];
    const found = ofLayers([manure], { plantings: two }, undefined, facts)
      .filter(({ kind }) => kind === 'raw manure')
      .map(({ detail, number }) => [detail['plantingId'], number]);
    expect(found).toEqual([
      ['planting', 20],
      ['second', 40],
    ]);
  });
});

describe('compost', () => {
  const heap = (id: string, day: number, laidDepth: number) =>
    makeLayer({ id, day, laidDepth, materialClass: 'slow', isGreens: false });
  const isCompost = layerFacts({ isCompost: true });

  test('adds up over the season: its first day counts, what is to come and what was not compost do not', () => {
    const made: Case = {
      bed: { seasonStarts: [today - 30] },
      layers: [
        heap('last', today - 31, 40),
        heap('first', today - 30, 6),
        heap('other', today - 5, 40),
        heap('now', today, 5),
        heap('later', today + 1, 40),
      ],
    };
    const layers = Object.fromEntries(
      ['last', 'first', 'now', 'later'].map((id) => [id, isCompost]),
    );
    expect(only(ofBed(made, { layers }), 'compost phosphorus')).toEqual({
      kind: 'compost phosphorus',
      weight: 'note',
      row: 'compost depth',
      number: 11,
      threshold: 10,
      unit: 'mm',
      date: null,
      detail: {},
      layerId: null,
    });
  });

  test('of a layer that is to come it names the layer; only compost asks', () => {
    const before: Case = { layers: [heap('first', today - 9, 6)] };
    const layers = { first: isCompost, layer: isCompost };
    expect(
      only(
        ofLayers([heap('layer', today, 5)], before, undefined, { layers }),
        'compost phosphorus',
      ),
    ).toMatchObject({ number: 11, layerId: 'layer' });
    const clippings = ofLayers(
      [makeLayer()],
      { layers: [heap('first', today - 9, 20)] },
      undefined,
      {
        layers: { first: isCompost },
      },
    );
    expect(kindsOf(clippings)).not.toContain('compost phosphorus');
  });
});

describe('plantings as they stand', () => {
  test('shares over one say by how much; who is gone or not yet here takes no share', () => {
    const of = (id: string, changes: Partial<PlantingInput>) => makePlanting({ id, ...changes });
    const plantings = [
      of('a', { share: 0.8 }),
      of('b', { share: 0.5, startDay: today }),
      of('gone', { clearingDay: today }),
      of('later', { startDay: today + 1 }),
    ];
    expect(only(ofBed({ plantings }), 'share over one')).toMatchObject({
      weight: 'note',
      row: 'share of the bed',
      threshold: 1,
      unit: 'share',
      number: 1.3,
      layerId: null,
    });
  });

  test('overdue: by how many days, since when, and what', () => {
    const over = makePlanting({ clearingDay: null, usualEndDay: today - 9 });
    expect(
      only(
        ofBed(
          { plantings: [over] },
          { plantings: { planting: { cropName: 'Carrots', weedkillerSensitive: true } } },
        ),
        'overdue',
      ),
    ).toEqual({
      kind: 'overdue',
      weight: 'note',
      row: 'overdue',
      number: 9,
      threshold: 0,
      unit: 'days',
      date: today - 9,
      detail: { plantingId: 'planting', crop: 'Carrots' },
      layerId: null,
    });
    expect(only(ofBed({ plantings: [over] }), 'overdue').detail).toEqual({
      plantingId: 'planting',
    });
    expect(kindsOf(ofBed({ plantings: [{ ...over, cleared: true }] }))).not.toContain('overdue');
    const planned = { ...over, clearingDay: today + 30 };
    expect(kindsOf(ofBed({ plantings: [planned] }))).not.toContain('overdue');
  });
});

describe('a bed’s own list', () => {
  const creeping = layerFacts({}, { creepingGrass: true });
  const on = (age: number, facts = creeping) =>
    kindsOf(ofBed({ layers: [makeLayer({ day: today - age })] }, { layers: { layer: facts } }));

  test('runners and seed heads are worth a word for a fortnight, a treated lawn for the season', () => {
    expect(on(13)).toContain('runners');
    expect(on(14)).not.toContain('runners');
    const seeded = layerFacts({ seedHeaded: true });
    expect(on(13, seeded)).toContain('seed heads');
    expect(on(14, seeded)).not.toContain('seed heads');
    const unknown = layerFacts(
      {},
      { treatment: { ...layerFacts().source.treatment, answer: 'unknown' } },
    );
    expect(on(100, unknown)).toContain('treated lawn');
  });

  test('a note on depth is for layers of the last fortnight; what is worse stays, marked as old', () => {
    const depth = (day: number, laidDepth: number) =>
      ofBed({ layers: [makeLayer({ day, laidDepth })] }).find(({ kind }) => kind === 'layer depth');
    expect(depth(today - 13, 11)).toMatchObject({ weight: 'note', detail: {} });
    expect(depth(today - 14, 11)).toBeUndefined();
    expect(depth(today - 13, 30)?.detail).not.toHaveProperty('isOld');
    expect(depth(today - 14, 30)).toMatchObject({ weight: 'stop', detail: { isOld: 1 } });
  });

  test('what is planned for tomorrow is not on the bed today, last season’s layers are past', () => {
    const deep = (day: number, bed: Case['bed'] = {}) =>
      kindsOf(ofBed({ layers: [makeLayer({ day, laidDepth: 30 })], bed }));
    expect(deep(today)).toContain('layer depth');
    expect(deep(today + 1)).not.toContain('layer depth');
    expect(deep(today - 20, { seasonStarts: [today - 20] })).toContain('layer depth');
    expect(deep(today - 20, { seasonStarts: [today - 19] })).not.toContain('layer depth');
  });

  test('the seed fly is asked about layers of the last 30 days', () => {
    const corn = (startDay: number) =>
      makePlanting({ sown: true, startDay }, { seedFlyRisk: true });
    const made = (age: number): Case => ({
      layers: [makeLayer({ day: today - age })],
      plantings: [corn(today - age + 21)],
      result: { soilTemperature: all(12) },
    });
    expect(kindsOf(ofBed(made(30)))).toContain('seed fly');
    expect(kindsOf(ofBed(made(31)))).not.toContain('seed fly');
  });

  test('layers laid before the seedlings came up lie beside them, later ones over them', () => {
    const seedlings = makePlanting({ sown: true, startDay: today - 6 });
    const tall = makePlanting({ id: 'tall', share: 0.5 });
    const at = (day: number) =>
      kindsOf(ofBed({ plantings: [tall, seedlings], layers: [makeLayer({ day })] }));
    expect(at(today - 6)).toContain('seedlings');
    expect(at(today - 7)).not.toContain('seedlings');
    // with none small there is nothing to smother, whatever lies there
    expect(kindsOf(ofBed({ plantings: [tall], layers: [makeLayer()] }))).not.toContain('seedlings');
  });

  test('no layer, no caution of layers', () => {
    expect(ofLayers([], {}, { result: { coverDepth: all(200) } })).toEqual([]);
  });
});

describe('tied up', () => {
  test('says how much, how long, and what it was', () => {
    const layers = [
      makeLayer({
        id: 'straw',
        day: today - 30,
        placement: 'dug',
        materialClass: 'mature',
        isGreens: false,
      }),
      makeLayer({
        id: 'leaves',
        day: today - 20,
        placement: 'hoed',
        materialClass: 'mature',
        isGreens: false,
      }),
      makeLayer({ id: 'grass', day: today - 10 }),
      makeLayer({ id: 'later', day: today + 10, placement: 'dug' }),
    ];
    const facts = {
      layers: Object.fromEntries(
        layers.map(({ id }) => [id, layerFacts({ materialName: `the ${id}` })]),
      ),
    };
    const made: Case = {
      layers,
      result: { flows: { [dugTakes]: between(0.1, today - 9, today) } },
    };
    const found = only(ofBed(made, facts), 'tied up');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'tied up',
      threshold: 0.5,
      unit: 'g/m2',
      date: null,
      detail: { what: 'the leaves' },
    });
    expect(found.number).toBeCloseTo(1, 9);
    expect(only(ofBed(made), 'tied up').detail).toEqual({ what: '' });
  });

  test('a crop dug in rots too; of two on one day the first by name is named', () => {
    const was = (id: string, changes: Partial<PlantingInput> = {}) =>
      makePlanting({
        id,
        startDay: today - 90,
        clearingDay: today - 10,
        topsFate: 'dug in',
        share: 0.1,
        ...changes,
      });
    const plantings = [
      makePlanting(),
      was('rye'),
      was('vetch'),
      was('left', { topsFate: 'left', clearingDay: today - 1 }),
      was('later', { clearingDay: today + 1 }),
    ];
    const facts = {
      plantings: Object.fromEntries(
        ['rye', 'vetch', 'left', 'later'].map((id, at) => [
          id,
          { cropName: ['Rye', 'Hairy vetch', 'Kale', 'Mustard'][at]!, weedkillerSensitive: false },
        ]),
      ),
    };
    const made: Case = {
      plantings,
      result: { flows: { [dugTakes]: between(0.1, today - 9, today) } },
    };
    expect(only(ofBed(made, facts), 'tied up').detail['what']).toBe('Hairy vetch');
  });

  test('a crop within four weeks minds, one after that does not', () => {
    const on = (start: number): readonly string[] =>
      kindsOf(
        ofBed({
          plantings: [makePlanting({ startDay: start, clearingDay: null })],
          result: { flows: { [dugTakes]: between(0.1, today - 9, today) } },
        }),
      );
    expect(on(today + 28)).toContain('tied up');
    expect(on(today + 29)).not.toContain('tied up');
  });

  test('of a layer: the more it holds than the bed without it, while a crop is there to mind', () => {
    const dug = makeLayer({ placement: 'hoed', materialClass: 'mature', isGreens: false });
    const takes = (grams: number, plantings?: readonly PlantingInput[]): Case => ({
      ...(plantings && { plantings }),
      result: { flows: { [dugTakes]: between(grams / 10, today, today + 9) } },
    });
    const found = only(ofLayers([dug], takes(1), takes(1.7)), 'tied up');
    expect(found).toMatchObject({
      weight: 'caution',
      threshold: 0.5,
      unit: 'g/m2',
      layerId: 'layer',
    });
    expect(found.number).toBeCloseTo(0.7, 9);
    expect(kindsOf(ofLayers([dug], takes(1.7), takes(1.7)))).not.toContain('tied up');

    const kinds = (planting: PlantingInput) =>
      kindsOf(ofLayers([dug], takes(0, [planting]), takes(2, [planting])));
    expect(kinds(makePlanting({ startDay: today + 28 }))).toContain('tied up');
    expect(kinds(makePlanting({ startDay: today + 29 }))).not.toContain('tied up');
    expect(kinds(makePlanting({ clearingDay: today }))).not.toContain('tied up');
    // it is gone before half a gram is taken: two days' worth is 0.4 g with the day of laying
    expect(kinds(makePlanting({ clearingDay: today + 1 }))).not.toContain('tied up');
    expect(kinds(makePlanting({ clearingDay: today + 2 }))).toContain('tied up');
    // overdue and not cleared: it still minds the day of laying, and that day takes 0.2 g only
    expect(kinds(makePlanting({ clearingDay: null, usualEndDay: today - 5 }))).not.toContain(
      'tied up',
    );
  });
});

test('greens past enough: the caution carries the ratio without and with the layer', () => {
  const found = only(ofLayers([makeLayer()], withRatio(1.2), withRatio(1.4)), 'enough');
  expect(found).toMatchObject({
    weight: 'stop',
    row: 'greens past enough',
    unit: 'ratio',
    layerId: 'layer',
  });
  expect(found.number).toBeCloseTo(1.4, 6);
  expect(found.threshold).toBeCloseTo(1.3, 9);
  expect(found.detail['ratioBefore']).toBeCloseTo(1.2, 6);
});
