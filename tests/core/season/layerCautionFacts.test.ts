import { describe, expect, test } from 'vitest';
import type { PlantingInput } from '../../../app/core/season/input';
import {
  legumeInput,
  makeLayer,
  makePlanting,
  makePlantingResult,
  stepping,
  today,
} from '../madeBed';
import { all, clearing, kindsOf, ofBed, ofLayers, only, type Case } from './cautionRuns';

/*
 * What a caution carries is what its sentence says: number, line, unit, day, and what it is about.
 * Lines are those of the threshold table; the beds are made by hand, so every number can be reckoned
 * beside the test.
 */

describe('a layer’s depth', () => {
  test('halves of one day under one line are one caution, of both depths', () => {
    const halves = [
      makeLayer({ id: 'a', laidDepth: 9 }),
      makeLayer({ id: 'b', laidDepth: 5 }),
      // not the same layer: another day, another wetness, browns, dug in
      makeLayer({ id: 'c', laidDepth: 9, day: today - 1 }),
      makeLayer({ id: 'd', laidDepth: 21, condition: 'limp' }),
      makeLayer({ id: 'e', laidDepth: 41, materialClass: 'mature', isGreens: false }),
      makeLayer({ id: 'f', laidDepth: 50, placement: 'dug' }),
      makeLayer({ id: 'g', laidDepth: 42, condition: 'crisp' }),
    ];
    const found = ofBed({ layers: halves }).filter(({ kind }) => kind === 'layer depth');
    expect(found).toEqual([
      {
        kind: 'layer depth',
        weight: 'caution',
        row: 'layer just cut',
        number: 14,
        threshold: 13,
        unit: 'mm',
        date: today,
        detail: { condition: 'just cut', others: 1 },
        layerId: 'a',
      },
      expect.objectContaining({
        weight: 'note',
        number: 9,
        threshold: 8,
        date: today - 1,
        layerId: 'c',
      }),
      expect.objectContaining({
        row: 'layer limp',
        number: 21,
        threshold: 20,
        detail: { condition: 'limp' },
        layerId: 'd',
      }),
      expect.objectContaining({
        row: 'layer crisp',
        number: 41,
        threshold: 40,
        detail: { condition: 'browns' },
        layerId: 'e',
      }),
      expect.objectContaining({
        row: 'layer crisp',
        number: 42,
        detail: { condition: 'crisp' },
        layerId: 'g',
      }),
    ]);
  });

  test('compost has no depth rule of its own, nor has wood', () => {
    for (const materialClass of ['slow', 'inert'] as const) {
      const layer = makeLayer({ materialClass, isGreens: false, laidDepth: 60 });
      expect(kindsOf(ofLayers([layer]))).not.toContain('layer depth');
    }
  });

  test('all cover is that of the day of laying; a layer that is dug in adds none', () => {
    const deep: Case = { result: { coverDepth: stepping(90, today - 1, 120) } };
    expect(only(ofLayers([makeLayer()], deep), 'all cover')).toEqual({
      kind: 'all cover',
      weight: 'caution',
      row: 'all cover',
      number: 120,
      threshold: 100,
      unit: 'mm',
      date: today,
      detail: {},
      layerId: null,
    });
    expect(kindsOf(ofLayers([makeLayer({ day: today - 1 })], deep))).not.toContain('all cover');
    expect(kindsOf(ofLayers([makeLayer({ placement: 'dug' })], deep))).not.toContain('all cover');
  });
});

describe('too soon', () => {
  const older = makeLayer({ id: 'older', day: today - 12 });
  const newer = makeLayer({ id: 'newer', day: today - 5 });
  const straw = makeLayer({
    id: 'straw',
    day: today - 2,
    materialClass: 'mature',
    isGreens: false,
  });
  const dug = makeLayer({ id: 'dug', day: today - 1, placement: 'dug' });
  const wet = (changes: Case['result'] = {}): Case => ({
    layers: [older, newer, straw, dug],
    result: {
      coverFill: stepping(0.7, today + 3, 0.1),
      layers: ['older', 'newer', 'straw', 'dug'].map((id, at) => ({
        id,
        left: all([0.2, 0.6, 0.9, 0.9][at]!),
        depth: all(3),
      })),
      ...changes,
    },
  });

  test('asks the last greens that lie there, and says how much is left, how wet, and until when', () => {
    expect(only(ofLayers([makeLayer()], wet()), 'too soon')).toEqual({
      kind: 'too soon',
      weight: 'caution',
      row: 'greens too soon',
      number: 0.6,
      threshold: 0.5,
      unit: 'share',
      date: today + 4,
      detail: { laidOn: today - 5, wetness: 0.7 },
      layerId: 'layer',
    });
  });

  test('never dry to the end of the run: no day is named', () => {
    const found = only(ofLayers([makeLayer()], wet({ coverFill: all(0.7) })), 'too soon');
    expect(found.date).toBeNull();
  });

  test('not for browns, not for what is dug in, not without greens before', () => {
    const brown = makeLayer({ materialClass: 'mature', isGreens: false });
    expect(kindsOf(ofLayers([brown], wet()))).not.toContain('too soon');
    expect(kindsOf(ofLayers([makeLayer({ placement: 'dug' })], wet()))).not.toContain('too soon');
    const strawOnly: Case = { ...wet(), layers: [straw, dug] };
    expect(kindsOf(ofLayers([makeLayer()], strawOnly))).not.toContain('too soon');
    // greens of the same day are one layer with it
    const sameDay: Case = { ...wet(), layers: [{ ...newer, day: today }] };
    expect(kindsOf(ofLayers([makeLayer()], sameDay))).not.toContain('too soon');
    // browns may come first in what is carried: the greens among them count
    expect(
      only(ofLayers([{ ...brown, id: 'brown' }, makeLayer()], wet()), 'too soon').layerId,
    ).toBe('layer');
  });
});

describe('outside what was tested', () => {
  test('says the C:N, the line it is past, and which layer', () => {
    const of = (ratio: number, materialClass: 'green' | 'mature') =>
      only(
        ofLayers([makeLayer({ nitrogen: 2, carbon: 2 * ratio, materialClass })]),
        'outside validity',
      );
    expect(of(7, 'green')).toEqual({
      kind: 'outside validity',
      weight: 'note',
      row: 'outside what was tested',
      number: 7,
      threshold: 8,
      unit: 'C:N',
      date: null,
      detail: {},
      layerId: 'layer',
    });
    expect(of(50, 'green')).toMatchObject({ number: 50, threshold: 40 });
    expect(of(9, 'mature')).toMatchObject({ number: 9, threshold: 10 });
    expect(of(200, 'mature')).toMatchObject({ number: 200, threshold: 150 });
  });

  // Nicolardot, Recous & Mary 2001 fitted residues of crops and no wood (row "outside what was tested")
  test('wood worked into the soil, whatever its C:N', () => {
    const wood = (carbonToNitrogen: number, placement: 'laid' | 'hoed' | 'dug') =>
      ofLayers([
        makeLayer({
          nitrogen: 2,
          carbon: 2 * carbonToNitrogen,
          materialClass: 'inert',
          isGreens: false,
          placement,
        }),
      ]);
    for (const placement of ['hoed', 'dug'] as const) {
      expect(only(wood(120, placement), 'outside validity')).toMatchObject({
        weight: 'note',
        number: 120,
        threshold: 150,
        detail: { what: 'wood' },
      });
      expect(only(wood(560, placement), 'outside validity').number).toBe(560);
    }
    expect(kindsOf(wood(560, 'laid'))).not.toContain('outside validity');
  });

  test('not of compost and of wood on top, and not of what has no nitrogen', () => {
    for (const materialClass of ['slow', 'inert'] as const)
      expect(kindsOf(ofLayers([makeLayer({ materialClass, carbon: 10_000 })]))).not.toContain(
        'outside validity',
      );
    expect(kindsOf(ofLayers([makeLayer({ nitrogen: 0 })]))).not.toContain('outside validity');
  });
});

describe('legumes', () => {
  const beans = makePlanting({ sown: true }, { excessClass: 'legume', legume: legumeInput });
  const made = (daily: number, more: Case = {}): Case => ({
    plantings: [beans],
    uptake: 0.04,
    fixed: daily,
    ...more,
  });
  const earlier = makeLayer({ id: 'earlier', day: today - 20 });
  const days = clearing - beans.startDay + 1;

  test('says what is fixed without and with it, and what share is lost', () => {
    const found = only(
      ofLayers([makeLayer()], made(0.06, { layers: [earlier] }), made(0.042)),
      'legume',
    );
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'legume loss',
      threshold: 0.25,
      unit: 'share',
      layerId: 'layer',
      detail: { welcome: 0, cropId: 'made-crop', plantingId: 'planting' },
    });
    expect(found.number).toBeCloseTo(0.3, 9);
    expect(found.detail['fixedBefore']).toBeCloseTo(0.06 * days, 9);
    expect(found.detail['fixedAfter']).toBeCloseTo(0.042 * days, 9);
  });

  test('a welcome first layer: a note from two hundredths on', () => {
    expect(only(ofLayers([makeLayer()], made(0.06), made(0.03)), 'legume')).toMatchObject({
      weight: 'note',
      threshold: 0.02,
      detail: { welcome: 1 },
    });
  });

  test('no longer the first: greens of this season lie there already, browns and last season’s do not count', () => {
    const loss = (layers: Case['layers'], bed: Case['bed'] = {}) =>
      only(
        ofLayers(
          [makeLayer()],
          made(0.06, { layers: layers ?? [], bed }),
          made(0.03, { layers: layers ?? [], bed }),
        ),
        'legume',
      ).weight;
    expect(loss([earlier])).toBe('caution');
    expect(loss([{ ...earlier, day: today }])).toBe('caution');
    expect(loss([{ ...earlier, day: today + 1 }])).toBe('note');
    expect(loss([{ ...earlier, materialClass: 'mature', isGreens: false }])).toBe('note');
    expect(loss([earlier], { seasonStarts: [today - 20] })).toBe('caution');
    expect(loss([earlier], { seasonStarts: [today - 19] })).toBe('note');
  });

  test('two thin layers at once are as deep as both', () => {
    const two = [makeLayer({ id: 'a', laidDepth: 5 }), makeLayer({ id: 'b', laidDepth: 4 })];
    expect(only(ofLayers(two, made(0.06), made(0.03)), 'legume').weight).toBe('caution');
    const straw = makeLayer({ id: 's', materialClass: 'mature', isGreens: false, laidDepth: 30 });
    expect(only(ofLayers([straw, two[0]!], made(0.06), made(0.03)), 'legume')).toMatchObject({
      weight: 'note',
      layerId: 'a',
    });
  });

  test('not welcome while they are under a hand high', () => {
    const small = (progress: number): string => {
      const own = makePlantingResult(beans, { need: 0.1, uptake: 0.04, fixed: 0.06 });
      const less = makePlantingResult(beans, { need: 0.1, uptake: 0.04, fixed: 0.03 });
      const of = (one: typeof own): Case => ({
        plantings: [beans],
        result: { plantings: [{ ...one, progress: all(progress) }] },
      });
      return only(ofLayers([makeLayer()], of(own), of(less)), 'legume').weight;
    };
    // sown, not slow to show: a hand at 0.12 of its clock
    expect(small(0.119)).toBe('caution');
    expect(small(0.121)).toBe('note');
  });

  test('not planted yet, so not a hand high; gone before the layer comes, so nothing to lose', () => {
    const of = (planting: PlantingInput, daily: number): Case => ({
      plantings: [planting],
      fixed: daily,
    });
    const later = { ...beans, startDay: today + 5 };
    expect(only(ofLayers([makeLayer()], of(later, 0.06), of(later, 0.03)), 'legume').weight).toBe(
      'caution',
    );
    const gone = (clearingDay: number) => ({ ...beans, clearingDay, usualEndDay: clearingDay });
    const kinds = (planting: PlantingInput) =>
      kindsOf(ofLayers([makeLayer()], of(planting, 0.06), of(planting, 0.01)));
    expect(kinds(gone(today))).not.toContain('legume');
    expect(kinds(gone(today + 1))).toContain('legume');
    expect(kinds({ ...beans, clearingDay: null })).toContain('legume');
  });

  test('what fixes next to nothing cannot lose much: the loss is set against half a gram', () => {
    const few = (daily: number): Case => made(daily);
    // 0.101 g in all without the layer, nothing with it
    const found = only(ofLayers([makeLayer()], few(0.001), few(0)), 'legume');
    expect(found.number).toBeCloseTo((0.001 * days) / 0.5, 9);
  });

  test('browns cost them nothing to speak of: no rule', () => {
    const straw = makeLayer({ materialClass: 'mature', isGreens: false });
    expect(kindsOf(ofLayers([straw], made(0.06), made(0.01)))).not.toContain('legume');
    const compost = makeLayer({ materialClass: 'slow', isGreens: false });
    expect(kindsOf(ofLayers([compost], made(0.06), made(0.01)))).toContain('legume');
  });

  test('a legume that fixes beside one that does not', () => {
    const corn = makePlanting({ id: 'corn', share: 0.5 }, { id: 'corn' });
    const both = (daily: number): Case => ({ plantings: [corn, beans], fixed: daily });
    expect(only(ofLayers([makeLayer()], both(0.06), both(0.03)), 'legume').detail).toMatchObject({
      plantingId: 'planting',
      welcome: 1,
    });
  });
});
