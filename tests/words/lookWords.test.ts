import { describe, expect, test } from 'vitest';
import { lookKinds } from '../../app/core/season/draws/signs';
import { lookAnswers } from '../../app/document/schema';
import { lookAdvice, lookLine, lookOrder, lookQuestions } from '../../app/words/lookWords';

describe('a look at a bed in words', () => {
  test('every sign is asked for, with every answer the file knows', () => {
    expect([...lookOrder].sort()).toEqual([...lookKinds].sort());
    for (const kind of lookKinds) {
      const values = lookQuestions[kind].answers.map(({ value }) => value);
      const known: readonly string[] =
        kind in lookAnswers ? lookAnswers[kind as keyof typeof lookAnswers] : ['yes', 'no'];
      expect([...values].sort()).toEqual([...known].sort());
    }
  });
  test('a line names what was seen and nothing else', () => {
    expect(lookLine({ leaves: 'yellow', moistFingerDeep: false, soilSeen: 'some' })).toBe(
      'Looked and dug: lower leaves yellow, some soil shows, dry a finger deep',
    );
    expect(lookLine({ smellsSour: true })).toBe('Looked and dug: cover smells sour');
  });
  test('thirst, cold and hunger are told apart', () => {
    expect(lookAdvice({ leaves: 'yellow', moistFingerDeep: false }, true)).toMatch(/thirst/);
    expect(lookAdvice({ leaves: 'yellow', moistFingerDeep: true }, true)).toMatch(/cold/);
    expect(lookAdvice({ leaves: 'yellow', moistFingerDeep: true }, false)).toMatch(/hunger/);
    expect(lookAdvice({ leaves: 'yellow' }, false)).toMatch(/finger/);
    expect(lookAdvice({ leaves: 'normal', smellsSour: false }, true)).toBe('');
  });
  test('no sentence is over 25 words', () => {
    for (const moistFingerDeep of [true, false, undefined])
      for (const isCold of [true, false])
        for (const sentence of lookAdvice(
          { leaves: 'yellow', smellsSour: true, slugsUnderBoard: true, moistFingerDeep },
          isCold,
        ).split('. '))
          expect(sentence.split(' ').length).toBeLessThanOrEqual(25);
  });
});
