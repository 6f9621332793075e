// The imagined seasons of a bed gone on with through the season to come.
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../../app/core/days';
import { bandOf } from '../../../app/core/season/draws/bands';
import { drawnSeason, makeDraws } from '../../../app/core/season/draws/drawnSeason';
import { drawnWeather } from '../../../app/core/season/draws/drawnWeather';
import {
  startNextSeason,
  type NextSeasonRange,
} from '../../../app/core/season/draws/nextSeasonDraws';
import {
  mostBlocks,
  poorShare,
  runDraws,
  type DrawsQuestion,
} from '../../../app/core/season/draws/runDraws';
import { nextSeason } from '../../../app/core/season/nextSeason';
import { runSeason } from '../../../app/core/season/season';
import { mgPerKgFromGramsPerM2 } from '../../../app/core/units';
import { drawsQuestion } from '../../../app/document/drawsQuestion';
import { nextSeasonQuestions } from '../../../app/document/nextSeasonQuestion';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Garden } from '../../../app/document/schema';
import { limits } from '../../../app/tables/thresholds';
import { bigGarden } from '../../bench/bigGarden';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const sample = parsed.value;
const today = dayOf('2013-06-15');
const idOf = (name: string): string => sample.beds.find((bed) => bed.name === name)!.id;
const asked = (garden: Garden, bedId: string, count: number): DrawsQuestion =>
  nextSeasonQuestions(garden, today)(bedId, count);
function toTheEnd(question: DrawsQuestion): NextSeasonRange {
  const run = startNextSeason(question);
  while (!run.isDone) run.next();
  return run.answer();
}
const widthOf = ({ low, high }: NextSeasonRange): number =>
  low.reduce((sum, grams, evening) => sum + high[evening]! - grams, 0);

describe('the next season in imagined seasons', () => {
  test.each(['Gate bed', 'Resting bed', 'Bean row, straw half'])(
    '%s: begins where this season’s imagined seasons end',
    (name) => {
      const count = 40;
      const next = toTheEnd(asked(sample, idOf(name), count));
      const now = runDraws(drawsQuestion(sample, idOf(name), today, count), limits)!;
      const { soil } = asked(sample, idOf(name), 1).input;
      const perGram = mgPerKgFromGramsPerM2(1, soil.bulkDensityKgPerL, 30);
      const end = now.nitrate.at(-1)!;
      expect(textFromDay(next.firstDay)).toBe('2014-01-01');
      expect(textFromDay(now.nitrateDays.at(-1)!)).toBe('2013-12-31');
      expect(next.low[0]! * perGram).toBeCloseTo(end.low, 9);
      expect(next.middle[0]! * perGram).toBeCloseTo(end.middle, 9);
      expect(next.high[0]! * perGram).toBeCloseTo(end.high, 9);
      expect(next.effectiveCount).toBeCloseTo(now.effectiveCount, 6);
      expect(next.count).toBe(now.count);
    },
  );

  test('is what whole runs of the same draws say, and in each of them the books close', () => {
    const count = 12;
    const question = asked(sample, idOf('Resting bed'), count);
    const { input, spread, weather, seed } = question;
    const next = toTheEnd(question);
    // nothing was measured or seen on this bed that would weigh its seasons
    expect(next.effectiveCount).toBeCloseTo(count, 9);
    const draws = makeDraws(seed, count);
    const runs = Array.from({ length: count }, (_, draw) => {
      const sky = drawnWeather(input, weather, seed, draw);
      return runSeason(drawnSeason(input, spread, sky, draws, draw));
    });
    for (const { residual } of runs) expect(residual).toBeLessThan(1e-9);
    const alike = new Float64Array(count).fill(1);
    expect(next.low).toHaveLength(366);
    for (let evening = 0; evening < next.low.length; evening++) {
      const at = next.firstDay - input.firstDay + evening - 1;
      const ready = Float64Array.from(runs, ({ pools }) => pools.mineralTop[at]!);
      const band = bandOf(ready, alike);
      expect(next.low[evening]).toBeCloseTo(band.low, 9);
      expect(next.middle[evening]).toBeCloseTo(band.middle, 9);
      expect(next.high[evening]).toBeCloseTo(band.high, 9);
    }
    // they start from ends of their own
    const ends = runs.map(({ pools }) => pools.mineralTop[next.firstDay - input.firstDay - 1]);
    expect(new Set(ends).size).toBe(count);
  });

  test('is the same for ever under one seed, and another under another', () => {
    const question = asked(sample, idOf('Far bed'), 30);
    expect(toTheEnd(question)).toEqual(toTheEnd(question));
    expect(toTheEnd({ ...question, seed: question.seed + 1 }).high).not.toEqual(
      toTheEnd(question).high,
    );
  });

  test('holds the likely course at least as often as it says, on every bed', () => {
    for (const { id, name } of sample.beds) {
      const question = asked(sample, id, 100);
      const { low, high } = toTheEnd(question);
      const { pools, days } = nextSeason(question.input);
      const inside = pools.mineralTop.filter(
        (grams, day) => grams >= low[day + 1]! && grams <= high[day + 1]!,
      ).length;
      expect(inside / days, name).toBeGreaterThan(0.8);
    }
  });

  describe('what was measured makes it narrower', () => {
    type Measured = {
      readonly nitrateMgPerKg: number | null;
      readonly organicMatterPercent: number | null;
    };
    const withTest = (garden: Garden, bedId: string, measured: Measured): Garden => ({
      ...garden,
      events: [
        ...garden.events,
        {
          id: 'measured',
          date: '2013-06-14',
          kind: 'soil test',
          bedId,
          depthCentimetres: 30,
          ...measured,
        },
      ],
    });
    /** the sample with a bed nobody measured anything on */
    const unmeasured = (bedId: string): Garden => ({
      ...sample,
      events: sample.events.filter(
        (event) =>
          !('bedId' in event && event.bedId === bedId) ||
          (event.kind !== 'soil test' && event.kind !== 'look and dig'),
      ),
      beds: sample.beds.map((bed) =>
        bed.id === bedId ? { ...bed, organicMatterPercent: null, mulchYears: 'a few' } : bed,
      ),
    });

    test('how much organic matter its soil holds', () => {
      const bedId = idOf('Resting bed');
      const garden = unmeasured(bedId);
      const question = asked(garden, bedId, 100);
      const { organicMatterPercent } = question.input.soil;
      const known = withTest(garden, bedId, { nitrateMgPerKg: null, organicMatterPercent });
      expect(asked(known, bedId, 1).input.soil).toEqual(question.input.soil);
      expect(widthOf(toTheEnd(asked(known, bedId, 100)))).toBeLessThan(
        0.9 * widthOf(toTheEnd(question)),
      );
    });

    test('what stood ready in it, found where it was thought to be', () => {
      const bedId = idOf('Gate bed');
      const garden = unmeasured(bedId);
      const { nitrate, nitrateDays } = runDraws(drawsQuestion(garden, bedId, today, 200), limits)!;
      const { middle } = nitrate[nitrateDays.findLastIndex((day) => day < today)]!;
      const known = withTest(garden, bedId, { nitrateMgPerKg: middle, organicMatterPercent: null });
      const unknownRange = toTheEnd(asked(garden, bedId, 200));
      const range = toTheEnd(asked(known, bedId, 200));
      expect(unknownRange.effectiveCount).toBeCloseTo(unknownRange.count, 6);
      expect(range.effectiveCount).toBeLessThan(0.8 * range.count);
      expect(widthOf(range)).toBeLessThan(0.95 * widthOf(unknownRange));
    });
  });

  test('a test that few draws foresaw brings more of them', () => {
    const bedId = idOf('Kitchen bed');
    const question = asked(sample, bedId, 100);
    // a test that hardly errs, of far more than most draws find
    const tests = [{ day: dayOf('2013-06-14'), mgPerKg: 20, spread: 0.1 }];
    const next = toTheEnd({ ...question, tests });
    expect(next.count).toBe(mostBlocks * 100);
    expect(next.effectiveCount).toBeLessThan(poorShare * next.count);
    expect(next.low.every((grams, evening) => grams <= next.high[evening]!)).toBe(true);
  });

  test('a run that ends with this season has none', () => {
    const question = drawsQuestion(sample, idOf('Far bed'), today, 10);
    expect(() => startNextSeason(question)).toThrow(RangeError);
  });
});

describe('where whole years of record stand in for the weather to come', () => {
  const garden = bigGarden({ beds: 1, years: 4, seed: 5 });
  const bedId = garden.beds[0]!.id;

  test('the year after it goes on from each of them, the first from the last', () => {
    const now = drawsQuestion(garden, bedId, today, 4).weather;
    const { weather, input } = asked(garden, bedId, 4);
    if (now.kind !== 'years' || weather.kind !== 'years') throw new Error('No years of record');
    const years = now.seasons.length;
    expect(years).toBeGreaterThanOrEqual(3);
    expect(weather.seasons).toHaveLength(years);
    const start = dayOf('2014-01-01') - input.firstDay;
    // a day in October of a year and of the next: days of the record by their date
    const october = dayOf('2013-10-10') - input.firstDay;
    for (let at = 0; at < years; at++) {
      const own = weather.seasons[at]!;
      const after = weather.seasons[(at + 1) % years]!;
      expect(own.maximumCelsius[october]).toBe(now.seasons[at]!.maximumCelsius[october]);
      expect(own.maximumCelsius[october + 365]).toBe(after.maximumCelsius[october]);
      expect(own.rainMillimetres.slice(start + 100, start + 200)).not.toEqual(
        own.rainMillimetres.slice(start - 265, start - 165),
      );
    }
    const next = toTheEnd(asked(garden, bedId, 20));
    expect(widthOf(next)).toBeGreaterThan(0);
  });
});
