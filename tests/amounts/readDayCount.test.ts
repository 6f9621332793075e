import { expect, test } from 'vitest';
import { readDayCount } from '../../app/amounts/readDayCount';

test.each([
  ['28', 28],
  [' 28 days. ', 28],
  ['1 day', 1],
  ['4 weeks', 28],
  ['1½ weeks', 10.5],
  ['2 wk', 14],
  ['a', null],
  ['', null],
  ['-1', null],
  ['4 moons', null],
  ['weeks', null],
  ['2 fortnights', 28],
] as const)('“%s” is %s days', (text, days) => expect(readDayCount(text)).toBe(days));
