import { describe, expect, test } from 'vitest';
import type { OnHand } from '../../../app/core/season/cautions/facts';
import type { PlantingInput } from '../../../app/core/season/input';
import { gramsPerM2FromMgPerKg } from '../../../app/core/units';
import {
  between,
  days,
  firstDay,
  lastDay,
  makeLayer,
  makePlanting,
  stepping,
  today,
} from '../madeBed';
import { all, clearing, kindsOf, ofBed, ofLayers, only, type Case } from './cautionRuns';

/*
 * What the cautions about room, plenty, shortage and washing out say. Lines are those of the
 * threshold table. The made planting wants 0.1 g/m2 a day for 101 days, 32 of them are over.
 */

const series = (of: (day: number) => number): Float64Array =>
  Float64Array.from({ length: days }, (_, index) => of(firstDay + index));

describe('short', () => {
  const hungry = (changes: Case = {}): Case => ({
    uptake: 0.03,
    ...changes,
    result: { pools: { mineralTop: all(1) }, ...changes.result },
  });
  const bag = { one: 'bag', many: 'bags', litres: 45 };
  const detail = (onHand: readonly OnHand[] | undefined, made = hungry()) =>
    only(ofBed(made, onHand ? { onHand } : {}), 'short').detail;
  const greens = (
    litres: number,
    nitrogenGrams = litres * 1.7,
    container: OnHand['container'] = bag,
  ) => ({
    name: 'clippings',
    litres,
    nitrogenGrams,
    container,
  });

  test('says what is missing to the end, the day, the room, and whether to water first', () => {
    const found = only(ofBed(hungry()), 'short');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'short of nitrogen',
      threshold: null,
      unit: 'g/m2',
      date: today + 7,
      layerId: null,
    });
    // 0.07 g a day for the 69 days left; 1.1 x 10.1 less 0.96 in the crop and 1 in reach, over 0.33
    expect(found.number).toBeCloseTo(0.07 * 69, 9);
    expect(found.detail['forecastMet']).toBeCloseTo(0.3, 9);
    expect(found.detail['room']).toBeCloseTo((1.1 * 10.1 - 0.96 - 1) / 0.33, 6);
    expect(found.detail['dryFirst']).toBe(0);
    expect(detail(undefined, hungry({ result: { dryness: all(1.1) } }))['dryFirst']).toBe(1);
  });

  test('on a bed of half the size a thin layer is half as much', () => {
    expect(detail([greens(500)])['mendLitres']).toBeCloseTo(8 * 6, 9);
    expect(detail([greens(500)], hungry({ bed: { areaM2: 3 } }))['mendLitres']).toBeCloseTo(24, 9);
  });

  test('counts in halves of the gardener’s own container, one half at least', () => {
    const count = (litres: number) => detail([greens(litres)])['mendCount'];
    expect(count(500)).toBe(1);
    expect(count(40)).toBe(1);
    expect(count(33)).toBe(0.5);
    expect(count(5)).toBe(0.5);
    expect(detail([greens(40)])).toMatchObject({
      mendWith: 'clippings',
      mendLitres: 40,
      mendOne: 'bag',
      mendMany: 'bags',
    });
    const bucket = { one: 'bucket', many: 'buckets', litres: 10 };
    expect(detail([greens(37, 60, bucket)])['mendCount']).toBe(3.5);
  });

  test('without a container only litres; from half a millimetre on the bed, 3 L, on', () => {
    const loose = detail([greens(30, 50, null)]);
    expect(loose).toMatchObject({ mendWith: 'clippings', mendLitres: 30 });
    expect(loose).not.toHaveProperty('mendCount');
    expect(detail([greens(3)])['mendLitres']).toBe(3);
    expect(detail([greens(2.99)])).not.toHaveProperty('mendLitres');
  });

  test('nothing on hand, nothing named; the first on the list is the best', () => {
    for (const onHand of [undefined, [], [greens(0, 10)], [greens(20, 0)]])
      expect(detail(onHand)).not.toHaveProperty('mendWith');
    expect(detail([greens(10), { ...greens(90), name: 'weeds' }])['mendWith']).toBe('clippings');
  });
});

describe('washing out', () => {
  const left = (grams: number, changes: Case = {}): Case => ({
    ...changes,
    result: { pools: { mineralTop: series((day) => (day === clearing - 1 ? grams : 1)) } },
  });

  test('at clearing: what is left the evening before', () => {
    expect(only(ofBed(left(7)), 'washing out')).toEqual({
      kind: 'washing out',
      weight: 'caution',
      row: 'washing out at clearing',
      number: 7,
      threshold: 5,
      unit: 'g/m2',
      date: clearing,
      detail: {},
      layerId: null,
    });
  });

  test('of several plantings the last to go; none that stands without a day', () => {
    const early = makePlanting({ id: 'early', share: 0.3, clearingDay: clearing - 20 });
    expect(
      only(ofBed(left(7, { plantings: [makePlanting({ share: 0.5 }), early] })), 'washing out')
        .date,
    ).toBe(clearing);
    const open = makePlanting({ id: 'open', share: 0.3, clearingDay: null });
    expect(
      only(ofBed(left(7, { plantings: [open, makePlanting({ share: 0.5 })] })), 'washing out').date,
    ).toBe(clearing);
    expect(kindsOf(ofBed(left(7, { plantings: [open] })))).not.toContain('washing out');
    const beyond = makePlanting({ clearingDay: lastDay + 1, usualEndDay: lastDay + 1 });
    const rich: Case = { plantings: [beyond], result: { pools: { mineralTop: all(7) } } };
    expect(kindsOf(ofBed(rich))).not.toContain('washing out');
    const onLast = makePlanting({ clearingDay: lastDay, usualEndDay: lastDay });
    expect(kindsOf(ofBed({ ...rich, plantings: [onLast] }))).toContain('washing out');
  });

  test('unless something follows from the day of clearing to three weeks after it', () => {
    const next = (start: number) =>
      kindsOf(
        ofBed(
          left(7, {
            plantings: [
              makePlanting(),
              makePlanting({ id: 'next', startDay: start, clearingDay: null }),
            ],
          }),
        ),
      );
    expect(next(clearing)).not.toContain('washing out');
    expect(next(clearing + 21)).not.toContain('washing out');
    expect(next(clearing + 22)).toContain('washing out');
  });

  test('an empty bed: what is in reach tonight, unless something starts within three weeks', () => {
    const made = (plantings: readonly PlantingInput[]): Case => ({
      plantings,
      result: { pools: { mineralTop: all(4), mineralLower: all(3) } },
    });
    expect(only(ofBed(made([])), 'washing out')).toEqual({
      kind: 'washing out',
      weight: 'caution',
      row: 'washing out in an empty bed',
      number: 7,
      threshold: 5,
      unit: 'g/m2',
      date: today,
      detail: {},
      layerId: null,
    });
    const later = (start: number) => kindsOf(ofBed(made([makePlanting({ startDay: start })])));
    expect(later(today + 21)).not.toContain('washing out');
    expect(later(today + 22)).toContain('washing out');
  });

  test('rain of the coming seven days on nitrate: how much rain, how much nitrate', () => {
    const ready = gramsPerM2FromMgPerKg(40, 1.3, 30);
    const on = (rain: Float64Array) =>
      ofBed({ result: { rain, pools: { mineralTop: stepping(ready, today, 1) } } });
    expect(only(on(between(10, today + 1, today + 7)), 'washing out')).toMatchObject({
      weight: 'caution',
      row: 'rain on nitrate',
      number: 70,
      threshold: 50,
      unit: 'mm',
      detail: { nitrate: expect.closeTo(40, 9) as number },
    });
    expect(kindsOf(on(between(60, today, today)))).not.toContain('washing out');
    expect(kindsOf(on(between(60, today + 8, today + 8)))).not.toContain('washing out');
    expect(kindsOf(on(between(60, today + 7, today + 7)))).toContain('washing out');
  });
});

describe('leaf crops', () => {
  const salad = (changes: Partial<PlantingInput> = {}) =>
    makePlanting(changes, { excessClass: 'leaf' });

  test('nitrate under them: how much, and which of the plantings', () => {
    const plantings = [
      makePlanting({ id: 'corn', share: 0.4 }),
      { ...salad({ id: 'salad', share: 0.4 }) },
    ];
    const made: Case = {
      plantings,
      result: { pools: { mineralTop: all(gramsPerM2FromMgPerKg(33, 1.3, 30)) } },
    };
    const found = only(ofBed(made), 'salad nitrate');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'leaf nitrate',
      threshold: 30,
      unit: 'mg/kg',
      detail: { plantingId: 'salad' },
      layerId: null,
    });
    expect(found.number).toBeCloseTo(33, 9);
    expect(kindsOf(ofBed({ ...made, plantings: [plantings[0]!] }))).not.toContain('salad nitrate');
  });

  test('greens before a salad: how many days before, the day of picking, which planting', () => {
    expect(
      only(
        ofLayers([makeLayer()], { plantings: [salad({ clearingDay: today + 12 })] }),
        'salad nitrate',
      ),
    ).toEqual({
      kind: 'salad nitrate',
      weight: 'note',
      row: 'greens before a salad',
      number: 12,
      threshold: 28,
      unit: 'days',
      date: today + 12,
      detail: { plantingId: 'planting' },
      layerId: 'layer',
    });
  });

  test('not of browns, not of what is gone, not yet there or without a day', () => {
    const kinds = (changes: Partial<PlantingInput>, layer = makeLayer()) =>
      kindsOf(ofLayers([layer], { plantings: [salad(changes)] }));
    const soon = { clearingDay: today + 12 };
    expect(kinds(soon, makeLayer({ isGreens: false, materialClass: 'mature' }))).not.toContain(
      'salad nitrate',
    );
    expect(kinds({ clearingDay: today })).not.toContain('salad nitrate');
    expect(kinds({ clearingDay: null })).not.toContain('salad nitrate');
    expect(kinds({ ...soon, startDay: today + 1 })).not.toContain('salad nitrate');
    expect(kinds({ ...soon, startDay: today })).toContain('salad nitrate');
    const corn = { plantings: [makePlanting({ clearingDay: today + 12 })] };
    expect(kindsOf(ofLayers([makeLayer()], corn))).not.toContain('salad nitrate');
  });
});
