import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crowdedSpells, groundTaken } from '../../app/core/season/cautions/crowded';
import { plantingCautions } from '../../app/core/season/cautions/manureCautions';
import type { Run } from '../../app/core/season/cautions/facts';
import { limits } from '../../app/tables/thresholds';

const planting = fc.record({
  startDay: fc.integer({ min: -20, max: 60 }),
  length: fc.option(fc.integer({ min: 1, max: 60 }), { nil: null }),
  share: fc.constantFrom(0.25, 0.5, 0.75, 1),
});
const plantings = fc.array(planting, { maxLength: 6 }).map((drafts) =>
  drafts.map(({ startDay, length, share }, index) => ({
    id: `p${index}`,
    share,
    startDay,
    clearingDay: length === null ? null : startDay + length,
  })),
);

test('a day lies in a crowded spell exactly when the engine would caution on it', () => {
  fc.assert(
    fc.property(plantings, (own) => {
      const spells = crowdedSpells(own, 0, 50, limits);
      for (let day = 0; day <= 50; day += 1) {
        // the caution of a bed as it stands that day
        const input = { today: day, plantings: own.map((one) => ({ ...one, usualEndDay: 999 })) };
        const caution = plantingCautions({ input } as unknown as Run, limits).find(
          ({ kind }) => kind === 'share over one',
        );
        const spell = spells.find(({ from, to }) => from <= day && day <= to);
        expect(spell?.share ?? null).toBe(caution?.number ?? null);
        expect(spell?.weight).toBe(caution?.weight);
      }
    }),
  );
});

test('two halves and a whole: crowded while all three stand, by the shares added up', () => {
  const own = [
    { id: 'a', share: 0.5, startDay: 0, clearingDay: 20 },
    { id: 'b', share: 0.5, startDay: 5, clearingDay: null },
    { id: 'c', share: 0.5, startDay: 10, clearingDay: 15 },
  ];
  expect(groundTaken(own, 7, limits).weighed).toBeNull();
  expect(crowdedSpells(own, 0, 30, limits)).toMatchObject([
    { from: 10, to: 14, share: 1.5, plantingIds: ['a', 'b', 'c'] },
  ]);
});

test('what stood before and never leaves is one spell of all days asked for, and no others', () => {
  const whole = (id: string, startDay: number) => ({ id, share: 1, startDay, clearingDay: null });
  const own = [whole('a', -10), whole('b', -5), whole('later', 40)];
  expect(crowdedSpells(own, 0, 30, limits)).toMatchObject([
    { from: 0, to: 30, share: 2, plantingIds: ['a', 'b'] },
  ]);
  // set on one morning: one spell, not one for each
  const together = [whole('a', 10), whole('b', 10)];
  expect(crowdedSpells(together, 0, 30, limits)).toMatchObject([{ from: 10, to: 30, share: 2 }]);
  expect(crowdedSpells(together, 0, 30, limits)).toHaveLength(1);
});
