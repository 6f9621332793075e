import { describe, expect, test } from 'vitest';
import {
  mixCarbonToNitrogen,
  mixMoisture,
  partnerForMoisture,
  partnerForRatio,
  partnersForBoth,
  type MixtureShare,
} from '../../../app/core/cover/mix';

const grass: MixtureShare = {
  freshKilograms: 10,
  moistureFraction: 0.8,
  carbonFraction: 0.44,
  nitrogenFraction: 0.034,
};
const straw = { moistureFraction: 0.1, carbonFraction: 0.45, nitrogenFraction: 0.004 };
const refused = (error: object) => ({ ok: false, error });

describe('what each sum of a mixture refuses, and by which part', () => {
  test.each([
    ['a mass without end', { freshKilograms: Infinity }, { kind: 'not-a-mass', share: 0 }],
    ['no number for a mass', { freshKilograms: NaN }, { kind: 'not-a-mass', share: 0 }],
    ['water below nought', { moistureFraction: -0.01 }, { kind: 'not-a-fraction', share: 0 }],
    ['water in per cent', { moistureFraction: 80 }, { kind: 'not-a-fraction', share: 0 }],
    ['carbon below nought', { carbonFraction: -0.01 }, { kind: 'not-a-fraction', share: 0 }],
  ])('%s', (_name, change, error) => {
    const wrong = { ...grass, ...change };
    expect(mixCarbonToNitrogen([wrong])).toEqual(refused(error));
    expect(mixMoisture([wrong])).toEqual(refused(error));
    expect(partnerForRatio(wrong, straw, 30)).toEqual(refused(error));
    expect(partnerForMoisture(wrong, straw, 0.6)).toEqual(refused(error));
    expect(partnersForBoth(wrong, straw, 30, 0.6)).toEqual(refused(error));
  });

  test('a wrong second part is named as the second', () => {
    const wrong = { ...straw, carbonFraction: 45 };
    const error = { kind: 'not-a-fraction', share: 1 };
    expect(partnerForRatio(grass, wrong, 30)).toEqual(refused(error));
    expect(partnerForMoisture(grass, wrong, 0.6)).toEqual(refused(error));
  });

  test('a goal that only an endless mass would reach is out of reach', () => {
    const half = { moistureFraction: 0.5, carbonFraction: 0.5, nitrogenFraction: 0.0625 };
    expect(partnerForRatio(grass, half, 8)).toEqual(refused({ kind: 'out-of-reach' }));
    expect(partnerForMoisture(grass, half, 0.5)).toEqual(refused({ kind: 'out-of-reach' }));
    const wet = { ...half, moistureFraction: 0.9 };
    expect(partnerForMoisture(grass, wet, 0.9)).toEqual(refused({ kind: 'out-of-reach' }));
  });

  test('a mixture can be wanted bone dry, but not of water alone or drier than dry', () => {
    const wanted = (moisture: number) => partnersForBoth(grass, straw, 30, moisture);
    expect(wanted(0)).toMatchObject({ ok: true });
    for (const moisture of [1, 1.2, -0.1, NaN])
      expect(wanted(moisture)).toEqual(refused({ kind: 'not-a-fraction', share: 2 }));
  });
});
