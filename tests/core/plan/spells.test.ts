import { describe, expect, test } from 'vitest';
import { fewLooks, looksOf, sharesOf, spellsOf } from '../../../app/core/plan/spells';
import { madeQuestion } from './madeQuestion';

const days = [100, 107, 114];

describe('when a plan looks at the beds', () => {
  test('on its own days, and then every four weeks to the season’s end', () => {
    const looks = looksOf(days, 114 + 7 * 9);
    expect(looks.slice(0, 3)).toEqual(days.map((day) => ({ day, weeks: 1 })));
    expect(looks.slice(3)).toEqual([
      { day: 114 + 14, weeks: 4 },
      { day: 114 + 42, weeks: 4 },
      { day: 114 + 63, weeks: 1 },
    ]);
  });

  test.each([0, 6, 7, 40, 200])('they stand for all weeks to the end, %i days on', (more) => {
    const looks = looksOf(days, 114 + more);
    expect(looks.reduce((sum, { weeks }) => sum + weeks, 0)).toBe(3 + Math.floor(more / 7));
    for (const { day } of looks) expect(day).toBeLessThanOrEqual(114 + more);
    expect(sharesOf(looks).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(fewLooks(looks).reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    for (const { look } of fewLooks(looks)) expect(looks[look]).toBeDefined();
  });
});

describe('the times a bed is judged in', () => {
  const { input } = madeQuestion(3).beds[0]!.question;
  const [planting] = input.plantings;
  const looks = looksOf([input.today, input.today + 7, input.today + 14], input.today + 14 + 28);
  const grown = (id: string, from: number, to: number) => ({
    ...planting!,
    id,
    startDay: input.today + from,
    clearingDay: input.today + to,
  });

  test('what stands today, then what comes after it; weeks between count for neither', () => {
    const plantings = [grown('now', -20, 8), grown('next', 14, 100)];
    const spells = spellsOf({ ...input, plantings }, looks);
    expect(spells.map(({ judgedOn }) => judgedOn - input.today)).toEqual([0, 14]);
    // looks: today, +7, +14 of a week each, and one for four weeks after
    expect(spells.map(({ share }) => share * 7)).toEqual([
      expect.closeTo(2, 9),
      expect.closeTo(5, 9),
    ]);
  });

  test('an empty bed waits for what comes; nothing to come, nothing to judge', () => {
    const later = spellsOf({ ...input, plantings: [grown('next', 14, 100)] }, looks);
    expect(later.map(({ judgedOn }) => judgedOn - input.today)).toEqual([14]);
    expect(spellsOf({ ...input, plantings: [] }, looks)).toEqual([]);
    expect(spellsOf({ ...input, plantings: [grown('gone', -60, -3)] }, looks)).toEqual([]);
  });

  test('two that start on one day are one time', () => {
    const plantings = [grown('one', 7, 60), grown('other', 7, 90)];
    expect(spellsOf({ ...input, plantings }, looks)).toHaveLength(1);
  });
});
