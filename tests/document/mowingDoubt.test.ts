import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { mowingDoubt } from '../../app/document/mowingDoubt';
import { parseGarden } from '../../app/document/parse';
import type { Garden, Mowing } from '../../app/document/schema';
import { mowingDoubtSentence } from '../../app/words/lawnWords';

const text = readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8');
const parsed = parseGarden(text);
if (!parsed.ok) throw new Error(parsed.error.kind);
const sample: Garden = parsed.value;
const bags = (mowing: Mowing, count: number): Mowing => ({
  ...mowing,
  amount: {
    text: `${count} bags`,
    certainty: 'plain',
    quantity: {
      kind: 'containers',
      count,
      containerId: sample.containers.find(({ name }) => name === 'bag')?.id ?? '',
    },
  },
});
const last = sample.mowings.toSorted((one, other) => (one.date < other.date ? 1 : -1))[0]!;

describe('a mowing that its lawn can hardly have grown', () => {
  test('every mowing of the sample garden is believable', () => {
    expect(sample.mowings.length).toBeGreaterThan(5);
    expect(sample.mowings.filter((mowing) => mowingDoubt(sample, mowing) !== null)).toEqual([]);
  });

  test('twenty bags in a week from 220 m2 are asked about', () => {
    const doubt = mowingDoubt(sample, bags(last, 20));
    expect(doubt?.times).toBeGreaterThan(3);
    // 20 bags of 2.26 kg dry (sample garden)
    expect(doubt?.dryKilograms).toBeCloseTo(45.2, 6);
    const sentence = mowingDoubtSentence(doubt!, '9 June');
    expect(sentence).toMatch(
      /^That is about [\d.]+ times what this lawn can have grown since 9 June\./,
    );
  });

  test('a lawn mown in two halves on neighbouring days is one mowing', () => {
    const second: Mowing = { ...bags(last, 1), id: 'second-half', date: last.date };
    const halves: Garden = {
      ...sample,
      mowings: sample.mowings.map((mowing) => (mowing.id === last.id ? bags(last, 1) : mowing)),
    };
    expect(mowingDoubt(halves, second)).toBeNull();
  });

  test('more on the same days is never less doubtful, a bigger lawn never more', () => {
    const times = (count: number, areaM2: number): number => {
      const garden: Garden = {
        ...sample,
        lawns: sample.lawns.map((lawn) => (lawn.id === last.lawnId ? { ...lawn, areaM2 } : lawn)),
      };
      return mowingDoubt(garden, bags(last, count))?.times ?? 0;
    };
    expect(times(40, 220)).toBeGreaterThan(times(20, 220));
    expect(times(20, 440)).toBeLessThan(times(20, 220));
  });

  test('where grass cannot have grown, the sentence says so', () => {
    expect(mowingDoubtSentence({ times: Infinity }, '1 January')).toMatch(/^This lawn can hardly/);
  });
});
