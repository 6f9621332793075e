// What stands behind the key of a bed's season: its parts add up to the value that is read, on any day.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitsOf } from '../../app/amounts/unitSystem';
import { keyRows, keyValues, type KeyName } from '../../app/charts/season/keyRows';
import { nitrateGeometry, supplyGeometry } from '../../app/charts/season/geometry';
import { seasonLayout } from '../../app/charts/season/layout';
import { readDay } from '../../app/charts/season/reading';
import { seasonSeries } from '../../app/charts/season/series';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { cropById } from '../../app/document/cropValues';
import { parseGarden } from '../../app/document/parse';
import { seasonChartData, seasonSpan } from '../../app/screens/beds/chartData';
import type { Shown } from '../../app/screens/shown';
import { seasonColumnWhy, seasonDayWhy } from '../../app/screens/why/seasonDayWhys';
import { limits } from '../../app/tables/thresholds';
import { metricChartUnits } from '../../app/words/chartUnits';
import { estimateWithUnit } from '../../app/words/figures';

const parsed = parseGarden(
  readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8'),
);
if (!parsed.ok) throw new Error('The sample is no garden');
const garden = parsed.value;
const shown = {
  system: 'metric',
  units: unitsOf('metric'),
  chart: metricChartUnits,
  estimate: estimateWithUnit,
} as unknown as Shown;
const beds = garden.beds.map((bed) => {
  const results = answerBed(bedQuestion(garden, bed.id, dayOf('2013-06-15')), limits);
  const span = seasonSpan(garden, results);
  const data = seasonChartData(garden, results, null, metricChartUnits);
  const covers = data.plantings.filter(({ isCoverCrop }) => isCoverCrop).map(({ id }) => id);
  const series = seasonSeries(results.season, span, data.bulkDensityKgPerL, covers);
  const layout = seasonLayout(1200, span, 1);
  const facts = { garden, results, draws: undefined, shown };
  const on = (day: number) => {
    const reading = readDay(data, series, day);
    const rows = keyRows(
      reading,
      supplyGeometry(series, layout, metricChartUnits.nitrogen).labels,
      nitrateGeometry(series, layout, data),
      metricChartUnits,
      { watering: true, stages: new Set(), stuffs: new Set() },
    );
    const whyOf = (name: KeyName) =>
      seasonDayWhy(facts, name, { reading, from: span.from, plantings: data.plantings });
    return { reading, rows, whyOf };
  };
  return { bed, span, facts, on };
});
const anyDay = fc
  .tuple(fc.nat(beds.length - 1), fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([at, share]) => {
    const { span, on, facts } = beds[at]!;
    return { facts, ...on(span.from + Math.round(share * (span.to - span.from))) };
  });

/** The grams among the inputs; each is shown with one decimal, so it is at most 0.05 off. */
const gramsIn = (inputs: readonly (readonly [string, string])[]): number[] =>
  inputs.flatMap(([, value]) =>
    value.endsWith(' g/m²') ? [Number.parseFloat(value.replace('−', '-'))] : [],
  );

describe('law: what is said to go in makes the value that is read', () => {
  for (const name of ['demand', 'got', 'gone'] as const)
    test(`${name}: its parts add up`, () => {
      fc.assert(
        fc.property(anyDay, ({ reading, whyOf }) => {
          const parts = gramsIn(whyOf(name)!.inputs);
          const sum = parts.reduce((all, one) => all + one, 0);
          // figures from ten on are shown without a decimal
          const rounding = parts.reduce((all, one) => all + (one >= 10 ? 0.5 : 0.05), 0.05);
          expect(Math.abs(sum - reading[name])).toBeLessThanOrEqual(rounding);
        }),
        { numRuns: 200, seed: 41 },
      );
    });

  test('there for the crop: what came less what is gone', () => {
    fc.assert(
      fc.property(anyDay, ({ reading, whyOf }) => {
        const [came, gone] = gramsIn(whyOf('usable')!.inputs);
        expect(Math.abs(came! - gone! - (reading.supply - reading.gone))).toBeLessThanOrEqual(1);
      }),
      { numRuns: 100, seed: 42 },
    );
  });
});

test('every line of the key that has a value says how it is made and where its numbers are from', () => {
  for (const { span, on } of beds) {
    const { rows, whyOf } = on(span.from + 200);
    const values = keyValues(rows);
    expect(values.length).toBeGreaterThan(8);
    for (const { key } of values) {
      const why = whyOf(key as KeyName)!;
      expect(why.of, key).toMatch(/^[A-Z].*\.$/);
      expect(why.formula, key).toMatch(/\.$/);
      expect(why.sources.length, key).toBeGreaterThan(0);
      for (const [words, value] of why.inputs)
        expect(`${words} ${value}`).not.toMatch(/NaN|undefined|Infinity/);
    }
    const marks = [...rows.plantings, ...rows.layers].filter(({ value }) => value === '');
    for (const { name } of marks) expect(whyOf(name)).toBeNull();
  }
});

test('the published lines are told of the crop they are drawn for, by its row', () => {
  const { bed, span, on } = beds.find(({ bed: { name } }) => name === 'Gate bed')!;
  const planting = garden.plantings.find(({ bedId }) => bedId === bed.id)!;
  const row = cropById(garden, planting.cropId)!;
  const { whyOf, rows } = on(span.from + 200);
  expect(rows.nitrate.find(({ name }) => name === 'from')!.value).toBe(
    `${row.enoughNitrate.low} mg/kg`,
  );
  for (const name of ['from', 'past'] as const) {
    const why = whyOf(name)!;
    expect(why.inputs).toEqual([['For', row.name]]);
    expect(why.sources[0]).toContain(`(${row.enoughNitrate.low} to ${row.enoughNitrate.high})`);
  }
});

test('a column of the table says how it is made, without the numbers of a day', () => {
  const { facts, span, on } = beds[0]!;
  const { reading } = on(span.from + 100);
  const day = { reading, from: span.from, plantings: [] };
  for (const name of ['demand', 'cover', 'ready', 'soil warmth', 'all it gets'] as const) {
    const why = seasonColumnWhy(facts, name, day)!;
    expect(why.formula, name).toMatch(/\.$/);
    expect(why.inputs, name).toEqual([]);
  }
});
