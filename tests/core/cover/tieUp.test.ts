import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classFor } from '../../../app/core/cover/residueClass';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { decayStep, freeStep, nitrogenReleased, starvedStep } from './oneStep';

const c = typicalCoefficients();
const straw = (residue: number, microbes: number) => ({
  ...classFor([], 'dug', 'mature', 80, c),
  residue,
  microbes,
});

describe('browns that want more nitrogen than there is', () => {
  test('have the decay of their share, and no less than three tenths of it', () => {
    const item = straw(400, 0);
    const wanted = -freeStep(item, 1, 1, c).released;
    expect(wanted).toBeGreaterThan(0.5);
    for (const share of [0, 0.1, 0.29, 0.31, 0.6, 0.9]) {
      const { after } = starvedStep(item, 1, 1, wanted, share * wanted, c);
      const slowed = Math.max(share, 0.3);
      expect(after.residue).toBeCloseTo(400 * Math.exp(-item.parameters.decay * slowed), 9);
    }
  });

  test('what is still wanting lowers the yield of the microbes by the printed line', () => {
    const item = straw(400, 20);
    const wanted = -freeStep(item, 1, 1, c).released;
    const supply = 0.1 * wanted;
    const step = starvedStep(item, 1, 1, wanted, supply, c);
    const net = (yieldOf: number): number =>
      nitrogenReleased(item, decayStep(item, item.parameters, 0.3, 1, yieldOf), item.parameters);
    const [n0, n1] = [net(0), net(0.62)];
    const lowered = Math.max(0, (0.62 * (n0 + supply)) / (n0 - n1));
    expect(lowered).toBeLessThan(0.62);
    const exact = decayStep(item, item.parameters, 0.3, 1, lowered);
    for (const pool of ['residue', 'microbes', 'humus'] as const)
      expect(step.after[pool]).toBeCloseTo(exact[pool], 12);
    expect(-step.released).toBeCloseTo(supply, 10);
  });

  test('never tie up more than they can have, and always go on decaying', () => {
    const amount = fc.double({ min: 0.1, max: 3000, noNaN: true });
    const days = fc.double({ min: 0.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        amount,
        amount,
        days,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (r, b, t, share) => {
          const item = straw(r, b / 10);
          const wanted = -freeStep(item, t, t, c).released;
          fc.pre(wanted > 1e-6);
          const step = starvedStep(item, t, t, wanted, share * wanted, c);
          expect(-step.released).toBeLessThanOrEqual(share * wanted + 1e-9);
          expect(step.after.residue).toBeLessThan(item.residue);
        },
      ),
      { numRuns: 1000, seed: 1980 },
    );
  });
});
