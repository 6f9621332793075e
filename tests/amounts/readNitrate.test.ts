import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readNitrate, type NitrateFailure } from '../../app/amounts/readNitrate';
import { nitrateFailureSentence } from '../../app/words/nitrateWords';

describe('a soil test’s nitrate, as laboratories print it', () => {
  test.each([
    ['20 ppm', 20, 'mg/kg', 'nitrogen'],
    ['20ppm NO3-N', 20, 'mg/kg', 'nitrogen'],
    ['20 mg/kg nitrate-N', 20, 'mg/kg', 'nitrogen'],
    ['20 mg / kg nitrate nitrogen', 20, 'mg/kg', 'nitrogen'],
    ['12.5 mg/kg', 12.5, 'mg/kg', 'nitrogen'],
    ['12,5 mg/kg', 12.5, 'mg/kg', 'nitrogen'],
    ['35 lb/ac', 35, 'lb/acre', 'nitrogen'],
    ['35 lbs N/acre', 35, 'lb/acre', 'nitrogen'],
    ['35 pounds per acre', 35, 'lb/acre', 'nitrogen'],
    ['78 kg/ha', 78, 'kg/ha', 'nitrogen'],
    ['78 kg N/ha', 78, 'kg/ha', 'nitrogen'],
    ['78 kg per hectare', 78, 'kg/ha', 'nitrogen'],
    ['7.8 g/m\u00B2', 7.8, 'g/m2', 'nitrogen'],
    ['88 ppm NO3', 88, 'mg/kg', 'nitrate'],
    ['88 mg/kg nitrate', 88, 'mg/kg', 'nitrate'],
    ['0 ppm', 0, 'mg/kg', 'nitrogen'],
  ])('%s', (text, value, unit, form) => {
    expect(readNitrate(text)).toEqual({ ok: true, value: { text, value, unit, form } });
  });

  test('a number alone where the label says the unit', () => {
    expect(readNitrate('20', 'mg/kg')).toMatchObject({ value: { value: 20, unit: 'mg/kg' } });
    expect(readNitrate('20 NO3', 'mg/kg')).toMatchObject({ value: { form: 'nitrate' } });
  });

  test.each<[string, NitrateFailure['kind']]>([
    ['', 'empty'],
    ['x'.repeat(61), 'too long'],
    ['high', 'no number'],
    ['20', 'no unit'],
    ['20 mg/L', 'unknown unit'],
    ['20 lb', 'unknown unit'],
    ['-3 ppm', 'negative'],
    ['20000 ppm', 'too large'],
  ])('“%s” is not taken: %s, with a sentence and something that can be read', (text, kind) => {
    const result = readNitrate(text);
    if (result.ok) throw new Error('read');
    expect(result.error.kind).toBe(kind);
    expect(nitrateFailureSentence(result.error)).toMatch(/\.$/);
    expect(readNitrate(result.error.suggestion).ok).toBe(true);
  });

  test('any text is answered', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        const result = readNitrate(text);
        if (!result.ok) expect(readNitrate(result.error.suggestion).ok).toBe(true);
      }),
      { numRuns: 1000, seed: 1 },
    );
  });
});
