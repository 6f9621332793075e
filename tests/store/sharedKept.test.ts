import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import type { DrawsQuestion } from '../../app/core/season/draws/runDraws';
import { drawsQuestion } from '../../app/document/drawsQuestion';
import { sharedKept } from '../../app/worker/sharedKept';
import { exampleGarden } from '../document/exampleGarden';

const question = (bedId: string, count = 10): DrawsQuestion =>
  drawsQuestion(exampleGarden(), bedId, dayOf('2021-06-20'), count);

describe('what draws share', () => {
  test('over the beds of a garden and from question to question', () => {
    const kept = sharedKept();
    const first = kept(question('bed-1'));
    expect(kept(question('bed-2'))).toBe(first);
    expect(kept(question('bed-1'))).toBe(first);
    expect(first.block(0)).toBe(first.block(0));
  });

  test.each<[string, (asked: DrawsQuestion) => DrawsQuestion]>([
    ['seed', (asked) => ({ ...asked, seed: asked.seed + 1 })],
    ['number', (asked) => ({ ...asked, count: asked.count + 1 })],
    [
      'climate',
      (asked) => ({
        ...asked,
        input: {
          ...asked.input,
          normals: {
            ...asked.input.normals,
            rainMillimetres: asked.input.normals.rainMillimetres.map((rain) => rain + 1),
          },
        },
      }),
    ],
    ['place', (asked) => ({ ...asked, input: { ...asked.input, latitudeDegrees: 10 } })],
    [
      'weather to come',
      (asked) => ({ ...asked, weather: { kind: 'years', seasons: [asked.input.weather] } }),
    ],
  ])('not where the %s is another', (_what, change) => {
    const kept = sharedKept();
    const asked = question('bed-1');
    expect(kept(change(asked))).not.toBe(kept(asked));
  });

  test('two sets at most, the last used ones, and made anew in the end', () => {
    const kept = sharedKept();
    const [quick, whole] = [kept(question('bed-1', 10)), kept(question('bed-1', 20))];
    expect(kept(question('bed-1', 10))).toBe(quick);
    kept(question('bed-1', 30));
    expect(kept(question('bed-1', 10))).toBe(quick);
    expect(kept(question('bed-1', 20))).not.toBe(whole);
    const asked = question('bed-1', 40);
    const before = kept(asked);
    for (let use = 0; use < 1000; use++) kept(asked);
    expect(kept(asked)).not.toBe(before);
  });
});
