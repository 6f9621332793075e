import { describe, expect, test } from 'vitest';
import { classKey } from '../../../app/core/cover/residueClass';
import type { BedState } from '../../../app/core/season/bedState';
import { startingState } from '../../../app/core/season/startingState';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { stepDay } from '../../../app/core/season/day';
import { flowKinds, pools } from '../../../app/core/season/flows';
import { imbalance, openAccount } from '../../../app/core/season/season';
import {
  bareBed,
  beanCrop,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  planted,
  straw,
} from './handMadeBed';

const slip = 1e-6;
const slipDay = 215;

/** A bed on which every pool holds something by the day of the slip. */
const bed = bareBed({
  // nothing stands between the last two: the lower layer gets shallower, then deeper
  seasonStarts: [firstOf2013 + 100, firstOf2013 + 131, firstOf2013 + 136],
  plantings: [
    planted(beanCrop, firstOf2013 + 140, { share: 0.5 }),
    planted(fruitingCrop, firstOf2013 + 138, { share: 0.5 }),
    planted(fruitingCrop, firstOf2013 + 20, {
      id: 'early',
      share: 0.4,
      clearingDay: firstOf2013 + 130,
      topsFate: 'left',
    }),
  ],
  layers: [
    clippings(firstOf2013 + 30, 10, { placement: 'dug', id: 'dug' }),
    straw(firstOf2013 + 60, 20, { placement: 'hoed', id: 'hoed' }),
    compost(firstOf2013 + 90, 10),
    compost(firstOf2013 + 150, 10, { placement: 'dug', id: 'compost dug' }),
    clippings(firstOf2013 + 160, 8),
    straw(firstOf2013 + 170, 50),
    clippings(firstOf2013 + 190, 8, { nitrogen: 12 }),
    clippings(firstOf2013 + 200, 6, { placement: 'dug', id: 'dug late' }),
  ],
  events: [{ kind: 'dig cover in', day: firstOf2013 + 120, share: 0.5 }],
});

interface Slips {
  /** before the day begins */
  readonly overnight?: (state: BedState) => void;
  /** after the day, before it is booked */
  readonly evening?: (state: BedState, flows: Float64Array) => void;
}

/** The day loop of a run with a hand in it on one day; largest imbalance before and from that day on. */
function runWith(slips: Slips): { before: number; after: number } {
  const lowerDepth = lowerDepthFor(bed);
  const state = startingState(bed, lowerDepth);
  const account = openAccount(state);
  const flows = new Float64Array(flowKinds.length);
  const largest = { before: 0, after: 0 };
  for (let index = 0; index < bed.lastDay - bed.firstDay + 1; index++) {
    flows.fill(0);
    if (index === slipDay) slips.overnight?.(state);
    stepDay(bed, state, flows, index);
    if (index === slipDay) slips.evening?.(state, flows);
    const phase = index < slipDay ? 'before' : 'after';
    largest[phase] = Math.max(largest[phase], imbalance(account, state, flows));
  }
  return largest;
}

function shows(slips: Slips, atLeast = 1e-8): void {
  const { before, after } = runWith(slips);
  expect(before).toBeLessThan(1e-9);
  expect(after).toBeGreaterThan(atLeast);
}

const stateOnSlipDay = (): BedState => {
  let seen: BedState | undefined;
  runWith({ overnight: (state) => (seen = structuredClone(state)) });
  return seen!;
};

describe('a millionth of a gram slipped into the day is shown by the balance', () => {
  test('and without a slip there is nothing to show', () => {
    const { before, after } = runWith({});
    expect(Math.max(before, after)).toBeLessThan(1e-9);
  });

  test('every pool holds nitrogen on the day of the slip', () => {
    const { nitrogen } = stateOnSlipDay();
    pools.forEach((pool, at) => expect(nitrogen[at], pool).toBeGreaterThan(1e-4));
  });

  describe.each([slip, -slip])('%d g', (grams) => {
    test.each(flowKinds.map(({ from, to, why }, flow) => ({ from, to, why, flow })))(
      'into the flow $from -> $to ($why) alone',
      ({ flow }) => shows({ evening: (_state, flows) => void (flows[flow]! += grams) }),
    );

    test.each(pools.map((pool, at) => ({ pool, at })))('into the pool $pool alone', ({ at }) => {
      shows({ evening: (state) => void (state.nitrogen[at]! += grams) });
      shows({ overnight: (state) => void (state.nitrogen[at]! += grams) });
    });

    test.each(pools.map((pool, at) => ({ pool, at })))(
      'out of the pool $pool into the next without a flow',
      ({ at }) =>
        shows({
          evening: (state) => {
            state.nitrogen[at]! -= grams;
            state.nitrogen[(at + 1) % pools.length]! += grams;
          },
        }),
    );

    const classes = stateOnSlipDay().classes.map(classKey);
    test.each(
      classes.flatMap((key) =>
        (['residue', 'microbes', 'humus'] as const).map((part) => ({ key, part })),
      ),
    )('of carbon into the $part of what lies as "$key"', ({ key, part }) => {
      // A gram of carbon is a gram of nitrogen over the C:N of its pool: seen all the same.
      const change = (state: BedState): void =>
        void (state.classes.find((one) => classKey(one) === key)![part] += grams);
      shows({ evening: change });
      shows({ overnight: change }, 1e-9);
    });

    test.each(['topActive', 'topInert', 'dugActive', 'topQuick', 'dugQuick'] as const)(
      'into the compost %s',
      (part) => shows({ evening: (state) => void (state.slow[part] += grams) }),
    );

    test('into a plant', () =>
      shows({ evening: (state) => void (state.plantings[0]!.nitrogen += grams) }));
  });

  test('the bed has classes of every placement, green and mature', () => {
    const kinds = stateOnSlipDay().classes.map((one) => `${one.placement} ${one.materialClass}`);
    for (const kind of ['laid green', 'laid mature', 'hoed mature', 'dug green', 'dug mature'])
      expect(kinds).toContain(kind);
  });
});
