import { describe, expect, test } from 'vitest';
import type { PlantingInput } from '../../../app/core/season/input';
import { gramsPerM2FromMgPerKg } from '../../../app/core/units';
import {
  between,
  days,
  firstDay,
  lastDay,
  legumeInput,
  makeLayer,
  makePlanting,
  soilRelease,
  stepping,
  today,
} from '../madeBed';
import { all, clearing, kindsOf, ofBed, ofLayers, only, withRatio, type Case } from './cautionRuns';

/*
 * What the cautions about room, plenty, shortage and washing out say. Lines are those of the
 * threshold table. The made planting wants 0.1 g/m2 a day for 101 days, 32 of them are over.
 */

const series = (of: (day: number) => number): Float64Array =>
  Float64Array.from({ length: days }, (_, index) => of(firstDay + index));

describe('room', () => {
  const earlier = makeLayer({ id: 'earlier', day: today - 30, nitrogen: 7, laidDepth: 4 });

  test('says the ratio after the layer, the line of its class, what was laid and what lies', () => {
    const after = withRatio(1.35, { layers: [earlier], result: { coverDepth: all(12) } });
    const found = only(ofLayers([makeLayer()], { layers: [earlier] }, after), 'room');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'room storage',
      unit: 'ratio',
      date: null,
      detail: { excessClass: 'storage', laid: 17, lyingMm: 12 },
      layerId: 'layer',
    });
    expect(found.number).toBeCloseTo(1.35, 9);
    expect(found.threshold).toBeCloseTo(1.3, 9);
  });

  test('the season’s total speaks for itself, over the line of a full bed and under the ratio’s', () => {
    const heap = makeLayer({ id: 'heap', day: today - 30, nitrogen: 75, laidDepth: 4 });
    const cautions = ofLayers([makeLayer()], { layers: [heap] });
    expect(kindsOf(cautions)).not.toContain('room');
    expect(only(cautions, 'season total')).toEqual({
      kind: 'season total',
      weight: 'stop',
      row: 'season total',
      number: 85,
      threshold: 80,
      unit: 'g/m2',
      date: null,
      detail: {},
      layerId: 'layer',
    });
    const both = ofLayers([makeLayer()], { layers: [heap] }, withRatio(1.4, { layers: [heap] }));
    expect(kindsOf(both)).toEqual(expect.arrayContaining(['room', 'season total']));
    // with nobody there to feed it is no stop
    const empty = ofLayers([makeLayer()], { layers: [heap], plantings: [] });
    expect(only(empty, 'season total')).toMatchObject({
      weight: 'caution',
      threshold: 76,
      number: 85,
    });
    const seventyFour = { ...heap, nitrogen: 64 };
    expect(
      only(ofLayers([makeLayer()], { layers: [seventyFour], plantings: [] }), 'season total'),
    ).toMatchObject({ weight: 'note', threshold: 72 });
    expect(only(ofBed({ layers: [heap], plantings: [] }), 'season total').layerId).toBeNull();
  });

  test('compost and manure feed too; straw and wood do not', () => {
    const kinds = (materialClass: 'slow' | 'mature' | 'inert') =>
      kindsOf(ofLayers([makeLayer({ materialClass, isGreens: false })], {}, withRatio(1.5)));
    expect(kinds('slow')).toContain('room');
    expect(kinds('mature')).not.toContain('room');
    expect(kinds('inert')).not.toContain('room');
    const after = withRatio(1.5);
    const two = [makeLayer({ id: 'straw', materialClass: 'mature', isGreens: false }), makeLayer()];
    expect(only(ofLayers(two, {}, after), 'room').layerId).toBe('layer');
  });

  test('a layer dated ahead is weighed on its own day', () => {
    // 10.435 g over 69 days make 1.35 today; ten days on 4.2 g are in the crop and 59 days to come
    const ahead = makeLayer({ day: today + 10 });
    const found = only(ofLayers([ahead], {}, withRatio(1.35)), 'room');
    expect(found.number).toBeCloseTo((4.2 + ((1.35 * 10.1 - 3.2) * 59) / 69) / 10.1, 9);
    expect(found.weight).toBe('note');
    // of several the last one's; what was laid before today is weighed today
    const three = [makeLayer({ id: 'a', day: today - 3 }), ahead, makeLayer({ id: 'b' })];
    expect(only(ofLayers(three, {}, withRatio(1.35)), 'room').number).toBeCloseTo(found.number!, 9);
    const past = makeLayer({ day: today - 3 });
    expect(only(ofLayers([past], {}, withRatio(1.35)), 'room').number).toBeCloseTo(1.35, 9);
  });

  test('on the bed of a fruit or flower it says what else keeps flowers from setting', () => {
    const hot = { airMaximum: all(33), airMinimum: all(25), dryness: all(1.2) };
    const detail = (excessClass: PlantingInput['crop']['excessClass']) =>
      only(
        ofBed(withRatio(1.2, { plantings: [makePlanting({}, { excessClass })], result: hot })),
        'room',
      ).detail;
    for (const excessClass of ['fruit', 'flower'] as const)
      expect(detail(excessClass)).toMatchObject({
        excessClass,
        hotDays: 14,
        hotAbove: 32,
        hotNights: 14,
        coldNights: 0,
        dryDays: 14,
      });
    expect(detail('storage')).not.toHaveProperty('hotDays');
  });

  test('a bed of legumes has no room to speak of', () => {
    const plantings = [makePlanting({}, { excessClass: 'legume', legume: legumeInput })];
    expect(kindsOf(ofBed(withRatio(3, { plantings })))).not.toContain('room');
    expect(
      kindsOf(ofLayers([makeLayer()], { plantings }, withRatio(3, { plantings }))),
    ).not.toContain('enough');
  });
});

describe('greens on an empty bed', () => {
  const empty = (mineralTop: Float64Array, changes: Case = {}): Case => ({
    plantings: [],
    ...changes,
    result: { pools: { mineralTop } },
  });
  const peak = (at: number, grams = 9): Float64Array =>
    series((day) => (day === at ? grams : day === at + 1 ? 5.5 : 1));
  const room = (made: Case, layer = makeLayer()) =>
    ofLayers([layer], empty(all(1)), made).filter(({ kind }) => kind === 'room');

  test('says the most that will be ready, and when', () => {
    expect(room(empty(peak(today + 33)))).toEqual([
      {
        kind: 'room',
        weight: 'caution',
        row: 'greens on an empty bed',
        number: 9,
        threshold: 5,
        unit: 'g/m2',
        date: today + 33,
        detail: {},
        layerId: 'layer',
      },
    ]);
    expect(room(empty(all(6)))[0]?.date).toBe(today);
    expect(room(empty(peak(lastDay)))).toHaveLength(1);
  });

  test('from the day of the layer on, to the end of its season or the next start', () => {
    const ahead = makeLayer({ day: today + 10 });
    expect(room(empty(peak(today + 8)), ahead)).toHaveLength(0);
    expect(room(empty(peak(today + 10)), ahead)).toHaveLength(1);
    const bed = { seasonStarts: [today + 41] };
    expect(room(empty(peak(today + 40), { bed }))).toHaveLength(1);
    expect(room(empty(peak(today + 41), { bed }))).toHaveLength(0);
    const later = [makePlanting({ startDay: today + 30, clearingDay: null })];
    expect(room(empty(peak(today + 30), { plantings: later }))).toHaveLength(1);
    expect(room(empty(peak(today + 31), { plantings: later }))).toHaveLength(0);
  });

  test('a crop within three weeks is weighed by the ratio of its first day', () => {
    const next = (start: number, crop: Parameters<typeof makePlanting>[1] = {}) => [
      makePlanting({ startDay: start, clearingDay: start + 100, usualEndDay: start + 100 }, crop),
    ];
    const on = (grams: number, plantings: readonly PlantingInput[]) =>
      room(empty(all(grams), { plantings }));
    // 0.1 g taken on the first day, of 101 days' 10.1
    expect(on(12, next(today + 21))[0]).toMatchObject({
      weight: 'note',
      row: 'room storage',
      unit: 'ratio',
      date: today + 21,
      detail: { excessClass: 'storage', laid: 10 },
      layerId: 'layer',
    });
    expect(on(12, next(today + 21))[0]?.number).toBeCloseTo(12.1 / 10.1, 9);
    expect(on(12, next(today + 21))[0]?.threshold).toBeCloseTo(1.1, 9);
    expect(on(40, next(today + 21))[0]).toMatchObject({ weight: 'caution', threshold: 1.3 });
    expect(on(10.9, next(today + 21))).toEqual([]);
    // a day later the ground lies open for too long
    expect(on(12, next(today + 22))[0]?.row).toBe('greens on an empty bed');
    // the nearest of two
    const two = [...next(today + 90), { ...next(today + 5)[0]!, id: 'near' }];
    expect(on(12, two)[0]?.date).toBe(today + 5);
    // legumes and cover crops have rules of their own
    expect(on(40, next(today + 21, { excessClass: 'legume', legume: legumeInput }))).toEqual([]);
    expect(on(40, next(today + 21, { excessClass: 'cover' }))).toEqual([]);
  });
});

describe('greens on a bed with enough', () => {
  /** ratio on hand with an uptake that meets only a share of the need */
  const fed = (ratio: number, uptake: number, now = today): Case => {
    const inCrop = uptake * (now - makePlanting().startDay + 1);
    return {
      uptake,
      bed: { today: now },
      result: {
        flows: {
          [soilRelease]: between((ratio * 10.1 - inCrop) / (clearing - now), now + 1, clearing),
        },
      },
    };
  };
  const weight = (before: Case, after: Case, now = today): string =>
    only(ofLayers([makeLayer({ day: now })], before, after), 'enough').weight;

  test('the stop waits until the bed is two hundredths past its line of ratio', () => {
    // 1.1 x 1.02 = 1.122
    expect(weight(withRatio(1.121), withRatio(1.4))).toBe('caution');
    expect(weight(withRatio(1.123), withRatio(1.4))).toBe('stop');
  });

  test('or past its line of what the forecast meets', () => {
    // 0.85 x 1.02 = 0.867
    expect(weight(fed(1.25, 0.0866), fed(1.4, 0.0866))).toBe('caution');
    expect(weight(fed(1.25, 0.0868), fed(1.4, 0.0868))).toBe('stop');
  });

  test('or, with little of the need open, past that', () => {
    // 10 of 101 days open: 0.0990, one hundredth under a tenth; 9 of 101: 0.0891
    const ten = clearing - 10;
    const nine = clearing - 9;
    expect(weight(fed(1.25, 0.07, ten), fed(1.4, 0.07, ten), ten)).toBe('caution');
    expect(weight(fed(1.25, 0.07, nine), fed(1.4, 0.07, nine), nine)).toBe('stop');
  });

  test('says the ratio it leads to, the line, and the ratio there was', () => {
    const found = only(ofLayers([makeLayer()], withRatio(1.2), withRatio(1.25)), 'enough');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'greens on enough to the end',
      unit: 'ratio',
      layerId: 'layer',
    });
    expect(found.number).toBeCloseTo(1.25, 9);
    expect(found.threshold).toBeCloseTo(1.3, 9);
    expect(found.detail['ratioBefore']).toBeCloseTo(1.2, 9);
  });

  test('a cover crop is never over-fed: its line is that of enough', () => {
    const plantings = [makePlanting({}, { excessClass: 'cover' })];
    const found = only(
      ofLayers([makeLayer()], withRatio(1.5, { plantings }), withRatio(3, { plantings })),
      'enough',
    );
    expect(found).toMatchObject({ weight: 'caution', threshold: 1.1 });
  });

  test('enough for now: nitrate, its line, and the day it falls below', () => {
    const ready = gramsPerM2FromMgPerKg(24, 1.3, 30);
    const made: Case = {
      need: 0.2,
      uptake: 0.2,
      result: { pools: { mineralTop: stepping(ready, today + 9, 1) } },
    };
    const found = only(ofLayers([makeLayer()], made), 'enough');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'greens on enough for now',
      threshold: 20,
      unit: 'mg/kg',
      date: today + 10,
      layerId: 'layer',
    });
    expect(found.number).toBeCloseTo(24, 9);
  });
});
