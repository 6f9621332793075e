import { describe, expect, test } from 'vitest';
import { drawnOfLawn } from '../../app/charts/lawn/LawnKey';
import { hasGrowth, lawnGeometry } from '../../app/charts/lawn/geometry';
import { dayOf } from '../../app/core/days';
import { lawnCurve } from '../../app/document/lawnCurve';
import { lawnOutlook } from '../../app/document/lawnOutlook';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(parsed.error.kind);
  return parsed.value;
};
const today = dayOf('2013-06-15');
const backLawn = (garden: Garden): string =>
  garden.lawns.find(({ name }) => name === 'Back lawn')?.id ?? '';

describe('the yield curve of a lawn', () => {
  test('weeks gone by are those of the outlook, and ranges hold their likely value', () => {
    const garden = sample();
    const curve = lawnCurve(garden, backLawn(garden), today);
    const outlook = lawnOutlook(garden, backLawn(garden), today);
    const area = garden.lawns.find(({ id }) => id === backLawn(garden))?.areaM2 ?? NaN;
    curve.weeks.forEach(({ from, expected }, at) => {
      expect(expected.low).toBeLessThanOrEqual(expected.typical);
      expect(expected.typical).toBeLessThanOrEqual(expected.high);
      if (from <= today)
        expect(expected.typical).toBeCloseTo(
          ((outlook.weeks[at]?.expected.typical ?? NaN) * area) / 1000,
          9,
        );
    });
    // one imagined weather is jagged, the mean of twenty is not: no week leaps to twice the one before
    const later = curve.weeks.filter(({ from }) => from > today && from < dayOf('2013-10-15'));
    later.slice(1).forEach(({ expected }, at) => {
      expect(expected.typical / (later[at]?.expected.typical ?? NaN)).toBeLessThan(2);
    });
  });

  test('the usual course is the learnt one without what was learnt', () => {
    const garden = sample();
    const { weeks, outlook } = lawnCurve(garden, backLawn(garden), today);
    for (const { usual, expected } of weeks)
      expect(usual * outlook.ratio.typical).toBeCloseTo(expected.typical, 9);
    const unlearnt = lawnCurve({ ...garden, mowings: [] }, backLawn(garden), today);
    expect(unlearnt.outlook.learntFrom).toBe(0);
    expect(unlearnt.cuts).toEqual([]);
  });

  test('a mowing’s weekly growth times its days is what was mown', () => {
    const garden = sample();
    const { cuts } = lawnCurve(garden, backLawn(garden), today);
    expect(cuts.length).toBeGreaterThan(5);
    expect(cuts[0]?.from).toBeNull();
    for (const { from, day, aWeek, dryKilograms } of cuts.slice(1)) {
      const days = day - (from ?? NaN) + 1;
      expect(((aWeek ?? NaN) * days) / 7).toBeCloseTo(dryKilograms.typical, 9);
    }
  });

  test('what happens after today changes nothing', () => {
    const garden = sample();
    const lawn = backLawn(garden);
    const more = {
      ...garden,
      weather: {
        ...garden.weather,
        days: [...garden.weather.days, ['2013-06-16', 30, 45, 0] as const].map((row) => [...row]),
      },
    } as Garden;
    expect(lawnCurve(more, lawn, today).weeks).toEqual(lawnCurve(garden, lawn, today).weeks);
  });
});

describe('the drawing of a lawn’s growth', () => {
  const data = {
    firstDay: 0,
    lastDay: 27,
    today: 10,
    weeks: [
      { from: 0, low: 1, typical: 2, high: 4, usual: 1.5 },
      { from: 7, low: 2, typical: 3, high: 5, usual: 2.5 },
      { from: 14, low: 1, typical: 4, high: 8, usual: 3 },
      { from: 21, low: 0, typical: 1, high: 2, usual: 1 },
    ],
    cuts: [
      { from: null, day: 3, aWeek: null },
      { from: 4, day: 10, aWeek: 3 },
    ],
  };
  test('a mowing is as wide as its days and as high as its weekly growth', () => {
    const drawing = lawnGeometry(data, 600);
    const [cut] = drawing.cuts;
    const pxPerDay = (drawing.right - drawing.left) / 28;
    expect(cut?.width).toBeCloseTo(7 * pxPerDay, 9);
    expect(cut?.x).toBeCloseTo(drawing.left + 4 * pxPerDay, 9);
    const pxPerUnit = (drawing.floor - drawing.y(8)) / 8;
    expect(cut?.height).toBeCloseTo(3 * pxPerUnit, 9);
    expect(drawing.marks).toHaveLength(1);
  });
  test('a blade stands on the floor and ends at what is expected; later ones are told apart', () => {
    const drawing = lawnGeometry(data, 600);
    drawing.blades.forEach(({ path, isAhead, from }, at) => {
      const [, tip] = / ([\d.]+) Q[^Q]*$/.exec(path) ?? [];
      expect(Number(tip)).toBeCloseTo(drawing.y(data.weeks[at]?.typical ?? NaN), 6);
      expect(isAhead).toBe(from > 10);
    });
  });
  test('one mowing far above the rest is torn off at the top and leaves the rest its height', () => {
    const plain = lawnGeometry(data, 600);
    const cuts = [...data.cuts, { from: 11, day: 17, aWeek: 400 }];
    const drawing = lawnGeometry({ ...data, cuts }, 600);
    expect(drawing.cuts.map(({ day }) => day)).toEqual([10]);
    expect(drawing.torn).toMatchObject([{ day: 17, aWeek: 400, y: drawing.top }]);
    const heightOf = ({ floor, y }: typeof plain, value: number) => floor - y(value);
    expect(heightOf(drawing, 8) / heightOf(plain, 8)).toBeGreaterThan(0.4);
    // twice what is expected at most is still drawn as high as it is
    const high = lawnGeometry({ ...data, cuts: [{ from: 4, day: 10, aWeek: 16 }] }, 600);
    expect(high.torn).toEqual([]);
    expect(high.cuts[0]?.height).toBeCloseTo(heightOf(high, 16), 9);
    expect(drawnOfLawn({ ...data, cuts })).toMatchObject({ cuts: true, tornCuts: true });
    expect(drawnOfLawn(data)).toMatchObject({ cuts: true, tornCuts: false });
  });
  test('where nothing is expected a mowing is its own scale', () => {
    const cuts = [{ from: 4, day: 10, aWeek: 16 }];
    const drawing = lawnGeometry({ ...data, weeks: [], cuts }, 600);
    expect(drawing.torn).toEqual([]);
    expect(drawing.cuts[0]?.height).toBeCloseTo(drawing.floor - drawing.y(16), 9);
  });
  test('holds at any width, and where nothing grows', () => {
    for (const width of [280, 600, 1800])
      for (const weeks of [
        data.weeks,
        data.weeks.map((one) => ({ ...one, low: 0, typical: 0, high: 0, usual: 0 })),
      ]) {
        const drawing = lawnGeometry({ ...data, weeks, cuts: [] }, width);
        expect(drawing.band).not.toContain('NaN');
        for (const { path } of drawing.blades) expect(path).not.toContain('NaN');
      }
  });
});

test('without growth and mowings there is no scale: nothing is told in billionths', () => {
  const empty = { firstDay: 0, lastDay: 364, today: 100, weeks: [], cuts: [] };
  const still = { from: 0, low: 0, typical: 0, high: 0, usual: 0 };
  expect(hasGrowth(empty)).toBe(false);
  expect(lawnGeometry(empty, 600).ticks).toEqual([]);
  expect(lawnGeometry({ ...empty, weeks: [still] }, 600).ticks).toEqual([]);
  const little = { ...empty, weeks: [{ ...still, high: 0.01 }] };
  expect(hasGrowth(little)).toBe(true);
  expect(lawnGeometry(little, 600).ticks.length).toBeGreaterThan(1);
});
