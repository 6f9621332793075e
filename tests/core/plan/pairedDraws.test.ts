import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import {
  leastDifference,
  runPaired,
  startPaired,
  type PairedQuestion,
} from '../../../app/core/plan/pairedDraws';
import { looksOf } from '../../../app/core/plan/spells';
import { aimsOf, standingOf } from '../../../app/core/plan/standing';
import { answerBed, type BedAnswer } from '../../../app/core/season/bedAnswer';
import { drawnSeason, makeDraws } from '../../../app/core/season/draws/drawnSeason';
import { drawnWeather } from '../../../app/core/season/draws/drawnWeather';
import type { DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import { parseGarden } from '../../../app/document/parse';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Application, Garden } from '../../../app/document/schema';
import { whatIfQuestions } from '../../../app/document/whatIfQuestion';
import { limits } from '../../../app/tables/thresholds';
import { planWeights } from '../../../app/tables/planning';

const sample = (): Garden => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('no sample');
  return parsed.value;
};
const garden = sample();
const todayText = garden.garden.today!;
const today = dayOf(todayText);

const layer = (
  bedId: string,
  litres: number,
  over: Partial<Application> = {},
): readonly Application[] => [
  {
    id: 'thought-1',
    date: todayText,
    bedId,
    from: { source: 'elsewhere', materialId: 'grass-fresh-generic' },
    amount: { text: `${litres} L`, quantity: { kind: 'volume', litres }, certainty: 'plain' },
    condition: 'limp',
    wetness: 'dry',
    placement: 'laid',
    mixtureId: null,
    passedStops: [],
    ...over,
  },
];

const asked = (
  bedId: string,
  alternatives: readonly (readonly Application[])[],
  count = 40,
): PairedQuestion => whatIfQuestions(garden, bedId, today, alternatives, count).imagined;

const emptyTillJuly = (): Garden => ({
  ...garden,
  plantings: garden.plantings.map((planting) =>
    planting.bedId === 'bed-far' ? { ...planting, started: '2013-07-04' } : planting,
  ),
});

const bedIds = garden.beds.map(({ id }) => id);

describe('a bed against others of it, season by season', () => {
  test('nothing more is as it is, and one addition twice is one', () => {
    const more = layer('bed-far', 60);
    const { others } = runPaired(asked('bed-far', [[], more, more]), limits);
    expect(others[0]).toEqual({ better: 0, worse: 0, alike: 1 });
    expect(others[1]).toEqual(others[2]);
    expect(others[1]!.better).toBeGreaterThan(0);
  });

  test('an addition to a bed that has it already is judged against that bed', () => {
    const with60: Garden = {
      ...garden,
      applications: [...garden.applications, ...layer('bed-far', 60)],
    };
    const { imagined } = whatIfQuestions(with60, 'bed-far', today, [[]], 30);
    expect(runPaired(imagined, limits).others).toEqual([{ better: 0, worse: 0, alike: 1 }]);
  });

  test('odds are shares that make one, and the same for the same seed', () => {
    const question = asked('bed-far', [layer('bed-far', 30), layer('bed-far', 500)]);
    const answer = runPaired(question, limits);
    for (const { better, worse, alike } of answer.others) {
      for (const share of [better, worse, alike]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
      expect(better + worse + alike).toBeCloseTo(1, 12);
    }
    expect(runPaired(question, limits)).toEqual(answer);
    expect(answer).toMatchObject({ bedId: 'bed-far', count: 40 });
  });

  test('a hungry bed is better off with a layer, and a fed one worse off with a heap of it', () => {
    const hungry = runPaired(asked('bed-far', [layer('bed-far', 90)]), limits).others[0]!;
    expect(hungry.better).toBeGreaterThan(0.8);
    const fed = runPaired(asked('bed-gate', [layer('bed-gate', 600)]), limits).others[0]!;
    expect(fed.worse).toBeGreaterThan(0.8);
  });

  test('it tells how far it is, of all beds together', () => {
    const run = startPaired(asked('bed-far', [layer('bed-far', 10)], 5), limits);
    expect([run.done, run.of, run.isDone]).toEqual([0, 10, false]);
    run.next();
    expect(run.done).toBe(2);
    while (!run.isDone) run.next();
    expect([run.done, run.of]).toEqual([10, 10]);
  });

  // The same seasons by the whole engine and the distance of the weekly plan, which keep far more.
  const cases: [string, Garden, string][] = [
    ...bedIds.map((id): [string, Garden, string] => [id, garden, id]),
    ['a bed that is empty till July', emptyTillJuly(), 'bed-far'],
  ];
  test.each(cases)('%s: agrees with whole runs judged as the plan judges', (_, grown, bedId) => {
    const count = 12;
    const additions = [
      layer(bedId, 40),
      layer(bedId, 40, { condition: 'just cut', date: '2013-07-06' }),
    ];
    const questions = whatIfQuestions(grown, bedId, today, additions, count);
    const { base, others, days } = questions.imagined;
    const facts = questions.likely[0]!.before.facts;
    const draws = makeDraws(base.seed, count);
    const answerOf = ({ input, spread, weather, seed }: DrawsQuestion, draw: number): BedAnswer => {
      const sky = drawnWeather(input, weather, seed, draw);
      const season = drawnSeason(input, spread, sky, draws, draw);
      return answerBed({ input: season, weekAgo: null, facts }, limits);
    };
    const plain = { ...base, tests: [], signs: { ...base.signs!, looks: [] } };
    const paired = runPaired({ ...questions.imagined, base: plain }, limits);
    // a draw keeps the ground of the morning, a whole run that of the evening
    const morningToEvening = 0.01;
    const counted = others.map(() => ({ better: 0, worse: 0, near: 0 }));
    for (let draw = 0; draw < count; draw++) {
      const asItIs = answerOf(base, draw);
      const looks = looksOf(days, base.input.lastDay);
      const aims = aimsOf(asItIs, looks, limits, planWeights);
      const distance = (answer: BedAnswer): number => {
        const { nitrogen, ground } = standingOf(answer, aims, looks, limits, planWeights).distance;
        return (nitrogen + ground) / base.input.areaM2;
      };
      others.forEach((other, at) => {
        const gain = distance(asItIs) - distance(answerOf(other, draw));
        if (gain > leastDifference) counted[at]!.better += 1 / count;
        if (gain < -leastDifference) counted[at]!.worse += 1 / count;
        if (Math.abs(Math.abs(gain) - leastDifference) < morningToEvening)
          counted[at]!.near += 1 / count;
      });
    }
    counted.forEach(({ better, worse, near }, at) => {
      expect(near).toBeLessThan(2.5 / count);
      const off = (one: number, other: number): number => Math.abs(one - other) - near;
      expect(off(paired.others[at]!.better, better)).toBeLessThan(1e-9);
      expect(off(paired.others[at]!.worse, worse)).toBeLessThan(1e-9);
    });
  });
});
