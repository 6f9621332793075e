import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { seasonSpread } from '../../app/document/seasonSpread';
import type { Garden } from '../../app/document/schema';
import { drawnName } from '../../app/screens/beds/drawnName';
import { coefficientRows } from '../../app/tables/coefficients';
import { coefficientWords, remedyWords } from '../../app/words/drawnWords';
import { exampleGarden } from '../document/exampleGarden';

const day = (date: string): string => `<${date}>`;
const read = (file: string): Garden => {
  const parsed = parseGarden(readFileSync(join(import.meta.dirname, '../..', file), 'utf8'));
  if (!parsed.ok) throw new Error(file);
  return parsed.value;
};
const gardens: readonly (readonly [string, Garden])[] = [
  ['the sample', read('assets/gardens/sample.mowings')],
  ['the example', exampleGarden()],
  ['a frozen garden', read('tests/documents/v1-look.json')],
];

/** Every name that is drawn on a bed of a garden. */
function namesOf(garden: Garden): readonly string[] {
  return garden.beds.flatMap(({ id }) => {
    const { coefficients, layers, needs, fixing, organicMatter } = seasonSpread(garden, id);
    return [
      ...coefficients,
      ...Object.values(layers).flatMap((layer) => Object.values(layer)),
      ...Object.values(needs),
      ...Object.values(fixing ?? {}).flatMap(({ usual, limit }) => [usual, limit]),
      ...(organicMatter ? [organicMatter] : []),
    ].map(({ name }) => name);
  });
}

describe('what is drawn, in a gardener’s words', () => {
  test.each(gardens)('every name of %s has words, without ids and field terms', (_name, garden) => {
    const names = new Set(namesOf(garden));
    expect(names.size).toBeGreaterThan(12);
    for (const name of names) {
      const told = drawnName(garden, name, day);
      expect(told, name).not.toBeNull();
      expect(told!.words).toMatch(/^how |^what |^the appetite of /);
      expect(told!.words).not.toMatch(/coefficient|mineral|C:N|bed-|mowing-|application-|_/);
      expect(remedyWords[told!.remedy]('30 cm')).toMatch(/\.$/);
    }
  });
  test('no two things that are drawn on a bed share their words, but for like names', () => {
    const [, garden] = gardens[0]!;
    for (const { id } of garden.beds) {
      const names = [
        ...new Set(namesOf({ ...garden, beds: garden.beds.filter((bed) => bed.id === id) })),
      ];
      const words = names.map((name) => drawnName(garden, name, day)?.words);
      const twice = words.filter((one, at) => words.indexOf(one) !== at);
      expect(twice).toEqual([]);
    }
  });
  test('the rows that are drawn once for a garden are those that have words', () => {
    const drawn = Object.entries(coefficientRows)
      .filter(([, row]) => row.drawnPer !== undefined && row.drawnPer !== 'nothing')
      .map(([key]) => key);
    expect(Object.keys(coefficientWords).toSorted()).toEqual(drawn.toSorted());
  });
  test('what is named after something that is gone has none', () => {
    expect(drawnName(exampleGarden(), 'mass of mowing-99', day)).toBeNull();
    expect(drawnName(exampleGarden(), 'nonsense', day)).toBeNull();
  });
  test('names the thing and what settles it', () => {
    const [, garden] = gardens[0]!;
    const mowing = garden.mowings[0]!;
    expect(drawnName(garden, `mass of ${mowing.id}`, day)).toEqual({
      words: `how much was in the mowing of <${mowing.date}>`,
      remedy: 'weigh',
    });
    expect(drawnName(garden, 'organic matter a few', day)?.remedy).toBe('humus test');
    expect(drawnName(garden, 'soilReleaseRate', day)?.remedy).toBe('nitrate test');
  });
});
