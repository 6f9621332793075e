import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { matchWords, type Named } from '../../app/screens/find/matchWords';
import { foundSentence } from '../../app/words/findWords';

const named = (words: string, ...also: string[]): Named => ({ words, also });
const things = [
  named('This week'),
  named('Beds'),
  named('Beds and plantings'),
  named('Gate bed', 'Sweet potatoes'),
  named('Save', 'keep', 'file'),
  named('Save as…', 'copy'),
  named('Undo: Lay 2 bags on Gate bed', 'take back'),
  named('Crème pumpkin'),
];
const found = (typed: string): readonly string[] =>
  matchWords(things, typed).things.map(({ words }) => words);

describe('finding by the beginnings of words', () => {
  test('nothing typed leaves all as they are', () => {
    expect(matchWords(things, '  ').things).toBe(things);
  });
  test.each([
    ['sav', ['Save', 'Save as…']],
    ['save', ['Save', 'Save as…']],
    ['ga be', ['Gate bed', 'Undo: Lay 2 bags on Gate bed']],
    ['be ga', ['Gate bed', 'Undo: Lay 2 bags on Gate bed']],
    ['bed', ['Beds', 'Beds and plantings', 'Gate bed', 'Undo: Lay 2 bags on Gate bed']],
    ['2 bags', ['Undo: Lay 2 bags on Gate bed']],
    ['potato', ['Gate bed']],
    ['creme', ['Crème pumpkin']],
    ['WEEK', ['This week']],
    ['copy file', []],
  ])('“%s”', (typed, expected) => expect(found(typed)).toEqual(expected));

  test('what begins its own name comes before what is only called so otherwise', () => {
    expect(found('keep')).toEqual(['Save']);
    expect(matchWords([named('Heap', 'copy'), named('Copy')], 'co').things[0]?.words).toBe('Copy');
  });
});

describe('a slip of the fingers', () => {
  test.each([
    ['savve', ['Save', 'Save as…']],
    ['gaet bed', ['Gate bed', 'Undo: Lay 2 bags on Gate bed']],
    ['potatos', ['Gate bed']],
  ])('“%s” finds what is near it, and says that it is not the same', (typed, expected) => {
    expect(found(typed)).toEqual(expected);
    expect(matchWords(things, typed).isNear).toBe(true);
  });
  test('short words are near too many others', () => {
    expect(found('xed')).toEqual([]);
  });
  test('far from everything: nothing', () => {
    expect(found('hippopotamus')).toEqual([]);
  });
});

test('laws: what is found is of the list, once; its own name always finds a thing', () => {
  const words = fc
    .array(fc.constantFrom('lay', 'gate', 'bed', 'save', 'Beans', 'sow'), {
      minLength: 1,
      maxLength: 3,
    })
    .map((list) => list.join(' '));
  fc.assert(
    fc.property(fc.array(words, { maxLength: 8 }), fc.string({ maxLength: 12 }), (names, typed) => {
      const list = names.map((name) => named(name));
      const some = matchWords(list, typed).things;
      expect(new Set(some).size).toBe(some.length);
      for (const one of some) expect(list).toContain(one);
      for (const one of list) expect(matchWords(list, one.words).things).toContain(one);
    }),
  );
});

test.each([
  [{ count: 9, all: 9, typed: '', isNear: false }, /^Type the first letters/],
  [{ count: 1, all: 1, typed: 'sav', isNear: false }, /^One found\.$/],
  [{ count: 3, all: 3, typed: 'sav', isNear: false }, /^3 found\.$/],
  [{ count: 40, all: 55, typed: 'be', isNear: false }, /^The first 40 of 55/],
  [
    { count: 2, all: 2, typed: 'savve', isNear: true },
    /^Nothing is called “savve”\. Near it: 2\.$/,
  ],
  [{ count: 0, all: 0, typed: 'zzz', isNear: true }, /^Nothing is called “zzz”/],
])('%o', (given, expected) => expect(foundSentence(given)).toMatch(expected));
