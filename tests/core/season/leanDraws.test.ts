import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { quantileDots } from '../../../app/core/season/draws/quantileDots';
import { bandOf, effectiveCount } from '../../../app/core/season/draws/bands';
import { drawnSeason, makeDraws } from '../../../app/core/season/draws/drawnSeason';
import { drawnWeather } from '../../../app/core/season/draws/drawnWeather';
import {
  headlines,
  runDraws,
  sharedDraws,
  startDraws,
  type DrawsAnswer,
  type DrawsQuestion,
} from '../../../app/core/season/draws/runDraws';
import type { Drawn, SeasonSpread } from '../../../app/core/season/draws/spread';
import { flowIndex } from '../../../app/core/season/flows';
import { dayKinds, type BedSeason } from '../../../app/core/season/input';
import { runPlan, lowerDepthFor } from '../../../app/core/season/runPlan';
import type { SeasonResult } from '../../../app/core/season/result';
import { runSeason } from '../../../app/core/season/season';
import { seasonFirstDay } from '../../../app/core/season/seasonAccount';
import { bedVerdict } from '../../../app/core/season/state';
import { nitrogenStates } from '../../../app/core/season/verdict';
import { newWatch, watchSeason } from '../../../app/core/season/watchSeason';
import { watchedOf } from '../../../app/core/season/watchedSeason';
import { mgPerKgFromGramsPerM2 } from '../../../app/core/units';
import { parseGarden } from '../../../app/document/parse';
import { bedSeason } from '../../../app/document/seasonInput';
import { seasonSpread } from '../../../app/document/seasonSpread';
import { coefficientRows } from '../../../app/tables/coefficients';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { limits } from '../../../app/tables/thresholds';
import { anyBed } from './anyBed';

const file = join(import.meta.dirname, '../../../assets/gardens/sample.mowings');
const parsed = parseGarden(readFileSync(file, 'utf8'));
if (!parsed.ok) throw new Error('The sample does not open');
const sample = parsed.value;
const today = dayOf('2013-06-15');
const sampleBeds = sample.beds.map(({ id }) => bedSeason(sample, id, today));
const randomBeds = fc.sample(anyBed, { numRuns: 300, seed: 20_130_615 });

const washedOut = flowIndex('mineralLower', 'leached', 'washed out');
const sum = (values: Iterable<number>): number => {
  let all = 0;
  for (const value of values) all += value;
  return all;
};

/** What plantings wanted, got and fixed in the season that holds today, from whole runs. */
function ofSeason(season: BedSeason, result: SeasonResult) {
  const from = seasonFirstDay(season, season.today);
  // the same run, ended on the evening before
  const earlier = from > season.firstDay ? runSeason({ ...season, lastDay: from - 1 }) : null;
  return result.plantings.map((one, at) => {
    const hasGrownAgain = one.earlierSeasons?.at(-1)?.lastDay === from - 1;
    const before = hasGrownAgain ? undefined : earlier?.plantings[at];
    const met = (of = one): number => of.demand * of.demandMet;
    return {
      need: one.demand - (before?.demand ?? 0),
      met: met() - (before ? met(before) : 0),
      fixed: one.fixed - (before?.fixed ?? 0),
    };
  });
}

/** What the draws say, from whole runs: every flow, every balance, the whole verdict. */
function answerOfWholeRuns(
  question: DrawsQuestion,
): Omit<DrawsAnswer, 'mattersMost' | 'overFeeding'> {
  const { input, spread, weather, tests, seed, count } = question;
  const draws = makeDraws(seed, count);
  const runs = Array.from({ length: count }, (_, draw) => {
    const sky = drawnWeather(input, weather, seed, draw);
    const season = drawnSeason(input, spread, sky, draws, draw);
    const result = runSeason(season);
    const verdict = bedVerdict(season, result, input.today, limits);
    return { season, result, verdict, plants: ofSeason(season, result) };
  });
  const perGram = mgPerKgFromGramsPerM2(1, input.soil.bulkDensityKgPerL, 30);
  const weights = Float64Array.from(runs, ({ result }) =>
    tests.reduce((weight, { day, mgPerKg, spread: own }) => {
      const reckoned = result.pools.mineralTop[day - input.firstDay]! * perGram;
      return weight * Math.exp(-0.5 * ((reckoned - mgPerKg) / Math.max(1.5, own * mgPerKg)) ** 2);
    }, 1),
  );
  const all = sum(weights);
  const band = (of: (run: (typeof runs)[number]) => number) =>
    bandOf(Float64Array.from(runs, of), weights);
  const nitrateDays: number[] = [];
  for (let day = input.firstDay; day < input.lastDay; day += 7) nitrateDays.push(day);
  nitrateDays.push(input.lastDay);
  const seasonFrom = seasonFirstDay(input, input.today) - input.firstDay;
  const weighted = (isCounted: (run: (typeof runs)[number]) => boolean): number =>
    runs.reduce((share, run, at) => (isCounted(run) ? share + weights[at]! : share), 0) / all;
  return {
    bedId: input.bedId,
    count,
    effectiveCount: effectiveCount(weights),
    states: Object.fromEntries(
      nitrogenStates.map((state) => [state, weighted(({ verdict }) => verdict.state === state)]),
    ) as DrawsAnswer['states'],
    ratio: runs.every(({ verdict }) => verdict.ratio !== null)
      ? band(({ verdict }) => verdict.ratio!)
      : null,
    ratioDots: runs.every(({ verdict }) => verdict.ratio !== null)
      ? quantileDots(
          Float64Array.from(runs, ({ verdict }) => verdict.ratio!),
          weights,
        )
      : null,
    needMet: band(({ plants }) => {
      const need = sum(plants.map((one) => one.need));
      const met = sum(plants.map((one) => Math.min(one.need, one.met)));
      return need > 0 ? met / need : 1;
    }),
    fixed: band(({ plants }) => sum(plants.map((one) => one.fixed))),
    leached: band(({ result }) => sum(result.flows[washedOut]!.subarray(seasonFrom))),
    nitrateDays,
    nitrate: nitrateDays.map((day) =>
      band(({ result }) => result.pools.mineralTop[day - input.firstDay]! * perGram),
    ),
  };
}

const sameAsWholeRuns = (question: DrawsQuestion): void => {
  const { mattersMost, overFeeding: _odds, needMet, ...answer } = runDraws(question, limits)!;
  expect(Object.keys(mattersMost)).toEqual([...headlines]);
  const { needMet: met, ...whole } = answerOfWholeRuns(question);
  expect(answer).toEqual(whole);
  // a whole run gives the share that was met, and what was met is read off that
  for (const end of ['low', 'middle', 'high'] as const)
    expect(needMet[end]).toBeCloseTo(met[end], 12);
};

const sampleQuestion = (input: BedSeason, count: number): DrawsQuestion => ({
  input,
  spread: seasonSpread(sample, input.bedId),
  weather: { kind: 'generated', spread: typicalWeatherSpread(40.8) },
  tests: [],
  seed: 3,
  count,
});

const factor = (name: string, low: number, high: number): Drawn => ({
  name,
  shape: 'amount',
  low,
  typical: 1,
  high,
});

/** Everything of a made-up bed uncertain, and its weather after today still to come. */
function randomQuestion(bed: BedSeason, count: number): DrawsQuestion {
  const kind = bed.weather.kind.map((one, index) =>
    bed.firstDay + index > bed.today ? dayKinds.indexOf('imagined') : one,
  );
  const keys = Object.keys(coefficientRows) as (keyof typeof coefficientRows)[];
  const spread: SeasonSpread = {
    coefficients: keys.map((key) => {
      const { low, typical, high } = coefficientRows[key];
      return { key, name: key, shape: 'amount', low, typical, high };
    }),
    layers: Object.fromEntries(
      bed.layers.map(({ id, materialId }) => [
        id,
        {
          mass: factor(`mass of ${id}`, 0.5, 2),
          nitrogen: { ...factor(materialId, 0.012, 0.04), typical: 0.02, shape: 'share' as const },
        },
      ]),
    ),
    needs: Object.fromEntries(bed.plantings.map(({ id }) => [id, factor(id, 0.7, 1.4)])),
    organicMatter: factor('organic matter', 0.6, 1.8),
  };
  return {
    input: { ...bed, weather: { ...bed.weather, kind } },
    spread,
    weather: { kind: 'generated', spread: typicalWeatherSpread(bed.latitudeDegrees) },
    tests: [],
    seed: 5,
    count,
  };
}

describe('a lean run is the whole run, to the last digit', () => {
  test.each([
    ['the sample’s beds', sampleBeds],
    ['300 random beds', randomBeds],
  ])(
    '%s: all that a bed is judged by, on every day',
    (_name, beds) => {
      for (const bed of beds) {
        const whole = runSeason(bed);
        const lean = newWatch(bed);
        watchSeason(bed, runPlan(bed, lowerDepthFor(bed)), lean);
        const kept = watchedOf(whole);
        const now = bed.today - bed.firstDay;
        expect(lean.pools.mineralTop).toEqual(kept.pools.mineralTop);
        expect(lean.pools.mineralLower[now]).toBe(kept.pools.mineralLower[now]);
        expect(lean.rootReach[now]).toBe(kept.rootReach[now]);
        for (const key of ['released', 'tiedUp', 'luxury'] as const)
          expect(lean[key].subarray(now + 1)).toEqual(kept[key].subarray(now + 1));
        for (const [at, planting] of lean.plantings.entries())
          for (const key of ['demand', 'demandMet', 'fixed'] as const)
            expect(planting[key]).toBe(whole.plantings[at]![key]);
        for (const [at, planting] of lean.plantings.entries())
          for (const key of ['dailyNeed', 'dailyUptake', 'dailyFixed'] as const)
            expect(planting[key]).toEqual(whole.plantings[at]![key]);
        const from = seasonFirstDay(bed, bed.today) - bed.firstDay;
        expect(lean.leached).toBe(sum(whole.flows[washedOut]!.subarray(from)));
        for (const [at, { need, met, fixed }] of ofSeason(bed, whole).entries()) {
          const own = lean.plantings[at]!.thisSeason;
          expect([own.need, own.fixed]).toEqual([need, fixed]);
          expect(own.met).toBeCloseTo(met, 12);
        }
      }
    },
    120_000,
  );
});

describe('draws say what whole runs of the same draws say, to the last digit', () => {
  test.each(sampleBeds.map((bed) => [bed.bedId, bed] as const))('%s', (_id, bed) =>
    sameAsWholeRuns(sampleQuestion(bed, 12)),
  );

  test('300 random beds', () => {
    for (const bed of randomBeds) sameAsWholeRuns(randomQuestion(bed, 2));
  });

  test('weighed by a nitrate test', () => {
    const bed = sampleBeds.find(({ bedId }) => bedId === 'bed-border')!;
    const middle = runDraws(sampleQuestion(bed, 30), limits)!.nitrate[20]!.middle;
    const reading = { day: bed.firstDay + 140, mgPerKg: 1.2 * middle, spread: 0.3 };
    const question = { ...sampleQuestion(bed, 30), tests: [reading] };
    const answer = runDraws(question, limits)!;
    const whole = answerOfWholeRuns(question);
    expect(whole.effectiveCount).toBeLessThan(29);
    expect(answer.effectiveCount).toBeCloseTo(whole.effectiveCount, 9);
    expect(answer.nitrate).toEqual(whole.nitrate);
    expect(answer.ratio).toEqual(whole.ratio);
  });

  test('with years of record in place of imagined days', () => {
    const bed = sampleBeds.find(({ bedId }) => bedId === 'bed-gate')!;
    const dry = {
      ...bed.weather,
      rainMillimetres: bed.weather.rainMillimetres.map((mm) => mm / 2),
    };
    sameAsWholeRuns({
      ...sampleQuestion(bed, 4),
      weather: { kind: 'years', seasons: [bed.weather, dry, bed.weather] },
    });
  });

  test('under glass no imagined rain falls', () => {
    const bed = sampleBeds.find(({ bedId }) => bedId === 'bed-gate')!;
    const rainMillimetres = new Float64Array(bed.weather.rainMillimetres.length);
    const question: DrawsQuestion = {
      ...sampleQuestion({ ...bed, weather: { ...bed.weather, rainMillimetres } }, 4),
      weather: { kind: 'generated', spread: typicalWeatherSpread(40.8), isRoofed: true },
    };
    sameAsWholeRuns(question);
    expect(runDraws(question, limits)!.leached.high).toBe(0);
  });

  test('a day whose evapotranspiration was measured keeps it', () => {
    const bed = sampleBeds.find(({ bedId }) => bedId === 'bed-border')!;
    const given = bed.weather.kind.map((kind) => (dayKinds[kind] === 'imagined' ? 0 : 1));
    const referenceEvapotranspiration = Float64Array.from(given, (is) => (is ? 7 : Number.NaN));
    const input = { ...bed, weather: { ...bed.weather, referenceEvapotranspiration } };
    sameAsWholeRuns(sampleQuestion(input, 4));
    expect(runDraws(sampleQuestion(input, 4), limits)).not.toEqual(
      runDraws(sampleQuestion(bed, 4), limits),
    );
  });

  test('beds that share their draws say what each says alone', () => {
    const questions = sampleBeds.slice(0, 4).map((bed) => sampleQuestion(bed, 5));
    const shared = sharedDraws(questions[0]!);
    for (const question of questions)
      expect(runDraws(question, limits, undefined, shared)).toEqual(runDraws(question, limits));
  });
});

test('the work of draws is their days, and no more', () => {
  const [bed] = sampleBeds;
  const days = bed!.lastDay - bed!.firstDay + 1;
  for (const count of [1, 10, 40]) {
    const run = startDraws(sampleQuestion(bed!, count), limits);
    let asked = 0;
    for (; !run.isDone; asked++) run.next();
    expect(asked).toBe(count);
    expect(run.steps).toBe(count * days);
  }
});
