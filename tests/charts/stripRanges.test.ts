// Where a bed of the season to come lies in most imagined seasons: drawn, told, tabled, explained.
import { describe, expect, test } from 'vitest';
import type { BedStrip, StripRange } from '../../app/charts/strips/data';
import { bedStripGeometry, rangeOn, readyOn } from '../../app/charts/strips/geometry';
import { stripExtremes, stripLayout, stripScale } from '../../app/charts/strips/layout';
import { stripsTable } from '../../app/charts/strips/tableData';
import { dayOf } from '../../app/core/days';
import { dayKinds } from '../../app/core/season/input';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Shown } from '../../app/screens/shown';
import { readyOnDayWhy } from '../../app/screens/why/stripWhys';
import { metricChartUnits as units, usChartUnits } from '../../app/words/chartUnits';
import {
  bedsOnDay,
  comingRangesWords,
  comingStoppedWords,
  readyWords,
} from '../../app/words/seasonPlaceWords';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const garden = parsed.value;
const [from, to] = [dayOf('2014-01-01'), dayOf('2014-12-31')];
const span = { from, to };
const today = dayOf('2013-06-15');
const days = to - from + 1;
const evenings = (gramsOn: (evening: number) => number): Float64Array =>
  Float64Array.from({ length: days + 1 }, (_value, evening) => gramsOn(evening));
const range: StripRange = {
  firstDay: from,
  low: evenings((evening) => 1 + evening / 400),
  high: evenings((evening) => 4 + evening / 100),
  count: 1000,
  effectiveCount: 1000,
};
const bed: BedStrip = {
  bedId: garden.beds[0]!.id,
  name: 'Gate bed',
  run: {
    firstDay: from,
    days,
    today,
    kind: new Uint8Array(days).fill(dayKinds.indexOf('imagined')),
    pools: { mineralTop: new Float64Array(days).fill(2.5) },
    start: { mineralTop: 2.5 },
  },
  range,
  bulkDensityKgPerL: 1.25,
  plantings: [],
  layers: [],
  crowded: [],
  troubles: [],
};

describe('the range of a strip', () => {
  test('is drawn at its own grams on every evening, in the scale of the soil', () => {
    const layout = stripLayout(1200, span, false);
    const extremes = stripExtremes([bed], span);
    // the thickest the soil may likely be has room
    expect(extremes.most).toBeCloseTo(Math.max(...range.high), 12);
    const scale = stripScale(extremes, units.nitrogen, false);
    const { likely, surface } = bedStripGeometry(bed, layout, scale);
    const points = [...likely!.edges.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(
      ([, x, y]) => [Number(x), (Number(y) - surface) / scale.pxPerGram] as const,
    );
    expect(points).toHaveLength(2 * (days + 1));
    for (let evening = 0; evening <= days; evening++) {
      const [low, high] = [points[evening]!, points[days + 1 + evening]!];
      // path coordinates keep three digits
      expect(low[0]).toBeCloseTo(layout.x(from + evening), 2);
      expect(high[0]).toBeCloseTo(layout.x(from + evening), 2);
      expect(low[1]).toBeCloseTo(range.low[evening]!, 2);
      expect(high[1]).toBeCloseTo(range.high[evening]!, 2);
    }
  });

  test('there is none on days it does not know, nor of a season that tells none', () => {
    expect(rangeOn(bed, from - 1)).toEqual({ low: 1, high: 4 });
    expect(rangeOn(bed, from - 2)).toBeNull();
    expect(rangeOn(bed, to)!.low).toBeCloseTo(1 + days / 400, 12);
    expect(rangeOn(bed, to + 1)).toBeNull();
    for (const other of ['to come', 'not there'] as const) {
      const waiting = { ...bed, range: other };
      expect(rangeOn(waiting, from)).toBeNull();
      const scale = stripScale(stripExtremes([waiting], span), units.nitrogen, false);
      const layout = stripLayout(1200, span, false);
      expect(bedStripGeometry(waiting, layout, scale).likely).toBeNull();
    }
  });

  test('is taken away beside the likely course, in the unit that is read', () => {
    const { head, rows } = stripsTable([bed, { ...bed, range: 'to come' }], span, usChartUnits);
    expect(head.slice(2, 6)).toEqual([
      expect.stringMatching(/^Gate bed, ready .*\[lb/),
      expect.stringMatching(/^Gate bed, 10 % of seasons below \[lb/),
      expect.stringMatching(/^Gate bed, 10 % of seasons above \[lb/),
      expect.stringMatching(/^Gate bed, ready .*\[lb/),
    ]);
    expect(rows.every((row) => row.length === head.length)).toBe(true);
    // 1 g/m2 is 92.903 m2 a thousand square feet / 453.592 g a pound
    const pounds = 92.903_04 / 453.592_37;
    const last = rows.at(-1)!.slice(2, 5).map(Number);
    expect(last[0]).toBeCloseTo(2.5 * pounds, 9);
    expect(last[1]).toBeCloseTo(range.low.at(-1)! * pounds, 9);
    expect(last[2]).toBeCloseTo(range.high.at(-1)! * pounds, 9);
  });
});

describe('in words', () => {
  const ends = { low: 1, high: 4 };
  test('beside the figure itself, or why it is not there', () => {
    const said = (told: Parameters<typeof readyWords>[4]) =>
      readyWords(2.5, from, units, true, told);
    expect(said(ends)).toBe('1 January: 2.5 g/m² ready, likely 1.0 to 4.0');
    expect(said({ low: 2.5, high: 2.51 })).toBe('1 January: 2.5 g/m² ready, likely 2.5');
    expect(said('to come')).toBe('1 January: 2.5 g/m² ready, its range is still to come');
    expect(said('not there')).toBe('1 January: 2.5 g/m² ready, without a range');
    expect(said(null)).toBe('1 January: 2.5 g/m² ready');
    expect(readyWords(null, from, units, true, 'to come')).toBe(
      '1 January: no sums for these days',
    );
  });

  test('of all beds on a day, few and many', () => {
    const one = { name: 'Gate bed', grams: 2.5, range: ends };
    expect(bedsOnDay([one, { name: 'Far bed', grams: 1 }], units)).toBe(
      'Ready: Gate bed 2.5, likely 1.0 to 4.0; Far bed 1.0 g/m².',
    );
    const many = Array.from({ length: 9 }, (_value, at) => ({ ...one, grams: at + 1 }));
    expect(bedsOnDay(many, units)).toBe(
      'Most is ready on Gate bed, 9.0 g/m², likely 1.0 to 4.0; least on Gate bed, 1.0 g/m², likely 1.0 to 4.0.',
    );
  });

  test('what the ranges rest on, also where they were stopped', () => {
    expect(comingRangesWords([])).toBe('No next season has been imagined yet.');
    expect(comingRangesWords([1000, 1000])).toBe(
      'Ranges hold 8 times in 10, over 1,000 imagined seasons of each bed.',
    );
    expect(comingStoppedWords([], 3)).toMatch(/stopped: no bed has its range\.$/);
    expect(comingStoppedWords([100], 3)).toMatch(/stopped: 1 of 3 beds have their range\.$/);
    expect(comingStoppedWords([100, 100, 1000], 3)).toMatch(
      /stopped\. Ranges hold 8 times in 10, over 100 to 1,000 imagined seasons of each bed\.$/,
    );
  });

  test('the why tells the range of that very evening and where it is from', () => {
    const shown = { chart: units } as Shown;
    const why = (strip: BedStrip) => readyOnDayWhy({ garden, draws: undefined, shown }, strip, to);
    expect(readyOn(bed, to)).toBe(2.5);
    const [low, high] = [range.low.at(-1)!, range.high.at(-1)!];
    expect(why(bed).range).toBe(`${low.toFixed(1)} to ${high.toFixed(1)} g/m², 8 times in 10`);
    expect(why(bed).sources.join(' ')).toMatch(
      /from 1,000 imagined seasons\. Each goes on from what its own imagined end of this season left/,
    );
    expect(why(bed).sources.join(' ')).not.toMatch(/Weighed by what was measured/);
    const weighed = { ...bed, range: { ...range, effectiveCount: 90 } };
    expect(why(weighed).sources.join(' ')).toMatch(/Weighed by what was measured.*90 of 1,000/);
    expect(why({ ...bed, range: 'to come' }).range).toBeNull();
  });
});
