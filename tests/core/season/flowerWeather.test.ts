import { expect, test } from 'vitest';
import { flowerWeather } from '../../../app/core/season/flowerWeather';
import { limits } from '../../../app/tables/thresholds';
import { between, firstDay, makeResult, stepping, today } from '../madeBed';
import { all } from './cautionRuns';

/* Days past 32 C, nights past 24 or under 13 C, dry soil: threshold table; fewer than three count as none. */

const counted = (parts: Parameters<typeof makeResult>[0], day = today) =>
  flowerWeather(makeResult({ airMinimum: all(18), ...parts }), day, limits);

test('each kind of day is counted by itself, and the line of a hot day is named', () => {
  expect(counted({})).toEqual({
    hotAbove: 32,
    hotDays: 0,
    hotNights: 0,
    coldNights: 0,
    dryDays: 0,
  });
  expect(counted({ airMaximum: stepping(30, today - 4, 33) })).toMatchObject({
    hotDays: 4,
    hotNights: 0,
  });
  expect(counted({ airMinimum: stepping(18, today - 5, 25) })).toMatchObject({
    hotNights: 5,
    coldNights: 0,
  });
  expect(counted({ airMinimum: stepping(18, today - 6, 12) })).toMatchObject({
    coldNights: 6,
    hotNights: 0,
  });
  expect(counted({ dryness: stepping(0, today - 7, 1.2) })).toMatchObject({
    dryDays: 7,
    hotDays: 0,
  });
});

test('only past a line, not on it', () => {
  expect(counted({ airMaximum: all(32), airMinimum: all(24), dryness: all(1) })).toMatchObject({
    hotDays: 0,
    hotNights: 0,
    dryDays: 0,
  });
  expect(counted({ airMinimum: all(13) }).coldNights).toBe(0);
});

test('three days are worth a word, two are not', () => {
  const last = (many: number) => counted({ airMaximum: stepping(20, today - many, 35) }).hotDays;
  expect(last(3)).toBe(3);
  expect(last(2)).toBe(0);
});

test('the fortnight up to today: not what is imagined, not what is longer ago', () => {
  expect(counted({ airMaximum: all(35) }).hotDays).toBe(14);
  expect(counted({ airMaximum: between(35, today + 1, today + 14) }).hotDays).toBe(0);
  expect(counted({ airMaximum: between(35, today - 20, today - 14) }).hotDays).toBe(0);
  expect(counted({ airMaximum: between(35, today - 20, today - 11) }).hotDays).toBe(3);
});

test('a run that has just begun is counted from its first day', () => {
  expect(counted({ airMaximum: all(35) }, firstDay + 3).hotDays).toBe(4);
});
