import { describe, expect, test } from 'vitest';
import { monthOf } from '../../../app/core/days';
import type { PlantingInput } from '../../../app/core/season/input';
import {
  between,
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  stepping,
  today,
} from '../madeBed';
import { all, kindsOf, layerFacts, ofBed, ofLayers, only, type Case } from './cautionRuns';

/* What the cautions of weather and of sources say; lines of the threshold table. */

const at = (planting: PlantingInput, progress: number) =>
  makePlantingResult(planting, { need: 0.1, uptake: 0.1 }, { progress: all(progress) });

describe('slugs', () => {
  const lettuce = makePlanting({}, { excessClass: 'leaf' });
  const wet = (
    changes: Case['result'] = {},
    plantings: readonly PlantingInput[] = [lettuce],
  ): Case => ({
    plantings,
    result: {
      rain: between(6, today - 4, today),
      airMinimum: all(9),
      coverFraction: all(0.5),
      ...changes,
    },
  });

  test('says the week’s rain, its wet days and its nights', () => {
    expect(only(ofLayers([makeLayer()], wet()), 'slugs')).toEqual({
      kind: 'slugs',
      weight: 'note',
      row: 'slug weather',
      number: 30,
      threshold: 25,
      unit: 'mm',
      date: null,
      detail: { wetDays: 5, nightCelsius: 9, plantingId: 'planting' },
      layerId: 'layer',
    });
    expect(only(ofBed(wet()), 'slugs').layerId).toBeNull();
  });

  test('a day is wet from 1 mm on; nights are the mean of the seven', () => {
    const drizzle = (mm: number) => kindsOf(ofBed(wet({ rain: between(mm, today - 4, today) })));
    expect(drizzle(1)).toContain('slugs');
    expect(drizzle(0.99)).not.toContain('slugs');
    const nights = (airMinimum: Float64Array) => kindsOf(ofBed(wet({ airMinimum })));
    // six nights at 9 and the first at 2.1: 8.014; at 1.9: 7.986
    expect(nights(stepping(2.1, today - 6, 9))).toContain('slugs');
    expect(nights(stepping(1.9, today - 6, 9))).not.toContain('slugs');
    expect(nights(stepping(-30, today - 7, 9))).toContain('slugs');
  });

  test('from three tenths of the ground covered', () => {
    expect(kindsOf(ofLayers([makeLayer()], wet({ coverFraction: all(0.3) })))).toContain('slugs');
    expect(kindsOf(ofLayers([makeLayer()], wet({ coverFraction: all(0.29) })))).not.toContain(
      'slugs',
    );
  });

  test('leaves from a week before they come to the day they go; other crops while young', () => {
    const kinds = (planting: PlantingInput, progress = 0.5) =>
      kindsOf(ofBed(wet({ plantings: [at(planting, progress)] }, [planting])));
    expect(kinds({ ...lettuce, startDay: today + 7 })).toContain('slugs');
    expect(kinds({ ...lettuce, startDay: today + 8 })).not.toContain('slugs');
    expect(kinds({ ...lettuce, clearingDay: today })).toContain('slugs');
    expect(kinds({ ...lettuce, clearingDay: today - 1 })).not.toContain('slugs');
    expect(kinds({ ...lettuce, clearingDay: null })).toContain('slugs');
    // 2.6 hands: 0.312 of the clock of a sown fruit crop, 0.078 of cabbages that were set out
    const squash = makePlanting({ sown: true }, { excessClass: 'fruit' });
    expect(kinds(squash, 0.31)).toContain('slugs');
    expect(kinds(squash, 0.315)).not.toContain('slugs');
    const cabbage = makePlanting({}, { excessClass: 'head' });
    expect(kinds(cabbage, 0.077)).toContain('slugs');
    expect(kinds(cabbage, 0.079)).not.toContain('slugs');
    // other crops that were set out are past it
    expect(kinds(makePlanting({}, { excessClass: 'fruit' }), 0.01)).not.toContain('slugs');
  });

  test('the run has just begun: the days there are count', () => {
    const first = makeResult().firstDay;
    const made = wet({ rain: between(30, first, first) });
    const early = { ...made, plantings: [{ ...lettuce, startDay: first - 9 }] };
    const layer = makeLayer({ day: first + 1 });
    expect(only(ofLayers([layer], early), 'slugs').detail['wetDays']).toBe(1);
  });
});

describe('dry soil, glass, frost', () => {
  test('dry soil: what is left of its water on the day of the layer', () => {
    const dry: Case = { result: { availableWaterTop: stepping(0.8, today - 1, 0.2) } };
    expect(only(ofLayers([makeLayer()], dry), 'dry soil')).toMatchObject({
      weight: 'note',
      row: 'dry soil first',
      number: 0.2,
      threshold: 0.3,
      unit: 'share',
      date: today,
      layerId: 'layer',
    });
    expect(kindsOf(ofLayers([makeLayer({ day: today - 1 })], dry))).not.toContain('dry soil');
    expect(kindsOf(ofLayers([makeLayer({ placement: 'dug' })], dry))).not.toContain('dry soil');
    const line: Case = { result: { availableWaterTop: all(0.3) } };
    expect(kindsOf(ofLayers([makeLayer()], line))).not.toContain('dry soil');
  });

  test('glass: airing for 30 days from the day of the layer', () => {
    const under = { roof: 'glass or film' } as const;
    const layers = [
      makeLayer({ id: 'dug', placement: 'dug' }),
      makeLayer({ id: 'straw', isGreens: false, materialClass: 'mature' }),
      makeLayer({ id: 'hay', condition: 'crisp' }),
      makeLayer({ id: 'fresh', condition: 'limp', day: today - 3 }),
    ];
    expect(only(ofLayers(layers, {}, undefined, under), 'ammonia under glass')).toMatchObject({
      weight: 'caution',
      row: 'fresh greens under glass',
      number: 30,
      threshold: 30,
      unit: 'days',
      date: today + 27,
      layerId: 'fresh',
    });
    expect(kindsOf(ofLayers(layers.slice(0, 3), {}, undefined, under))).not.toContain(
      'ammonia under glass',
    );
  });

  test('frost: until the last frost, for tender plants that are there by then', () => {
    const tender = (changes: Partial<PlantingInput> = {}) =>
      makePlanting(changes, { frostTender: true });
    const on = (lastSpringFrost: number | null, planting = tender()) =>
      ofLayers([makeLayer()], { plantings: [planting] }, undefined, { lastSpringFrost });
    expect(only(on(today + 9), 'frost')).toMatchObject({
      weight: 'note',
      row: 'frost over cover',
      number: null,
      threshold: null,
      unit: '',
      date: today + 9,
      detail: { plantingId: 'planting' },
      layerId: 'layer',
    });
    expect(kindsOf(on(null))).not.toContain('frost');
    expect(kindsOf(on(today + 9, tender({ startDay: today + 9 })))).toContain('frost');
    expect(kindsOf(on(today + 9, tender({ startDay: today + 10 })))).not.toContain('frost');
    expect(kindsOf(on(today + 9, tender({ clearingDay: today })))).not.toContain('frost');
    expect(kindsOf(on(today + 9, tender({ clearingDay: today + 1 })))).toContain('frost');
    expect(kindsOf(on(today + 9, tender({ clearingDay: null })))).toContain('frost');
    const bed = (fraction: number) =>
      kindsOf(
        ofBed(
          { plantings: [tender()], result: { coverFraction: all(fraction) } },
          { lastSpringFrost: today + 9 },
        ),
      );
    expect(bed(0.3)).toContain('frost');
    expect(bed(0.29)).not.toContain('frost');
  });
});

describe('where it came from', () => {
  const treated = {
    answer: 'treated',
    product: 'Feed and weed',
    date: today - 20,
    label: 'interval',
    intervalDays: 60,
    beanTestPassed: null,
  } as const;
  const lay = (of: ReturnType<typeof layerFacts>, made: Case = {}, layer = makeLayer()) =>
    ofLayers([layer], made, undefined, { layers: { [layer.id]: of } });

  test('a treated lawn: days so far, days there should be, the day it is in order, its name', () => {
    expect(only(lay(layerFacts({}, { treatment: treated })), 'treated lawn')).toEqual({
      kind: 'treated lawn',
      weight: 'stop',
      row: 'label interval',
      number: 20,
      threshold: 60,
      unit: 'days',
      date: today + 40,
      detail: { source: 'Back', product: 'Feed and weed' },
      layerId: 'layer',
    });
  });

  test('what was bought is a source of its own kind', () => {
    const hay = layerFacts(
      {},
      { kind: 'store', name: 'hay', treatment: { ...treated, label: null } },
    );
    expect(only(lay(hay), 'treated source')).toMatchObject({
      row: 'treated source',
      detail: { source: 'hay' },
    });
  });

  test('a silent label is held against sensitive crops of the same season alone', () => {
    const treatedOn = today - 60;
    const silent = layerFacts(
      { cutOn: today },
      {
        treatment: { ...treated, label: 'silent', intervalDays: null, date: treatedOn },
        mowingDays: [-50, -40, -30, -20].map((days) => today + days),
      },
    );
    const of = (weedkillerSensitive: boolean, seasonStartMonth = 1) =>
      kindsOf(
        ofLayers([makeLayer()], {}, undefined, {
          seasonStartMonth,
          layers: { layer: silent },
          plantings: { planting: { cropName: 'Beans', weedkillerSensitive } },
        }),
      );
    expect(of(true)).toContain('treated lawn');
    expect(of(false)).not.toContain('treated lawn');
    // the season that begins with the month of the treatment, and the one after
    expect(of(true, monthOf(treatedOn))).toContain('treated lawn');
    expect(of(true, monthOf(treatedOn) + 1)).not.toContain('treated lawn');
  });

  test('a bed of flowers or cover crops is no food bed; an empty one may be', () => {
    const unknown = layerFacts({}, { treatment: { ...treated, answer: 'unknown' } });
    const row = (plantings: readonly PlantingInput[], bed: Case['bed'] = {}) =>
      only(lay(unknown, { plantings, bed }), 'treated lawn').row;
    const flowers = makePlanting({}, { excessClass: 'flower' });
    expect(row([])).toBe('unknown lawn');
    expect(row([flowers])).toBe('unknown lawn flowers');
    expect(row([makePlanting({}, { excessClass: 'cover' })])).toBe('unknown lawn flowers');
    expect(row([flowers, makePlanting({ id: 'food', share: 0.1 })])).toBe('unknown lawn');
    // food that went before the layer came, or that comes next season, does not count
    const gone = makePlanting({ id: 'food', clearingDay: today });
    const still = makePlanting({ id: 'food', clearingDay: today + 1 });
    expect(row([flowers, gone])).toBe('unknown lawn flowers');
    expect(row([flowers, still])).toBe('unknown lawn');
    expect(row([flowers, makePlanting({ id: 'food', clearingDay: null })])).toBe('unknown lawn');
    const autumn = makePlanting({ id: 'food', startDay: today + 100, clearingDay: null });
    expect(row([flowers, autumn])).toBe('unknown lawn');
    expect(row([flowers, autumn], { seasonStarts: [today + 100] })).toBe('unknown lawn flowers');
    expect(row([flowers, autumn], { seasonStarts: [today + 101] })).toBe('unknown lawn');
  });

  test('runners and seed heads say where from, and how long ago heads were seen', () => {
    const found = lay(layerFacts({}, { creepingGrass: true, seedHeadsSeen: today - 4 }));
    expect(only(found, 'runners')).toMatchObject({ detail: { source: 'Back' }, layerId: 'layer' });
    expect(only(found, 'seed heads')).toEqual({
      kind: 'seed heads',
      weight: 'caution',
      row: 'seed heads',
      number: 4,
      threshold: 14,
      unit: 'days',
      date: today - 4,
      detail: { source: 'Back' },
      layerId: 'layer',
    });
    expect(only(lay(layerFacts({ seedHeaded: true })), 'seed heads')).toMatchObject({
      number: null,
      date: null,
    });
    expect(kindsOf(lay(layerFacts({}, { seedHeadsSeen: today })))).toContain('seed heads');
    expect(kindsOf(lay(layerFacts()))).not.toContain('seed heads');
  });

  test('hazards name material and source; fouled grass also where nothing is planted yet', () => {
    const fouled = layerFacts({ hazards: ['fouled grass'] });
    expect(only(lay(fouled, { plantings: [] }), 'fouled')).toMatchObject({
      weight: 'stop',
      detail: { source: 'Back', material: 'Grass clippings' },
      layerId: 'layer',
    });
    const raw = (excessClass: 'flower' | 'storage', eatenFromSoil: boolean) =>
      kindsOf(lay(fouled, { plantings: [makePlanting({}, { excessClass, eatenFromSoil })] }));
    expect(raw('storage', true)).toContain('fouled');
    expect(raw('storage', false)).not.toContain('fouled');
    expect(raw('flower', true)).not.toContain('fouled');
    const mixed = [
      makePlanting({ id: 'a', share: 0.5 }),
      makePlanting({ id: 'b', share: 0.5 }, { excessClass: 'leaf' }),
    ];
    expect(kindsOf(lay(fouled, { plantings: mixed }))).toContain('fouled');
    expect(only(lay(layerFacts({ hazards: ['walnut'] })), 'safety')).toMatchObject({
      row: 'walnut',
      detail: { source: 'Back', material: 'Grass clippings' },
    });
    // dogs matter for what poisons dogs, and for nothing else
    const walnut = { layers: { layer: layerFacts({ hazards: ['walnut'] }) }, dogs: false };
    expect(kindsOf(ofLayers([makeLayer()], {}, undefined, walnut))).toContain('safety');
  });

  test('a layer without facts is taken as the gardener’s own clean material', () => {
    expect(ofLayers([makeLayer({ laidDepth: 5 })], {}, undefined, { layers: {} })).toEqual([]);
  });
});
