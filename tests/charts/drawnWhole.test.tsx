// What the geometry has reckoned stands in the page: the beds of the sample, drawn, mark by mark.
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import { SeasonChart } from '../../app/charts/season/Chart';
import {
  imaginedStretches,
  nitrateGeometry,
  supplyGeometry,
} from '../../app/charts/season/geometry';
import { seasonLayout } from '../../app/charts/season/layout';
import { seasonSeries } from '../../app/charts/season/series';
import {
  layerMarks,
  plantingBars,
  plantingsInView,
  rainBars,
  stateSegments,
} from '../../app/charts/season/strips';
import { warmthGeometry } from '../../app/charts/season/warmth';
import { SectionChart, panelsOf } from '../../app/charts/section/Chart';
import { sectionFacts } from '../../app/charts/section/facts';
import { parseGarden } from '../../app/document/parse';
import { dayAhead } from '../../app/screens/beds/sectionData';
import { seasonChartData, seasonSpan } from '../../app/screens/beds/chartData';
import { amountWithUnit } from '../../app/words/chartFormat';
import { metricChartUnits as units } from '../../app/words/chartUnits';
import { testWords } from '../../app/words/seasonChart';
import { sectionBeds } from './sectionBeds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('the sample cannot be read');
const garden = parsed.value;
const beds = sectionBeds();

/** The paths of a class, or of all, as they stand in the markup. */
const paths = (markup: string, name: string): readonly string[] =>
  [...markup.matchAll(/<path\b[^>]*>/g)].flatMap(([tag]) => {
    const classes = / class="([^"]*)"/.exec(tag)?.[1]?.split(' ') ?? [];
    return classes.includes(name) ? [/ d="([^"]*)"/.exec(tag)?.[1] ?? ''] : [];
  });
const rects = (markup: string, name: string): number =>
  [...markup.matchAll(/<rect\b[^>]*class="([^"]*)"/g)].filter(([, classes = '']) =>
    classes.split(' ').includes(name),
  ).length;

describe.each(beds.map((bed) => [bed.name, bed] as const))('section of %s', (name, bed) => {
  const { season } = bed.results;
  const now = bed.on(season.today);
  const ahead = { data: bed.on(dayAhead(bed.results)), title: 'In four weeks' };
  const evenings = [{ data: now, title: 'Today' }, ahead];
  const markup = renderToStaticMarkup(
    <SectionChart bedName={name} now={now} ahead={ahead} units={units} />,
  );
  const panels = markup.split('section-key')[0]!.split('class="section-panel"').slice(1);

  test('both evenings are drawn with every layer, root, plant and level of water', () => {
    // as wide as it is taken to be before the page has a width
    const drawings = panelsOf(evenings, 760, units).map(({ drawing }) => drawing);
    expect(panels).toHaveLength(2);
    for (const [at, drawing] of drawings.entries()) {
      const panel = panels[at]!;
      expect(paths(panel, 'section-layer-edge')).toEqual(drawing.cover.map(({ path }) => path));
      expect(paths(panel, 'section-roots')).toEqual(drawing.plants.map(({ roots }) => roots));
      expect(paths(panel, 'section-water')).toHaveLength(2);
      for (const [layer, { level }] of drawing.soil.entries())
        expect(paths(panel, 'section-water')[layer]).toContain(` ${level}H`);
      for (const { plant, paths: strokes } of drawing.plants) {
        expect(panel).toContain(`section-plant-${plant.stage} section-habit-${plant.habit}`);
        for (const [part, stroke] of strokes.flatMap((one) => Object.entries(one)))
          expect(paths(panel, `section-part-${part}`).join('')).toContain(stroke);
      }
      expect(paths(panel, 'section-surface')).toHaveLength(1);
    }
  });

  test('dots that can be counted in it, times the amount it states, are the pools, within one dot', () => {
    const [{ scale }] = panelsOf(evenings, 760, units) as [ReturnType<typeof panelsOf>[number]];
    expect(markup).toContain(`Each dot is ${amountWithUnit(scale.gramsPerDot, units.nitrogen)}`);
    for (const [at, { data }] of evenings.entries()) {
      const facts = sectionFacts(data);
      const index = data.day - season.firstDay;
      const counted = (kind: string) =>
        paths(panels[at]!, `section-dot-${kind}`).join('').split('M').length - 1;
      const pools = season.pools.mineralTop[index]! + season.pools.mineralLower[index]!;
      // one dot for each of the two layers, which are rounded each on its own: half of it
      expect(Math.abs(counted('ready') * scale.gramsPerDot - pools)).toBeLessThanOrEqual(
        scale.gramsPerDot + 1e-9,
      );
      for (const kind of ['held', 'unrotted'] as const)
        expect(
          Math.abs(
            counted(kind) * scale.gramsPerDot -
              facts.top.nitrogen[kind] -
              facts.lower.nitrogen[kind],
          ),
        ).toBeLessThanOrEqual(scale.gramsPerDot + 1e-9);
    }
  });
});

describe.each(beds.map((bed) => [bed.name, bed] as const))('season of %s', (name, bed) => {
  const { results } = bed;
  const { season } = results;
  const span = seasonSpan(garden, results);
  const likelyDays = [season.today - 14, season.today + 28, season.today + 60];
  const data = {
    ...seasonChartData(
      garden,
      results,
      [{ day: season.today - 14, nitrogen: 'short', ratio: null }],
      units,
    ),
    likely: likelyDays.map((day) => ({ day, low: 4, high: 12 })),
  };
  const whole = renderToStaticMarkup(<SeasonChart {...data} {...span} bedName={name} />);
  // after the line of the soil's warmth comes the key, which repeats the marks
  const end = whole.indexOf('</path>', whole.indexOf('chart-line-soil'));
  const [markup, key] = [whole.slice(0, end), whole.slice(end)];
  const coverCrops = data.plantings.filter((one) => one.isCoverCrop).map(({ id }) => id);
  const series = seasonSeries(season, span, data.bulkDensityKgPerL, coverCrops);
  const layout = seasonLayout(960, span, plantingsInView(data, span).length);

  test('supply in bands by source, with what it could use and has got', () => {
    const supply = supplyGeometry(series, layout, units.nitrogen);
    for (const { path, edge, isSeen } of supply.bands) {
      expect(markup).toContain(`d="${path}"`);
      if (isSeen) expect(paths(markup, 'chart-band-edge')).toContain(edge);
    }
    expect(paths(markup, 'chart-line-demand')).toContain(supply.demand);
    expect(paths(markup, 'chart-line-got')).toContain(supply.got);
  });

  test('nitrate with its likely range, the published band and what was measured', () => {
    const nitrate = nitrateGeometry(series, layout, data);
    expect(paths(markup, 'chart-line-nitrate')).toEqual([nitrate.path]);
    expect(paths(markup, 'chart-likely')).toEqual([nitrate.likely!.path]);
    expect(paths(markup, 'chart-likely-edge')).toEqual([nitrate.likely!.edges]);
    const band = data.cropBand;
    const drawn = paths(markup, 'chart-enough');
    // enough.cropBand: the crop's own row, read off its own scale
    const y = (mgPerKg: number) => nitrate.labTicks.find(({ value }) => value === mgPerKg)?.y;
    expect(drawn).toHaveLength(band ? 2 : 0);
    if (band)
      for (const [at, mgPerKg] of [band.lowMgPerKg, band.highMgPerKg].entries()) {
        const line = Number(/M\S+ (\S+)/.exec(drawn[at]!)?.[1]);
        const tick = y(mgPerKg);
        if (tick !== undefined) expect(line).toBeCloseTo(tick, 6);
        else expect(line).toBeLessThan(nitrate.panel.bottom);
      }
    const tests = data.tests!.filter(({ day }) => day >= span.from && day <= span.to);
    expect(paths(markup, 'chart-test')).toHaveLength(tests.length);
    for (const { mgPerKg } of tests) expect(markup).toContain(`>${testWords(mgPerKg)}<`);
  });

  test('states, stages, layers, rain, warmth, today and the days that are imagined', () => {
    const bars = plantingBars(data, span, layout);
    expect(paths(markup, 'chart-state-bar')).toHaveLength(stateSegments(data, span, layout).length);
    expect(paths(markup, 'chart-stem')).toHaveLength(bars.length);
    const stages = bars.flatMap(({ marks }) => marks.map(({ stage }) => stage));
    expect(paths(markup, 'chart-stage')).toHaveLength(stages.length);
    expect(paths(key, 'chart-stage')).toHaveLength(new Set(stages).size);
    expect(rects(markup, 'chart-layer')).toBe(layerMarks(data, span, layout).length);
    const rain = rainBars(season, span, layout, units.rain).bars;
    const wet = rain.filter((one) => one.kind === 'imagined' && one.rain > 0);
    expect(rects(markup, 'chart-rain')).toBe(rain.length);
    expect(paths(markup, 'chart-rain-top')).toHaveLength(wet.length);
    const warmth = warmthGeometry(season, span, layout, units);
    expect(paths(markup, 'chart-air')).toContain(warmth.air);
    expect(paths(markup, 'chart-line-soil')).toContain(warmth.soil);
    expect(paths(markup, 'chart-today').length).toBeGreaterThanOrEqual(2);
    const hatched = [...markup.matchAll(/fill="url\(#[^"]*-imagined\)"/g)];
    expect(hatched.length).toBe(
      imaginedStretches(season, series, layout).length * layout.panels.length,
    );
    expect(hatched.length).toBeGreaterThan(0);
    // the chosen day in every panel
    expect(rects(markup, 'chart-cross-day')).toBe(layout.panels.length);
  });
});

test('the beds drawn have tests, layers, stages and roots to be left out', () => {
  expect(garden.events.some((event) => event.kind === 'soil test')).toBe(true);
  expect(beds.some((bed) => bed.on(bed.results.season.today).layers.length > 3)).toBe(true);
  expect(beds.some((bed) => bed.on(bed.results.season.today).plants.length > 1)).toBe(true);
});
