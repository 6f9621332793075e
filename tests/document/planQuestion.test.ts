import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { usualWishes } from '../../app/core/plan/question';
import { lawnOutlook } from '../../app/document/lawnOutlook';
import { mowingMass } from '../../app/document/accounts';
import { parseGarden } from '../../app/document/parse';
import { planQuestion, usualPlanWeeks } from '../../app/document/planQuestion';
import type { Garden } from '../../app/document/schema';
import { layerInput } from '../../app/document/layerInput';
import { grassHeightRows } from '../../app/tables/planning';

const parsed = parseGarden(readFileSync('assets/gardens/sample.mowings', 'utf8'));
if (!parsed.ok) throw new Error('no sample');
const sample: Garden = parsed.value;
const today = dayOf(sample.garden.today ?? '');
const question = planQuestion(sample, today);

const sourceOf = (id: string, of = question) => of.sources.find((source) => source.id === id);

describe('the sample on 15 June', () => {
  test('today and the weeks after it', () => {
    expect(question.days).toHaveLength(usualPlanWeeks);
    expect(question.days[0]).toBe(today);
    expect(question.days[1]).toBe(today + 7);
  });

  test('no day is past the season', () => {
    const late = planQuestion(sample, dayOf('2013-12-10'));
    expect(late.days.map(textFromDay)).toEqual([
      '2013-12-10',
      '2013-12-17',
      '2013-12-24',
      '2013-12-31',
    ]);
  });

  test('the mowing that waits, in the gardener’s buckets', () => {
    const mowing = sample.mowings.find(({ rest }) => rest.to === 'undecided');
    const waiting = sourceOf(`mowing ${mowing?.id}`);
    expect(waiting).toMatchObject({
      role: 'greens',
      day: today,
      condition: 'just cut',
      stepLitres: 5,
      measure: { containerId: 'container-bucket', litres: 10 },
    });
    expect(waiting?.litres).toBeCloseTo(mowingMass(sample, mowing!).litres, 9);
  });

  test('a litre on a square metre is what any layer of it is', () => {
    const mowing = sample.mowings.find(({ rest }) => rest.to === 'undecided')!;
    const [bed] = sample.beds;
    const layer = layerInput(sample, bed!, {
      id: 'ten millimetres',
      date: textFromDay(today),
      bedId: bed!.id,
      from: { source: 'mowing', mowingId: mowing.id },
      amount: {
        text: '',
        quantity: { kind: 'volume', litres: 10 * bed!.areaM2 },
        certainty: 'plain',
      },
      condition: 'just cut',
      wetness: 'dry',
      placement: 'laid',
      mixtureId: null,
      passedStops: [],
    });
    const one = sourceOf(`mowing ${mowing.id}`)!.oneMillimetre;
    expect(layer.nitrogen).toBeCloseTo(10 * one.nitrogen, 9);
    expect(layer.dryKgPerM2).toBeCloseTo(10 * one.dryKgPerM2, 9);
    expect(layer.freshKgPerM2).toBeCloseTo(10 * one.freshKgPerM2, 9);
    expect(layer.laidDepth).toBeCloseTo(10 * one.laidDepth, 9);
  });

  test('leaves and straw on any day; compost, which feeds, today', () => {
    const stores = question.sources.filter(({ ref }) => ref.source === 'stock');
    expect(
      stores
        .map(({ id, role, day }) => [id, role, day])
        .sort(([one], [other]) => (String(one) < String(other) ? -1 : 1)),
    ).toEqual([
      ['stock stock-compost', 'feed', today],
      ['stock stock-leaves', 'browns', null],
      ['stock stock-straw', 'browns', null],
    ]);
    for (const { litres } of stores) expect(litres).toBeGreaterThan(0);
  });

  test('a meal is measured by the half litre, not by the bucket', () => {
    const withMeal: Garden = {
      ...sample,
      stock: sample.stock.map((stock) =>
        stock.id === 'stock-compost' ? { ...stock, materialId: 'blood-meal' } : stock,
      ),
    };
    const meal = planQuestion(withMeal, today).sources.find(({ role }) => role === 'feed');
    expect(meal).toMatchObject({ stepLitres: 0.5, measure: null });
  });

  test('the treated lawn is held back, the other is mown again in a week', () => {
    const lawn = (id: string) => question.lawns.find(({ lawnId }) => lawnId === id);
    expect(lawn('lawn-front')?.heldBack?.row).toBe('label forbids');
    expect(lawn('lawn-back')).toMatchObject({ heldBack: null, mowsOn: today + 7 });
    const { litres } = lawnOutlook(sample, 'lawn-back', today + 7, today);
    expect(lawn('lawn-back')?.expectedLitres.typical).toBeCloseTo(litres.typical, 6);
    expect(sourceOf(`coming lawn-back ${today + 7}`)?.litres).toBeCloseTo(litres.typical, 6);
  });

  test('a glance at the grass changes the next mowing and no later one', () => {
    const high = planQuestion(sample, today, { ...usualWishes, heights: { 'lawn-back': 'ankle' } });
    const next = `coming lawn-back ${today + 7}`;
    expect(sourceOf(next, high)?.litres).toBeCloseTo(
      grassHeightRows.ankle.typical * sourceOf(next)!.litres,
      9,
    );
    const later = `coming lawn-back ${today + 14}`;
    expect(sourceOf(later, high)?.litres).toBe(sourceOf(later)?.litres);
  });

  describe('a lawn mown as often as was said of it', () => {
    const mown = (mownEveryDays: number): Garden => ({
      ...sample,
      lawns: sample.lawns.map((lawn) => ({ ...lawn, mownEveryDays })),
    });
    const comingOf = (garden: Garden, on: number = today) =>
      planQuestion(garden, on).sources.filter(
        ({ ref, lawnId }) => ref.source === 'coming' && lawnId === 'lawn-back',
      );

    test.each([
      [4, [1, 2, 3, 4, 5, 6, 7, 8, 9]],
      [7, [1, 2, 3, 4, 5, 6, 7, 8, 9]],
      [10, [1, 3, 4, 6, 7, 9]],
      [14, [2, 4, 6, 8]],
      [21, [3, 6, 9]],
    ])('every %i days: on the days of the plan nearest to it', (every, weeks) => {
      expect(comingOf(mown(every)).map(({ day }) => day! - today)).toEqual(
        weeks.map((week) => 7 * week),
      );
    });

    test('every two weeks brings what two weekly mowings would', () => {
      const weekly = new Map(comingOf(mown(7)).map(({ day, litres }) => [day, litres]));
      const [, ...later] = comingOf(mown(14));
      expect(later).toHaveLength(3);
      for (const { day, litres } of later)
        expect(litres).toBeCloseTo(weekly.get(day! - 7)! + weekly.get(day)!, 6);
    });

    test('the next one is looked for when it is due, and today where it is late', () => {
      const next = (on: number) =>
        planQuestion(mown(14), on).lawns.find(({ lawnId }) => lawnId === 'lawn-back')?.mowsOn;
      expect(next(today)).toBe(today + 14);
      expect(next(today + 7)).toBe(today + 14);
      expect(next(today + 11)).toBe(today + 11);
      expect(next(today + 20)).toBe(today + 20);
    });
  });

  test('every bed, with its way from the gate', () => {
    expect(question.beds.map(({ bedId, steps }) => [bedId, steps])).toEqual(
      sample.beds.map(({ id, steps }) => [id, steps]),
    );
  });
});

describe('what a day makes of clippings', () => {
  const waiting = (garden: Garden, on: number) =>
    planQuestion(garden, on).sources.filter(({ ref }) => ref.source === 'mowing');

  test('a day later they are limp, unless soaked, and in a week they are gone', () => {
    expect(waiting(sample, today + 1)[0]?.condition).toBe('limp');
    expect(waiting(sample, today + 7)).toEqual([]);
    const soaked: Garden = {
      ...sample,
      mowings: sample.mowings.map((mowing) => ({ ...mowing, wetness: 'soaked' })),
    };
    expect(waiting(soaked, today + 1)[0]).toMatchObject({ condition: 'just cut', isSoaked: true });
  });

  test('what was laid of them or decided on is not there any more', () => {
    const decided: Garden = {
      ...sample,
      mowings: sample.mowings.map((mowing) => ({ ...mowing, rest: { to: 'lawn' } })),
    };
    expect(waiting(decided, today)).toEqual([]);
  });

  test('a lawn not mown for a while is mown today', () => {
    const later = planQuestion({ ...sample, weather: { ...sample.weather } }, today + 10);
    expect(later.lawns.find(({ lawnId }) => lawnId === 'lawn-back')?.mowsOn).toBe(today + 10);
  });
});

test('without a bucket, five litres; without beds or lawns, nothing', () => {
  const bare = planQuestion(
    { ...sample, containers: sample.containers.filter(({ id }) => id === 'container-bag') },
    today,
  );
  expect(bare.sources[0]).toMatchObject({ measure: null, stepLitres: 5 });
  const none = planQuestion(
    { ...sample, beds: [], plantings: [], applications: [], events: [] },
    today,
  );
  expect(none.sources).toEqual([]);
  expect(none.beds).toEqual([]);
});
