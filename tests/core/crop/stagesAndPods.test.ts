import { describe, expect, test } from 'vitest';
import { nitrateSuppression } from '../../../app/core/crop/fixation';
import { cropCoefficient } from '../../../app/core/crop/stages';
import { beanCrop, fruitingCrop } from '../season/handMadeBed';

describe('crop coefficient by stage (FAO-56 Figure 34: flat, rising, flat, falling)', () => {
  test.each([
    [0, 0.6],
    [0.2, 0.6],
    [0.35, (0.6 + 1.15) / 2],
    [0.5, 1.15],
    [0.7, 1.15],
    [0.8, 1.15],
    [0.9, (1.15 + 0.8) / 2],
    [1, 0.8],
  ])('at %d of the season %d', (progress, coefficient) =>
    expect(cropCoefficient(fruitingCrop, progress)).toBeCloseTo(coefficient, 12),
  );

  test('a crop that is taken green stays at its height to the end', () => {
    const lettuce = { ...fruitingCrop, stageShares: [0.2, 0.4, 0.4, 0] as const };
    for (const progress of [0.7, 1, 1.2])
      expect(cropCoefficient(lettuce, progress)).toBe(fruitingCrop.cropCoefficientMiddle);
  });
});

describe('when a legume begins to bear pods, from which less nitrate stops it', () => {
  const { legume } = beanCrop;
  const suppressed = (crop: typeof beanCrop, progress: number): number =>
    nitrateSuppression(legume!, crop, 1, progress);
  const leafy = 1 - 1 / legume!.leafyLimit;
  const podding = 1 - 1 / legume!.poddingLimit;

  test('midway from first flower to first pick', () => {
    const day = (42 + 62) / 2;
    expect(suppressed(beanCrop, (day - 1) / beanCrop.usualDays)).toBeCloseTo(leafy, 12);
    expect(suppressed(beanCrop, (day + 1) / beanCrop.usualDays)).toBeCloseTo(podding, 12);
  });

  test('at the first pick where flowers do not matter', () => {
    const crop = { ...beanCrop, flowerDays: null };
    expect(suppressed(crop, 61 / crop.usualDays)).toBeCloseTo(leafy, 12);
    expect(suppressed(crop, 63 / crop.usualDays)).toBeCloseTo(podding, 12);
  });
});
