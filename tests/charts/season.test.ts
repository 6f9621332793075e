import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { calendarStretches } from '../../app/charts/season/calendar';
import { type SeasonChartData, spanOf } from '../../app/charts/season/data';
import {
  imaginedStretches,
  nitrateGeometry,
  supplyGeometry,
} from '../../app/charts/season/geometry';
import { seasonLayout } from '../../app/charts/season/layout';
import { readDay, spokenReading, stateOn, weeklyReadings } from '../../app/charts/season/reading';
import { seasonSeries } from '../../app/charts/season/series';
import {
  layerMarks,
  plantingBars,
  plantingsInView,
  wordsInStrips,
  rainBars,
  stateSegments,
} from '../../app/charts/season/strips';
import { textWidth } from '../../app/charts/textWidth';
import { dayOf } from '../../app/core/days';
import { flowKinds, pools } from '../../app/core/season/flows';
import { bedLedger, supplyBySource, supplySources } from '../../app/core/season/ledger';
import type { PlantingResult, SeasonResult } from '../../app/core/season/result';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import { seasonFromFlows } from './seasonFromFlows';

const days = 60;
const firstDay = dayOf('2013-04-20');
const grams = fc.double({ min: 0, max: 3, noNaN: true });
const anySeason = fc
  .tuple(
    fc.array(grams, { minLength: pools.length, maxLength: pools.length }),
    fc.array(grams, { minLength: flowKinds.length * 7, maxLength: flowKinds.length * 7 }),
  )
  .map(([start, amounts]) =>
    seasonFromFlows(
      Object.fromEntries(
        pools.map((pool, index) => [pool, start[index] ?? 0]),
      ) as SeasonResult['start'],
      days,
      (flow, day) => amounts[(flow * 7 + day * 5) % amounts.length] ?? 0,
      { firstDay, today: firstDay + 30 },
    ),
  );
const anySpan = fc
  .tuple(fc.nat(days - 1), fc.nat(days - 1))
  .map(([a, b]) => ({ from: firstDay + Math.min(a, b), to: firstDay + Math.max(a, b) }));

const planting = (changes: Partial<PlantingResult> = {}): PlantingResult => ({
  id: 'p1',
  startDay: firstDay + 20,
  clearingDay: firstDay + 50,
  demand: 0,
  uptake: 0,
  luxury: 0,
  fixed: 0,
  demandMet: 0,
  harvested: 0,
  removed: 0,
  left: 0,
  dailyNeed: new Float64Array(days),
  dailyUptake: new Float64Array(days),
  dailyFixed: new Float64Array(days),
  progress: new Float64Array(days),
  rootDepth: new Float64Array(days),
  ...changes,
});

const chart = (result: SeasonResult, changes: Partial<SeasonChartData> = {}): SeasonChartData => ({
  result,
  verdict: { state: 'about right', turnsOn: null },
  cropBand: { lowMgPerKg: 20, highMgPerKg: 25 },
  bulkDensityKgPerL: 1.3,
  plantings: [],
  layers: [],
  units: metricChartUnits,
  ...changes,
});

const quiet = (changes: Partial<SeasonResult> = {}): SeasonResult =>
  seasonFromFlows(
    Object.fromEntries(pools.map((pool) => [pool, 0])) as SeasonResult['start'],
    days,
    () => 0,
    { firstDay, today: firstDay + 30, ...changes },
  );

describe('law: bands add up', () => {
  test('a band is as thick as the flows of its source since the first day shown, and the stack has no gaps', () => {
    fc.assert(
      fc.property(anySeason, anySpan, (result, span) => {
        const series = seasonSeries(result, span, 1.3);
        const layout = seasonLayout(900, span, 1);
        const { bands } = supplyGeometry(series, layout, metricChartUnits.nitrogen);
        const edges = span.to - span.from + 2;
        for (let edge = 0; edge < edges; edge += 1) {
          let under = 0;
          for (const band of bands) {
            expect(band.low[edge]).toBeCloseTo(under, 9);
            under = band.high[edge] ?? 0;
          }
          expect(under).toBeCloseTo(series.supply[edge] ?? 0, 9);
          expect(under - (series.gone[edge] ?? 0)).toBeCloseTo(series.usable[edge] ?? 0, 9);
        }
      }),
      { numRuns: 100, seed: 5 },
    );
  });

  test('what a cover crop takes is held back, not got, and no gram is counted twice', () => {
    fc.assert(
      fc.property(anySeason, fc.double({ min: 0, max: 1, noNaN: true }), (result, share) => {
        const taken = supplyBySource(result).taken.map((one) => one * share);
        const rye = planting({ id: 'rye', dailyNeed: taken, dailyUptake: taken });
        const run = { ...result, plantings: [rye] };
        const span = { from: firstDay, to: firstDay + days - 1 };
        const counted = seasonSeries(run, span, 1.3);
        const covered = seasonSeries(run, span, 1.3, ['rye']);
        const last = days;
        const ryes = taken.reduce((sum, one) => sum + one, 0);
        expect(covered.demand[last]).toBe(0);
        expect(counted.demand[last]).toBeCloseTo(ryes, 8);
        expect(covered.got[last]).toBeCloseTo((counted.got[last] ?? 0) - ryes, 8);
        expect(covered.gone[last]).toBeCloseTo((counted.gone[last] ?? 0) + ryes, 8);
      }),
      { numRuns: 50, seed: 9 },
    );
  });

  test('the numbers beside the drawing are heights in it', () => {
    fc.assert(
      fc.property(anySeason, (result) => {
        const span = { from: firstDay, to: firstDay + days - 1 };
        const series = seasonSeries(result, span, 1.3);
        const drawing = supplyGeometry(
          series,
          seasonLayout(900, span, 1),
          metricChartUnits.nitrogen,
        );
        for (const { name, grams: told } of drawing.labels) {
          const band = drawing.bands.find((one) => one.name === name);
          if (band) expect((band.high.at(-1) ?? 0) - (band.low.at(-1) ?? 0)).toBeCloseTo(told, 9);
        }
        const gone = drawing.labels.find(({ name }) => name === 'gone');
        if (gone) expect(gone.at).toBeCloseTo(drawing.y(-gone.grams / 2), 6);
      }),
      { numRuns: 50, seed: 10 },
    );
  });

  test('what remains without the lost is what was taken up plus what is still ready', () => {
    fc.assert(
      fc.property(anySeason, anySpan, (result, span) => {
        const series = seasonSeries(result, span, 1.3);
        const last = span.to - span.from + 1;
        const ready =
          (result.pools.mineralTop[span.to - firstDay] ?? 0) +
          (result.pools.mineralLower[span.to - firstDay] ?? 0);
        const usable = series.usable[last] ?? 0;
        expect(usable).toBeCloseTo((series.got[last] ?? 0) + ready, 8);
      }),
      { numRuns: 100, seed: 6 },
    );
  });

  test('the bands of the whole run and its ledger tell the same grams', () => {
    fc.assert(
      fc.property(anySeason, (result) => {
        const to = firstDay + days - 1;
        const series = seasonSeries(result, { from: firstDay, to }, 1.3);
        const ledger = bedLedger(result, firstDay, to);
        const band = (name: string) =>
          series.bands.find((candidate) => candidate.name === name)?.grams.at(-1) ?? 0;
        const moved = (key: string) =>
          ledger.moved.find((line) => line.key === key)?.gM2 ?? Number.NaN;
        const cameIn = (key: string) =>
          ledger.cameIn.find((line) => line.key === key)?.gM2 ?? Number.NaN;
        expect(band('soil')).toBeCloseTo(
          moved('released by the soil') + cameIn('reached by deeper roots'),
          8,
        );
        expect(band('rain')).toBeCloseTo(cameIn('rain'), 8);
        expect(band('air')).toBeCloseTo(cameIn('fixed from the air'), 8);
        expect(series.got.at(-1)).toBeCloseTo(
          moved('taken up by the crop') + cameIn('fixed from the air'),
          8,
        );
      }),
      { numRuns: 50, seed: 8 },
    );
  });

  test('days outside the run are refused', () => {
    expect(() => seasonSeries(quiet(), { from: firstDay - 1, to: firstDay }, 1.3)).toThrow(
      RangeError,
    );
  });
});

describe('positions are dates', () => {
  const span = { from: firstDay, to: firstDay + days - 1 };
  const layout = seasonLayout(900, span, 1);

  test('a day is one sixtieth of the plot, and the pixel in its middle is that day', () => {
    const wide = (layout.right - layout.left) / days;
    for (let day = span.from; day <= span.to; day += 1) {
      expect(layout.x(day)).toBeCloseTo(layout.left + (day - span.from) * wide, 9);
      expect(layout.dayAt(layout.x(day) + wide / 2)).toBe(day);
    }
    expect(layout.dayAt(-500)).toBe(span.from);
    expect(layout.dayAt(5000)).toBe(span.to);
  });

  test('the path of what it could use begins at the first morning and ends at the last evening', () => {
    const series = seasonSeries(quiet(), span, 1.3);
    const { demand } = supplyGeometry(series, layout, metricChartUnits.nitrogen);
    const xs = [...demand.matchAll(/[ML](-?[\d.]+),/g)].map((match) => Number(match[1]));
    expect(xs).toHaveLength(days + 1);
    expect(xs[0]).toBeCloseTo(layout.left, 3);
    expect(xs.at(-1)).toBeCloseTo(layout.right, 3);
  });

  test('layers, tests, stages and rain stand on their days', () => {
    const rain = new Float64Array(days);
    rain[10] = 20;
    rain[11] = 5;
    const result = quiet({ rain, plantings: [planting()] });
    const data = chart(result, {
      layers: [
        { id: 'a', name: 'Clippings', day: firstDay + 3, laidDepth: 8 },
        { id: 'b', name: 'Straw', day: firstDay + 40, laidDepth: 40 },
        { id: 'c', name: 'Leaves', day: firstDay + 400, laidDepth: 40 },
      ],
      tests: [{ day: firstDay + 5, mgPerKg: 12 }],
      plantings: [
        {
          id: 'p1',
          name: 'Beans',
          sown: true,
          flowerDay: firstDay + 35,
          firstHarvestDay: firstDay + 45,
        },
      ],
    });
    const marks = layerMarks(data, span, layout);
    expect(marks.map((mark) => layout.dayAt(mark.x) - firstDay)).toEqual([3, 40]);
    const heights = marks.map((mark) => mark.bottom - mark.top);
    expect((heights[1] ?? 0) / (heights[0] ?? 1)).toBeCloseTo(5, 9);

    const series = seasonSeries(result, span, 1.3);
    expect(
      nitrateGeometry(series, layout, data).tests.map((mark) => layout.dayAt(mark.x) - firstDay),
    ).toEqual([5]);

    const [bar] = plantingBars(data, span, layout);
    expect(bar?.x).toBeCloseTo(layout.x(firstDay + 20), 9);
    expect((bar?.x ?? 0) + (bar?.width ?? 0)).toBeCloseTo(layout.x(firstDay + 50), 9);
    expect(bar?.marks.map((mark) => [mark.stage, mark.day - firstDay])).toEqual([
      ['start', 20],
      ['flower', 35],
      ['pick', 45],
      ['cleared', 50],
    ]);

    const { bars } = rainBars(result, span, layout, metricChartUnits.rain);
    expect(bars.map((one) => one.day - firstDay)).toEqual([10, 11]);
    expect((bars[0]?.rain ?? 0) / (bars[1]?.rain ?? 1)).toBeCloseTo(4, 9);
  });

  test('a planting that does not stand in the view takes no row', () => {
    const run = planting();
    const data = chart(quiet({ plantings: [run] }), {
      plantings: [
        { id: 'p1', name: 'Beans', sown: true, flowerDay: null, firstHarvestDay: null },
        { id: 'unknown', name: 'Peas', sown: true, flowerDay: null, firstHarvestDay: null },
      ],
    });
    const rows = (from: number, to: number) =>
      plantingsInView(data, { from: firstDay + from, to: firstDay + to }).length;
    expect([rows(0, 19), rows(0, 20), rows(49, 59), rows(50, 59)]).toEqual([0, 1, 1, 0]);
  });

  test('imagined days are one stretch from the day after today', () => {
    const kind = new Uint8Array(days).fill(2, 31);
    kind[4] = 1;
    const result = quiet({ kind });
    const series = seasonSeries(result, span, 1.3);
    expect(imaginedStretches(result, series, layout)).toEqual([
      {
        x: layout.x(firstDay + 31),
        width: layout.x(firstDay + 60) - layout.x(firstDay + 31),
      },
    ]);
  });

  test('months, weeks and days tile the view without gap or overlap', () => {
    for (const zoom of ['season', 'month', 'fortnight'] as const) {
      const shown = spanOf(zoom, firstDay + 30, span);
      const stretches = calendarStretches(zoom, shown, metricChartUnits, 8);
      expect(stretches[0]?.from).toBe(shown.from);
      expect(stretches.at(-1)?.to).toBe(shown.to);
      stretches.forEach((stretch, index) => {
        if (index > 0) expect(stretch.from).toBe((stretches[index - 1]?.to ?? 0) + 1);
      });
    }
    expect(
      calendarStretches('season', span, metricChartUnits, 8).map((stretch) => stretch.label),
    ).toEqual(['April', 'May', 'June']);
  });
});

describe('zoom', () => {
  const whole = { from: firstDay, to: firstDay + days - 1 };

  test('shows 31 or 14 days around a day, moved to stay inside the season', () => {
    for (let day = whole.from; day <= whole.to; day += 1) {
      for (const [zoom, length] of [
        ['month', 31],
        ['fortnight', 14],
      ] as const) {
        const shown = spanOf(zoom, day, whole);
        expect(shown.to - shown.from + 1).toBe(length);
        expect(shown.from).toBeGreaterThanOrEqual(whole.from);
        expect(shown.to).toBeLessThanOrEqual(whole.to);
        expect(day >= shown.from && day <= shown.to).toBe(true);
      }
    }
    expect(spanOf('season', whole.from, whole)).toEqual(whole);
  });
});

describe('nitrogen ready in the top 30 cm', () => {
  test('20 mg/kg at 1.3 kg/L is 7.8 g/m2 (cautions, on bulk density): both scales put it on one line', () => {
    const span = { from: firstDay, to: firstDay + days - 1 };
    const layout = seasonLayout(900, span, 1);
    const result = quiet();
    const series = seasonSeries(result, span, 1.3);
    const geometry = nitrateGeometry(series, layout, chart(result));
    expect(geometry.enough[0]?.y).toBeCloseTo(geometry.y(7.8), 9);
    const lab = geometry.labTicks.find((tick) => tick.value === 20);
    expect(lab?.y).toBeCloseTo(geometry.y(7.8), 9);
    expect(
      seasonSeries({ ...result, start: { ...result.start, mineralTop: 7.8 } }, span, 1.3)
        .nitrateMgPerKg[0],
    ).toBeCloseTo(20, 9);
  });

  test('ticks are round in the unit that is read', () => {
    const span = { from: firstDay, to: firstDay + days - 1 };
    const layout = seasonLayout(900, span, 1);
    const geometry = nitrateGeometry(
      seasonSeries(quiet(), span, 1.3),
      layout,
      chart(quiet(), { units: usChartUnits }),
    );
    for (const tick of geometry.ticks) {
      expect((tick.value * 10) % 1).toBeCloseTo(0, 6);
      expect(tick.y).toBeCloseTo(geometry.y(tick.value / usChartUnits.nitrogen.perInside), 9);
    }
  });
});

describe('state on a day', () => {
  const result = quiet();
  const data = chart(result, {
    verdict: { state: 'short', turnsOn: null },
    history: [
      { day: firstDay + 2, state: 'nothing planted' },
      { day: firstDay + 9, state: 'about right' },
      { day: firstDay + 16, state: 'about right' },
      { day: firstDay + 23, state: 'short' },
    ],
  });

  test('is what was last known then, and nothing of days to come', () => {
    expect(stateOn(data, firstDay)).toBeNull();
    expect(stateOn(data, firstDay + 8)).toBe('nothing planted');
    expect(stateOn(data, firstDay + 22)).toBe('about right');
    expect(stateOn(data, firstDay + 30)).toBe('short');
    expect(stateOn(data, firstDay + 31)).toBeNull();
  });

  test('is drawn as runs of one state, the last one up to today', () => {
    const span = { from: firstDay, to: firstDay + days - 1 };
    const layout = seasonLayout(900, span, 1);
    const runs = stateSegments(data, span, layout);
    expect(runs.map((run) => [run.state, run.from - firstDay, run.to - firstDay])).toEqual([
      ['nothing planted', 2, 8],
      ['about right', 9, 22],
      ['short', 23, 30],
    ]);
    for (const run of runs) {
      for (let day = run.from; day <= run.to; day += 1) expect(stateOn(data, day)).toBe(run.state);
      expect(run.x).toBeCloseTo(layout.x(run.from), 9);
    }
  });
});

test('a day is told by where its weather is from', () => {
  const data = chart(quiet(), {
    origins: new Map([
      [firstDay + 3, 'downloaded'],
      [firstDay + 5, 'own'],
    ]),
  });
  const series = seasonSeries(data.result, { from: firstDay, to: firstDay + days - 1 }, 1.3);
  expect(readDay(data, series, firstDay + 3).kind).toBe('downloaded');
  expect(readDay(data, series, firstDay + 4).kind).toBe('measured');
  expect(readDay(data, series, firstDay + 5).kind).toBe('own');
  expect(spokenReading(data, readDay(data, series, firstDay + 3))).toContain(
    'weather downloaded for the place',
  );
});

describe('the table has the numbers of the drawing', () => {
  test('weekly rows end on the last day, add the rain of their days, and read what the chart reads', () => {
    fc.assert(
      fc.property(anySeason, anySpan, (season, span) => {
        const result = {
          ...season,
          rain: Float64Array.from({ length: days }, (_value, day) => (day * 7) % 11),
        };
        const data = chart(result);
        const series = seasonSeries(result, span, 1.3);
        const rows = weeklyReadings(data, series);
        expect(rows.at(-1)?.day).toBe(span.to);
        let rain = 0;
        for (let day = span.from; day <= span.to; day += 1)
          rain += result.rain[day - firstDay] ?? 0;
        expect(rows.reduce((sum, row) => sum + row.rain, 0)).toBeCloseTo(rain, 9);
        for (const row of rows) {
          const read = readDay(data, series, row.day);
          expect(row.demand).toBe(read.demand);
          expect(row.supply).toBe(read.supply);
          const sources = row.bands.filter((band) => band.name !== 'start');
          expect(sources.map((band) => band.name)).toEqual([...supplySources]);
          expect(row.bands.reduce((sum, band) => sum + band.grams, 0)).toBeCloseTo(row.supply, 9);
        }
      }),
      { numRuns: 50, seed: 9 },
    );
  });

  test('what happened in a week is told once, in order', () => {
    const result = quiet({ plantings: [planting()] });
    const data = chart(result, {
      layers: [{ id: 'a', name: 'Clippings', day: firstDay + 21, laidDepth: 8 }],
      plantings: [
        { id: 'p1', name: 'Beans', sown: true, flowerDay: null, firstHarvestDay: firstDay + 45 },
      ],
    });
    const span = { from: firstDay, to: firstDay + days - 1 };
    const told = weeklyReadings(data, seasonSeries(result, span, 1.3)).flatMap(
      (row) => row.happened,
    );
    expect(told).toEqual([
      'Beans: sown',
      'Clippings, 8 mm laid',
      'Beans: first pick',
      'Beans: cleared',
    ]);
  });
});

describe('no line through words', () => {
  const span = { from: firstDay, to: firstDay + days - 1 };
  test('names and stages of plantings and words of states are known where they lie', () => {
    const layout = seasonLayout(900, span, 1);
    const result = quiet({ plantings: [planting()] });
    const data = chart(result, {
      plantings: [
        {
          id: 'p1',
          name: 'Sweet potatoes and leeks',
          sown: false,
          flowerDay: null,
          firstHarvestDay: null,
        },
      ],
    });
    const bars = plantingBars(data, span, layout);
    const words = wordsInStrips(stateSegments(data, span, layout), bars, layout);
    // planted ten days before today: its name runs over today's line
    const today = layout.x(result.today + 0.5);
    const row = layout.plantings[0]!;
    expect(words.some(({ top, from, to }) => top === row.top && from < today && to > today)).toBe(
      true,
    );
  });

  test('a soil test says its number on the side where today’s line does not run', () => {
    const layout = seasonLayout(900, span, 1);
    const series = seasonSeries(quiet(), span, 1.3);
    const { tests } = nitrateGeometry(
      series,
      layout,
      chart(quiet(), {
        tests: [
          { day: firstDay + 25, mgPerKg: 12 },
          { day: firstDay + 2, mgPerKg: 12 },
        ],
      }),
    );
    expect(tests.map(({ side }) => side)).toEqual(['before', 'after']);
  });

  test('on 336 px everything fits, and a late planting’s name stays inside', () => {
    const layout = seasonLayout(336, span, 1);
    expect(layout.width).toBe(336);
    expect(layout.isNarrow).toBe(true);
    const result = quiet({ plantings: [planting({ startDay: firstDay + 58, clearingDay: null })] });
    const [bar] = plantingBars(
      chart(result, {
        plantings: [
          { id: 'p1', name: 'Sweet potatoes', sown: true, flowerDay: null, firstHarvestDay: null },
        ],
      }),
      span,
      layout,
    );
    expect((bar?.nameX ?? 0) + textWidth('Sweet potatoes', true)).toBeLessThanOrEqual(336.01);
  });
});

describe('a season on paper', () => {
  const span = { from: 0, to: 364 };
  test('stands whole on one page; its tall panels give way, and no further than they can be read', () => {
    for (const plantings of [1, 2, 3, 4]) {
      const free = seasonLayout(672, span, plantings);
      // Letter inside 15 mm: 279.4 mm less 30 are 942 px (ANSI Y14.1)
      expect(free.height).toBeGreaterThan(942);
      const paper = seasonLayout(672, span, plantings, 930);
      expect(paper.height).toBe(930);
      const tops = paper.panels.map(({ top }) => top);
      expect(tops).toEqual([...tops].sort((one, other) => one - other));
      const tall = ({ top, bottom }: { top: number; bottom: number }) => bottom - top;
      expect(tall(paper.supply)).toBeGreaterThanOrEqual(120);
      expect(tall(paper.nitrate)).toBeGreaterThanOrEqual(60);
      expect(tall(paper.rain)).toBe(tall(free.rain));
    }
    const many = seasonLayout(672, span, 9, 930);
    expect([many.supply.bottom - many.supply.top, many.nitrate.bottom - many.nitrate.top]).toEqual([
      120, 60,
    ]);
  });
  test('is as it was where there is room', () => {
    expect(seasonLayout(900, span, 2, 2000).panels).toEqual(seasonLayout(900, span, 2).panels);
  });
});
