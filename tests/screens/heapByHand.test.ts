import { describe, expect, test } from 'vitest';
import type { PlanAnswer } from '../../app/core/plan/answer';
import { heapByHand } from '../../app/screens/week/plan/planRests';

/** A plan that leaves 2 kg dry of a mowing over and wants 50 L of leaves with them; 70 L are there. */
const answer = (leaves: object | null) =>
  ({
    sources: [
      {
        ref: { source: 'mowing', mowingId: 'm1' },
        rest: { dryKilograms: 2, litres: 40 },
        choices: [
          { place: { to: 'lawn' }, not: null },
          { place: { to: 'heap', stockId: 'heap', leaves }, not: null },
        ],
      },
    ],
  }) as unknown as Pick<PlanAnswer, 'sources'>;
const leaves = { sourceId: 'stock leaves', litres: 50, litresOnHand: 70, bags: 1 };
const litresFor = (dryKilograms: number): number | null => {
  const wish = heapByHand(answer(leaves), 'm1', dryKilograms);
  const quantity = wish?.leaves?.amount.quantity;
  return quantity?.kind === 'volume' ? quantity.litres : null;
};

describe('clippings put on a heap by hand', () => {
  test('take as many leaves for each kilogram as the plan wants', () => {
    expect(litresFor(2)).toBe(50);
    expect(litresFor(1)).toBe(25);
    expect(heapByHand(answer(leaves), 'm1', 2)).toMatchObject({
      to: 'heap',
      stockId: 'heap',
      leaves: { stockId: 'leaves' },
    });
  });

  test('and no more than are there', () => {
    expect(litresFor(10)).toBe(70);
  });

  test('none where the plan asks for none, or knows nothing of the mowing', () => {
    expect(heapByHand(answer(null), 'm1', 2)).toBeNull();
    expect(heapByHand(answer(leaves), 'another', 2)).toBeNull();
  });
});
