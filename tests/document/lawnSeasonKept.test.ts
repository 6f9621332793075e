// A lawn's days are run once for as long as what they hang on stays: an edit of a bed runs none anew.
import { produce } from 'immer';
import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { lawnSeason } from '../../app/document/lawnWeather';
import type { Garden } from '../../app/document/schema';
import { exampleGarden } from './exampleGarden';

const today = dayOf('2021-06-20');
const run = (garden: Garden, seed = 1) =>
  lawnSeason(garden, 'cool', today - 20, today + 30, today, seed);
const held = (): Garden => produce(exampleGarden(), (draft) => void (draft.garden.name = 'Held'));

test('the same garden, and one with another bed’s name, get the very same days', () => {
  const garden = held();
  const renamed = produce(garden, (draft) => void (draft.beds[0]!.name = 'Another'));
  expect(run(renamed)).toBe(run(garden));
});

test('another seed, place, soil or rain gets its own', () => {
  const garden = held();
  const before = run(garden);
  expect(run(garden, 2)).not.toBe(before);
  const changes: ((draft: Garden) => void)[] = [
    (draft) => void (draft.garden.latitudeDegrees = 12),
    (draft) => draft.beds.forEach((bed) => (bed.texture = 'sand')),
    (draft) =>
      void draft.events.push({
        id: 'gauge',
        kind: 'rain gauge',
        date: '2021-06-18',
        millimetres: 80,
      }),
  ];
  for (const change of changes) {
    const other = run(produce(garden, change));
    expect(other).not.toBe(before);
    expect(other).not.toEqual(before);
  }
});

test('is what it is where nothing is kept', () => {
  expect(run(held())).toEqual(run(exampleGarden()));
});
