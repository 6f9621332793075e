import { describe, expect, test } from 'vitest';
import {
  classFor,
  humusNitrogen,
  microbeNitrogen,
  residueNitrogen,
  type ResidueClass,
} from '../../../app/core/cover/residueClass';
import { classBelow, joinLeftOvers } from '../../../app/core/cover/leftOver';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { freeStep } from './oneStep';

const c = typicalCoefficients();

/** Spent classes of several ratios, dug and hoed in, beside one that still has residue. */
function spentBelow(): ResidueClass[] {
  const classes: ResidueClass[] = [];
  for (const [placement, kind, ratio, microbes, humus] of [
    ['dug', 'green', 10, 6, 1],
    ['dug', 'green', 17, 11, 0],
    ['hoed', 'green', 25, 2, 4],
    ['dug', 'mature', 25, 9, 0],
    ['dug', 'mature', 90, 14, 2],
  ] as const)
    Object.assign(classFor(classes, placement, kind, ratio, c), { microbes, humus });
  Object.assign(classFor(classes, 'dug', 'green', 13, c), { residue: 40, microbes: 3 });
  return classes;
}

const sumOf = (classes: readonly ResidueClass[], of: (item: ResidueClass) => number): number =>
  classes.reduce((sum, item) => sum + of(item), 0);

/** A day of all classes, by clocks of the soil; what they set free. */
function stepAll(classes: readonly ResidueClass[], days: number): number {
  let released = 0;
  for (const item of classes) {
    const day = freeStep(item, days, days, c);
    released += day.released;
    const { residue, microbes, humus } = day.after;
    Object.assign(item, { residue, microbes, humus });
  }
  return released;
}

describe('spent classes that are joined', () => {
  test('are one of each kind; what has residue, and wood, stays by itself', () => {
    const classes = spentBelow();
    const wood = classFor(classes, 'laid', 'inert', 300, c);
    const alive = classes.find(({ residue }) => residue > 0)!;
    const before = [...classes];
    const now = joinLeftOvers(classes, c);
    expect(classes).toHaveLength(4);
    expect(classes).toContain(wood);
    expect(classes).toContain(alive);
    expect(before.filter((item) => now.has(item))).toHaveLength(5);
    expect(new Set(now.values()).size).toBe(2);
    for (const whole of now.values()) expect(classes).toContain(whole);
  });

  test('hold the same carbon and nitrogen on that morning, to the last digits', () => {
    const classes = spentBelow();
    const sums = () =>
      [
        ({ microbes }: ResidueClass) => microbes,
        ({ humus }: ResidueClass) => humus,
        microbeNitrogen,
        humusNitrogen,
        residueNitrogen,
      ].map((of) => sumOf(classes, of));
    const before = sums();
    joinLeftOvers(classes, c);
    sums().forEach((sum, at) => expect(sum).toBeCloseTo(before[at]!, 12));
  });

  test('give the same nitrogen and humus on every day as they would have given apart', () => {
    const apart = spentBelow();
    const together = spentBelow();
    joinLeftOvers(together, c);
    for (let day = 0; day < 1000; day++) {
      if (day === 300) joinLeftOvers(together, c);
      const days = 0.4 + 0.3 * Math.sin(day);
      expect(stepAll(together, days)).toBeCloseTo(stepAll(apart, days), 12);
    }
    for (const of of [microbeNitrogen, humusNitrogen])
      expect(sumOf(together, of)).toBeCloseTo(sumOf(apart, of), 11);
    expect(sumOf(apart, humusNitrogen)).toBeGreaterThan(1);
  });

  test('a new layer of the ratio of one of them opens a class of its own', () => {
    const classes = spentBelow();
    joinLeftOvers(classes, c);
    const opened = classFor(classes, 'dug', 'green', 17, c);
    expect(opened).toMatchObject({ residue: 0, microbes: 0, humus: 0 });
    expect(opened.parameters.carbonToNitrogen).toBe(17);
  });

  test('one of which something is still to be seen on top stays as it is', () => {
    const classes: ResidueClass[] = [];
    Object.assign(classFor(classes, 'laid', 'green', 12, c), { microbes: 3, lyingDry: 0.01 });
    Object.assign(classFor(classes, 'laid', 'green', 15, c), { microbes: 3, lyingDry: 0 });
    Object.assign(classFor(classes, 'laid', 'green', 18, c), { microbes: 3, lyingDry: 0 });
    const [seen] = classes;
    const now = joinLeftOvers(classes, c);
    expect(now.has(seen!)).toBe(false);
    expect(classes).toHaveLength(2);
    expect(classes[1]).toMatchObject({ placement: 'laid', microbes: 6, isGreen: true });
  });

  test('those that hold nothing at all are one that holds nothing', () => {
    const classes: ResidueClass[] = [];
    classFor(classes, 'laid', 'mature', 60, c);
    classFor(classes, 'laid', 'mature', 80, c);
    joinLeftOvers(classes, c);
    expect(classes).toHaveLength(1);
    expect(stepAll(classes, 1)).toBe(0);
    expect(microbeNitrogen(classes[0]!)).toBe(0);
  });

  test('dug in, joined ones go on below at the ratios they had', () => {
    const classes: ResidueClass[] = [];
    for (const ratio of [12, 15])
      Object.assign(classFor(classes, 'laid', 'green', ratio, c), { microbes: 3 });
    joinLeftOvers(classes, c);
    const [top] = classes;
    const below = classBelow(classes, top!, c);
    expect(below).toMatchObject({ placement: 'dug', onTop: false, isGreen: true, soilRate: 1 });
    expect(below.parameters).toEqual(top!.parameters);
    expect(classes).toHaveLength(2);
    expect(classBelow(classes, classFor(classes, 'laid', 'inert', 300, c), c)).toMatchObject({
      placement: 'dug',
      materialClass: 'wood',
    });
  });
});
