import { describe, expect, test } from 'vitest';
import { decayParameters } from '../../../app/core/cover/decay';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { decayStep, nitrogenReleased } from '../cover/oneStep';
import { decayed, heldNitrogen, kineticsOf } from './decayEquations';

const c = typicalCoefficients();

/** Normalised days per day: same clock, dug in on a cool day, on top in a dry spell, and the two alike. */
const clocks = [
  [1, 1],
  [0.35, 0.35],
  [0.09, 1.4],
  [2.1, 0.4],
  [0, 0.8],
] as const;

describe('decay of one class against an integration of its differential equations', () => {
  const cases = (['green', 'mature'] as const).flatMap((kind) =>
    [8, 12, 20, 30, 80, 150].map((ratio) => [kind, ratio] as const),
  );
  test.each(cases)('%s, C:N %d: 26 weeks day by day and in one step, to 1e-6', (kind, ratio) => {
    const p = decayParameters(kind, ratio, c);
    const q = kineticsOf(kind, ratio, c);
    for (const [u, v] of clocks) {
      let daily = { residue: 100, microbes: 3, humus: 1 };
      let released = 0;
      for (let week = 1; week <= 26; week++) {
        for (let day = 0; day < 7; day++) {
          const next = decayStep(daily, p, u, v, c.assimilation);
          released += nitrogenReleased(daily, next, p);
          daily = next;
        }
        if (week % 4 !== 2) continue;
        const there = decayed({ R: 100, B: 3, H: 1 }, q, u, v, c.assimilation, 7 * week);
        const once = decayStep(
          { residue: 100, microbes: 3, humus: 1 },
          p,
          7 * week * u,
          7 * week * v,
          c.assimilation,
        );
        for (const ours of [daily, once]) {
          expect(Math.abs(ours.residue - there.R)).toBeLessThan(1e-6);
          expect(Math.abs(ours.microbes - there.B)).toBeLessThan(1e-6);
          expect(Math.abs(ours.humus - there.H)).toBeLessThan(1e-6);
        }
        const freed = heldNitrogen({ R: 100, B: 3, H: 1 }, q) - heldNitrogen(there, q);
        expect(Math.abs(released - freed)).toBeLessThan(1e-6);
      }
    }
  });

  test('where both decay equally fast the limit of the equations holds', () => {
    const p = decayParameters('green', 20, c);
    const q = kineticsOf('green', 20, c);
    const v = 1;
    const u = (q.lam * v) / q.k;
    const there = decayed({ R: 100, B: 5, H: 0 }, q, u, v, c.assimilation, 60);
    const ours = decayStep(
      { residue: 100, microbes: 5, humus: 0 },
      p,
      60 * u,
      60 * v,
      c.assimilation,
    );
    expect(Math.abs(ours.microbes - there.B)).toBeLessThan(1e-6);
    expect(Math.abs(ours.humus - there.H)).toBeLessThan(1e-6);
  });
});
