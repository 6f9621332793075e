import { describe, expect, test } from 'vitest';
import { whereOf } from '../../app/screens/frame/useWindowHistory';

describe('what the window finds in its history', () => {
  test.each([
    [
      { mowings: { place: 'beds', openBedId: 'b1', opening: 2 } },
      { place: 'beds', openBedId: 'b1' },
    ],
    [
      { mowings: { place: 'garden', openBedId: null, opening: 2 } },
      { place: 'garden', openBedId: null },
    ],
    // of a garden that was put away since
    [{ mowings: { place: 'beds', openBedId: 'b1', opening: 1 } }, null],
    [{ mowings: { place: 'cellar', openBedId: null, opening: 2 } }, null],
    [{ mowings: null }, null],
    [{ other: 1 }, null],
    [null, null],
    ['text', null],
  ])('%j', (state, where) => expect(whereOf(state, 2)).toEqual(where));
});
