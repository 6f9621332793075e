import { beforeEach, describe, expect, test } from 'vitest';
import { classFor } from '../../../app/core/cover/residueClass';
import type { BedState } from '../../../app/core/season/bedState';
import { startingState } from '../../../app/core/season/startingState';
import { bookkeepingDifference, nitrogenOnHand } from '../../../app/core/season/bookkeeping';
import { move, poolIndex, wayOf } from '../../../app/core/season/ways';
import { flowKinds, pools } from '../../../app/core/season/flows';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { bareBed, firstOf2013, fruitingCrop, planted } from './handMadeBed';

const c = typicalCoefficients();
const down = wayOf('mineralTop', 'mineralLower', 'washed down');

describe('moving nitrogen', () => {
  let state: BedState;
  let flows: Float64Array;
  beforeEach(() => {
    state = startingState(bareBed(), 300);
    flows = new Float64Array(flowKinds.length);
  });
  const held = (pool: 'mineralTop' | 'mineralLower'): number => state.nitrogen[poolIndex[pool]]!;

  test('takes from one pool what it gives the other, and writes it down', () => {
    const [top, lower] = [held('mineralTop'), held('mineralLower')];
    move(state, flows, down, 0.75);
    move(state, flows, down, 0.5);
    expect(held('mineralTop')).toBeCloseTo(top - 1.25, 12);
    expect(held('mineralLower')).toBeCloseTo(lower + 1.25, 12);
    expect(flows[down.flow]).toBe(1.25);
  });

  test.each([-0.001, -1e-6, NaN, -Infinity])('refuses to run backwards by %d', (grams) => {
    expect(() => move(state, flows, down, grams)).toThrow(/^Flow \d+ of /);
  });

  test('lets a rounding pass', () => {
    expect(() => move(state, flows, down, -1e-12)).not.toThrow();
  });

  test('from outside only one pool changes, to outside only one', () => {
    const before = state.nitrogen.slice(0, pools.length).reduce((sum, one) => sum + one, 0);
    move(state, flows, wayOf('rain', 'mineralTop', 'rain'), 2);
    move(state, flows, wayOf('mineralLower', 'leached', 'washed out'), 0.5);
    const after = state.nitrogen.slice(0, pools.length).reduce((sum, one) => sum + one, 0);
    expect(after - before).toBeCloseTo(1.5, 10);
  });
});

describe('the two books of a pool', () => {
  const state = (): BedState => {
    const bed = bareBed({ plantings: [planted(fruitingCrop, firstOf2013 + 100)] });
    const made = startingState(bed, 300);
    const on = classFor(made.classes, 'laid', 'green', 13, c);
    const below = classFor(made.classes, 'dug', 'mature', 80, c);
    Object.assign(on, { residue: 130, microbes: 30, humus: 19 });
    Object.assign(below, { residue: 400, microbes: 60, humus: 9.5 });
    Object.assign(made.slow, { topActive: 1, topInert: 2, dugActive: 3, topQuick: 4, dugQuick: 5 });
    made.plantings[0]!.nitrogen = 4;
    const n = made.nitrogen;
    n[poolIndex.coverResidue] = 10;
    n[poolIndex.coverMicrobes] = 30 / on.parameters.microbeCarbonToNitrogen;
    n[poolIndex.coverHumus] = 2;
    n[poolIndex.dugResidue] = 5;
    n[poolIndex.dugMicrobes] = 60 / below.parameters.microbeCarbonToNitrogen;
    n[poolIndex.dugHumus] = 1;
    n[poolIndex.slow] = 15;
    n[poolIndex.crop] = 4;
    return made;
  };

  test('agree when nothing is wrong, and both count every pool once', () => {
    const made = state();
    expect(bookkeepingDifference(made)).toBeLessThan(1e-12);
    const byFlows = pools.reduce((sum, pool) => sum + made.nitrogen[poolIndex[pool]]!, 0);
    expect(nitrogenOnHand(made)).toBeCloseTo(byFlows, 9);
  });

  test.each([
    'coverResidue',
    'coverMicrobes',
    'coverHumus',
    'dugResidue',
    'dugMicrobes',
    'dugHumus',
    'slow',
    'crop',
  ] as const)('a thousandth of a gram too much or too little in %s alone is seen', (pool) => {
    for (const slip of [0.001, -0.001]) {
      const made = state();
      made.nitrogen[poolIndex[pool]]! += slip;
      expect(bookkeepingDifference(made)).toBeCloseTo(0.001, 9);
    }
  });
});

test('the stores of a fresh bed start as broken numbers: nought with its sign', () => {
  const { slow, ammonia } = startingState(bareBed(), 300);
  const { lyingFactor, ...stores } = slow;
  expect(lyingFactor).toBe(1);
  for (const [store, grams] of Object.entries({ ...stores, ...ammonia }))
    expect(grams, store).toBe(-0);
});
