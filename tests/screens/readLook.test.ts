import { describe, expect, test } from 'vitest';
import { lookKinds, type Look } from '../../app/core/season/draws/signs';
import { hasLegumeOn, readLook } from '../../app/screens/beds/readLook';
import { answerOf } from '../../app/words/lookWords';
import { exampleGarden } from '../document/exampleGarden';

describe('the look-and-dig dialog', () => {
  test('nothing ticked is no entry', () => {
    expect(readLook({})).toBeNull();
    expect(readLook({ leaves: null, soilSeen: '' })).toBeNull();
  });
  test('keeps what was answered, and leaves out what was not', () => {
    expect(readLook({ leaves: 'yellow', moistFingerDeep: 'no', nodules: null })).toEqual({
      leaves: 'yellow',
      moistFingerDeep: false,
    });
  });
  test('what is opened again comes out as it went in', () => {
    const looks: readonly Omit<Look, 'day'>[] = [
      { nodules: 'white', leaves: 'dark and lush', smellsSour: true, soilSeen: 'all' },
      { moistFingerDeep: true, slugsUnderBoard: false },
    ];
    for (const look of looks)
      expect(
        readLook(Object.fromEntries(lookKinds.map((kind) => [kind, answerOf(look, kind)]))),
      ).toEqual(look);
  });
  test('asks for nodules only where a legume stands', () => {
    const garden = exampleGarden();
    const planting = {
      ...garden.plantings[0]!,
      bedId: 'bed-1',
      cropId: 'snap_bean_pole',
      started: '2021-05-10',
      cleared: '2021-08-01',
    };
    const only = { ...garden, plantings: [planting] };
    expect(hasLegumeOn(only, 'bed-1', '2021-06-01')).toBe(true);
    expect(hasLegumeOn(only, 'bed-1', '2021-08-02')).toBe(false);
    expect(hasLegumeOn(only, 'bed-2', '2021-06-01')).toBe(false);
    expect(
      hasLegumeOn(
        { ...only, plantings: [{ ...planting, cropId: 'tomato' }] },
        'bed-1',
        '2021-06-01',
      ),
    ).toBe(false);
  });
});
