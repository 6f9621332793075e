import { describe, expect, test } from 'vitest';
import {
  classFor,
  crumb,
  humusNitrogen,
  microbeNitrogen,
  residueNitrogen,
  type ResidueClass,
} from '../../../app/core/cover/residueClass';
import { classBelow, joinLeftOvers, remnant } from '../../../app/core/cover/leftOver';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { freeStep } from './oneStep';

const c = typicalCoefficients();

/** Classes without residue of several ratios, dug and hoed in. */
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
  return classes;
}

/** What a mulched bed may hold when its season turns: residue, microbes on it, and what is seen. */
function leftOnTop(): ResidueClass[] {
  const classes: ResidueClass[] = [];
  for (const [placement, kind, ratio, residue, microbes, lyingDry] of [
    ['laid', 'green', 12, 9, 14, 0.03],
    ['laid', 'green', 19, 20, 16, 0.05],
    ['laid', 'mature', 45, 160, 22, 0.4],
    ['laid', 'mature', 80, 90, 9, 0.2],
    ['laid', 'inert', 300, 200, 0, 0.4],
  ] as const)
    Object.assign(classFor(classes, placement, kind, ratio, c), { residue, microbes, lyingDry });
  return classes;
}

const sumOf = (classes: readonly ResidueClass[], of: (item: ResidueClass) => number): number =>
  classes.reduce((sum, item) => sum + of(item), 0);

/** A day of all classes; what they set free. */
function stepAll(classes: readonly ResidueClass[], soilDays: number, surfaceDays = 0): number {
  let released = 0;
  for (const item of classes) {
    if (item.isInert) continue;
    const residueDays = soilDays * item.soilRate + surfaceDays * item.surfaceRate;
    const day = freeStep(item, residueDays, soilDays, c);
    released += day.released;
    const { residue, microbes, humus } = day.after;
    Object.assign(item, { residue, microbes, humus });
  }
  return released;
}

describe('what earlier seasons left', () => {
  test('is one class of each placement and kind; wood, and what is alone, stay as they are', () => {
    const classes = [...spentBelow(), ...leftOnTop()];
    const wood = classes.find(({ isInert }) => isInert)!;
    const alone = classes.find(({ placement }) => placement === 'hoed')!;
    const before = [...classes];
    const now = joinLeftOvers(classes, c);
    expect(classes.map(({ placement, materialClass }) => `${placement} ${materialClass}`)).toEqual([
      'hoed green',
      'laid inert',
      'dug green',
      'dug mature',
      'laid green',
      'laid mature',
    ]);
    expect(classes).toContain(wood);
    expect(classes).toContain(alone);
    expect(before.filter((item) => now.has(item))).toHaveLength(8);
    for (const whole of now.values()) expect(classes).toContain(whole);
    expect(wood.crumb).toBe(crumb);
    expect(alone.crumb).toBe(remnant);
  });

  test('holds the same carbon and nitrogen on that morning, to the last digits', () => {
    const classes = [...spentBelow(), ...leftOnTop()];
    const sums = () =>
      [
        ({ residue }: ResidueClass) => residue,
        ({ microbes }: ResidueClass) => microbes,
        ({ humus }: ResidueClass) => humus,
        ({ lyingDry }: ResidueClass) => lyingDry,
        microbeNitrogen,
        humusNitrogen,
        residueNitrogen,
      ].map((of) => sumOf(classes, of));
    const before = sums();
    joinLeftOvers(classes, c);
    sums().forEach((sum, at) => expect(sum).toBeCloseTo(before[at]!, 11));
  });

  test('without residue, frees the same nitrogen and humus on every day as its parts', () => {
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

  // the bounds are what was seen, rounded up: the mean rate is a little too fast for what lasts longest
  test('with residue, goes on nearly as its parts would, through the year that follows', () => {
    const apart = leftOnTop();
    const together = leftOnTop();
    joinLeftOvers(together, c);
    const held = sumOf(apart, (item) =>
      item.isInert ? 0 : residueNitrogen(item) + microbeNitrogen(item),
    );
    const freed = { apart: 0, together: 0 };
    let widest = 0;
    for (let day = 0; day < 365; day++) {
      const warmth = 0.8 - 0.6 * Math.cos((2 * Math.PI * day) / 365);
      freed.apart += stepAll(apart, warmth, 0.4 * warmth);
      freed.together += stepAll(together, warmth, 0.4 * warmth);
      widest = Math.max(widest, Math.abs(freed.together - freed.apart));
    }
    expect(held).toBeGreaterThan(9);
    expect(Math.abs(freed.apart)).toBeGreaterThan(0.5);
    expect(widest / held).toBeLessThan(0.02);
    expect(widest).toBeGreaterThan(0);
  });

  test('is eaten whole once it is a remnant; what this season laid is not', () => {
    const classes = leftOnTop().slice(2, 4);
    joinLeftOvers(classes, c);
    const [old] = classes;
    old!.residue = 0.99 * remnant;
    const fresh = classFor(classes, 'laid', 'mature', 45, c);
    fresh.residue = 0.99 * remnant;
    const before = sumOf(classes, (item) => residueNitrogen(item) + microbeNitrogen(item));
    const released = stepAll(classes, 1, 0.5);
    expect(old!.residue).toBe(0);
    expect(fresh.residue).toBeGreaterThan(0.9 * remnant);
    const after = sumOf(
      classes,
      (item) => residueNitrogen(item) + microbeNitrogen(item) + humusNitrogen(item),
    );
    expect(after + released).toBeCloseTo(before, 12);
  });

  test('takes in nothing new: a layer of just its ratio opens a class of its own', () => {
    const classes = leftOnTop();
    const now = joinLeftOvers(classes, c);
    const whole = [...now.values()][0]!;
    const opened = classFor(
      classes,
      whole.placement,
      'green',
      whole.parameters.carbonToNitrogen,
      c,
    );
    expect(opened).not.toBe(whole);
    expect(opened).toMatchObject({ residue: 0, microbes: 0, humus: 0, isLeftOver: false, crumb });
  });

  test('never ties nitrogen up by turning over', () => {
    for (const residue of [0, 400]) {
      const classes: ResidueClass[] = [];
      Object.assign(classFor(classes, 'dug', 'green', 9, c), { microbes: 20 });
      Object.assign(classFor(classes, 'dug', 'green', 38, c), { residue, microbes: 0.1 });
      joinLeftOvers(classes, c);
      const { humusShare, microbeCarbonToNitrogen } = classes[0]!.parameters;
      expect(humusShare * microbeCarbonToNitrogen).toBeLessThanOrEqual(
        c.humusTurnoverLimit * (1 + 1e-12),
      );
    }
  });

  // Justes, Mary & Nicolardot 2009: CNb (15.4 - 76/CN) 1.2 of greens; a mean h of 0.76 of much fresh
  // residue would hold more nitrogen in humus than microbes of CNb 16.96 set free
  test('nor where what is fresh is rich and what eats is old: held at 9.0 by the microbes', () => {
    const classes: ResidueClass[] = [];
    Object.assign(classFor(classes, 'dug', 'green', 10, c), { residue: 200 });
    Object.assign(classFor(classes, 'dug', 'green', 60, c), { microbes: 1 });
    joinLeftOvers(classes, c);
    const { humusShare, microbeCarbonToNitrogen } = classes[0]!.parameters;
    expect(microbeCarbonToNitrogen).toBeCloseTo((15.4 - 76 / 60) * 1.2, 12);
    expect(humusShare).toBeCloseTo(9 / microbeCarbonToNitrogen, 12);
  });

  test('and is nothing at all, is one class that holds nothing', () => {
    const classes: ResidueClass[] = [];
    classFor(classes, 'laid', 'mature', 60, c);
    classFor(classes, 'laid', 'mature', 80, c);
    joinLeftOvers(classes, c);
    expect(classes).toHaveLength(1);
    expect(stepAll(classes, 1)).toBe(0);
    expect(microbeNitrogen(classes[0]!)).toBe(0);
  });

  test('goes on below at the ratios it had when it is dug in', () => {
    const classes: ResidueClass[] = [];
    for (const ratio of [12, 15])
      Object.assign(classFor(classes, 'laid', 'green', ratio, c), { microbes: 3 });
    joinLeftOvers(classes, c);
    const [top] = classes;
    const below = classBelow(classes, top!, c);
    expect(below).toMatchObject({
      placement: 'dug',
      onTop: false,
      isGreen: true,
      soilRate: 1,
      isLeftOver: true,
      crumb: remnant,
    });
    expect(below.parameters).toEqual(top!.parameters);
    expect(classes).toHaveLength(2);
    expect(classBelow(classes, classFor(classes, 'laid', 'inert', 300, c), c)).toMatchObject({
      placement: 'dug',
      materialClass: 'wood',
    });
  });
});
