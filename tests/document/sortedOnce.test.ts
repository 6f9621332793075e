import { describe, expect, test } from 'vitest';
import { ofBed } from '../../app/document/ofBed';
import { sortedOnce } from '../../app/document/sortedOnce';
import { withId } from '../../app/document/withId';

interface Entry {
  readonly at: number;
  readonly word?: string;
}

const entries: readonly Entry[] = Array.from({ length: 40 }, (_, at) =>
  at % 4 === 3 ? { at } : { at, word: `word ${(7 * at) % 5}` },
);

describe('entries that are sorted once', () => {
  test('are those that reading through finds, in their order', () => {
    const find = sortedOnce(({ word }: Entry) => word);
    const frozen = Object.freeze([...entries]);
    for (const word of ['word 0', 'word 1', 'word 2', 'word 3', 'word 4', 'no word']) {
      const own = entries.filter((one) => one.word === word);
      expect(find(frozen, word)).toEqual(own);
      expect(find(entries, word)).toEqual(own);
    }
    expect(find(frozen, 'word 0').length).toBeGreaterThan(3);
  });

  test('are looked at once, however many words are asked for', () => {
    let looks = 0;
    const find = sortedOnce(({ word }: Entry) => {
      looks += 1;
      return word;
    });
    const frozen = Object.freeze([...entries]);
    for (let round = 0; round < 60; round++) find(frozen, `word ${round % 5}`);
    expect(looks).toBe(entries.length);
    find(Object.freeze(entries.slice(1)), 'word 1');
    expect(looks).toBe(2 * entries.length - 1);
  });

  test('of a list that may change are found as it is now', () => {
    const find = sortedOnce(({ word }: Entry) => word);
    const list = [...entries];
    const before = find(list, 'word 1').length;
    list.push({ at: 99, word: 'word 1' });
    expect(find(list, 'word 1')).toHaveLength(before + 1);
  });
});

test('rain is of no bed', () => {
  const log = Object.freeze([
    { kind: 'rain gauge' as const, millimetres: 3 },
    { kind: 'water' as const, bedId: 'one' },
    { kind: 'water' as const, bedId: 'two' },
  ]);
  expect(ofBed(log, 'one')).toEqual([log[1]]);
  expect(ofBed(log, 'three')).toEqual([]);
});

test('of two of one name the first is found, as reading through would', () => {
  const twice = [
    { id: 'a', at: 1 },
    { id: 'a', at: 2 },
  ];
  expect(withId(twice, 'a')?.at).toBe(1);
  expect(withId(Object.freeze([...twice]), 'a')?.at).toBe(1);
  expect(withId(twice, 'b')).toBeUndefined();
});
