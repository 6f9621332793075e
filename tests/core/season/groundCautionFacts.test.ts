import { describe, expect, test } from 'vitest';
import type { PlantingInput } from '../../../app/core/season/input';
import {
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  stepping,
  today,
} from '../madeBed';
import { all, kindsOf, ofBed, ofLayers, only, type Case } from './cautionRuns';

/* What the cautions of soil and young plants say; lines of the threshold table. */

const at = (planting: PlantingInput, progress: number) =>
  makePlantingResult(planting, { need: 0.1, uptake: 0.1 }, { progress: all(progress) });

describe('cold soil', () => {
  const corn = makePlanting({ sown: true, startDay: today + 10 }, { warmSoilCelsius: 15 });
  const soil = (soilTemperature: Float64Array, plantings = [corn]): Case => ({
    plantings,
    result: { soilTemperature },
  });

  test('goes by the mean of five days, and names the day on which that is warm enough', () => {
    // 10 C to the day after tomorrow, 20 from then on: the mean of five is 14 on day +4, 16 with three
    expect(only(ofLayers([makeLayer()], soil(stepping(10, today + 2, 20))), 'cold soil')).toEqual({
      kind: 'cold soil',
      weight: 'caution',
      row: 'cold soil',
      number: 10,
      threshold: 15,
      unit: 'deg C',
      date: today + 5,
      detail: { plantingId: 'planting' },
      layerId: 'layer',
    });
    // four of five days at 16 and one at 10.5: 14.9; a sixth day before them does not count
    const week = (first: number): Float64Array => stepping(first, today - 4, 16);
    expect(kindsOf(ofLayers([makeLayer()], soil(week(10.4))))).toContain('cold soil');
    expect(kindsOf(ofLayers([makeLayer()], soil(week(11.1))))).not.toContain('cold soil');
    expect(kindsOf(ofLayers([makeLayer()], soil(stepping(-40, today - 5, 15))))).not.toContain(
      'cold soil',
    );
  });

  test('never warm enough in the run: no day', () => {
    expect(only(ofLayers([makeLayer()], soil(all(10))), 'cold soil').date).toBeNull();
  });

  test('concerns what comes within four weeks, and what stands there under two hands high', () => {
    const kinds = (planting: PlantingInput, progress = 0) =>
      kindsOf(
        ofLayers([makeLayer()], {
          plantings: [planting],
          result: { soilTemperature: all(10), plantings: [at(planting, progress)] },
        }),
      );
    expect(kinds({ ...corn, startDay: today + 28 })).toContain('cold soil');
    expect(kinds({ ...corn, startDay: today + 29 })).not.toContain('cold soil');
    const standing = { ...corn, startDay: today - 20 };
    // sown, storage class, slow to show: a hand at 0.3 of its clock, two at 0.6
    expect(kinds(standing, 0.59)).toContain('cold soil');
    expect(kinds(standing, 0.6)).not.toContain('cold soil');
    expect(kinds({ ...standing, clearingDay: today }, 0.1)).not.toContain('cold soil');
  });

  test('the first planting that minds is named; one that does not mind is passed over', () => {
    const hardy = makePlanting({ id: 'hardy', share: 0.2 });
    const beans = { ...corn, id: 'beans', share: 0.2 };
    expect(
      only(ofLayers([makeLayer()], soil(all(10), [hardy, corn, beans])), 'cold soil').detail,
    ).toEqual({ plantingId: 'planting' });
  });

  test('on the bed itself it is about no layer, and only under a cover', () => {
    const bed = (fraction: number) =>
      ofBed({
        plantings: [corn],
        result: { soilTemperature: all(14), coverFraction: all(fraction) },
      });
    expect(only(bed(0.3), 'cold soil').layerId).toBeNull();
    expect(kindsOf(bed(0.2999))).not.toContain('cold soil');
  });
});

describe('seed fly', () => {
  const corn = makePlanting({ sown: true, startDay: today + 21 }, { seedFlyRisk: true });
  const made = (changes: Case['result'] = {}, planting = corn): Case => ({
    plantings: [planting],
    result: { soilTemperature: all(12), ...changes },
  });
  const kinds = (layer: Parameters<typeof makeLayer>[0], of: Case = made()) =>
    kindsOf(ofLayers([makeLayer(layer)], of));

  test('says how long before sowing, until when it matters, how cold the soil is', () => {
    expect(only(ofLayers([makeLayer()], made()), 'seed fly')).toEqual({
      kind: 'seed fly',
      weight: 'caution',
      row: 'seed fly',
      number: 21,
      threshold: 21,
      unit: 'days',
      date: today + 22,
      detail: { plantingId: 'planting', soilCelsius: 12 },
      layerId: 'layer',
    });
  });

  test('wet is the week’s mean of 0.7 and more; cold is under 15 C', () => {
    expect(kinds({}, made({ availableWaterTop: all(0.7) }))).toContain('seed fly');
    // six of seven days at 0.8 and the first at 0.1 make 0.7; an eighth does not count
    expect(kinds({}, made({ availableWaterTop: stepping(0.1, today - 7, 0.7) }))).toContain(
      'seed fly',
    );
    expect(kinds({}, made({ availableWaterTop: stepping(0.09, today - 6, 0.8) }))).not.toContain(
      'seed fly',
    );
    expect(kinds({}, made({ soilTemperature: all(15) }))).not.toContain('seed fly');
  });

  test('only of sowings of crops it goes for, on the day of the layer or after it', () => {
    expect(kinds({}, made({}, { ...corn, sown: false }))).not.toContain('seed fly');
    expect(kinds({}, made({}, makePlanting({ sown: true, startDay: today + 21 })))).not.toContain(
      'seed fly',
    );
    expect(kinds({}, made({}, { ...corn, startDay: today }))).toContain('seed fly');
    expect(kinds({}, made({}, { ...corn, startDay: today - 1 }))).not.toContain('seed fly');
  });

  test('browns and crisp clippings draw nobody; the first layer that does is named', () => {
    expect(kinds({ isGreens: false })).not.toContain('seed fly');
    const layers = [
      makeLayer({ id: 'crisp', condition: 'crisp' }),
      makeLayer({ id: 'brown', isGreens: false }),
      makeLayer({ id: 'fresh', condition: 'limp' }),
      makeLayer({ id: 'more' }),
    ];
    expect(only(ofLayers(layers, made()), 'seed fly').layerId).toBe('fresh');
  });
});

describe('young plants', () => {
  const seedling = makePlanting(
    { sown: true, startDay: today - 10, share: 0.3 },
    { excessClass: 'fruit' },
  );
  const rising = (from: number, perDay: number, planting = seedling) =>
    makePlantingResult(
      planting,
      { need: 0.1, uptake: 0.1 },
      {
        progress: Float64Array.from(
          makeResult().rain,
          (_, index) => from + perDay * (index + makeResult().firstDay - today),
        ),
      },
    );

  test('cover over seedlings: how high, and the day on which they are a hand high', () => {
    // a hand at 0.12 of its clock: 0.06 today, 0.012 a day, so in five days
    const made: Case = { plantings: [seedling], result: { plantings: [rising(0.06, 0.012)] } };
    const found = only(ofLayers([makeLayer()], made), 'seedlings');
    expect(found).toMatchObject({
      weight: 'caution',
      row: 'cover over seedlings',
      threshold: 1,
      unit: 'hands',
      date: today + 5,
      detail: { plantingId: 'planting' },
      layerId: 'layer',
    });
    expect(found.number).toBeCloseTo(0.5, 9);
  });

  test('no day where they do not get there within 90 days', () => {
    const slow = (perDay: number): number | null =>
      only(
        ofLayers([makeLayer()], {
          plantings: [seedling],
          result: { plantings: [rising(0.03, perDay)] },
        }),
        'seedlings',
      ).date;
    expect(slow(0.0901 / 90)).toBe(today + 90);
    expect(slow(0.0899 / 90)).toBeNull();
  });

  test('the smallest of several decides', () => {
    const tall = makePlanting({ id: 'tall', share: 0.3 });
    const tiny = { ...seedling, id: 'tiny' };
    const made: Case = {
      plantings: [tall, seedling, tiny],
      result: { plantings: [at(tall, 0.9), at(seedling, 0.1), at(tiny, 0.05)] },
    };
    expect(only(ofLayers([makeLayer()], made), 'seedlings').detail).toEqual({ plantingId: 'tiny' });
  });

  test('what shows how soon: set-out plants at once, roots and leaves last', () => {
    const row = (planting: PlantingInput, progress: number): string =>
      only(
        ofLayers([makeLayer()], {
          plantings: [planting],
          result: { plantings: [at(planting, progress)] },
        }),
        'seedlings',
      ).row;
    const set = makePlanting({}, { excessClass: 'leaf' });
    expect(row(set, 0.029)).toBe('cover over seedlings');
    expect(row(set, 0.031)).toBe('stems');
    for (const excessClass of ['leaf', 'storage', 'tender storage'] as const) {
      const sown = makePlanting({ sown: true }, { excessClass });
      expect(row(sown, 0.299)).toBe('cover over seedlings');
      expect(row(sown, 0.301)).toBe('stems');
    }
    for (const excessClass of ['head', 'flower', 'perennial'] as const)
      expect(row(makePlanting({ sown: true }, { excessClass }), 0.121)).toBe('stems');
  });

  test('off the stems: what is one hand high is named with its height and no day', () => {
    const made: Case = { plantings: [seedling], result: { plantings: [at(seedling, 0.18)] } };
    const found = only(ofLayers([makeLayer()], made), 'seedlings');
    expect(found).toMatchObject({
      weight: 'note',
      row: 'stems',
      threshold: 2,
      unit: 'hands',
      date: null,
      detail: { plantingId: 'planting' },
      layerId: 'layer',
    });
    expect(found.number).toBeCloseTo(1.5, 9);
  });

  test('seed that goes in within the week is named with its day and has no height', () => {
    const soon = makePlanting({ id: 'soon', sown: true, startDay: today + 7 });
    expect(only(ofLayers([makeLayer()], { plantings: [soon] }), 'seedlings')).toMatchObject({
      row: 'stems',
      number: 0,
      date: today + 7,
      detail: { plantingId: 'soon' },
    });
    const tall = makePlanting({ id: 'tall', share: 0.5 });
    const both: Case = {
      plantings: [tall, soon],
      result: { plantings: [at(tall, 0.9), at(soon, 0)] },
    };
    expect(only(ofLayers([makeLayer()], both), 'seedlings')).toMatchObject({
      number: 0,
      detail: { plantingId: 'soon' },
    });
    // set out, not sown: it stands above the cover at once
    expect(
      kindsOf(ofLayers([makeLayer()], { plantings: [{ ...soon, sown: false }] })),
    ).not.toContain('seedlings');
  });

  test('what is dug in lies on nobody', () => {
    const made: Case = { plantings: [seedling], result: { plantings: [at(seedling, 0.05)] } };
    expect(kindsOf(ofLayers([makeLayer({ placement: 'dug' })], made))).not.toContain('seedlings');
    const two = [makeLayer({ id: 'dug', placement: 'dug' }), makeLayer({ id: 'laid' })];
    expect(only(ofLayers(two, made), 'seedlings').layerId).toBe('laid');
  });
});
