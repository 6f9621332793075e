import { expect, test } from 'vitest';
import { runSeason } from '../../../app/core/season/season';
import { newWatch } from '../../../app/core/season/seasonWatch';
import { lowerDepthFor, runPlan } from '../../../app/core/season/runPlan';
import { watchedFlows, watchedOf } from '../../../app/core/season/watchedSeason';
import { watchSeason } from '../../../app/core/season/watchSeason';
import { drawWeigher } from '../../../app/core/season/draws/drawWeight';
import type { BedSeason } from '../../../app/core/season/input';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import {
  bareBed,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  newYorkNormals,
  normalYear,
  planted,
  straw,
} from './handMadeBed';

const turn = firstOf2013 + 200;
const today = 90;
const lastDay = firstOf2013 + 364;
const bed: BedSeason = bareBed({
  lastDay,
  today: firstOf2013 + today,
  weather: normalYear(newYorkNormals, firstOf2013, 365),
  seasonStarts: [turn],
  plantings: [planted(fruitingCrop, firstOf2013 + 120)],
  layers: [
    clippings(firstOf2013 + 130, 25),
    compost(firstOf2013 + 100, 20, { mineralShare: 0.2 }),
    straw(firstOf2013 + 95, 60),
    straw(firstOf2013 + 110, 40, { id: 'dug straw', placement: 'dug' }),
    clippings(firstOf2013 + 125, 10, { id: 'dug', placement: 'dug' }),
  ],
  events: [{ kind: 'dig cover in', day: firstOf2013 + 150, share: 0.5 }],
  coefficients: typicalCoefficients(),
});

test('what a lean run keeps of each day after today is what the whole run booked on it', () => {
  const whole = runSeason(bed);
  const lean = newWatch(bed);
  watchSeason(bed, runPlan(bed, lowerDepthFor(bed)), lean);
  const wanted = watchedOf(whole);
  for (const kept of ['released', 'tiedUp', 'luxury'] as const) {
    for (const [at, flow] of watchedFlows[kept].entries())
      if (kept !== 'luxury')
        expect(Math.max(...whole.flows[flow]!), `${kept} ${at}`).toBeGreaterThan(0);
    for (let index = today + 1; index < 365; index++)
      expect(lean[kept][index], `${kept} ${index}`).toBeCloseTo(wanted[kept][index]!, 12);
  }
});

// a normal error: exp(-z2/2), z of (reckoned - tested) / (spread x tested); errors of two tests multiply
test('a test on the ground that a bed was made of weighs its draws, beside the bed’s own', () => {
  const turnedInto = firstOf2013 + 200;
  const ground: BedSeason = { ...bed, lastDay: turnedInto - 1, today: turnedInto - 1 };
  const watch = newWatch(ground);
  watchSeason(ground, runPlan(ground, lowerDepthFor(ground)), watch);
  // 1.3 kg/L over 300 mm: 390 kg of soil on a m2
  const reckoned = (watch.pools.mineralTop[140]! * 1000) / 390;
  const tested = { day: firstOf2013 + 140, mgPerKg: reckoned / 1.5, spread: 0.5 };
  const found = { tests: [tested], looks: [] };
  const made = bareBed({
    firstDay: turnedInto,
    lastDay,
    today: lastDay,
    ground: [{ input: ground, share: 1, plants: [], found, watch }],
  });
  const own = newWatch(made);
  watchSeason(made, runPlan(made, lowerDepthFor(made)), own);
  const ownReckoned = (own.pools.mineralTop[10]! * 1000) / 390;
  const ownTest = { day: turnedInto + 10, mgPerKg: ownReckoned / 1.5, spread: 0.25 };
  const weight = (tests: readonly (typeof tested)[], input = made) =>
    drawWeigher({ input, tests } as unknown as Parameters<typeof drawWeigher>[0]).weight(
      input,
      own,
    );
  expect(tested.mgPerKg * tested.spread).toBeGreaterThan(1.5);
  expect(ownTest.mgPerKg * ownTest.spread).toBeGreaterThan(1.5);
  expect(weight([])).toBeCloseTo(Math.exp(-0.5), 9);
  expect(weight([ownTest])).toBeCloseTo(Math.exp(-0.5) * Math.exp(-0.5 * 4), 9);
  const inner = { ...bareBed({ ...made, ground: undefined }), ground: made.ground };
  const outer: BedSeason = { ...made, ground: [{ input: inner, share: 1, plants: [] }] };
  // and that of ground which the ground was made of
  expect(weight([ownTest], outer)).toBeCloseTo(Math.exp(-2.5), 9);
});
