import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bareAfter, groundPieces } from '../../../app/core/plan/ground';

const perKilogram = 5;
const kilograms = fc.double({ min: 0, max: 3, noNaN: true });

test('what lies now is exact', () => {
  fc.assert(
    fc.property(kilograms, (dry) => {
      expect(groundPieces(dry, perKilogram).bare).toBeCloseTo(Math.exp(-perKilogram * dry), 12);
    }),
    { seed: 4, numRuns: 200 },
  );
});

test('the chain never hides more ground than the curve, nor much less', () => {
  fc.assert(
    fc.property(kilograms, kilograms, (dry, more) => {
      const chain = bareAfter(groundPieces(dry, perKilogram), more);
      const curve = Math.exp(-perKilogram * (dry + more));
      expect(chain).toBeGreaterThanOrEqual(curve - 1e-12);
      // a tenth of the widest step between two points bounds the sag of a chord of exp
      expect(chain - curve).toBeLessThan(0.015);
    }),
    { seed: 5, numRuns: 500 },
  );
});

test('each further kilogram hides less', () => {
  fc.assert(
    fc.property(kilograms, (dry) => {
      const { pieces } = groundPieces(dry, perKilogram);
      pieces.slice(1).forEach(({ slope }, at) => expect(slope).toBeLessThan(pieces[at]!.slope));
    }),
    { seed: 6, numRuns: 200 },
  );
});
