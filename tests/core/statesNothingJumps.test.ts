import { describe, expect, test } from 'vitest';
import type { BedSeason, ExcessClass } from '../../app/core/season/input';
import { runSeason } from '../../app/core/season/season';
import { bedVerdict } from '../../app/core/season/state';
import type { NitrogenState } from '../../app/core/season/verdict';
import { limits } from '../../app/tables/thresholds';
import { dayIn, legumeInput, makeBed, makeLayer, makePlanting } from './madeBed';

/*
 * Law: a state changes without cliffs. Where an input moves by a hundredth, a bed goes to a state next
 * to its own; "enough for now" lies beside "about right", since both leave a bed alone for the time
 * being. On the real engine, along sweeps from hungry to fed many times over.
 */

const rung: Readonly<Record<NitrogenState, number>> = {
  'nothing planted': Number.NaN,
  short: 0,
  'about right': 1,
  'enough for now': 1,
  'enough to the end': 2,
  'over-fed': 3,
};

const classes: readonly ExcessClass[] = [
  'tender storage',
  'storage',
  'fruit',
  'flower',
  'leaf',
  'head',
  'perennial',
  'legume',
  'cover',
];

const cropOf = (excessClass: ExcessClass, need: number): Parameters<typeof makePlanting>[1] => ({
  excessClass,
  need,
  harvestNitrogen: need / 2,
  flowerDays: excessClass === 'fruit' ? 45 : null,
  legume: excessClass === 'legume' ? legumeInput : null,
});

function statesAlong(of: (at: number) => BedSeason, from: number, to: number): NitrogenState[] {
  const states: NitrogenState[] = [];
  for (let at = from; at <= to; at *= 1.01) {
    const input = of(at);
    states.push(bedVerdict(input, runSeason(input), input.today, limits).state);
  }
  return states;
}

const jumps = (states: readonly NitrogenState[]): string[] =>
  states.flatMap((state, at) => {
    const before = states[at - 1];
    return before !== undefined && Math.abs(rung[state] - rung[before]) > 1
      ? [`${before} -> ${state}`]
      : [];
  });

const seen = new Set<NitrogenState>();

describe.each(classes)('%s', (excessClass) => {
  test.each([
    // with much nitrate from the start
    ['early', dayIn(6, 10), 14],
    ['late', dayIn(7, 25), null],
  ] as const)(
    'a need 1 %% larger, %s in the season',
    (_, today, startingMineralTop) => {
      const states = statesAlong(
        (need) =>
          makeBed({
            today,
            soil: { ...makeBed().soil, startingMineralTop },
            plantings: [
              makePlanting({ sown: excessClass === 'legume' }, cropOf(excessClass, need)),
            ],
            layers: [makeLayer({ day: dayIn(5, 20), nitrogen: 30, carbon: 390, dryKgPerM2: 0.9 })],
          }),
        4,
        50,
      );
      for (const state of states) seen.add(state);
      expect(jumps(states)).toEqual([]);
    },
    120_000,
  );

  test('a layer 1 % thicker', () => {
    const states = statesAlong(
      (nitrogen) =>
        makeBed({
          today: dayIn(7, 1),
          plantings: [makePlanting({ sown: excessClass === 'legume' }, cropOf(excessClass, 12))],
          layers: [
            makeLayer({
              day: dayIn(5, 20),
              nitrogen,
              carbon: 13 * nitrogen,
              dryKgPerM2: 0.03 * nitrogen,
            }),
          ],
        }),
      5,
      100,
    );
    expect(jumps(states)).toEqual([]);
  });
});

test('the sweeps go from short to over-fed', () => {
  const rungs = [...new Set([...seen].map((state) => rung[state]))].sort();
  expect(rungs).toEqual([0, 1, 2, 3]);
});
