import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { lawnHeldBack } from '../../app/document/lawnHeldBack';
import type { Garden, Lawn, Treatment } from '../../app/document/schema';

const today = dayOf('2013-06-15');
const held = (treatment: Treatment, mowings: readonly string[] = []) => {
  const lawn = {
    id: 'lawn-1',
    name: 'Front lawn',
    kind: 'ordinary',
    creepingGrass: false,
    treatment,
  } as Lawn;
  const garden = {
    garden: { seasonStartMonth: 1 },
    mowings: mowings.map((date) => ({ lawnId: 'lawn-1', date })),
  } as unknown as Garden;
  return lawnHeldBack(garden, lawn, today);
};

// the threshold table, treated sources: label first; an interval is kept; silent: four mowings and six weeks
describe('a lawn is held back', () => {
  test('where the label forbids', () => {
    expect(held({ answer: 'treated', date: '2013-05-04', label: 'forbids' })).toMatchObject({
      kind: 'treated lawn',
      weight: 'stop',
      layerId: null,
    });
  });

  test('until the interval of the label is over, and no longer', () => {
    const label = { answer: 'treated', label: 'interval', intervalDays: 28 } as const;
    expect(held({ ...label, date: '2013-05-19' })).toMatchObject({ date: dayOf('2013-06-16') });
    expect(held({ ...label, date: '2013-05-18' })).toBeNull();
  });

  test('where the label is silent, for four mowings and six weeks', () => {
    const silent = { answer: 'treated', date: '2013-05-01', label: 'silent' } as const;
    const four = ['2013-05-08', '2013-05-15', '2013-05-22', '2013-05-29'];
    expect(held(silent, four.slice(1))).not.toBeNull();
    expect(held(silent, four)).toBeNull();
    expect(held({ ...silent, date: '2013-05-06' }, four)).not.toBeNull();
  });

  test('where nobody knows; not where nothing was put on it or nobody was asked yet', () => {
    expect(held({ answer: 'unknown' })).not.toBeNull();
    expect(held({ answer: 'nothing' })).toBeNull();
    expect(held({ answer: 'not asked' })).toBeNull();
  });
});
