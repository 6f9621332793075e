import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decayParameters } from '../../../app/core/cover/decay';
import { temperatureFactor } from '../../../app/core/soil/temperature';
import { coefficientRows, typicalCoefficients } from '../../../app/tables/coefficients';
import { decayStep, nitrogenReleased } from './oneStep';

const c = typicalCoefficients();
const runs = { numRuns: 1000, seed: 2009 } as const;
const kind = fc.constantFrom('green' as const, 'mature' as const, 'wood' as const);
const ratio = fc.double({ min: 6, max: 600, noNaN: true });
const grams = fc.double({ min: 0, max: 2000, noNaN: true });
const clock = fc.double({ min: 0, max: 3, noNaN: true });
const carbon = fc.record({ residue: grams, microbes: grams, humus: grams });

describe('parameters of a class', () => {
  test('green material carries both factors of 1.2, mature none (model, decomposition)', () => {
    const green = decayParameters('green', 20, c);
    expect(green.microbeCarbonToNitrogen).toBeCloseTo((15.4 - 76 / 20) * 1.2, 12);
    expect(green.humusShare).toBeCloseTo((1 - (0.73 * 20) / 30.2) * 1.2, 12);
    expect(green.turnover).toBe(0.011);
    const mature = decayParameters('mature', 80, c);
    expect(mature.microbeCarbonToNitrogen).toBeCloseTo(16.1 - 123 / 80, 12);
    expect(mature.humusShare).toBeCloseTo(1 - (0.69 * 80) / 91.2, 12);
    expect(mature.turnover).toBe(0.0076);
    for (const one of [green, mature]) expect(one.humusCarbonToNitrogen).toBe(9.5);
  });

  test('wood on top does not decay at all', () => {
    const wood = decayParameters('inert', 200, c);
    const before = { residue: 100, microbes: 0, humus: 0 };
    expect(decayStep(before, wood, 1, 1, c.assimilation)).toEqual(before);
  });

  /*
   * Allison & Murphy 1962, abstract: of finely ground hardwoods with nitrogen given 45.1 % of the
   * carbon was breathed out in 60 days, of their barks 24.5 %. The warmth of the jars is not said;
   * taken as 25 to 30 deg C.
   */
  describe('wood in the ground: what ground wood breathed out in 60 days', () => {
    const breathed = (woodDecay: number, celsius: number): number => {
      const start = { residue: 100, microbes: 0, humus: 0 };
      const days = 60 * temperatureFactor(celsius);
      const own = { ...c, woodDecay };
      const after = decayStep(start, decayParameters('wood', 400, own), days, days, c.assimilation);
      return 100 - after.residue - after.microbes - after.humus;
    };
    const { low, typical, high } = coefficientRows.woodDecay;

    test('hardwood in the cooler jar at the high end, bark in the warmer at the low end', () => {
      expect(Math.abs(breathed(high, 25) - 45.1)).toBeLessThan(1);
      expect(Math.abs(breathed(low, 30) - 24.5)).toBeLessThan(1);
    });

    test('between the two where it is likely, and far slower than its C:N says', () => {
      expect(breathed(typical, 28)).toBeGreaterThan(24.5);
      expect(breathed(typical, 28)).toBeLessThan(45.1);
      expect(decayParameters('wood', 400, c).decay).toBeLessThan(
        decayParameters('mature', 400, c).decay / 5,
      );
    });

    test('its microbes are those of other mature material', () => {
      const { decay: _, ...wood } = decayParameters('wood', 120, c);
      expect(decayParameters('mature', 120, c)).toMatchObject(wood);
    });
  });

  test('the turnover of microbes never ties nitrogen up', () => {
    fc.assert(
      fc.property(kind, ratio, grams, clock, (materialClass, cn, microbes, days) => {
        const p = decayParameters(materialClass, cn, c);
        expect(p.humusShare).toBeLessThanOrEqual(Math.min(0.95, 9 / p.microbeCarbonToNitrogen));
        const before = { residue: 0, microbes, humus: 0 };
        const after = decayStep(before, p, days, days, c.assimilation);
        expect(nitrogenReleased(before, after, p)).toBeGreaterThanOrEqual(-1e-12);
      }),
      runs,
    );
  });
});

describe('the step', () => {
  test('many small steps are one large one, on two clocks', () => {
    fc.assert(
      fc.property(
        kind,
        ratio,
        carbon,
        clock,
        clock,
        fc.integer({ min: 2, max: 12 }),
        (materialClass, cn, start, ta, tb, parts) => {
          const p = decayParameters(materialClass, cn, c);
          const once = decayStep(start, p, ta, tb, c.assimilation);
          let often = start;
          for (let part = 0; part < parts; part++)
            often = decayStep(often, p, ta / parts, tb / parts, c.assimilation);
          for (const pool of ['residue', 'microbes', 'humus'] as const)
            expect(Math.abs(often[pool] - once[pool])).toBeLessThan(1e-8);
        },
      ),
      runs,
    );
  });

  test('carbon is never made, residue never grows, humus never shrinks', () => {
    fc.assert(
      fc.property(kind, ratio, carbon, clock, clock, (materialClass, cn, before, ta, tb) => {
        const p = decayParameters(materialClass, cn, c);
        const after = decayStep(before, p, ta, tb, c.assimilation);
        const sum = (one: typeof before): number => one.residue + one.microbes + one.humus;
        expect(sum(after)).toBeLessThanOrEqual(sum(before) + 1e-9);
        expect(after.residue).toBeLessThanOrEqual(before.residue);
        expect(after.humus).toBeGreaterThanOrEqual(before.humus - 1e-9);
        expect(after.microbes).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
  });

  test('when both run equally fast the limit is taken, and nothing jumps beside it', () => {
    const p = decayParameters('green', 20, c);
    const before = { residue: 100, microbes: 5, humus: 0 };
    const tb = 1;
    const ta = (p.turnover * tb) / p.decay;
    const exact = decayStep(before, p, ta, tb, c.assimilation);
    // At a = l: B e^-l + Y a R e^-l.
    const a = p.turnover;
    expect(exact.microbes).toBeCloseTo((5 + c.assimilation * a * 100) * Math.exp(-a), 12);
    for (const nudge of [1e-6, 1e-9, 1e-11, 1e-12, 1e-13, -1e-13, -1e-12, -1e-11, -1e-9]) {
      const beside = decayStep(before, p, ta * (1 + nudge), tb, c.assimilation);
      expect(Math.abs(beside.microbes - exact.microbes)).toBeLessThan(1e-5);
      expect(Math.abs(beside.microbes - exact.microbes)).toBeLessThan(10 * Math.abs(nudge) + 1e-12);
    }
  });
});
