// A plan keeps to the middle of "about right": at its edge half of what may come lies beyond it.
import { describe, expect, test } from 'vitest';
import { bedDistance, supplyOffs } from '../../../app/core/plan/bedDistance';
import type { BedResponse } from '../../../app/core/plan/response';
import { planningRows, planWeights } from '../../../app/tables/planning';

const need = 10;

/** A bed whose ground is hidden and whose supply is so much [g N/m2]; nothing may be laid. */
const bedWith = (supply: number): BedResponse =>
  ({
    bedId: 'one',
    areaM2: 1,
    steps: 1,
    looks: [{ day: 0, weeks: 1 }],
    aims: [{ need, excess: 2, ratioLine: null, judgedOn: 0, share: 1 }],
    supplies: [supply],
    dry: Float64Array.of(100),
    layers: [],
  }) as unknown as BedResponse;

const distance = (supply: number, weights = planWeights): number =>
  bedDistance(bedWith(supply), new Map(), 5, { ...weights, groundGrams: 0 });

describe('too little and too much, as the plan weighs them', () => {
  test('nothing is wrong in the middle, and something is at either edge', () => {
    expect(distance(need)).toBe(0);
    // half of what may come lies a tenth lower (`planningRows.supplyDiffers`), and is short by it
    const differs = planningRows.supplyDiffers.typical;
    expect(differs).toBe(0.1);
    expect(distance(0.9 * need)).toBeCloseTo((differs * need) / 2, 12);
    // twice for what runs to leaf
    expect(distance(1.1 * need)).toBeCloseTo(2 * ((differs * need) / 2), 12);
  });

  test('far from the edges it is the distance of model 11 and nothing else', () => {
    for (const supply of [0, 3, 7.5]) expect(distance(supply)).toBeCloseTo(9 - supply, 12);
    for (const supply of [13, 20]) expect(distance(supply)).toBeCloseTo(2 * (supply - 11), 12);
  });

  test('where supply is sure the band has no cost at all', () => {
    const sure = { ...planWeights, supplyDiffers: 0 };
    expect(supplyOffs(need, sure)).toEqual([0]);
    for (const supply of [9, 10, 11]) expect(distance(supply, sure)).toBe(0);
  });
});
