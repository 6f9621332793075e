import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stuffs } from '../../app/charts/cover/data';
import { nitrateGeometry, supplyGeometry } from '../../app/charts/season/geometry';
import { keyRows } from '../../app/charts/season/keyRows';
import { keyRowSteps, seasonLayout } from '../../app/charts/season/layout';
import { readDay } from '../../app/charts/season/reading';
import { seasonSeries } from '../../app/charts/season/series';
import { stages } from '../../app/charts/season/strips';
import { warmthGeometry } from '../../app/charts/season/warmth';
import { degrees } from '../../app/words/chartFormat';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import { realRuns } from './realRuns';

const runs = realRuns();
const drawn = {
  watering: true,
  stages: new Set(stages),
  stuffs: new Set(stuffs),
};
const anyDay = fc
  .tuple(
    fc.nat(runs.length - 1),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([index, share, within]) => {
    const { result, input } = runs[index]!;
    const from = result.firstDay + Math.floor(share * (result.days - 15));
    const span = { from, to: result.firstDay + result.days - 1 };
    const day = from + Math.floor(within * (span.to - from));
    const data = {
      result,
      verdict: { state: 'about right', turnsOn: null } as const,
      cropBand: { lowMgPerKg: 20, highMgPerKg: 25 },
      bulkDensityKgPerL: input.soil.bulkDensityKgPerL,
      plantings: [],
      layers: [],
      units: metricChartUnits,
    };
    const series = seasonSeries(result, span, data.bulkDensityKgPerL);
    const layout = seasonLayout(1200, span, 1);
    const supply = supplyGeometry(series, layout, metricChartUnits.nitrogen);
    const nitrate = nitrateGeometry(series, layout, data);
    return {
      data,
      span,
      series,
      layout,
      supply,
      nitrate,
      reading: readDay(data, series, day),
      day,
    };
  });

describe('law: the key is the reading of the chosen day, over the engine’s own results', () => {
  test('bands add up to all that came, line by line as the drawing has them', () => {
    fc.assert(
      fc.property(anyDay, ({ reading, supply, series, span, day }) => {
        const edge = day - span.from + 1;
        let sum = 0;
        for (const { name, grams } of reading.bands) {
          const band = supply.bands.find((one) => one.name === name)!;
          expect(grams).toBeCloseTo(band.high[edge]! - band.low[edge]!, 9);
          sum += grams;
        }
        expect(sum).toBeCloseTo(reading.supply, 9);
        expect(reading.supply - reading.gone).toBeCloseTo(series.usable[edge]!, 9);
      }),
      { numRuns: 100, seed: 31 },
    );
  });

  test('it has room beside each panel, and no line of it comes or goes with the day', () => {
    fc.assert(
      fc.property(anyDay, ({ reading, supply, nitrate, layout, data, series, span }) => {
        const rows = keyRows(reading, supply.labels, nitrate, metricChartUnits, drawn);
        const other = readDay(data, series, span.from);
        const first = keyRows(other, supply.labels, nitrate, metricChartUnits, drawn);
        for (const panel of ['supply', 'nitrate', 'rain', 'warmth'] as const) {
          const { top } = layout[panel];
          const below = layout.panels.find((one) => one.top > top)?.top ?? layout.axis.bottom;
          expect(6 + rows[panel].length * keyRowSteps.value).toBeLessThan(below - top);
          expect(rows[panel].map(({ name }) => name)).toEqual(first[panel].map(({ name }) => name));
        }
        // every colour there is: a line's height from the first of the next panel
        expect((rows.layers.length - 1) * keyRowSteps.mark).toBeLessThan(
          layout.rain.top - layout.layers.top - keyRowSteps.mark / 2,
        );
      }),
      { numRuns: 100, seed: 32 },
    );
  });
});

describe('warmth', () => {
  const { result } = runs[0]!;
  const span = { from: result.firstDay, to: result.firstDay + 59 };
  const layout = seasonLayout(900, span, 1);

  test('0 °C is 32 °F and 100 °C 212 °F (by definition), on the scale and in words', () => {
    expect([0, 100].map((celsius) => degrees(celsius, usChartUnits))).toEqual(['32', '212']);
    expect(degrees(-0.4, metricChartUnits)).toBe('0');
    const metric = warmthGeometry(result, span, layout, metricChartUnits);
    const us = warmthGeometry(result, span, layout, usChartUnits);
    for (const { value, y } of us.ticks) expect(y).toBeCloseTo(metric.y((value - 32) / 1.8), 6);
    expect(us.frost).toBe(metric.frost);
  });

  test('every day of air and soil lies within the strip', () => {
    const geometry = warmthGeometry(result, span, layout, metricChartUnits);
    const { top, bottom } = layout.warmth;
    for (let at = 0; at < 60; at += 1)
      for (const celsius of [
        result.airMinimum[at]!,
        result.airMaximum[at]!,
        result.soilTemperature[at]!,
      ]) {
        expect(geometry.y(celsius)).toBeGreaterThanOrEqual(top);
        expect(geometry.y(celsius)).toBeLessThanOrEqual(bottom);
      }
  });

  test('a reading over a week has the coldest and the warmest air of its days', () => {
    const data = {
      result,
      verdict: { state: 'about right', turnsOn: null } as const,
      cropBand: null,
      bulkDensityKgPerL: 1.3,
      plantings: [],
      layers: [],
      units: metricChartUnits,
    };
    const series = seasonSeries(result, span, 1.3);
    const week = readDay(data, series, span.from + 9, span.from + 3);
    expect(week.airMinimum).toBe(Math.min(...result.airMinimum.subarray(3, 10)));
    expect(week.airMaximum).toBe(Math.max(...result.airMaximum.subarray(3, 10)));
    expect(week.soil).toBe(result.soilTemperature[9]);
  });
});
