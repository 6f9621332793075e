import { describe, expect, test } from 'vitest';
import { dayOf } from '../../../app/core/days';
import {
  countedSigns,
  lookKinds,
  signLikelihood,
  type BedSeen,
  type Look,
} from '../../../app/core/season/draws/signs';
import { signCoefficients, signRows } from '../../../app/tables/signs';

const today = dayOf('2013-07-20');
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
