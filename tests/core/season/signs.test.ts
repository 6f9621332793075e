import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import { runDraws, type DrawsQuestion } from '../../../app/core/season/draws/runDraws';
import {
  countedSigns,
  lookKinds,
  signLikelihood,
  type BedSeen,
  type Look,
} from '../../../app/core/season/draws/signs';
import { parseGarden } from '../../../app/document/parse';
import { bedSeason } from '../../../app/document/seasonInput';
import { seasonSpread } from '../../../app/document/seasonSpread';
import { typicalWeatherSpread } from '../../../app/tables/imaginedWeather';
import { signCoefficients, signRows } from '../../../app/tables/signs';
import { limits } from '../../../app/tables/thresholds';

const file = join(import.meta.dirname, '../../../assets/gardens/sample.mowings');
const parsed = parseGarden(readFileSync(file, 'utf8'));
if (!parsed.ok) throw new Error('The sample does not open');
const sample = parsed.value;
const today = dayOf('2013-07-20');

const count = 200;
const bedNamed = (wanted: (crop: string) => boolean): string =>
  sample.plantings.find(({ cropId }) => wanted(cropId))!.bedId;
const tomatoes = bedNamed((crop) => crop.startsWith('tomato'));
const beans = bedNamed((crop) => crop.includes('bean'));

const asked = (bedId: string, looks: readonly Look[], now = today): DrawsQuestion => ({
  input: bedSeason(sample, bedId, now),
  spread: seasonSpread(sample, bedId),
  weather: { kind: 'generated', spread: typicalWeatherSpread(40.8) },
  tests: [],
  signs: { looks, coefficients: signCoefficients },
  seed: 4,
  count,
});
const drawn = (bedId: string, looks: readonly Look[]) => runDraws(asked(bedId, looks), limits)!;
const day = today - 4;

const fed: BedSeen = {
  needMet: 1,
  fixing: 1,
  nitrateTop: 12,
  availableWater: 1,
  hidden: 1,
  coverFill: 1,
  lyingDry: 3,
};
const starved: BedSeen = {
  needMet: 0.3,
  fixing: 0,
  nitrateTop: 0.5,
  availableWater: 0,
  hidden: 0,
  coverFill: 0,
  lyingDry: 0,
};

describe('an answer is likelier in a bed it fits', () => {
  const cases = [
    ['leaves', { leaves: 'yellow' }, starved, fed],
    ['leaves', { leaves: 'dark and lush' }, fed, starved],
    ['leaves', { leaves: 'normal' }, { ...fed, nitrateTop: 2 }, starved],
    ['leaves', { leaves: 'normal' }, { ...fed, nitrateTop: 2 }, fed],
    ['nodules', { nodules: 'pink' }, fed, starved],
    ['moistFingerDeep', { moistFingerDeep: true }, fed, starved],
    ['moistFingerDeep', { moistFingerDeep: false }, starved, fed],
    ['soilSeen', { soilSeen: 'none' }, fed, starved],
    ['soilSeen', { soilSeen: 'all' }, starved, fed],
    ['soilSeen', { soilSeen: 'some' }, { ...fed, hidden: 0.55 }, fed],
    ['soilSeen', { soilSeen: 'some' }, { ...fed, hidden: 0.55 }, starved],
    ['smellsSour', { smellsSour: true }, fed, starved],
    ['smellsSour', { smellsSour: false }, { ...fed, coverFill: 0 }, fed],
    ['slugsUnderBoard', { slugsUnderBoard: true }, fed, starved],
    ['slugsUnderBoard', { slugsUnderBoard: false }, starved, fed],
  ] as const;
  test.each(cases)('%s %o', (kind, answer, likely, unlikely) => {
    const look = { day, ...answer };
    const more = signLikelihood(look, kind, likely, signCoefficients);
    const less = signLikelihood(look, kind, unlikely, signCoefficients);
    expect(more).toBeGreaterThan(less);
    expect(more / less).toBeLessThanOrEqual(signRows.timesLikelier[kind].typical);
  });
  test('no sign weighs more than three times, whatever end of its row is true', () => {
    for (const kind of lookKinds) expect(signRows.timesLikelier[kind].high).toBeLessThanOrEqual(3);
  });
  test('what was not looked for, or cannot show, says nothing', () => {
    const nothingGrows = { ...fed, needMet: null, fixing: null };
    for (const kind of lookKinds)
      expect(signLikelihood({ day }, kind, fed, signCoefficients)).toBe(1);
    const look: Look = { day, leaves: 'yellow', nodules: 'pink' };
    expect(signLikelihood(look, 'leaves', nothingGrows, signCoefficients)).toBe(1);
    expect(signLikelihood(look, 'nodules', nothingGrows, signCoefficients)).toBe(1);
  });
});

describe('signs that count', () => {
  const kept = (looks: readonly Look[]) =>
    countedSigns(looks, today - 100, today, signCoefficients).map(({ look, kind }) => [
      kind,
      look.day - today,
    ]);
  test('none after today and none before the run', () => {
    expect(
      kept([
        { day: today + 1, leaves: 'yellow' },
        { day: today - 101, leaves: 'yellow' },
        { day: today, leaves: 'yellow' },
      ]),
    ).toEqual([['leaves', 0]]);
  });
  test('of two within a fortnight the later, of two on a day the later entry', () => {
    expect(
      kept([
        { day: today - 20, leaves: 'yellow', soilSeen: 'all' },
        { day: today - 5, leaves: 'yellow' },
        { day: today - 12, leaves: 'normal', soilSeen: 'some' },
      ]),
    ).toEqual([
      ['leaves', -5],
      ['leaves', -20],
      ['soilSeen', -12],
    ]);
    const [first] = countedSigns(
      [
        { day: today, leaves: 'yellow' },
        { day: today, leaves: 'normal' },
      ],
      today - 100,
      today,
      signCoefficients,
    );
    expect(first?.look.leaves).toBe('normal');
  });
});

describe('what was seen moves the draws of a bed', () => {
  const plain = drawn(tomatoes, []);
  const week = plain.nitrateDays.findIndex((one) => one >= day);

  test('yellow leaves down, lush leaves up; more together with others than alone', () => {
    const yellow = drawn(tomatoes, [{ day, leaves: 'yellow' }]);
    const lush = drawn(tomatoes, [{ day, leaves: 'dark and lush' }]);
    expect(yellow.needMet.middle).toBeLessThan(plain.needMet.middle);
    expect(yellow.ratio!.middle).toBeLessThan(plain.ratio!.middle);
    expect(lush.nitrate[week]!.middle).toBeGreaterThan(plain.nitrate[week]!.middle);
    expect(lush.states['over-fed']).toBeGreaterThanOrEqual(plain.states['over-fed']);
    const both = drawn(tomatoes, [
      { day, leaves: 'dark and lush', soilSeen: 'none', moistFingerDeep: true },
    ]);
    expect(both.effectiveCount).toBeLessThan(lush.effectiveCount);
    expect(lush.effectiveCount).toBeLessThan(plain.effectiveCount);
  });
  test('without effect after today, and with nothing seen', () => {
    expect(drawn(tomatoes, [{ day: today + 3, leaves: 'yellow' }])).toEqual(plain);
    const { signs: _none, ...without } = asked(tomatoes, []);
    expect(runDraws(without, limits)).toEqual(plain);
  });
  test('far less than a nitrate test that says the same', () => {
    const lush = drawn(tomatoes, [{ day, leaves: 'dark and lush' }]);
    const tested = runDraws(
      {
        ...asked(tomatoes, []),
        tests: [
          { day: plain.nitrateDays[week]!, mgPerKg: plain.nitrate[week]!.high, spread: 0.15 },
        ],
      },
      limits,
    )!;
    const moved = (answer: typeof plain): number =>
      answer.nitrate[week]!.middle - plain.nitrate[week]!.middle;
    expect(moved(tested)).toBeGreaterThan(2 * moved(lush));
    expect(moved(lush)).toBeGreaterThan(0);
    expect(tested.effectiveCount).toBeLessThan(lush.effectiveCount);
    expect(lush.effectiveCount).toBeGreaterThan(0.7 * count);
  });
  test('pink nodules speak for fixation', () => {
    const looked = drawn(beans, [{ day, nodules: 'pink' }]);
    const before = drawn(beans, []);
    expect(looked.fixed.middle).toBeGreaterThanOrEqual(before.fixed.middle);
    expect(looked.effectiveCount).toBeLessThan(before.effectiveCount);
  });
});
