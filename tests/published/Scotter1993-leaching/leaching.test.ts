import { describe, expect, test } from 'vitest';
import { burnsShare, leachedShare } from '../../../app/core/soil/leaching';
import { halfUnitsOff, readCases } from '../readCases';

const table = readCases(import.meta.dirname);

/** Burns' share with a unit of length `finer` times smaller than the centimetre. */
const burnsInSmallerUnits = (drainage: number, capacity: number, depth: number, finer: number) =>
  burnsShare(drainage * finer, capacity, depth * finer);

describe('Burns (1975) and its limit by Scotter, White & Dyson (1993), computed to three digits', () => {
  test('no row of it is missing', () => {
    expect(table.header).toBe(
      'drainage_cm,field_capacity_percent,depth_cm,burns_share,exponential_share',
    );
    expect(table.rows).toHaveLength(7);
  });

  test.each(table.rows)(
    'P %s cm, Vm %s %%, h %s cm: %s and in the limit %s',
    (p, vm, h, burns, limit) => {
      const [drainage, capacity, depth] = [Number(p), Number(vm), Number(h)];
      expect(halfUnitsOff(burnsShare(drainage, capacity, depth), burns!)).toBeLessThanOrEqual(1);
      const refined = burnsInSmallerUnits(drainage, capacity, depth, 1e6);
      expect(halfUnitsOff(refined, limit!)).toBeLessThanOrEqual(1);
    },
  );

  // Mixed through 30 cm of loam (27 %), against Burns from the middle of the layer: the two agree to
  // a tenth of the nitrate, which is far inside what is known of a bed's soil.
  test.each([10, 25, 50, 100, 200])('%i mm out of 30 cm of loam: ours beside Burns', (drainage) => {
    const ours = leachedShare(drainage, 81);
    const burns = burnsShare(drainage / 10, 27, 15);
    expect(Math.abs(ours - burns)).toBeLessThan(0.1);
  });

  test('no drainage, nothing leaves; drainage without end, everything does', () => {
    expect(leachedShare(0, 81)).toBe(0);
    expect(leachedShare(1e6, 81)).toBe(1);
  });
});
