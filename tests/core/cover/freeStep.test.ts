import { describe, expect, test } from 'vitest';
import { ammoniaPotential } from '../../../app/core/cover/ammonia';
import { classFor } from '../../../app/core/cover/residueClass';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { decayStep, freeStep, nitrogenReleased } from './oneStep';

const c = typicalCoefficients();

describe('the step of a class is the step of its pools', () => {
  test.each([
    [1, 1],
    [0.09, 1.4],
    [2.1, 0.4],
    [0, 0.7],
    [0.5, 0],
  ])('%d days of the residue, %d of the soil', (residueDays, turnoverDays) => {
    for (const [kind, ratio] of [
      ['green', 13],
      ['mature', 80],
    ] as const) {
      const item = classFor([], 'dug', kind, ratio, c);
      Object.assign(item, { residue: 120, microbes: 14, humus: 3 });
      const { after, released } = freeStep(item, residueDays, turnoverDays, c);
      const exact = decayStep(item, item.parameters, residueDays, turnoverDays, c.assimilation);
      expect(after.residue).toBeCloseTo(exact.residue, 10);
      expect(after.microbes).toBeCloseTo(exact.microbes, 10);
      expect(after.humus).toBeCloseTo(exact.humus, 10);
      expect(released).toBeCloseTo(nitrogenReleased(item, exact, item.parameters), 10);
    }
  });
});

describe('a crumb of residue, too small for any balance', () => {
  const left = (kind: 'green' | 'inert', residueDays: number): number => {
    const item = classFor([], 'laid', kind, 13, c);
    Object.assign(item, { residue: 1e-13, microbes: 5 });
    return freeStep(item, residueDays, 1, c).after.residue;
  };
  test('is eaten whole', () => expect(left('green', 0.2)).toBe(0));
  test('but not in frost', () => expect(left('green', 0)).toBe(1e-13));
  test('nor of wood that does not rot', () => expect(left('inert', 0.2)).toBe(1e-13));
});

test('the drawn factor on ammonia multiplies the promise, up to its limit', () => {
  const promised = (ammoniaFactor: number): number =>
    ammoniaPotential(30, 'just cut', 10, { ...c, ammoniaFactor });
  expect(promised(1)).toBeCloseTo(0.0692, 12);
  expect(promised(2)).toBeCloseTo(2 * 0.0692, 12);
  expect(promised(0.3)).toBeCloseTo(0.3 * 0.0692, 12);
  expect(promised(9)).toBeCloseTo(0.45, 12);
});
