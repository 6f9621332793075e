import { describe, expect, test } from 'vitest';
import { metricUnits, usUnits } from '../../app/amounts/unitSystem';
import {
  awayWords,
  cansWords,
  pourWords,
  savedDoubt,
  savedWords,
  waterForecastWords,
  type Can,
} from '../../app/words/waterWords';

const can: Can = { litres: 10, name: 'can', plural: 'cans', size: 'of 10 L' };
const own: Can = { litres: 9, name: 'green can', plural: 'green cans', size: '' };

describe('how much water', () => {
  test.each([
    [55, can, '5 1/2 cans of 10 L'],
    [10, can, '1 can of 10 L'],
    [1, can, '1/2 can of 10 L'],
    [27, own, '3 green cans'],
  ])('%d L', (litres, of, words) => expect(cansWords(litres, of)).toBe(words));

  test('in mm and in cans, in inches where they are read', () => {
    expect(pourWords(12, 5, can, metricUnits)).toBe('12 mm, 6 cans of 10 L');
    expect(pourWords(25.4, 5, can, usUnits)).toMatch(/^1 in, 12 1\/2 cans|^1 in, 13 cans/);
  });
});

describe('what a cover did', () => {
  test('less from the soil, what it caught itself, and what roots have of it today', () => {
    const saved = { soil: { low: 20, typical: 34, high: 50 }, caught: 60, atHand: 3 };
    expect(savedWords(saved, metricUnits)).toBe(
      'The soil under what you laid gave off roughly 34 mm less (20 to 50 mm). ' +
        'The cover itself caught 60 mm of rain and gave it back to the air. ' +
        'Today its roots have 3 mm more at hand than without.',
    );
  });
  test('a loss is told as one', () => {
    const lost = { soil: { low: -2, typical: 4, high: 9 }, caught: 0, atHand: -6 };
    expect(savedWords(lost, metricUnits)).toBe(
      'The soil under what you laid gave off roughly 4 mm less (from 2 more to 9 mm less). ' +
        'Today its roots have 6 mm less at hand than without.',
    );
    const more = { soil: { low: -4, typical: -3, high: -1 }, caught: 2, atHand: 0.1 };
    expect(savedWords(more, metricUnits)).toContain('roughly 3 mm more (from 4 more to 1 mm more)');
    expect(savedWords(more, metricUnits)).toContain('as much at hand as without');
  });
  test('next to nothing is told as nothing', () => {
    const none = { soil: { low: 0, typical: 0.1, high: 0.3 }, caught: 0.2, atHand: 0 };
    expect(savedWords(none, metricUnits)).toBe(
      'What was laid has made no difference to its water yet.',
    );
  });
});

describe('going away', () => {
  const told = (dueWatered: number | null, dueCovered: number | null): string =>
    awayWords(
      { pour: 20, dueWatered, dueCovered },
      14,
      (mm) => `${mm} mm`,
      (day) => `day ${day}`,
    );
  test('water alone, water and cover, or somebody who comes', () => {
    expect(told(null, null)).toBe(
      'water it to the full before you leave (20 mm). It then lasts till you are back.',
    );
    expect(told(15, null)).toContain('lasts till you are back');
    expect(told(10, 20)).toMatch(
      /and cover it a hand’s breadth deep.*Watered alone it is due by day 10/,
    );
    expect(told(8, 12)).toMatch(
      /and cover it\. It does not last two weeks: ask somebody to water it by day 12\.$/,
    );
  });
  test('no sentence is long', () => {
    const all = [told(null, null), told(10, 20), told(8, 12), savedDoubt, waterForecastWords];
    for (const sentence of all.flatMap((words) => words.split(/(?<=\.) /)))
      expect(sentence.split(' ').length, sentence).toBeLessThanOrEqual(25);
  });
});
