import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixationStage, nitrateSuppression } from '../../../app/core/crop/fixation';
import {
  type Arrears,
  carryArrears,
  luxuryWanted,
  payArrears,
  uptakeLimit,
  wantedShare,
} from '../../../app/core/crop/need';
import { canopyShare, degreeDays, reachShare, rootDepthAt } from '../../../app/core/crop/stages';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { beanCrop, fruitingCrop } from '../season/handMadeBed';

const c = typicalCoefficients();

describe('what a crop wants', () => {
  test('law: nothing at the start, all at the end, never less than before', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const curve = fc.record({
      curveMiddle: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
      curveSteepness: fc.double({ min: 2, max: 15, noNaN: true }),
    });
    fc.assert(
      fc.property(curve, share, share, (crop, a, b) => {
        expect(wantedShare(crop, 0)).toBe(0);
        expect(wantedShare(crop, 1)).toBe(1);
        expect(wantedShare(crop, -3)).toBe(0);
        expect(wantedShare(crop, 7)).toBe(1);
        expect(wantedShare(crop, Math.max(a, b))).toBeGreaterThanOrEqual(
          wantedShare(crop, Math.min(a, b)),
        );
      }),
      { numRuns: 1000, seed: 56 },
    );
  });

  test('half is wanted where the curve has its middle, when that is the middle', () => {
    expect(wantedShare({ curveMiddle: 0.5, curveSteepness: 9 }, 0.5)).toBeCloseTo(0.5, 12);
  });

  test('arrears are kept for five days and paid oldest first', () => {
    const arrears: Arrears = [];
    for (const unmet of [1, 2, 3, 4, 5, 6]) carryArrears(arrears, unmet, c);
    expect(arrears).toEqual([2, 3, 4, 5, 6]);
    expect(payArrears(arrears, 4)).toBe(0);
    expect(arrears).toEqual([0, 1, 4, 5, 6]);
    expect(payArrears(arrears, 100)).toBe(84);
    expect(arrears).toEqual([0, 0, 0, 0, 0]);
  });

  test('a day takes a tenth of what lies above 0.4 g/m2 in reach', () => {
    expect(uptakeLimit(2.4, 1, c)).toBeCloseTo(0.2, 12);
    expect(uptakeLimit(2.4, 0.5, c)).toBeCloseTo(0.1, 12);
    expect(uptakeLimit(0.4, 1, c)).toBe(0);
    expect(uptakeLimit(0.1, 1, c)).toBe(0);
  });

  test.each([
    [3, 0],
    [4, 0],
    [7, 0.15],
    [10, 0.3],
    [25, 0.3],
  ])('at %d g/m2 nitrate plants take %d of the need beyond it', (nitrate, share) =>
    expect(luxuryWanted(1, nitrate, c)).toBeCloseTo(share, 12),
  );
});

describe('what a crop shades and reaches', () => {
  test('shade follows the coefficient to nine tenths, and stays at six once it is past its middle', () => {
    expect(canopyShare(fruitingCrop, 0.6, 0.1, c)).toBe(0);
    expect(canopyShare(fruitingCrop, 0.875, 0.4, c)).toBeCloseTo(0.45, 12);
    expect(canopyShare(fruitingCrop, 1.15, 0.5, c)).toBeCloseTo(0.9, 12);
    expect(canopyShare(fruitingCrop, 0.7, 0.95, c)).toBe(0.6);
    const flat = { ...fruitingCrop, cropCoefficientMiddle: 0.6 };
    expect(canopyShare(flat, 0.6, 0.5, c)).toBe(0);
  });

  test('roots are full at six tenths of the season', () => {
    expect(rootDepthAt(fruitingCrop, 0.3)).toBeCloseTo(400, 9);
    expect(rootDepthAt(fruitingCrop, 0.6)).toBeCloseTo(800, 9);
    expect(rootDepthAt(fruitingCrop, 1)).toBe(800);
    expect(reachShare(300, 300, 500)).toBe(0);
    expect(reachShare(550, 300, 500)).toBe(0.5);
    expect(reachShare(1800, 300, 500)).toBe(1);
  });

  test('degree-days are never negative', () => {
    expect(degreeDays(14, 10)).toBe(4);
    expect(degreeDays(6, 10)).toBe(0);
  });
});

describe('what a legume fixes', () => {
  const legume = beanCrop.legume!;

  test('nothing before its nodules work, its usual share to mid pod fill, less to the end', () => {
    expect(fixationStage(legume, beanCrop, 29, 0.5)).toBe(0);
    expect(fixationStage(legume, beanCrop, 30, 0.5)).toBe(1);
    const middle = (1 + 62 / 110) / 2;
    expect(fixationStage(legume, beanCrop, 80, middle)).toBe(1);
    expect(fixationStage(legume, beanCrop, 100, (1 + middle) / 2)).toBeCloseTo(0.5, 12);
    expect(fixationStage(legume, beanCrop, 110, 1)).toBe(0);
  });

  // Voisin and others 2002 (abstract): pea nodules stop at 48 kg/ha nitrate-N in leaf, 34 podding.
  test('nitrate of 4.8 g/m2 stops a pea in leaf, 3.4 in pod, half of it halves', () => {
    const pea = { ...legume, leafyLimit: 4.8, poddingLimit: 3.4 };
    const leafy = 0.2;
    const podding = 0.6;
    expect(nitrateSuppression(pea, beanCrop, 2.4, leafy)).toBeCloseTo(0.5, 12);
    expect(nitrateSuppression(pea, beanCrop, 4.8, leafy)).toBe(0);
    expect(nitrateSuppression(pea, beanCrop, 1.7, podding)).toBeCloseTo(0.5, 12);
    expect(nitrateSuppression(pea, beanCrop, 9, podding)).toBe(0);
    expect(nitrateSuppression(pea, beanCrop, 0, podding)).toBe(1);
  });
});
