import { describe, expect, test } from 'vitest';
import { decayParameters } from '../../../app/core/cover/decay';
import {
  classFor,
  humusNitrogen,
  lyingCarbon,
  microbeNitrogen,
  residueNitrogen,
  type ResidueClass,
} from '../../../app/core/cover/residueClass';
import { typicalCoefficients } from '../../../app/tables/coefficients';

const c = typicalCoefficients();

describe('what decays alike is one class', () => {
  test('the same placement, kind and C:N finds the class that is there; any other opens one', () => {
    const classes: ResidueClass[] = [];
    const first = classFor(classes, 'laid', 'green', 13, c);
    expect(classFor(classes, 'laid', 'green', 13, c)).toBe(first);
    expect(classes).toHaveLength(1);
    const others = [
      classFor(classes, 'dug', 'green', 13, c),
      classFor(classes, 'laid', 'mature', 13, c),
      classFor(classes, 'laid', 'green', 13.1, c),
    ];
    expect(new Set([first, ...others]).size).toBe(4);
    expect(classes).toHaveLength(4);
    expect(first).toMatchObject({ residue: 0, microbes: 0, humus: 0, placement: 'laid' });
    expect(first.parameters).toEqual(decayParameters('green', 13, c));
  });

  test('a rounding in the C:N opens no class', () => {
    const classes: ResidueClass[] = [];
    classFor(classes, 'laid', 'green', 0.1 + 0.2, c);
    classFor(classes, 'laid', 'green', 0.3, c);
    expect(classes).toHaveLength(1);
  });

  test('the tenth digit is the last that tells two apart', () => {
    const classes: ResidueClass[] = [];
    const straw = classFor(classes, 'dug', 'mature', 80, c);
    expect(classFor(classes, 'dug', 'mature', 80 + 1e-9, c)).toBe(straw);
    expect(classFor(classes, 'dug', 'mature', 80 - 1e-9, c)).toBe(straw);
    expect(classFor(classes, 'dug', 'mature', 80 + 1e-7, c)).not.toBe(straw);
  });

  test('what lies there is the residue and a share of microbes and humus together', () => {
    const item = { ...classFor([], 'laid', 'green', 13, c), residue: 50, microbes: 20, humus: 10 };
    expect(lyingCarbon(item, 0.12)).toBeCloseTo(50 + 0.12 * 30, 12);
    expect(residueNitrogen(item)).toBeCloseTo(50 / 13, 12);
    expect(microbeNitrogen(item)).toBeCloseTo(20 / item.parameters.microbeCarbonToNitrogen, 12);
    expect(humusNitrogen(item)).toBeCloseTo(10 / 9.5, 12);
  });
});

describe('limits of the share that becomes humus (model, decomposition)', () => {
  test('at the high ends of both factors 9 over the C:N of the microbes holds it', () => {
    const high = { ...c, greenMicrobeFactor: 1.4, greenHumusFactor: 1.3 };
    const p = decayParameters('green', 20, high);
    expect(p.microbeCarbonToNitrogen).toBeCloseTo((15.4 - 76 / 20) * 1.4, 12);
    expect((1 - (0.73 * 20) / 30.2) * 1.3).toBeGreaterThan(9 / p.microbeCarbonToNitrogen);
    expect(p.humusShare).toBeCloseTo(9 / p.microbeCarbonToNitrogen, 12);
  });

  test('never more than 95 % becomes humus', () => {
    const p = decayParameters('green', 8, { ...c, greenHumusFactor: 2, greenMicrobeFactor: 0.5 });
    expect(p.humusShare).toBe(0.95);
  });
});
