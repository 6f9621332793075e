import { expect, test } from 'vitest';
import { ownClock, ownCrop } from '../../../app/core/season/ownCrop';
import { beanCrop, firstOf2013, fruitingCrop, planted } from './handMadeBed';

test('a crop of one build is the crop', () => {
  for (const crop of [fruitingCrop, beanCrop])
    expect(ownCrop({ ...crop, emergence: [] })).toEqual({ ...crop, emergence: [] });
});

test('a clock of one build is the clock', () => {
  const planting = planted(beanCrop, firstOf2013 + 9);
  expect(planting).toMatchObject(ownClock(planting));
  expect(Object.keys(ownClock(planting))).toHaveLength(4);
});
