import { describe, expect, test } from 'vitest';
import { makeCaution, strongestFirst } from '../../../app/core/season/cautions/makeCaution';
import { treatmentFinding } from '../../../app/core/season/cautions/treatment';
import type { PlantingInput } from '../../../app/core/season/input';
import type { CautionKind, Weight } from '../../../app/core/season/verdict';
import { limits } from '../../../app/tables/thresholds';
import {
  between,
  dugTakes,
  firstDay,
  legumeInput,
  makeLayer,
  makePlanting,
  makePlantingResult,
  makeResult,
  stepping,
  today,
} from '../madeBed';
import {
  all,
  cleanLawn,
  kindsOf,
  layerFacts,
  ofBed,
  ofLayers,
  only,
  withRatio,
  type Case,
} from './cautionRuns';

/* Of several plantings, layers or days: which one a caution is about. */

const series = (of: (day: number) => number): Float64Array =>
  Float64Array.from(makeResult().rain, (_, index) => of(firstDay + index));
const at = (planting: PlantingInput, progress: number) =>
  makePlantingResult(planting, { need: 0.1, uptake: 0.1 }, { progress: all(progress) });

test('strongest first, then by the order of the kinds, then as they came', () => {
  const one = (kind: CautionKind, weight: Weight, unit = '') =>
    makeCaution(kind, weight, 'all cover', { unit });
  const list = [
    one('salad nitrate', 'note'),
    one('short', 'caution', 'first'),
    one('layer depth', 'note'),
    one('safety', 'stop'),
    one('room', 'caution'),
    one('short', 'caution', 'second'),
    one('layer depth', 'stop'),
  ];
  const sorted = strongestFirst(list).map(({ kind, weight, unit }) =>
    `${weight} ${kind} ${unit}`.trim(),
  );
  expect(sorted).toEqual([
    'stop layer depth',
    'stop safety',
    'caution room',
    'caution short first',
    'caution short second',
    'note layer depth',
    'note salad nitrate',
  ]);
  expect(list[0]!.kind).toBe('salad nitrate');
});

describe('seedlings under a cover', () => {
  const seedlings = (id: string, startDay: number) =>
    makePlanting({ id, sown: true, startDay, share: 0.3 });

  test('of two sowings the older one’s time counts', () => {
    const plantings = [seedlings('later', today - 3), seedlings('older', today - 10)];
    const found = ofBed({ plantings, layers: [makeLayer({ day: today - 6 })] });
    expect(only(found, 'seedlings').detail).toEqual({ plantingId: 'older' });
  });

  test('what lay on plants that have grown since is past', () => {
    const tall = makePlanting({ id: 'tall', share: 0.5 });
    const plantings = [tall, seedlings('small', today - 2)];
    const found = ofBed({ plantings, layers: [makeLayer({ day: tall.startDay })] });
    expect(kindsOf(found)).not.toContain('seedlings');
  });
});

describe('several layers at once', () => {
  test('compost among them is enough to ask for compost', () => {
    const layers = [
      makeLayer({ id: 'grass' }),
      makeLayer({ id: 'heap', materialClass: 'slow', isGreens: false, laidDepth: 12 }),
    ];
    const facts = { layers: { heap: layerFacts({ isCompost: true }) } };
    expect(only(ofLayers(layers, {}, undefined, facts), 'compost phosphorus').number).toBe(12);
  });

  test('what is dug in does not stand for what is laid', () => {
    const layers = [
      makeLayer({ id: 'dug', placement: 'dug', laidDepth: 30 }),
      makeLayer({ id: 'laid', laidDepth: 9 }),
    ];
    expect(only(ofLayers(layers), 'layer depth')).toMatchObject({ layerId: 'laid', number: 9 });
  });

  test('greens among browns are greens on a bed with enough', () => {
    const layers = [
      makeLayer({ id: 'straw', materialClass: 'mature', isGreens: false }),
      makeLayer({ id: 'grass' }),
    ];
    expect(only(ofLayers(layers, withRatio(1.2), withRatio(1.25)), 'enough').layerId).toBe('grass');
  });
});

test('too soon: the day on which it is dry comes after the layer, whatever was before', () => {
  const made: Case = {
    layers: [makeLayer({ id: 'earlier', day: today - 5 })],
    result: {
      coverFill: between(0.7, today, today + 3),
      layers: [{ id: 'earlier', left: all(0.8), depth: all(3) }],
    },
  };
  expect(only(ofLayers([makeLayer()], made), 'too soon').date).toBe(today + 4);
});

test('cold soil: warm again comes after today, not before', () => {
  const corn = makePlanting({ sown: true, startDay: today + 10 }, { warmSoilCelsius: 15 });
  // 16 C to yesterday, four days of 5, 20 from then on: four of five days warm a week from now
  const soilTemperature = series((day) => (day < today ? 16 : day < today + 4 ? 5 : 20));
  const found = only(
    ofLayers([makeLayer()], { plantings: [corn], result: { soilTemperature } }),
    'cold soil',
  );
  expect(found.number).toBeCloseTo(13.8, 9);
  expect(found.date).toBe(today + 7);
});

describe('tied up', () => {
  test('what it comes to within four weeks counts, not what comes later', () => {
    const later: Case = { result: { flows: { [dugTakes]: between(0.1, today + 29, today + 60) } } };
    expect(kindsOf(ofBed(later))).not.toContain('tied up');
    const within: Case = {
      result: { flows: { [dugTakes]: between(0.1, today + 20, today + 60) } },
    };
    expect(only(ofBed(within), 'tied up').number).toBeCloseTo(0.9, 9);
  });

  test('the last that has a name is named', () => {
    const dug = (id: string, day: number) =>
      makeLayer({ id, day, placement: 'dug', materialClass: 'mature', isGreens: false });
    const made: Case = {
      layers: [dug('straw', today - 30), dug('leaves', today - 20), dug('nameless', today - 10)],
      result: { flows: { [dugTakes]: between(0.1, today - 9, today) } },
    };
    const names = (id: string) => layerFacts({ materialName: id });
    const facts = { layers: { straw: names('straw'), leaves: names('leaves') } };
    expect(only(ofBed(made, facts), 'tied up').detail['what']).toBe('leaves');
  });

  const layer = makeLayer({ placement: 'dug', materialClass: 'mature', isGreens: false });
  const takes = (plantings: readonly PlantingInput[], grams: number, from = today): Case => ({
    plantings,
    result: { flows: { [dugTakes]: between(grams, from, from + 9) } },
  });
  const kinds = (plantings: readonly PlantingInput[], from = today) =>
    kindsOf(ofLayers([layer], takes(plantings, 0, from), takes(plantings, 0.1, from)));

  test('what was dug in before is not the doing of a layer that is laid now', () => {
    const old = makeLayer({ id: 'old', day: today - 1, placement: 'dug', materialClass: 'mature' });
    const made = (grams: number): Case => ({ ...takes([makePlanting()], grams), layers: [old] });
    expect(kindsOf(ofLayers([makeLayer()], made(0), made(0.1)))).not.toContain('tied up');
    const both = ofLayers([layer], made(0), made(0.1));
    expect(only(both, 'tied up').layerId).toBe('layer');
  });

  test('a layer matters as long as the last of the crops stands', () => {
    const soon = makePlanting({ id: 'soon', share: 0.5, clearingDay: today + 2 });
    const long = makePlanting({ id: 'long', share: 0.5 });
    expect(kinds([soon, long], today + 10)).toContain('tied up');
    expect(kinds([long, soon], today + 10)).toContain('tied up');
    expect(kinds([soon], today + 10)).not.toContain('tied up');
  });

  test('without a day of clearing to its usual end', () => {
    const open = makePlanting({ clearingDay: null, usualEndDay: today + 30 });
    expect(kinds([open], today + 10)).toContain('tied up');
    expect(kinds([{ ...open, usualEndDay: today + 12 }], today + 10)).not.toContain('tied up');
  });
});

test('what stands without a day of clearing is not about to be washed out at one', () => {
  const open = makePlanting({ clearingDay: null });
  const rich: Case = { plantings: [open], result: { pools: { mineralTop: all(7) } } };
  expect(kindsOf(ofBed(rich))).not.toContain('washing out');
});

describe('legumes beside others', () => {
  const beans = (id: string) =>
    makePlanting({ id, sown: true, share: 0.3 }, { excessClass: 'legume', legume: legumeInput });
  const weigh = (plantings: readonly PlantingInput[], progress: readonly number[]) => {
    const of = (fixed: number): Case => ({
      plantings,
      result: {
        plantings: plantings.map((planting, index) =>
          makePlantingResult(
            planting,
            { need: 0.1, uptake: 0.04, fixed: planting.crop.legume ? fixed : 0 },
            { progress: all(progress[index]!) },
          ),
        ),
      },
    });
    return only(ofLayers([makeLayer()], of(0.06), of(0.03)), 'legume').weight;
  };

  test('only their own height makes a first layer welcome, and that of all of them', () => {
    const corn = makePlanting({ id: 'corn', sown: true, share: 0.3 });
    expect(weigh([corn, beans('beans')], [0.01, 0.5])).toBe('note');
    expect(weigh([beans('tall'), beans('small')], [0.5, 0.01])).toBe('caution');
  });

  test('a clover under them does not make them a cover crop', () => {
    const clover = makePlanting(
      { id: 'clover', share: 0.3 },
      { excessClass: 'cover', legume: legumeInput },
    );
    expect(weigh([clover, beans('beans')], [0.5, 0.5])).toBe('note');
  });
});

test('an empty bed asks what comes next, not what was', () => {
  const gone = makePlanting({ startDay: today - 60, clearingDay: today - 10 });
  const made: Case = { plantings: [gone], result: { pools: { mineralTop: all(6) } } };
  const found = ofLayers([makeLayer()], { plantings: [gone] }, made).find(
    ({ kind }) => kind === 'room',
  );
  expect(found).toMatchObject({ row: 'greens on an empty bed', number: 6 });
});

test('one sensitive crop makes the bed one', () => {
  const plantings = ['corn', 'beans', 'kale'].map((id) => makePlanting({ id, share: 0.3 }));
  const hay = layerFacts(
    {},
    {
      kind: 'store',
      treatment: { ...cleanLawn.treatment, answer: 'unknown', beanTestPassed: today - 9 },
    },
  );
  const facts = {
    layers: { layer: hay },
    plantings: { beans: { cropName: 'Beans', weedkillerSensitive: true } },
  };
  expect(only(ofLayers([makeLayer()], { plantings }, undefined, facts), 'treated source').row).toBe(
    'unknown source sensitive',
  );
});

describe('a silent label: when it is in order', () => {
  const treated = today - 100;
  const found = (days: number, mowings: number) =>
    treatmentFinding(
      {
        ...cleanLawn,
        treatment: { ...cleanLawn.treatment, answer: 'treated', label: 'silent', date: treated },
        mowingDays: Array.from({ length: mowings }, (_, index) => treated + 2 + index),
      },
      treated + days,
      treated - 50,
      { food: true, sensitive: false },
      limits,
    );

  test('with too few mowings six weeks after the treatment, or today when they are over', () => {
    expect(found(10, 1)).toMatchObject({
      date: treated + 42,
      number: 1,
      threshold: 4,
      unit: 'mowings',
    });
    expect(found(60, 3)).toMatchObject({ date: treated + 60, number: 3 });
  });

  test('with four mowings six weeks after the treatment', () => {
    expect(found(30, 4)).toMatchObject({
      date: treated + 42,
      number: 30,
      threshold: 42,
      unit: 'days',
    });
    expect(found(42, 4)).toBeNull();
  });
});

test('frost kills what stands there, from the first day of the run on', () => {
  const early = makePlanting({ startDay: firstDay - 20, clearingDay: null });
  const facts = {
    plantings: { planting: { cropName: 'Beans', weedkillerSensitive: true, killedAtCelsius: -1 } },
  };
  const cold = (planting: PlantingInput): Case => ({
    plantings: [planting],
    result: { plantings: [at(planting, 0.9)], airMinimum: stepping(-3, firstDay + 40, 10) },
  });
  expect(kindsOf(ofBed(cold(makePlanting()), facts))).not.toContain('frost kill');
  expect(only(ofBed(cold(early), facts), 'frost kill')).toMatchObject({
    date: firstDay,
    number: -3,
  });
});

test('a well of one’s own is named where something washes out, and only there', () => {
  const on = (grams: number) =>
    kindsOf(
      ofBed({ plantings: [], result: { pools: { mineralTop: all(grams) } } }, { ownWell: true }),
    );
  expect(on(6)).toContain('safety');
  expect(on(1)).not.toContain('safety');
});

test('a night of frost today counts, with its degrees; a plant that stays for years comes again', () => {
  const bean = makePlanting({ startDay: today - 9, clearingDay: null });
  const facts = {
    plantings: { planting: { cropName: 'Beans', weedkillerSensitive: true, killedAtCelsius: -1 } },
  };
  const night: Case['result'] = { airMinimum: between(-4, today, today) };
  const found = only(ofBed({ plantings: [bean], result: night }, facts), 'frost kill');
  expect(found).toMatchObject({ unit: 'deg C', date: today, detail: { plantingId: 'planting' } });
  const years = { ...bean, seasons: [{ ...bean, seasonDay: firstDay, isRegrowth: true }] };
  expect(kindsOf(ofBed({ plantings: [years], result: night }, facts))).not.toContain('frost kill');
});
