import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { dayStyle } from '../../app/words/dates';
import { emergenceWords } from '../../app/words/emergenceWords';

const up = { kind: 'up', day: dayOf('2013-05-12') } as const;
const known = { isImagined: false, relative: null };

test.each([
  ['metric', 'up about 12 May'],
  ['us', 'up about May 12'],
] as const)('%s', (system, says) => expect(emergenceWords(up, known, dayStyle(system))).toBe(says));

test('what is imagined or borrowed is said', () => {
  const style = dayStyle('metric');
  expect(emergenceWords(up, { ...known, isImagined: true }, style)).toBe(
    'up about 12 May, by weather partly imagined',
  );
  expect(emergenceWords(up, { isImagined: true, relative: 'cabbage' }, style)).toBe(
    'up about 12 May (taken as cabbage), by weather partly imagined',
  );
});

test('where nothing comes up, or nobody knows', () => {
  const style = dayStyle('metric');
  expect(emergenceWords({ kind: 'not yet' }, known, style)).toBe(
    'in soil too cold to come up this season',
  );
  expect(emergenceWords({ kind: 'unknown' }, known, style)).toBe('');
});
