import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { likelyOn, likelyWithin } from '../../app/charts/season/likely';
import { nitrateGeometry } from '../../app/charts/season/geometry';
import { seasonLayout } from '../../app/charts/season/layout';
import { readDay, spokenReading } from '../../app/charts/season/reading';
import { seasonSeries } from '../../app/charts/season/series';
import type { SeasonChartData } from '../../app/charts/season/data';
import { plantingBars } from '../../app/charts/season/strips';
import { dayOf } from '../../app/core/days';
import { pools } from '../../app/core/season/flows';
import type { PlantingResult, SeasonResult } from '../../app/core/season/result';
import { metricChartUnits } from '../../app/words/chartUnits';
import { seasonFromFlows } from './seasonFromFlows';

const firstDay = dayOf('2013-04-20');
const days = 60;
const weeks = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((week) => ({
  day: firstDay + 7 * week,
  low: 10 + week,
  high: 20 + 3 * week,
}));

describe('the band of most imagined seasons', () => {
  test('is what was reckoned on the evenings that are known, straight between them', () => {
    expect(likelyOn(weeks, firstDay + 14)).toEqual({ low: 12, high: 26 });
    const between = likelyOn(weeks, firstDay + 16)!;
    expect(between.low).toBeCloseTo(12 + 2 / 7, 12);
    expect(between.high).toBeCloseTo(26 + (3 * 2) / 7, 12);
  });
  test('ends where nothing is known', () => {
    expect(likelyOn(weeks, firstDay - 1)).toBeNull();
    expect(likelyOn(weeks, firstDay + 57)).toBeNull();
    expect(likelyOn([], firstDay)).toBeNull();
  });
  test('fills the days shown from edge to edge, and never leaves them', () => {
    fc.assert(
      fc.property(fc.nat(55), fc.nat(55), (a, b) => {
        const span = { from: firstDay + Math.min(a, b), to: firstDay + Math.max(a, b) };
        const shown = likelyWithin(weeks, span);
        expect(shown.at(-1)?.day).toBe(span.to);
        expect(shown[0]?.day).toBe(Math.max(firstDay, span.from - 1));
        for (const [at, one] of shown.entries()) {
          expect(one.day).toBeGreaterThan(shown[at - 1]?.day ?? -Infinity);
          expect(one.low).toBeLessThanOrEqual(one.high);
        }
      }),
    );
  });
});

const result: SeasonResult = seasonFromFlows(
  Object.fromEntries(pools.map((pool) => [pool, 5])) as SeasonResult['start'],
  days,
  () => 0,
  { firstDay, today: firstDay + 30 },
);
const data = (changes: Partial<SeasonChartData> = {}): SeasonChartData => ({
  result,
  verdict: { state: 'about right', turnsOn: null },
  cropBand: { lowMgPerKg: 20, highMgPerKg: 25 },
  bulkDensityKgPerL: 1.3,
  plantings: [],
  layers: [],
  units: metricChartUnits,
  ...changes,
});
const span = { from: firstDay, to: firstDay + days - 1 };
const series = seasonSeries(result, span, 1.3);
const layout = seasonLayout(900, span, 1);

describe('the chart with and without it', () => {
  test('the scale holds the band', () => {
    const geometry = nitrateGeometry(series, layout, data({ likely: weeks }));
    // 1 mg/kg of 30 cm at 1.3 kg/L is 0.39 g/m2
    expect(geometry.y(44 * 0.39)).toBeGreaterThan(geometry.panel.top);
    expect(geometry.likely?.path).toMatch(/^M.*Z$/);
  });
  test('nothing is drawn or said where nothing is known', () => {
    const geometry = nitrateGeometry(series, layout, data({ cropBand: null }));
    expect(geometry.likely).toBeNull();
    expect(geometry.enough).toEqual([]);
    expect(readDay(data(), series, firstDay).likely).toBeNull();
  });
  test('a crop with one number has one line', () => {
    const geometry = nitrateGeometry(
      series,
      layout,
      data({ cropBand: { lowMgPerKg: 20, highMgPerKg: 20 } }),
    );
    expect(geometry.enough.map(({ name }) => name)).toEqual(['from']);
  });
  test('the chosen day reads and speaks it in grams', () => {
    const reading = readDay(data({ likely: weeks }), series, firstDay + 14);
    expect(reading.likely?.low).toBeCloseTo(12 * 0.39, 9);
    expect(reading.likely?.high).toBeCloseTo(26 * 0.39, 9);
    expect(spokenReading(data(), reading)).toContain('in 8 imagined seasons of 10 from 4.7 to 10');
  });
});

test('leaves stand on the stem within its days, clear of the marks, and grow', () => {
  const planting: PlantingResult = {
    id: 'p1',
    startDay: firstDay + 5,
    clearingDay: firstDay + 50,
  } as PlantingResult;
  const [bar] = plantingBars(
    {
      result: { ...result, plantings: [planting] },
      plantings: [
        {
          id: 'p1',
          name: 'Tomato',
          sown: false,
          flowerDay: firstDay + 25,
          firstHarvestDay: firstDay + 40,
        },
      ],
    },
    span,
    layout,
  );
  expect(bar!.leaves.length).toBeGreaterThan(10);
  for (const [at, leaf] of bar!.leaves.entries()) {
    expect(leaf.x).toBeGreaterThan(bar!.x);
    expect(leaf.x + leaf.length).toBeLessThan(bar!.x + bar!.width);
    for (const mark of bar!.marks)
      expect(mark.x < leaf.x || mark.x > leaf.x + leaf.length).toBe(true);
    if (at > 0) expect(leaf.length).toBeGreaterThanOrEqual(bar!.leaves[at - 1]!.length);
  }
});
