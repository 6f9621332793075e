import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { clippingsKeep, clippingsKeepDays } from '../../app/document/clippingsKeep';
import { whatGroups } from '../../app/screens/week/sources';
import { exampleGarden } from './exampleGarden';

const cut = (date: string) => ({ date });

describe('clippings in hand', () => {
  test('keep a week from the day they were cut, and were not there before it', () => {
    const day = dayOf('2013-11-18');
    expect(clippingsKeep(cut('2013-11-18'), day - 1)).toBe(false);
    expect(clippingsKeep(cut('2013-11-18'), day)).toBe(true);
    expect(clippingsKeep(cut('2013-11-18'), day + clippingsKeepDays - 1)).toBe(true);
    expect(clippingsKeep(cut('2013-11-18'), day + clippingsKeepDays)).toBe(false);
  });

  test('are offered as waiting while they keep, and later only as what they are', () => {
    const [first] = exampleGarden().mowings;
    if (!first) throw new Error('The example garden has a mowing');
    const garden = {
      ...exampleGarden(),
      applications: [],
      mowings: [{ ...first, rest: { to: 'undecided' as const } }],
    };
    const groupOf = (later: number) =>
      whatGroups(garden, dayOf(first.date) + later, String).find(({ options }) =>
        options.some(({ value }) => value === `mowing:${first.id}`),
      )?.label;
    expect(groupOf(6)).toBe('Cut and waiting');
    expect(groupOf(7)).toBe('Mown long ago, not fresh any more');
  });
});
