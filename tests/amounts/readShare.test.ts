import { describe, expect, test } from 'vitest';
import { readShare } from '../../app/amounts/readShare';

describe('a part of what is in hand', () => {
  test.each([
    ['all of it', 1, 'all'],
    ['All', 1, 'all'],
    ['everything', 1, 'all'],
    ['half', 1 / 2, 'all'],
    ['half of it', 1 / 2, 'all'],
    ['a third', 1 / 3, 'all'],
    ['three quarters of it', 3 / 4, 'all'],
    ['the rest', 1, 'the rest'],
    ['what is left', 1, 'the rest'],
    ['what’s left', 1, 'the rest'],
    ['half of the rest', 1 / 2, 'the rest'],
  ])('%s', (text, share, of) => {
    expect(readShare(text)).toEqual({ share, of });
  });

  test.each([
    'half a bag',
    '1/2',
    '1/2 bag',
    '2 bags',
    'half a bucket of it',
    '',
    'rest bed',
    'a bag',
  ])('“%s” is no part of it', (text) => {
    expect(readShare(text)).toBeNull();
  });
});
