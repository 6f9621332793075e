import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { judgeNitrogen } from '../../app/core/season/nitrogenState';
import { lowerDepthFor, runPlan } from '../../app/core/season/runPlan';
import { newWatch, watchSeason } from '../../app/core/season/watchSeason';
import { splitBed } from '../../app/document/bedChanges/splitBed';
import { bedQuestion } from '../../app/document/bedQuestion';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { limits } from '../../app/tables/thresholds';

/* What a plant took up before its bed was split it has still. A law of ours; no number from outside. */

const sample: Garden = (() => {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('the sample cannot be read');
  return parsed.value;
})();
const today = '2013-06-15';
const day = dayOf(today);
const verdictOf = (garden: Garden, id: string) =>
  answerBed(bedQuestion(garden, id, day), limits).verdict;

const planted = sample.beds.filter(({ id }) => verdictOf(sample, id).inCrop > 0.3);

test('the sample has beds whose plants have taken something up', () => {
  expect(planted.length).toBeGreaterThan(2);
});

describe.each(planted.map(({ name, id }) => [name, id]))('%s, split this morning', (_, bedId) => {
  const made = splitBed(
    sample,
    { bedId, on: today, names: ['One', 'Other'], firstShare: 0.4, plants: {} },
    today,
  );
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  const { garden, bedIds } = made.value;
  const whole = verdictOf(sample, bedId);

  test.each(bedIds)('%s is judged by all that its plants have had', (id) => {
    const part = verdictOf(garden, id);
    expect(part.inCrop).toBeCloseTo(whole.inCrop, 2);
    expect(part.ratio).toBeCloseTo(whole.ratio ?? 0, 2);
    expect(part.state).toBe(whole.state);
    // the draws keep less of a run, and judge by the same
    const input = bedSeason(garden, id, day);
    const watch = newWatch(input);
    watchSeason(input, runPlan(input, lowerDepthFor(input)), watch);
    expect(judgeNitrogen(input, watch, day, limits)?.ratio).toBeCloseTo(part.ratio ?? 0, 9);
  });
});
