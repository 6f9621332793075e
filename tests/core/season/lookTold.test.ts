import { describe, expect, test } from 'vitest';
import type { Look } from '../../../app/core/season/draws/signs';
import type { BedEvent } from '../../../app/core/season/input';
import { makeLayer, makePlanting, today } from '../madeBed';
import { all, kindsOf, ofBed, only } from './cautionRuns';

/* Which look at a bed counts, until when, and what ends it. Beds are made by hand. */

const salad = makePlanting({}, { excessClass: 'leaf' });
const covered = {
  plantings: [salad],
  layers: [makeLayer({ day: today - 20 })],
  result: { coverFraction: all(0.3) },
};
const told = (looks: readonly Look[], events: readonly BedEvent[] = []) =>
  ofBed({ ...covered, bed: { events } }, { looks });
const look = (ago: number, seen: Partial<Look>): Look => ({ day: today - ago, ...seen });

describe('a sour mat', () => {
  test('is told with the day of the look; a look today counts, one tomorrow does not', () => {
    expect(only(told([look(3, { smellsSour: true })]), 'sour mat').date).toBe(today - 3);
    expect(kindsOf(told([look(0, { smellsSour: true })]))).toContain('sour mat');
    expect(kindsOf(told([look(-1, { smellsSour: true })]))).not.toContain('sour mat');
  });

  test('the latest look decides, however the file has them; of two on a day the later written', () => {
    const sour = look(5, { smellsSour: true });
    const sweet = look(2, { smellsSour: false });
    expect(kindsOf(told([sour, sweet]))).not.toContain('sour mat');
    expect(kindsOf(told([sweet, sour]))).not.toContain('sour mat');
    const again = look(5, { smellsSour: false });
    expect(kindsOf(told([sour, again]))).not.toContain('sour mat');
    expect(kindsOf(told([again, sour]))).toContain('sour mat');
    // one who looked for slugs alone said nothing of the smell
    expect(kindsOf(told([sour, look(1, { slugsUnderBoard: true })]))).toContain('sour mat');
  });

  test.each(['rake off', 'dig cover in'] as const)('ends with %s on that day or since', (kind) => {
    const looks = [look(5, { smellsSour: true })];
    const after = (ago: number) => kindsOf(told(looks, [{ kind, day: today - ago, share: 1 }]));
    expect(after(6)).toContain('sour mat');
    for (const ago of [5, 2, 0]) expect(after(ago)).not.toContain('sour mat');
    // what is only planned has not mended it
    expect(after(-1)).toContain('sour mat');
    const watered: BedEvent = { kind: 'water', day: today - 1, depth: 9 };
    expect(kindsOf(told(looks, [watered]))).toContain('sour mat');
  });
});

test('slugs under the board: the day, whom they eat, from three tenths of cover on', () => {
  const looks = [look(4, { slugsUnderBoard: true })];
  expect(only(told(looks), 'slugs')).toMatchObject({
    row: 'slugs seen',
    date: today - 4,
    detail: { plantingId: salad.id },
  });
  const thin = { ...covered, result: { coverFraction: all(0.29) } };
  expect(kindsOf(ofBed(thin, { looks }))).not.toContain('slugs');
});
