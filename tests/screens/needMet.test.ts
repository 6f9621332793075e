import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { newWatch, watchSeason } from '../../app/core/season/watchSeason';
import { runPlan, lowerDepthFor } from '../../app/core/season/runPlan';
import { runSeason } from '../../app/core/season/season';
import { bedSeason } from '../../app/document/seasonInput';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import { needMet } from '../../app/screens/needMet';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const sample = parsed.value;
const today = dayOf('2013-06-15');

/** As a draw counts it (`drawsOutcome`): by plantings, in the season that holds today. */
function asDrawn(input: ReturnType<typeof bedSeason>): number {
  const watch = newWatch(input);
  watchSeason(input, runPlan(input, lowerDepthFor(input)), watch);
  const need = watch.plantings.reduce((sum, { thisSeason }) => sum + thisSeason.need, 0);
  const met = watch.plantings.reduce(
    (sum, { thisSeason }) => sum + Math.min(thisSeason.need, thisSeason.met),
    0,
  );
  return met / need;
}

const garlic = {
  ...sample.plantings[0]!,
  id: 'garlic',
  cropId: 'garlic',
  bedId: 'bed-gate',
  started: '2012-10-05',
  cleared: '2013-07-20',
};

test.each(sample.beds.map(({ id, name }) => [name, id] as const))(
  '%s: what is told beside the state is what a draw at likely values would say',
  (_, bedId) => {
    const input = bedSeason(sample, bedId, today);
    expect(needMet({ input, season: runSeason(input) })).toBeCloseTo(asDrawn(input), 9);
  },
);

test('of garlic planted in October it is the need of this year', () => {
  const garden = { ...sample, plantings: [garlic] };
  const input = bedSeason(garden, 'bed-gate', today);
  const season = runSeason(input);
  expect(input.firstDay).toBeLessThan(dayOf('2013-01-01'));
  const own = season.plantings[0]!;
  const ofAutumn = own.dailyNeed.reduce(
    (sum, grams, index) => (season.firstDay + index < dayOf('2013-01-01') ? sum + grams : sum),
    0,
  );
  expect(ofAutumn).toBeGreaterThan(0);
  expect(needMet({ input, season })).toBeCloseTo(asDrawn(input), 9);
});

test('nothing is told where nothing stands or comes', () => {
  const input = bedSeason({ ...sample, plantings: [] }, 'bed-gate', today);
  expect(needMet({ input, season: runSeason(input) })).toBeNull();
});
