import { describe, expect, test } from 'vitest';
import { planWeights } from '../../app/tables/planning';
import {
  layAlternativeWords,
  betterWords,
  marksDrawn,
  marksOf,
  marksSpoken,
  markWorth,
  pairedOddsWords,
} from '../../app/words/whatIfWords';

const odds = (better: number, worse: number) => ({ better, worse, alike: 1 - better - worse });

describe('odds against the bed as it is', () => {
  test.each([
    [odds(0.8, 0.1), 'Better in 8 of 10 imagined seasons, worse in 1, as good as alike in 1'],
    [odds(0.8, 0.2), 'Better in 8 of 10 imagined seasons, worse in 2'],
    [odds(1, 0), 'Better in all imagined seasons'],
    [odds(0.97, 0.03), 'Better in nearly all imagined seasons'],
    [odds(0, 1), 'Worse in all imagined seasons'],
    [odds(0.02, 0.68), 'Worse in 7 of 10 imagined seasons, as good as alike in 3'],
    [odds(0, 0), 'As good as alike in all imagined seasons'],
    [odds(0.5, 0.5), 'Better in 5 of 10 imagined seasons, worse in 5'],
  ])('%o: %s', (told, words) => expect(pairedOddsWords(told)).toBe(words));

  test('there are twenty marks, whatever the shares', () => {
    for (let better = 0; better <= 1; better += 0.07)
      for (let worse = 0; worse <= 1 - better; worse += 0.09) {
        const marks = marksOf(odds(better, worse));
        expect(marks.better + marks.alike + marks.worse).toBe(marksDrawn);
        expect(Math.abs(marks.better - marksDrawn * better)).toBeLessThan(1);
        expect(Math.abs(marks.worse - marksDrawn * worse)).toBeLessThan(1);
      }
    expect(marksSpoken(odds(0.8, 0.1))).toBe('Of 20 marks 16 better, 2 worse, 2 as good as alike');
  });

  test('a mark is said to stand for five of a hundred, and that a test has weighed them', () => {
    expect(markWorth(100, 100)).toBe('Each mark stands for 5 of 100 imagined seasons.');
    expect(markWorth(400, 40)).toContain(
      '20 of 400 imagined seasons, weighed by what was measured',
    );
  });

  test('what better means is told from the weights themselves, in short sentences', () => {
    const words = betterWords(planWeights).join(' ');
    for (const number of ['90 %', '110 %', '2 times', '3 times', '2 g'])
      expect(words).toContain(number);
    for (const sentence of words.split(/(?<=\.) /))
      expect(sentence.split(' ').length, sentence).toBeLessThanOrEqual(25);
  });
});

test('what lays an alternative says that something speaks against it', () => {
  expect(layAlternativeWords(0)).toBe('Lay it…');
  expect(layAlternativeWords(1)).toBe('Lay it against a stop…');
  expect(layAlternativeWords(3)).toBe('Lay it against 3 stops…');
});
