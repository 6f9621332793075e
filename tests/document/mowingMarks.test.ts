// Which of a lawn's mowings is meant, where the lawn's name alone does not say.
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { mowingMark } from '../../app/document/mowingMarks';
import type { Mowing } from '../../app/document/schema';
import { mowingMarkWords } from '../../app/words/mowingMarkWords';

const mowing = (id: string, date: string, rest: Mowing['rest'], lawnId = 'back'): Mowing => ({
  id,
  date,
  lawnId,
  amount: { text: '3 bags', quantity: { kind: 'volume', litres: 120 }, certainty: 'plain' },
  wetness: 'damp',
  kind: null,
  rest,
});
const waiting = { to: 'undecided' } as const;
const words = (mowings: Mowing[], id: string) =>
  mowingMarkWords(mowingMark({ mowings }, id), () => '9 June');

describe('a mowing', () => {
  test('that is alone needs nothing but its lawn', () => {
    const mowings = [
      mowing('a', '2013-06-15', waiting),
      mowing('b', '2013-06-15', waiting, 'front'),
      mowing('c', '2013-06-09', { to: 'lawn' }),
    ];
    expect(words(mowings, 'a')).toBe('');
    expect(words(mowings, 'b')).toBe('');
  });

  test('of the same lawn and day, and as many bags, is counted', () => {
    const mowings = [mowing('a', '2013-06-15', waiting), mowing('b', '2013-06-15', waiting)];
    expect(words(mowings, 'a')).toBe(' (first mowing)');
    expect(words(mowings, 'b')).toBe(' (second mowing)');
  });

  test('beside one that waits from another day tells its day', () => {
    const mowings = [mowing('a', '2013-06-09', waiting), mowing('b', '2013-06-15', waiting)];
    expect(mowingMark({ mowings }, 'b')).toEqual({ nth: null, day: dayOf('2013-06-15') });
    expect(words(mowings, 'a')).toBe(' (mown 9 June)');
  });

  test('that is not there is taken for nothing', () => {
    expect(words([], 'a')).toBe('');
  });
});
